// Wage costs as published, and what labour money pays for.

import { describe, expect, it } from 'vitest';
import { checkLabour, minutesPaid } from '../../src/pricing/labour-check.ts';
import { wageCost, wageCostOf } from '../../src/pricing/wage-cost.ts';
import { decimal } from '../../src/values/decimal.ts';
import { toCoin } from '../../src/values/money.ts';
import { at, priced } from './terms-for-tests.ts';

describe('an hour at the bench', () => {
  it.each([
    // Fair Work Commission release of 2025 reprinted at hospitalitydirectory.com.au: 24.95 with 25 % casual loading
    ['24.95', '25', '31.19'],
    // General Retail Industry Award pay guide, FWC PR729257 (2021), level 1
    ['22.33', '25', '27.91'],
    ['22.33', '50', '33.50'],
    ['22.33', '125', '50.24'],
    // Retail award 2025, pay guide at rosterelf.com: casual, Sunday and public holiday
    ['26.55', '25', '33.19'],
    ['27.16', '25', '33.95'],
    ['27.58', '25', '34.48'],
    ['28.13', '25', '35.16'],
    ['29.36', '25', '36.70'],
    ['26.55', '50', '39.83'],
    ['27.58', '125', '62.06'],
    // Charge the right labor rate, Society of American Florists, 2021: 15 and 20 %
    ['15', '20', '18.00'],
    // digest of the same association's article at floristtrends.com, 2024: 19 × 1.15 (the page then doubles it to 43.70)
    ['19', '15', '21.85'],
    // UK National Living Wage from April 2026 (LPC, GOV.UK) with 12.07 % holiday accrual (Personnel Today): derived
    ['12.71', '12.07', '14.24'],
    // How much super to pay, ATO, 5 August 2025: 11.5 % of 1,036.52 is 119.20
    ['1036.52', '11.5', '1155.72'],
  ])('%s and %s %% on top costs %s', (hourly, onCosts, expected) => {
    expect(toCoin(wageCost(decimal(hourly), decimal(onCosts)).cost, 'AUD').toFixed(2)).toBe(expected);
  });

  it('is unknown without a wage', () => {
    expect([wageCostOf(undefined), wageCostOf({}), wageCostOf({ wage: '0' })]).toEqual([undefined, undefined, undefined]);
    expect(wageCostOf({ wage: '12.71' })?.cost.toString()).toBe('12.71');
  });

  it('turns money into minutes', () => {
    // Florists' Review, November 2007: 42 an hour is 0.70 a minute, 20 minutes are 14
    expect(minutesPaid(decimal(14), decimal(42)).toString()).toBe('20');
  });
});

describe('the labour check of the demo order', () => {
  // 40 at 25 including 20 %, 30 % on product; wage cost 12.71 × 1.1207 (sources above; derived)
  const order = priced(at('25', 40), { rate: '20', currency: 'GBP', sundries: '0.75' });
  const cost = wageCost(decimal('12.71'), decimal('12.07')).cost;

  it('pays 20 minutes a piece and 810 for all', () => {
    const check = checkLabour(order, cost, () => 15);
    expect(check).toMatchObject({ paid: 810, planned: 600, short: 0 });
    expect(check.lines).toEqual([{ piece: 'buttonhole', count: 40, paidEach: 20, plannedEach: 15 }]);
    expect(check.hourly?.toFixed(2)).toBe('19.23');
    expect(check.atSameShare).toBeUndefined();
  });

  it('says what is short and which price covers it', () => {
    const check = checkLabour(order, cost, () => 25);
    expect(check).toMatchObject({ paid: 810, planned: 1000, short: 190 });
    const atSameShare = check.atSameShare?.[0];
    const keepingStems = check.lines[0]?.keepingStems;
    expect([atSameShare?.price.toString(), keepingStems?.price.toString()]).toEqual(['31', '26.5']);
    // asking that price must cover the minutes; half a pound less must not
    const paidAt = (price: string) => checkLabour(priced(at(price, 40), { rate: '20', currency: 'GBP' }), cost, () => 25).short;
    expect([paidAt('31'), paidAt('30.5') > 0]).toEqual([0, true]);
  });

  it('has no hourly figure when nothing is planned, and no cure by share when labour is free', () => {
    expect(checkLabour(order, cost, () => 0)).toMatchObject({ planned: 0, short: 0 });
    const free = checkLabour(priced(at('25', 40), { share: '0' }), cost, () => 10);
    expect(free).toMatchObject({ paid: 0, planned: 400, short: 400 });
    expect([free.atSameShare, free.lines[0]?.keepingStems !== undefined]).toEqual([undefined, true]);
  });
});
