// Looking back: what came out otherwise, what is not known, and what is refused.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { reviewEvent } from '../../src/review/review-event.ts';
import { addDays } from '../../src/values/day.ts';
import { decimal } from '../../src/values/decimal.ts';
import { anEvent, eventDay, line, withSettings, yard } from '../handover/an-event.ts';
import { dayAfter, review, shown, spent, took, untaxed, unused } from './past-event.ts';

describe('an event that came out otherwise', () => {
  // Tax Super and You (ATO, 2021): 1,000 with 10 % in it is 909.09. The chain from there is derived: labour 30 % on product, four times.
  // Wage 31.19: the Australian casual minimum from 1 July 2025, as the release was reprinted in hospitalitydirectory.com.au.
  const studio = withSettings({
    currency: 'AUD',
    tax: { rate: '10', name: 'GST', usual: 'included' },
    labour: { wage: '31.19' },
    minutes: { buttonhole: 15 },
  });
  const forty = anEvent({
    lines: [line(40)],
    price: { amount: '25', per: 'each' },
    date: eventDay,
    actuals: [spent('182.40'), took(540), unused(3)],
  });
  const back = review(studio, forty);

  test('in all', () => {
    expect(shown(back.all.exTax)).toBe('909.09');
    expect([back.all.wholesale.planned, back.all.wholesale.actual, back.all.wholesale.over].map((one) => shown(one))).toEqual([
      '174.83',
      '182.40',
      '7.57',
    ]);
    expect([back.all.minutes.planned, back.all.minutes.actual, back.all.minutes.over].map((one) => shown(one, 0))).toEqual([
      '600',
      '540',
      '-60',
    ]);
    expect([back.all.labour.planned, back.all.labour.actual].map((one) => shown(one))).toEqual(['209.79', '280.71']);
    expect(shown(back.all.leftAfterLabour.actual)).toBe('445.98');
  });

  test('as printed, what is over and what is left are the printed figures’ own difference', () => {
    const { all } = back.printed;
    expect([all.exTax, all.wholesale.planned, all.wholesale.over].map(String)).toEqual(['909.09', '174.83', '7.57']);
    expect(all.leftAfterGoods.actual?.toString()).toBe('726.69');
    expect(back.printed.each.wholesale.planned?.toString()).toBe('4.37');
  });

  test('for one piece', () => {
    expect(shown(back.each.exTax, 4)).toBe('22.7273');
    expect([back.each.wholesale.planned, back.each.wholesale.actual].map((one) => shown(one, 4))).toEqual(['4.3706', '4.5600']);
    expect(shown(back.each.minutes.actual, 1)).toBe('13.5');
  });

  test('margin is of the ex-tax price, not of what the client pays', () => {
    expect(shown(back.afterGoods.margin.actual)).toBe('79.94'); // (909.09 − 182.40) / 909.09
    expect(shown(back.afterLabour.margin.actual)).toBe('49.06');
    expect(shown(back.afterLabour.margin.planned)).toBe('57.69');
  });

  test('next time: the stems ask for 26.50, the labour share for 33.50', () => {
    const [next] = back.next;
    expect([next?.forGoods?.exact, next?.forLabour?.exact].map((one) => shown(one, 4))).toEqual(['26.0832', '33.4513']);
    expect(shown(next?.price.price)).toBe('33.50');
    expect(next?.because).toBe('labour');
  });

  test('13.5 minutes are offered, not stored; three unused are shown', () => {
    expect(back.minutesLearned[0]).toMatchObject({ piece: 'buttonhole', timed: 40, now: { value: 15, origin: 'studio' } });
    expect(back.minutesLearned[0]?.offer).toMatchObject({ fact: 'crew', minutesPerPiece: 13.5, piece: 'buttonhole' });
    expect(back.unusedPieces).toHaveLength(1);
  });

  test('a minutes figure that is the studio’s own already is not offered again', () => {
    expect(review(studio, { ...forty, actuals: [took(600)] }).minutesLearned[0]?.offer).toBeUndefined();
  });

  test('two kinds share what was spent as the plan had it', () => {
    const lines = [
      line(10, 'buttonhole', { price: { amount: '20', per: 'each' } }),
      line(2, 'wrist corsage', { price: { amount: '40', per: 'each' } }),
    ];
    const free = withSettings({ ...untaxed });
    const both = review(free, anEvent({ lines, date: eventDay, actuals: [spent('100')] }));
    const growth = both.next.map(({ forGoods, was }) => shown(forGoods?.exact.dividedBy(was), 6));
    expect(growth[0]).toBe(growth[1]);
    expect(Number(growth[0])).toBeGreaterThan(1);
  });
});

describe('what is not known is not made up', () => {
  const event = anEvent({ lines: [line(10)], price: { amount: '20', per: 'each' }, date: eventDay, actuals: [spent('30'), took(150)] });

  test('no wage: minutes but no labour money', () => {
    const back = review(yard, event);
    expect(back.wageKnown).toBe(false);
    expect(back.all.labour.actual).toBeUndefined();
    expect(back.all.minutes.over?.toString()).toBe('0');
    expect(back.afterLabour.margin.actual).toBeUndefined();
    expect(back.afterGoods.margin.actual).toBeDefined();
  });

  test('no price: what was spent and how long it took, and nothing else', () => {
    const { price: _, ...unpriced } = event;
    const back = review(yard, unpriced);
    expect(shown(back.all.wholesale.actual)).toBe('30.00');
    expect(back.all.wholesale.planned).toBeUndefined();
    expect(back.next).toEqual([]);
    expect(back.unpriced).toEqual(['buttonhole']);
  });

  test('a price for some of the pieces plans nothing for all of them', () => {
    const lines = [line(10, 'buttonhole', { price: { amount: '20', per: 'each' } }), line(1, 'flower crown')];
    const { price: _, ...rest } = event;
    const back = review(yard, { ...rest, lines });
    expect(back.all.exTax).toBeUndefined();
    expect(back.unpriced).toEqual(['flower crown']);
  });

  test('no spending recorded: no wholesale and no price from it', () => {
    const back = review(yard, { ...event, actuals: [took(150)] });
    expect(back.all.wholesale.actual).toBeUndefined();
    expect(back.sundriesFrom).toBeUndefined();
  });

  test('an order of nothing divides by nothing', () => {
    const back = review(yard, anEvent({ date: eventDay, actuals: [spent('10')] }));
    expect(back.each.wholesale.actual).toBeUndefined();
  });

  test('a price the studio’s own sundries use up is told as it is', () => {
    const dear = withSettings({ sundriesEach: { buttonhole: '30' } });
    expect(review(dear, event).notPriced?.code).toBe('sundries-use-up-price');
  });
});

describe('refused', () => {
  const event = anEvent({ lines: [line(10)], date: eventDay, actuals: [spent('30')] });
  const code = (result: ReturnType<typeof reviewEvent>) => (result.ok ? 'reviewed' : result.problem.code);

  test('before the event; on its day it may be done', () => {
    expect(code(reviewEvent(yard, event, addDays(eventDay, -1)))).toBe('review-before-event');
    expect(code(reviewEvent(yard, event, eventDay))).toBe('reviewed');
  });

  test('with nothing told', () => expect(code(reviewEvent(yard, { ...event, actuals: [] }, dayAfter))).toBe('nothing-recorded'));

  test('an event of no known day can be looked back on', () => {
    const { date: _, ...undated } = event;
    expect(code(reviewEvent(yard, undated, dayAfter))).toBe('reviewed');
  });
});

test('whatever the price and rules: spent and worked as planned leaves no difference and the same price', () => {
  const percent = fc.integer({ min: 0, max: 60 }).map(String);
  fc.assert(
    fc.property(
      fc.integer({ min: 500, max: 20_000 }),
      fc.integer({ min: 1, max: 200 }),
      percent,
      percent,
      fc.constantFrom('on product' as const, 'out of the price' as const),
      fc.constantFrom('included' as const, 'on top' as const),
      (cents, count, rate, share, rule, usual) => {
        const studio = withSettings({ tax: { rate, usual }, labour: { rule, share }, sundriesEach: { buttonhole: '0.35' } });
        const event = anEvent({ lines: [line(count)], price: { amount: decimal(cents).div(100).toString(), per: 'each' }, date: eventDay });
        const planned = review(studio, { ...event, actuals: [took(1)] }).all.wholesale.planned;
        if (planned === undefined) return; // sundries use up the price: nothing was planned
        const stems = planned.minus(decimal('0.35').times(count));
        const back = review(studio, { ...event, actuals: [spent(stems.toFixed(25))] });
        expect(back.all.wholesale.over?.abs().lessThan('1e-18')).toBe(true);
        const { exTax = decimal('NaN'), wholesale, leftAfterGoods } = back.printed.all;
        expect(exTax.minus(wholesale.actual ?? 'NaN').equals(leftAfterGoods.actual ?? 'NaN')).toBe(true);
        expect(back.next[0]?.forGoods?.exact.minus(back.next[0].was).abs().lessThan('1e-15')).toBe(true);
        expect(back.next[0]?.price.price.greaterThanOrEqualTo(back.next[0].was.minus('1e-15'))).toBe(true);
      },
    ),
  );
});
