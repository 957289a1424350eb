// What stands on a quote beside flowers: bringing them, setting them up, things hired. Nobody wears any of it.

import { wordList } from './word-list.ts';

export const serviceWords: ReadonlySet<string> = new Set(
  wordList(`
  delivery, deliver, delivered, deliveries, transport, transportation, travel, mileage, courier, postage, shipping, freight, fuel, petrol, parking,
  toll, tolls, van, setup, install, installation, teardown, breakdown, takedown, strike, collection, hire, rental, styling, consultation,
  decor, decoration, decorations, stylist, admin, candle, candles, candlestick, candlesticks, chair, chairs, stand, stands, easel,
  drapes, draping, lanterns, tealights, labour, labor, handling, logistics
`),
);

/** Money told beside these is no price of the order's: what was paid, and when the rest is. */
export const paymentWords: ReadonlySet<string> = new Set(
  wordList(`
  deposit, advance, balance, payment, payments, instalment, instalments, installment, installments, retainer, paid, owed, owing,
  outstanding, cancellation, bank, bacs, iban
`),
);
