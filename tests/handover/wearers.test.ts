// The wearers' list against the order: differences named, nothing corrected in silence.

import { describe, expect, test } from 'vitest';
import { wearersList } from '../../src/handover/wearers.ts';
import { anEvent, line, wears } from './an-event.ts';

const party = [wears('groom'), wears('groomsmen', 5), wears('officiant'), wears('ring bearer'), wears('dads', 2), wears('stepdad')];

describe('the list agrees with the order', () => {
  test('eleven wearers, eleven buttonholes', () => {
    const list = wearersList(anEvent({ lines: [line(11)], wearers: party }));
    expect(list.all).toEqual({ wearers: 11, pieces: 11, over: 0 });
    expect(list.differences).toEqual([]);
  });

  test('eleven wearers, twelve buttonholes: one over, a spare or a missing name', () => {
    const list = wearersList(anEvent({ lines: [line(12)], wearers: party }));
    expect(list.differences).toEqual([{ piece: 'buttonhole', wearers: 11, pieces: 12, over: 1 }]);
  });

  test('more wearers than pieces', () => {
    const list = wearersList(anEvent({ lines: [line(10)], wearers: party }));
    expect(list.differences).toEqual([{ piece: 'buttonhole', wearers: 11, pieces: 10, over: -1 }]);
  });

  test('each kind is compared by itself: one too many does not hide one too few', () => {
    const lines = [line(3), line(1, 'wrist corsage')];
    const list = wearersList(anEvent({ lines, wearers: [wears('groom'), wears('best man'), wears('mums', 2)] }));
    expect(list.all.over).toBe(0);
    expect(list.differences).toEqual([
      { piece: 'buttonhole', wearers: 2, pieces: 3, over: 1 },
      { piece: 'wrist corsage', wearers: 2, pieces: 1, over: -1 },
    ]);
  });

  test('nobody named yet is not a difference', () => {
    const list = wearersList(anEvent({ lines: [line(40)] }));
    expect(list.differences).toEqual([]);
    expect(list.spares).toBeUndefined();
  });

  test('a wearer named only in the order is on the list', () => {
    const list = wearersList(anEvent({ lines: [line(1, 'buttonhole', { wearer: 'groom' }), line(5)], wearers: [wears('ushers', 5)] }));
    expect(list.wearers.map(({ role, count }) => [role, count])).toEqual([
      ['ushers', 5],
      ['groom', 1],
    ]);
    expect(list.differences).toEqual([]);
  });

  test('a wearer named in both is counted once, and the order says the piece', () => {
    const lines = [line(2, 'wrist corsage', { wearer: 'mums' }), line(2)];
    const list = wearersList(anEvent({ lines, wearers: [wears('mums', 2), wears('dads', 2)] }));
    expect(list.all.over).toBe(0);
    expect(list.wearers[0]?.piece).toEqual({ value: 'wrist corsage', origin: 'said' });
  });

  test('one person with two pieces is listed for each', () => {
    const lines = [line(1, 'flower crown', { wearer: 'bride' }), line(1, 'wrist corsage', { wearer: 'bride' })];
    const list = wearersList(anEvent({ lines, wearers: [wears('bride')] }));
    expect(list.wearers.map(({ role, piece }) => [role, piece.value])).toEqual([
      ['bride', 'flower crown'],
      ['bride', 'wrist corsage'],
    ]);
    expect(list.differences).toEqual([]);
  });
});

describe('which piece, when nobody said', () => {
  // Corsages and boutonniere FAQs (a working florist's page, https://athionns.com/corsages-and-boutonniere-faqs/): boutonnieres for groom, ushers,
  // fathers and ring bearer; corsages for mothers and grandmothers.
  test.each([
    ['groom', 'buttonhole'],
    ['ushers', 'buttonhole'],
    ['dads', 'buttonhole'],
    ['ring bearer', 'buttonhole'],
    ['mums', 'wrist corsage'],
    ['grandmothers', 'wrist corsage'],
  ])('%s: %s, marked assumed', (role, piece) => {
    const [wearer] = wearersList(anEvent({ lines: [line(1), line(1, 'wrist corsage')], wearers: [wears(role)] })).wearers;
    expect(wearer?.piece).toEqual({ value: piece, origin: 'assumed' });
    expect(wearer?.why).toBe('usual for the role');
  });

  test('what was said is never replaced by the usual', () => {
    const [wearer] = wearersList(anEvent({ lines: [line(1)], wearers: [wears('mum', 1, { piece: 'buttonhole' })] })).wearers;
    expect(wearer?.piece).toEqual({ value: 'buttonhole', origin: 'said' });
  });

  test('the second usual piece where only that is ordered', () => {
    const lines = [line(1), line(2, 'pin corsage')];
    const [wearer] = wearersList(anEvent({ lines, wearers: [wears('mums', 2)] })).wearers;
    expect(wearer?.piece.value).toBe('pin corsage');
  });

  test('only buttonholes ordered: the mothers wear one too, and that is asked about', () => {
    const list = wearersList(anEvent({ lines: [line(4)], wearers: [wears('mums', 2), wears('dads', 2)] }));
    expect(list.differences).toEqual([]);
    expect(list.asks).toEqual([{ about: 'not the usual piece', role: 'mums', piece: 'buttonhole', usual: 'wrist corsage' }]);
  });

  test('"corsage" in the order serves a wrist corsage, and the closer word decides where it is worn', () => {
    const [wearer] = wearersList(anEvent({ lines: [line(2, 'corsage')], wearers: [wears('mums', 2)] })).wearers;
    expect(wearer).toMatchObject({ piece: { value: 'corsage' }, wornAs: 'wrist corsage' });
  });

  test('a pinned corsage does not serve someone who asked for a wrist one', () => {
    const wearers = [wears('mum', 1, { piece: 'wrist corsage' })];
    expect(wearersList(anEvent({ lines: [line(1, 'pin corsage')], wearers })).differences).toHaveLength(2);
  });

  test('pieces of no named kind serve anybody', () => {
    const wearers = [wears('mum', 1, { piece: 'wrist corsage' }), wears('dad')];
    const list = wearersList(anEvent({ lines: [line(2, 'unspecified')], wearers }));
    expect(list.differences).toEqual([]);
    expect(list.wearers.map(({ wornAs }) => wornAs)).toEqual(['wrist corsage', 'buttonhole']);
  });
});

describe('what is odd is kept and asked about', () => {
  test.each([
    ['two at once', [wears('grooms', 2)]],
    ['written twice', [wears('groom'), wears('the groom')]],
  ])('two grooms, %s', (_, wearers) => {
    const list = wearersList(anEvent({ lines: [line(2)], wearers }));
    expect(list.all.wearers).toBe(2);
    expect(list.asks).toEqual([{ about: 'two grooms', count: 2 }]);
  });

  test('one groom and his father are not two grooms', () => {
    const list = wearersList(anEvent({ lines: [line(2)], wearers: [wears('groom'), wears('father of the groom')] }));
    expect(list.asks).toEqual([]);
  });

  test('an unknown role is kept as written', () => {
    const list = wearersList(anEvent({ lines: [line(5), line(1, 'flower crown')], wearers: [wears('Dog of Honour'), wears('groom')] }));
    expect(list.wearers[0]).toMatchObject({
      role: 'Dog of Honour',
      count: 1,
      roleKnown: false,
      piece: { value: 'buttonhole', origin: 'assumed' },
    });
    expect(list.asks).toEqual([{ about: 'unknown role', role: 'Dog of Honour', piece: 'buttonhole' }]);
  });

  test('a count still said as a range', () => {
    expect(wearersList(anEvent({ lines: [line(40, 'buttonhole', { countMax: 45 })] })).asks).toEqual([
      { about: 'count is a range', piece: 'buttonhole', count: 40, countMax: 45 },
    ]);
  });
});

describe('notes', () => {
  test.each([
    ['page boy', undefined, [['child', 'assumed']]],
    ['page boy', 'aged 4', [['child', 'said']]],
    ['dad', 'has a pacemaker', [['implant', 'said']]],
    ['best man', 'allergic to lilies', [['allergy', 'said']]],
    ['usher', 'heavy wool coat', [['heavy coat', 'said']]],
    ['usher', 'table 4', []],
  ])('%s, %s', (role, note, cares) => {
    const wearers = [wears(role, 1, note === undefined ? {} : { note })];
    const [wearer] = wearersList(anEvent({ lines: [line(1)], wearers })).wearers;
    expect(wearer?.cares.map(({ value, origin }) => [value, origin])).toEqual(cares);
    expect(wearer?.note).toBe(note ?? '');
  });
});

describe('spares are only suggested', () => {
  // Why order extra boutonnieres (http://weddingandeventheroes.com/why-order-extra-boutonnieres/): extras, and one for the groom when photographs
  // come long before the ceremony. No source gives a percentage.
  test.each([
    ['with a groom', [wears('groom'), wears('ushers', 3)], 2],
    ['with two grooms', [wears('grooms', 2)], 2],
    ['without', [wears('ushers', 3)], 1],
    ['with his father alone', [wears('father of the groom')], 1],
  ])('%s', (_, wearers, suggested) => {
    const { spares, all } = wearersList(anEvent({ lines: [line(5)], wearers }));
    expect(spares?.suggested).toBe(suggested);
    expect(spares?.over).toBe(all.over);
    expect(spares?.sources.length).toBeGreaterThan(0);
  });
});
