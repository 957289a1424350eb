// Published tax figures through the whole price answer: printed tax and the money before tax. Rates are those of the page, not of today.

import { describe, expect, it } from 'vitest';
import { cashTotal } from '../../src/pricing/cash-total.ts';
import { priceOrder } from '../../src/pricing/price-order.ts';
import { taxParts } from '../../src/pricing/tax-rounding.ts';
import { decimal, sum } from '../../src/values/decimal.ts';
import { fixedMoney } from '../../src/values/money.ts';
import { at, type Case, priced, taxTerms, terms } from './terms-for-tests.ts';

const shown = (price: string, given: Case): string => {
  const currency = given.currency ?? 'AUD';
  const { tax, exTax, price: paid } = priced(at(price), { ...given, currency }).all.printed;
  return given.basis === 'on top'
    ? `${fixedMoney(tax, currency)} -> ${fixedMoney(paid, currency)}`
    : `${fixedMoney(tax, currency)} / ${fixedMoney(exTax, currency)}`;
};

describe('tax inside a price: tax / before tax', () => {
  it.each([
    // https://www.tax123.com.au/tag/gst-calculation/
    ['110', '10', 'AUD', '10.00 / 100.00'],
    // tax-invoice threshold 82.50 = 75 + GST, https://wladvisory.com.au/creating-valid-tax-invoice
    ['82.50', '10', 'AUD', '7.50 / 75.00'],
    // Calculating VAT for VAT-inclusive and exclusive prices, HMRC, http://www.hmrc.gov.uk/vat/forms-rates/rates/calculating.htm
    ['120', '20', 'GBP', '20.00 / 100.00'],
    ['105', '5', 'GBP', '5.00 / 100.00'],
    // VAT fraction, 2014, http://itsrelative.co.uk/headlines/2014-06-11-vat-fraction
    ['60', '20', 'GBP', '10.00 / 50.00'],
    ['80', '5', 'GBP', '3.81 / 76.19'],
    // https://www.vatark.co.uk/vat/howto/whats-the-new-vat-fraction/
    ['24', '20', 'GBP', '4.00 / 20.00'],
    ['24', '17.5', 'GBP', '3.57 / 20.43'],
    // https://www.bookkeepers.org.uk/Forum/?cid=0&page=1&tid=85461
    ['240', '20', 'GBP', '40.00 / 200.00'],
    ['210', '5', 'GBP', '10.00 / 200.00'],
    ['235', '17.5', 'GBP', '35.00 / 200.00'],
    // Reverse percentages, tutor2u, https://www.tutor2u.net/maths/topics/reverse-percentage-calculations
    ['180', '20', 'GBP', '30.00 / 150.00'],
    // Key Skills, BBC (archived copy), https://bbctodays.pages.dev/keyskills/number/level2and3/module2/5.shtml
    ['1995', '17.5', 'GBP', '297.13 / 1697.87'],
    // https://devineaccounting.co.nz/GST-Calculator.aspx and https://calcgst.nz/howto; taking 15 % off 115 would give 97.75
    ['115', '15', 'NZD', '15.00 / 100.00'],
    ['200', '15', 'NZD', '26.09 / 173.91'],
    // https://www.irishtaxhub.ie/blog/vat-calculation-ireland-how-to-calculate-vat
    ['1135', '13.5', 'EUR', '135.00 / 1000.00'],
    ['1230', '23', 'EUR', '230.00 / 1000.00'],
    // https://includingvat.blob.core.windows.net/vatcalculator/vat-calculator-dublin.html
    ['123', '23', 'EUR', '23.00 / 100.00'],
    ['4.10', '13.5', 'EUR', '0.49 / 3.61'],
    // https://feeddi.de/wie-rechne-ich-die-umsatzsteuer-heraus
    ['107', '7', 'EUR', '7.00 / 100.00'],
    ['119', '19', 'EUR', '19.00 / 100.00'],
    // https://berekenenhulp.nl/btw/btw-berekenen, 31 January 2026
    ['109', '9', 'EUR', '9.00 / 100.00'],
    ['121', '21', 'EUR', '21.00 / 100.00'],
    // http://ecotransgest.com/moodle gives the formula HT = TTC/(1 + rate); figures derived
    ['110', '10', 'EUR', '10.00 / 100.00'],
    // tax as a percentage of the gross price, UStAE 15.4, German VAT application decree
    ['100', '5', 'EUR', '4.76 / 95.24'],
    ['100', '7', 'EUR', '6.54 / 93.46'],
    ['100', '9', 'EUR', '8.26 / 91.74'],
    ['100', '13', 'EUR', '11.50 / 88.50'],
    ['100', '15', 'EUR', '13.04 / 86.96'],
    ['100', '16', 'EUR', '13.79 / 86.21'],
    ['100', '19', 'EUR', '15.97 / 84.03'],
    // Sales tax calculation, Texas A&M University Financial Management Operations
    ['12', '8.25', 'USD', '0.91 / 11.09'],
    // Tax factoring, Town of Prescott Valley, http://pvaz.net/419/Tax-Factoring
    ['100', '9.68', 'USD', '8.83 / 91.17'],
    // http://www.larryhesscpa.com/businesses/gross-receipts-tax/sales-tax-vs-grt
    ['100', '6', 'USD', '5.66 / 94.34'],
    ['106', '6', 'USD', '6.00 / 100.00'],
    // Contemporary Mathematics 6.2, OpenStax (the question; the answer is derived)
    ['153', '6.25', 'USD', '9.00 / 144.00'],
  ])('%s at %s %% (%s): %s', (price, rate, currency, expected) => {
    const rounding = { NZD: 'half down', USD: 'third decimal then half up' }[currency] as Case['rounding'];
    expect(shown(price, { rate, currency, rounding: rounding ?? 'half up' })).toBe(expected);
  });
});

describe('tax on top of a price: tax -> to pay', () => {
  it.each([
    // Calculating the taxes, Revenu Québec: GST 5 % and QST 9.975 % of 100
    [
      '100',
      '14.975',
      'CAD',
      [
        ['GST', '5'],
        ['QST', '9.975'],
      ],
      '14.98 -> 114.98',
    ],
    // CRA interpretation 125136, 28 Nov 2011: 31.95 at 13 % in one, or 5 % and 8 % apart; both allowed (figures derived)
    ['31.95', '13', 'CAD', [['HST', '13']], '4.15 -> 36.10'],
    [
      '31.95',
      '13',
      'CAD',
      [
        ['GST', '5'],
        ['PST', '8'],
      ],
      '4.16 -> 36.11',
    ],
    // Calculating tax and discounts, school deck, https://cdn.slideserve.com/summer/calculating-tax-and-discounts-powerpoint-ppt-presentation
    ['34.99', '13', 'CAD', [['HST', '13']], '4.55 -> 39.54'],
    ['59.84', '13', 'CAD', [['HST', '13']], '7.78 -> 67.62'],
    // Sales tax calculation, Texas A&M University: 12.375 goes up
    ['150', '8.25', 'USD', [['tax', '8.25']], '12.38 -> 162.38'],
    // Contemporary Mathematics 6.2, OpenStax (questions; answers derived)
    ['39.95', '6.8', 'USD', [['tax', '6.8']], '2.72 -> 42.67'],
    ['120', '6', 'USD', [['tax', '6']], '7.20 -> 127.20'],
    // http://slidegur.com/doc/195669/discount
    ['164.95', '5.75', 'USD', [['tax', '5.75']], '9.48 -> 174.43'],
    // HMRC, Inland Revenue New Zealand, ATO calculator, as above
    ['100', '20', 'GBP', [['VAT', '20']], '20.00 -> 120.00'],
    ['1500', '15', 'NZD', [['GST', '15']], '225.00 -> 1725.00'],
    ['1000', '10', 'AUD', [['GST', '10']], '100.00 -> 1100.00'],
    // https://www.irishtaxhub.ie/blog/vat-calculation-ireland-how-to-calculate-vat
    ['1000', '23', 'EUR', [['VAT', '23']], '230.00 -> 1230.00'],
    // GST Act 1985 (NZ) s 19O: half a cent is dropped there and counted in Australia (figure derived)
    ['0.30', '15', 'NZD', [['GST', '15']], '0.04 -> 0.34'],
    ['0.30', '15', 'AUD', [['tax', '15']], '0.05 -> 0.35'],
  ] as [string, string, string, [string, string][], string][])('%s at %s %% (%s, %o): %s', (price, rate, currency, parts, expected) => {
    const rounding = { NZD: 'half down', USD: 'third decimal then half up' }[currency] as Case['rounding'];
    expect(shown(price, { rate, parts, currency, basis: 'on top', rounding: rounding ?? 'half up' })).toBe(expected);
  });
});

describe('by invoice or by line', () => {
  const gap = (each: string, count: number, given: Case) => {
    const prices = Array(count).fill(decimal(each));
    return (['invoice', 'line'] as const).map((level) =>
      sum(taxParts(prices, taxTerms({ ...given, level }), given.currency ?? 'AUD').map(({ amount }) => amount)).toFixed(2),
    );
  };

  it.each([
    // GST Act 1999 s 9-90(2): sum and round once, or round each and sum; the supplier chooses (figures derived)
    ['25', 40, { rate: '10' }, ['90.91', '90.80']],
    ['25', 40, { rate: '20', currency: 'GBP' }, ['166.67', '166.80']],
    ['25', 40, { rate: '15', currency: 'NZD', rounding: 'half down' }, ['130.43', '130.40']],
    ['10.05', 3, { rate: '10' }, ['2.74', '2.73']],
  ] as [string, number, Case, string[]][])('%s, %d times, %o: %o', (each, count, given, expected) => {
    expect(gap(each, count, given)).toEqual(expected);
  });

  it('follows the setting in the order, and the columns still add up', () => {
    const lines = Array.from({ length: 3 }, () => ({
      piece: 'corsage' as const,
      count: 1,
      price: { amount: decimal('10.05'), per: 'each' as const },
    }));
    const taxes = (['invoice', 'line'] as const).map((level) => {
      const { lines: rows, all } = priced({ lines }, { rate: '10', level });
      expect(rows.reduce((total, row) => total.plus(row.all.printed.tax), decimal(0)).equals(all.printed.tax)).toBe(true);
      return all.printed.tax.toFixed(2);
    });
    expect(taxes).toEqual(['2.74', '2.73']);
  });
});

it('pays 4.92 by card and 4.90 in coins', () => {
  // Budget 2012, Government of Canada: 1.83 and 2.86 with 5 % GST
  const lines = ['1.83', '2.86'].map((amount) => ({
    piece: 'buttonhole' as const,
    count: 1,
    price: { amount: decimal(amount), per: 'each' as const },
  }));
  const canadian = { ...terms({ rate: '5', basis: 'on top', currency: 'CAD' }), cashStep: decimal('0.05') };
  const order = priceOrder({ lines }, canadian);
  if (!order.ok) throw new Error('not priced');
  expect([order.value.all.printed.price.toFixed(2), cashTotal(order.value)?.toFixed(2)]).toEqual(['4.92', '4.90']);
});
