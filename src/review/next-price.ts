// The price it would have to have next time: from what it really cost, forward by the event's own rules, up to the studio's step.
// Two prices can be asked for, one that keeps the multiple on what was bought and one whose labour share pays for the time it took; the higher one does both.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import { quotedFor } from '../pricing/ex-tax.ts';
import { exTaxForLabour } from '../pricing/labour-share.ts';
import { askedPrice, priceForStems, type WorkedOutPrice } from '../pricing/price-for.ts';
import type { PricedLine, PricedOrder } from '../pricing/price-order.ts';
import { type Decimal, decimal } from '../values/decimal.ts';
import type { Spending } from './spending.ts';

export interface NextPrice {
  readonly piece: PieceKind;
  readonly count: number;
  readonly material?: Material;
  readonly wearer?: string;
  readonly was: Decimal; // each, as it was quoted
  readonly forGoods?: WorkedOutPrice; // each; left out where the spending is not known
  readonly forLabour?: WorkedOutPrice; // each; left out where the time or the wage is not known, or no labour is charged
  readonly price: WorkedOutPrice; // the higher of the two
  readonly because: 'goods' | 'labour';
}

/** An actual total shared as the plan had it; by pieces where nothing was planned. */
const share = (actual: Decimal, plannedAll: Decimal, plannedEach: Decimal, pieces: number): Decimal =>
  plannedAll.isZero() ? actual.dividedBy(pieces) : actual.times(plannedEach).dividedBy(plannedAll);

const goodsPrice = (line: PricedLine, priced: PricedOrder, spending: Spending, pieces: number): WorkedOutPrice | undefined => {
  const { stems, sundries } = priced.all.exact;
  const price = priceForStems(
    line,
    share(spending.stems, stems, line.each.exact.stems, pieces),
    priced.terms,
    share(spending.sundries, sundries, line.each.exact.sundries, pieces),
  );
  return price.ok ? price.value : undefined;
};

const labourPrice = (line: PricedLine, priced: PricedOrder, labourEach: Decimal): WorkedOutPrice | undefined => {
  if (line.rules.labour.share.isZero()) return undefined;
  const exTax = exTaxForLabour(labourEach, line.rules.labour);
  return askedPrice(quotedFor(exTax, line.rules.taxRate, line.rules.basis), line.piece, priced.terms);
};

/** `labourEach`: what the time one piece really took cost in wages; undefined where it is not known. */
export const nextPrices = (
  priced: PricedOrder,
  spending: Spending | undefined,
  labourEach: (piece: PieceKind) => Decimal | undefined,
): readonly NextPrice[] => {
  const pieces = priced.lines.reduce((total, { count }) => total + count, 0);
  return priced.lines.flatMap((line): readonly NextPrice[] => {
    const wages = labourEach(line.piece);
    const forGoods = spending && goodsPrice(line, priced, spending, pieces);
    const forLabour = wages && labourPrice(line, priced, wages);
    const byLabour = (forLabour?.exact ?? decimal(0)).greaterThan(forGoods?.exact ?? decimal(0));
    const price = byLabour ? forLabour : forGoods;
    if (price === undefined) return [];
    return [
      {
        piece: line.piece,
        count: line.count,
        ...(line.material === undefined ? {} : { material: line.material }),
        ...(line.wearer === undefined ? {} : { wearer: line.wearer }),
        was: line.quotedEach,
        ...(forGoods === undefined ? {} : { forGoods }),
        ...(forLabour === undefined ? {} : { forLabour }),
        price,
        because: byLabour ? 'labour' : 'goods',
      },
    ];
  });
};
