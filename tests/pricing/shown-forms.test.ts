// The two long forms of a price: the working for the studio, and the client's form without a single cost in it. Figures derived.

import { describe, expect, it } from 'vitest';
import { clientFigures } from '../../src/pricing/client-figures.ts';
import { priceOrder } from '../../src/pricing/price-order.ts';
import { workingOf } from '../../src/pricing/working.ts';
import { decimal } from '../../src/values/decimal.ts';
import { at, type Case, priced, terms } from './terms-for-tests.ts';

const working = (each: string, given: Case): string[] => {
  const order = priced(at(each, 40), given);
  const [line] = order.lines;
  if (!line) throw new Error('no line');
  return workingOf(line, order.currency).map(({ part, formula, exact, printed }) => `${part}: ${formula} = ${exact} -> ${printed}`);
};

describe('the working', () => {
  it('goes line by line and rounds at the end', () => {
    expect(working('25', { rate: '20', currency: 'GBP', sundries: '0.75' })).toEqual([
      'price: 25 = 25 -> 25.00',
      'tax: 25 × 20 ÷ 120 = 4.166666… -> 4.17',
      'exTax: 25 × 100 ÷ 120 = 20.833333… -> 20.83',
      'labour: 20.833333… × 30 ÷ 130 = 4.807692… -> 4.81',
      'product: 20.833333… × 100 ÷ 130 = 16.025641… -> 16.02',
      'wholesale: 16.025641… ÷ 4 = 4.006410… -> 4.01',
      'sundries: 0.75 = 0.75 -> 0.75',
      'stems: 4.006410… − 0.75 = 3.256410… -> 3.26',
      'head maths: 25 less 20 % less 30 % ÷ 4 = 3.5 -> 3.50',
    ]);
  });

  it('follows separate multiples, labour out of the price and tax on top', () => {
    const lines = working('25', {
      rate: '10',
      basis: 'on top',
      rule: 'out of the price',
      stems: '3.5',
      sundriesMultiple: '2.5',
      sundries: '1',
    });
    expect(lines.slice(0, 3)).toEqual(['price: 25 + 2.5 = 27.5 -> 27.50', 'tax: 25 × 10 ÷ 100 = 2.5 -> 2.50', 'exTax: 25 = 25 -> 25.00']);
    expect(lines.slice(3)).toEqual([
      'labour: 25 × 30 ÷ 100 = 7.5 -> 7.50',
      'product: 25 × 70 ÷ 100 = 17.5 -> 17.50',
      'wholesale: 1 + 4.285714… = 5.285714… -> 5.29',
      'sundries: 1 = 1 -> 1.00',
      'stems: (17.5 − 2.5 × 1) ÷ 3.5 = 4.285714… -> 4.29',
      'head maths: 25 less 30 % ÷ 3.5 = 5 -> 5.00',
    ]);
  });

  it('has no tax to show for a studio that charges none', () => {
    expect(working('25', { basis: 'none' }).slice(0, 3)).toEqual([
      'price: 25 = 25 -> 25.00',
      'tax: 0 = 0 -> 0.00',
      'exTax: 25 = 25 -> 25.00',
    ]);
  });
});

describe("the client's form", () => {
  it('shows prices with the tax in them, and how much of it is tax', () => {
    const form = clientFigures(priced(at('25', 40), { rate: '20', currency: 'GBP', sundries: '0.75' }));
    expect(form.lines).toEqual([{ piece: 'buttonhole', count: 40, each: decimal(25), all: decimal(1000) }]);
    expect([form.total, form.tax, form.basis, form.taxes.map((tax) => tax.amount)].join()).toBe('1000,166.67,included,166.67');
  });

  it('shows prices before tax, each tax, and what is to pay', () => {
    // Calculating the taxes, Revenu Québec: 100 with GST 5 % and QST 9.975 %
    const form = clientFigures(
      priced(at('25', 4), {
        rate: '14.975',
        parts: [
          ['GST', '5'],
          ['QST', '9.975'],
        ],
        basis: 'on top',
        currency: 'CAD',
      }),
    );
    expect(form.lines.map((line) => line.all.toString())).toEqual(['100']);
    expect(form.taxes.map((tax) => `${tax.name} ${tax.amount.toFixed(2)}`)).toEqual(['GST 5.00', 'QST 9.98']);
    expect([form.beforeTax.toString(), form.total.toFixed(2)]).toEqual(['100', '114.98']);
  });

  it('holds nothing of the studio’s own sums', () => {
    const form = clientFigures(priced(at('25', 40), { sundries: '0.75' }));
    expect(Object.keys(form).sort()).toEqual(['basis', 'beforeTax', 'currency', 'lines', 'tax', 'taxes', 'total']);
    expect(Object.keys(form.lines[0] ?? {}).sort()).toEqual(['all', 'count', 'each', 'piece']);
  });

  it('leaves out a price each that would not multiply up to the line', () => {
    const form = clientFigures(
      priced({ lines: [{ piece: 'buttonhole', count: 7, wearer: 'ushers', price: { amount: decimal(36), per: 'line' } }] }),
    );
    expect(form.lines).toEqual([{ piece: 'buttonhole', count: 7, wearer: 'ushers', all: decimal(36) }]);
  });

  it('names the cash total where coins cannot pay the exact one', () => {
    const order = (each: string) => priceOrder(at(each), { ...terms(), cashStep: decimal('0.05') });
    const [odd, even] = [order('20.42'), order('20.40')].map((result) => result.ok && clientFigures(result.value).cashTotal?.toFixed(2));
    // Swedish rounding, a Wikipedia mirror: 20.42 is paid as 20.40
    expect([odd, even]).toEqual(['20.40', undefined]);
  });

  it('drops a half where the regime does', () => {
    // Reserve Bank of New Zealand material reprinted at grownups.co.nz: 12.35 is paid as 12.30
    const newZealand = { ...terms({ currency: 'NZD' }), cashStep: decimal('0.10') };
    const cash = (half: 'up' | 'down') => {
      const order = priceOrder(at('12.35'), { ...newZealand, tax: { ...newZealand.tax, cashHalf: half } });
      return order.ok && clientFigures(order.value).cashTotal?.toFixed(2);
    };
    expect([cash('down'), cash('up')]).toEqual(['12.30', '12.40']);
  });
});
