// The price answer against the figures the design fixes. Sources stand beside each case.

import { describe, expect, it } from 'vitest';
import { priceFigures } from '../../src/pricing/price-figures.ts';
import { fixedMoney } from '../../src/values/money.ts';
import { at, type Case, priced } from './terms-for-tests.ts';

/** What the client pays for one thing, and the tax and net printed beside it. */
const taxAndNet = (price: string, given: Case) => {
  const { tax, exTax } = priced(at(price), given).all.printed;
  return `${fixedMoney(tax, given.currency ?? 'AUD')} / ${fixedMoney(exTax, given.currency ?? 'AUD')}`;
};

describe('tax inside a price', () => {
  it.each([
    // GST calculator, Tax Super and You, Australian Taxation Office, 2021, https://taxsuperandyou.gov.au/gstcalculator
    ['1000', { rate: '10' }, '90.91 / 909.09'],
    // A New Tax System (Goods and Services Tax) Act 1999 s 9-75, example, ATO legal database
    ['22000', { rate: '10' }, '2000.00 / 20000.00'],
    // Calculating GST, Inland Revenue New Zealand, 16 Aug 2010, http://www.ird.govt.nz/changes-2010/gst/businesses/calculating/
    ['1725', { rate: '15', rounding: 'half down', currency: 'NZD' }, '225.00 / 1500.00'],
    // UStAE 15.4, German VAT application decree, https://www.steuerschroeder.de/steuergesetze/estg/26/ustae/15.4
    ['149.95', { rate: '19', currency: 'EUR' }, '23.94 / 126.01'],
  ] as [string, Case, string][])('%s with %o is %s', (price, given, expected) => {
    expect(taxAndNet(price, given)).toBe(expected);
  });
});

describe('the chain from a price to the stems', () => {
  const cents = (price: string, given: Case, count = 1) => {
    const order = priced(at(price, count), given);
    const { exTax, labour, product, wholesale } = order.all.exact;
    return [exTax, labour, product, wholesale].map((amount) => amount.toFixed(4)).join(' ');
  };

  it.each([
    // derived from the rules above; no published figure
    ['25', { rate: '10' }, '22.7273 5.2448 17.4825 4.3706'],
    ['25', { rate: '10', rule: 'out of the price' }, '22.7273 6.8182 15.9091 3.9773'],
    ['25', { rate: '20' }, '20.8333 4.8077 16.0256 4.0064'],
    ['25', { rate: '15' }, '21.7391 5.0167 16.7224 4.1806'],
  ] as [string, Case, string][])('%s with %o', (price, given, expected) => {
    expect(cents(price, given)).toBe(expected);
  });

  it('adds up for forty, from forty times the exact figures (derived)', () => {
    const { tax, labour, product, price, wholesale } = priceFigures(priced(at('25', 40), { rate: '10' })).all;
    expect([tax, labour, product, price, wholesale]).toEqual(['90.91', '209.79', '699.30', '1000.00', '174.83']);
  });

  it('adds up for forty, labour out of the price (derived)', () => {
    const { labour, product, wholesale } = priceFigures(priced(at('25', 40), { rate: '10', rule: 'out of the price' })).all;
    expect([labour, product, wholesale]).toEqual(['272.73', '636.36', '159.09']);
  });

  it('goes back from 49.50 to flowers of 10 beside hard goods of 2.50', () => {
    // Florists' Review, January 2023, p 61, http://floridahomesmag.uberflip.com/i/1489261/60
    const { labour, stems, sundries } = priceFigures(
      priced(at('49.50'), { basis: 'none', share: '20', stems: '3.5', sundriesMultiple: '2.5', sundries: '2.50' }),
    ).all;
    expect([labour, stems, sundries]).toEqual(['8.25', '10.00', '2.50']);
  });
});

describe('figures of the demo studio', () => {
  it('gives 40 at 25 including 20 %, 30 % on product, times four, as it is printed', () => {
    const figures = priceFigures(priced(at('25', 40), { rate: '20', currency: 'GBP', sundries: '0.75' }));
    expect(figures).toMatchObject({
      currency: 'GBP',
      taxRate: '20',
      basis: 'included',
      labourRule: 'on product',
      headMaths: { wholesale: '3.50' },
    });
    expect(figures.lines[0]?.each).toEqual({
      price: '25.00',
      tax: '4.17',
      exTax: '20.83',
      labour: '4.81',
      product: '16.02',
      wholesale: '4.01',
      sundries: '0.75',
      stems: '3.26',
    });
    expect(figures.lines[0]?.all).toEqual(figures.all);
  });
});

describe('noise of divisions', () => {
  // 131.50 / 1.2 × 0.75 / 2.5 is 32.875 to the last digit; forty digits of each step give 32.874…9 (derived)
  const given: Case = { rate: '20', share: '25', rule: 'out of the price', stems: '2.5' };

  it('does not turn a half coin down', () => {
    expect(priced(at('131.50'), given).all.exact.wholesale.equals('32.875')).toBe(false);
    expect(priceFigures(priced(at('131.50'), given)).all.wholesale).toBe('32.88');
  });

  it('does not make sundries of exactly the whole product too dear', () => {
    expect(priceFigures(priced(at('131.50', 40), { ...given, sundries: '32.875' })).all.stems).toBe('0.00');
  });
});
