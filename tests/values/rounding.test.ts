// Named roundings against published rules and figures. Each case names where it was read.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimal } from '../../src/values/decimal.ts';
import { cashRounded, type RoundingRule, roundTo, toStep, upToStep } from '../../src/values/rounding.ts';

const to = (amount: string, places: number, rule: RoundingRule): string => roundTo(decimal(amount), places, rule).toString();

describe('half a coin', () => {
  it.each([
    // GST Act 1999 (Australia) s 9-90(1), ATO legal database: nearest cent, 0.5 up
    ['0.104', 'half up', '0.1'],
    ['0.105', 'half up', '0.11'],
    // GST Act 1985 (New Zealand) s 19O, https://plainlanguagelaw.ackama.com/acts/DLM81034/LMS849298.html: half a cent or less may be dropped. Derived: 0.30 at 15 %
    ['0.045', 'half down', '0.04'],
    ['0.0451', 'half down', '0.05'],
    ['0.045', 'half up', '0.05'],
    // VATREC12010, HMRC: an invoice trader may round the total down. Figures: AAT forum discussion 447698, 704.88 at 20 % is 140.976
    ['140.976', 'down', '140.97'],
    ['140.976', 'half up', '140.98'],
    // AAT forum discussion 31940, VAT rounding on return
    ['32.8125', 'down', '32.81'],
    // GST Act 1985 s 19O, derived: a refund rounds as the sale it undoes
    ['-0.045', 'half down', '-0.04'],
    ['-0.105', 'half up', '-0.11'],
    // Calculating the taxes, Revenu Québec: below half a cent dropped, half and above is one. 9.975 % of 100
    ['9.975', 'half up', '9.98'],
  ] as [string, RoundingRule, string][])('%s, %s, is %s', (amount, rule, expected) => {
    expect(to(amount, 2, rule)).toBe(expected);
  });

  it('rounds a line down to a tenth of a penny or to the nearest penny', () => {
    // AAT forum discussion 31940: 86.76p is 86.7p or 87p
    expect([toStep(decimal('86.76'), decimal('0.1'), 'down').toString(), to('86.76', 0, 'half up')]).toEqual(['86.7', '87']);
  });
});

describe('the third decimal of the US states', () => {
  it.each([
    // General Laws 44-18.1-25, Rhode Island: carried to the third decimal, up when it is above 4
    ['1.004', '1'],
    ['1.005', '1.01'],
    // Sales tax calculation, Texas A&M University Financial Management Operations: 150 at 8.25 %
    ['12.375', '12.38'],
    // Rounding rule issue paper, Streamlined Sales Tax, 24 Jan 2002, https://studylib.net/doc/7979173/: under half a cent is dropped (derived figure)
    ['1.0049', '1'],
    ['1.00499999', '1'],
  ])('%s is %s', (amount, expected) => {
    expect(to(amount, 2, 'third decimal then half up')).toBe(expected);
  });

  it('is not what rounding twice would give', () => {
    expect(to('1.0049', 3, 'half up')).toBe('1.005');
    expect(to(to('1.0049', 3, 'half up'), 2, 'half up')).toBe('1.01');
  });
});

describe('coins that are no longer made', () => {
  it.each([
    // GST Regulations 2019 (Australia) s 168-5.11: to the nearest 5 cents, 2.5 up. Statute example: Queensland 2022 regulation s 17A, 35 × 1.015
    ['35.525', '0.05', 'up', '35.55'],
    // "Swedish rounding", a Wikipedia mirror, and community.oracle.com discussion 4125052
    ['20.42', '0.05', 'up', '20.4'],
    ['20.43', '0.05', 'up', '20.45'],
    ['96.11', '0.05', 'up', '96.1'],
    ['96.13', '0.05', 'up', '96.15'],
    // Budget 2012, Government of Canada, https://www.budget.canada.ca/2012/themes/rounding-arrondissement-eng.html
    ['4.92', '0.05', 'up', '4.9'],
    // Reserve Bank of New Zealand material reprinted at grownups.co.nz, "How does rounding work": 1-5 down, 6-9 up
    ['12.34', '0.10', 'down', '12.3'],
    ['12.98', '0.10', 'down', '13'],
    ['12.35', '0.10', 'down', '12.3'],
  ] as [string, string, 'up' | 'down', string][])('%s in coins of %s, half %s, is %s', (total, step, half, expected) => {
    expect(cashRounded(decimal(total), decimal(step), half).toString()).toBe(expected);
  });

  it('follows the endings table: 1, 2, 6, 7 down and 3, 4, 8, 9 up', () => {
    // http://www.kirker.ie/index.php/category/1cent/ and Budget 2012, Canada
    const endings = Array.from({ length: 10 }, (_, cents) =>
      cashRounded(decimal(cents).dividedBy(100), decimal('0.05'), 'up').times(100).toNumber(),
    );
    expect(endings).toEqual([0, 0, 0, 5, 5, 5, 5, 5, 10, 10]);
  });
});

describe('up to a step', () => {
  it.each([
    // Unit cost, always rounded up: http://slideplayer.com/slide/1559025/
    ['4.95', '100', '0.05'],
    ['14.60', '48', '0.31'],
    // the same habit, school deck https://cdn.slideserve.com/odette/terms-to-know-powerpoint-ppt-presentation
    ['2.49', '20', '0.13'],
    ['3.75', '2', '1.88'],
    ['18', '36', '0.5'],
    ['7.50', '10', '0.75'],
  ])('a pack of %s for %s pieces costs %s a piece', (pack, pieces, each) => {
    expect(upToStep(decimal(pack).dividedBy(pieces), decimal('0.01')).toString()).toBe(each);
  });

  it('leaves a whole step alone though a division left noise behind', () => {
    const noisy = decimal('49.5').dividedBy(7).times(7);
    expect(upToStep(noisy, decimal('0.50')).toString()).toBe('49.5');
  });

  it('never goes below the amount nor a whole step above it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10_000_000 }), fc.constantFrom('0.01', '0.05', '0.50', '1', '2.50'), (thousandths, step) => {
        const amount = decimal(thousandths).dividedBy(1000);
        const up = upToStep(amount, decimal(step));
        expect(up.greaterThanOrEqualTo(amount) && up.minus(amount).lessThan(step) && up.dividedBy(step).isInteger()).toBe(true);
      }),
    );
  });

  it('refuses a step of nothing', () => {
    expect(() => upToStep(decimal(1), decimal(0))).toThrow();
  });
});

describe('values on which binary floats fail', () => {
  // the exact product, what was published, and the two ways scripts usually round it
  it.each([
    // General Retail Industry Award pay guide, FWC PR729257: level 1 at 150 %
    ['22.33', '1.5', '33.5', 33.49, 33.49],
    // Retail award 2025, pay guide: casual 125 % and public holiday 225 % of level 3, https://www.rosterelf.com/guides/award-rates/general-retail
    ['27.58', '1.25', '34.48', 34.47, 34.47],
    ['27.58', '2.25', '62.06', 62.05, 62.05],
    // carnation at 0.35 times 3.5, florist20.com/community/threads/how-do-you-set-your-prices.11202
    ['0.35', '3.5', '1.23', 1.22, 1.22],
    // Ratio, proportion and percentages 3.3.1, Open University
    ['89.30', '1.15', '102.7', 102.69, 102.7],
  ])('%s × %s is %s', (amount, factor, published, byText, byRound) => {
    expect(to(decimal(amount).times(factor).toString(), 2, 'half up')).toBe(published);
    const float = Number(amount) * Number(factor);
    expect([Number(float.toFixed(2)), Math.round(float * 100) / 100]).toEqual([byText, byRound]);
  });

  it('35 × 1.015 to the nearest 5 cents is 35.55', () => {
    // Queensland 2022 regulation (dsaolar2022604) s 4, new s 17A, example
    expect(toStep(decimal(35).times('1.015'), decimal('0.05'), 'half up').toString()).toBe('35.55');
    expect([(35 * 1.015).toFixed(2), (Math.round((35 * 1.015) / 0.05) * 0.05).toFixed(2)]).toEqual(['35.52', '35.50']);
  });

  it.each([
    // Retail award 2025 Sunday rate, https://www.rosterelf.com/guides/award-rates/general-retail; half to even would give 39.82
    ['26.55', '150', '39.83'],
    // Rhode Island rule above, derived: 8.25 % of 50; half to even would give 4.12
    ['50', '8.25', '4.13'],
  ])('%s × %s %% is %s, not the even neighbour', (amount, percent, published) => {
    expect(to(decimal(amount).times(percent).div(100).toString(), 2, 'half up')).toBe(published);
  });
});
