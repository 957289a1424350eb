// Spending and time, from the short things people write afterwards.

import { describe, expect, test } from 'vitest';
import { spendingOf } from '../../src/review/spending.ts';
import { minutesTaken, timeTaken } from '../../src/review/time-taken.ts';
import { decimal } from '../../src/values/decimal.ts';
import { spent, took } from './past-event.ts';

const forty = [{ piece: 'buttonhole', count: 40 }] as const;
const two = [...forty, { piece: 'wrist corsage', count: 2 }] as const;

describe('time', () => {
  test.each([
    ['took 9 hours', [took(540)], '540', 40],
    ['in two sittings', [took(240), took(300)], '540', 40],
    ['took 3 hours for 12, and 7 for the rest', [took(180, 12), took(420)], '600', 40],
    ['took 3 hours for 12, all told', [took(180, 12)], '600', 12],
    ['more than were ordered: spares were made', [took(630, 42)], '630', 42],
  ])('%s', (_, told, forOrder, timed) => {
    const time = timeTaken(told, forty);
    expect(time?.forOrder?.toString()).toBe(forOrder);
    expect(time?.kinds[0]?.timed).toBe(timed);
  });

  test('twelve timed of forty is an estimate for the rest', () => {
    expect(timeTaken([took(180, 12)], forty)?.estimated).toBe(true);
    expect(timeTaken([took(540)], forty)?.estimated).toBe(false);
  });

  test('one kind timed of two: nothing is said of the whole', () => {
    const time = timeTaken([took(60, 2, 'wrist corsage')], two);
    expect(time?.forOrder).toBeUndefined();
    expect(time?.recorded.toString()).toBe('60');
  });

  test('a time for the whole of two kinds teaches neither, and is shared as planned', () => {
    const time = timeTaken([took(660)], two);
    expect(time?.kinds).toEqual([]);
    if (time === undefined) throw new Error('no time');
    const each = minutesTaken(time, two, (piece) => decimal(piece === 'buttonhole' ? 15 : 30));
    expect([each('buttonhole'), each('wrist corsage')].map(String)).toEqual(['15', '30']);
  });

  test('the corsages by themselves, the buttonholes by what is left', () => {
    const time = timeTaken([took(60, 2, 'wrist corsage'), took(400)], two);
    if (time === undefined) throw new Error('no time');
    const each = minutesTaken(time, two, () => decimal(15));
    expect([each('buttonhole'), each('wrist corsage')].map(String)).toEqual(['10', '30']);
  });

  test('nothing told', () => expect(timeTaken([spent('5')], forty)).toBeUndefined());
});

describe('spending', () => {
  const planned = decimal(30);
  const of = (...args: Parameters<typeof spendingOf>) => {
    const spending = spendingOf(...args);
    return spending && [spending.stems.toString(), spending.sundries.toString(), spending.sundriesFrom];
  };

  test('at the market: the plants; sundries as planned', () =>
    expect(of([spent('182.40')], planned, 'stems')).toEqual(['182.4', '30', 'planned']));
  test('on everything', () => expect(of([spent('182.40')], planned, 'everything')).toEqual(['152.4', '30', 'in the spending']));
  test('twice, and something taken back', () =>
    expect(of([spent('100'), spent('90'), spent('-7.60')], planned, 'stems')?.[0]).toBe('182.4'));
  test('ribbon named', () => expect(of([spent('182.40'), spent('12', 'ribbon')], planned, 'stems')).toEqual(['182.4', '12', 'recorded']));
  test('only ribbon: the plants are not known', () => expect(of([spent('12', 'ribbon')], planned, 'stems')).toBeUndefined());
  test.each([
    ['spent 12 on the ribbon', true],
    ['paid 12 for tape and pins', true],
    ['paid 182.40 by card', false],
    ['spent 182.40 on flowers and ribbon', false],
    ['spent 182.40 at the market', false],
  ])('%s: on sundries %s', (words, sundries) => {
    const told = { ...spent('12'), words };
    expect(spendingOf([spent('100'), told], planned, 'stems')?.sundriesFrom).toBe(sundries ? 'recorded' : 'planned');
  });
  test('less than the sundries in it', () => expect(of([spent('20')], planned, 'everything')).toEqual(['0', '20', 'in the spending']));
});
