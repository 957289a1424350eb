// The sheet for the day: sides by custom, care by wearer, and nobody lost when pieces are short.

import { describe, expect, test } from 'vitest';
import { pinOnList } from '../../src/handover/pin-on-list.ts';
import { sheetsAsLaid } from '../../src/handover/sheets-as-laid.ts';
import { anEvent, line, wears, yard } from './an-event.ts';

const rowsOf = (event: ReturnType<typeof anEvent>) => pinOnList(event).groups.flatMap(({ rows }) => rows);

describe('the side', () => {
  // Body flowers, class text (https://studylib.net/doc/9074275/bullion-wire); How to pin on a boutonniere and corsage
  // (https://www.perfectweddingguide.com/ideas/how-to-pin-on-a-wedding-boutonniere-and-corsage/).
  test.each([
    ['buttonhole', 'left lapel'],
    ['pin corsage', 'left shoulder'],
    ['wrist corsage', 'left wrist'],
  ] as const)('%s: %s', (piece, side) => expect(rowsOf(anEvent({ lines: [line(1, piece)] }))[0]?.side).toBe(side));

  // Corsages and boutonnieres (a working florist, https://pikeplacebouquets.com/coursages-and-boutonierres/): corsage on the right.
  test('a florist who pins corsages on the right is named', () => {
    expect(pinOnList(anEvent({ lines: [line(1, 'pin corsage')] })).dissent).toEqual([
      { piece: 'pin corsage', says: expect.stringContaining('right') },
    ]);
  });

  test('a mother with a corsage of no named sort gets it on the wrist, as is usual', () => {
    expect(rowsOf(anEvent({ lines: [line(1, 'corsage')], wearers: [wears('mum')] }))[0]?.side).toBe('left wrist');
  });
});

describe('rows', () => {
  test('each groomsman has his own row and box to tick', () => {
    const rows = rowsOf(anEvent({ lines: [line(3)], wearers: [wears('groomsmen', 2)] }));
    expect(rows.map(({ wearer, done }) => [wearer, done])).toEqual([
      [{ role: 'groomsmen', number: 1, of: 2 }, false],
      [{ role: 'groomsmen', number: 2, of: 2 }, false],
      [undefined, false],
    ]);
  });

  test('wearers beyond the pieces are named as going without', () => {
    const { groups, without } = pinOnList(anEvent({ lines: [line(2)], wearers: [wears('groom'), wears('ushers', 3)] }));
    expect(groups[0]?.rows).toHaveLength(2);
    expect(without.map(({ wearer, short }) => [wearer.role, short])).toEqual([['ushers', 2]]);
  });
});

describe('the note', () => {
  // Small parts and pins for small children: 16 CFR 1501, CPSC. Magnets 15 cm from an ICD: Sudden Cardiac Arrest UK. Long pins: common practice, no source.
  test.each([
    ['page boy', 'buttonhole', undefined, /no loose pin/],
    ['usher', 'buttonhole', 'aged 4', /^aged 4; .*no loose pin/],
    ['dad', 'buttonhole', 'pacemaker', /no magnet/],
    ['mum', 'wrist corsage', 'allergic to lilies', /allergy/],
    ['usher', 'buttonhole', 'thick tweed', /long pins/],
  ] as const)('%s with a %s, "%s"', (role, piece, note, says) => {
    const wearers = [wears(role, 1, note === undefined ? {} : { note })];
    expect(rowsOf(anEvent({ lines: [line(1, piece)], wearers }))[0]?.note).toMatch(says);
  });

  test('a child with a flower crown has no pin to warn of', () => {
    expect(rowsOf(anEvent({ lines: [line(1, 'flower crown')], wearers: [wears('flower girl')] }))[0]?.note).toBe('');
  });

  test('no care, no note', () => {
    expect(rowsOf(anEvent({ lines: [line(1)], wearers: [wears('groom')] }))[0]?.note).toBe('');
  });
});

describe('names', () => {
  const named = anEvent({
    lines: [line(4)],
    wearers: [wears('groom', 1, { names: ['Dan Reed'] }), wears('ushers', 3, { names: ['Sam', 'Raj'] })],
  });

  test('each piece goes to the next name, and then to the role alone', () => {
    expect(rowsOf(named).map(({ wearer }) => wearer)).toEqual([
      { role: 'groom', name: 'Dan Reed', number: 1, of: 1 },
      { role: 'ushers', name: 'Sam', number: 1, of: 3 },
      { role: 'ushers', name: 'Raj', number: 2, of: 3 },
      { role: 'ushers', number: 3, of: 3 },
    ]);
  });

  test('with more names than people nobody is named', () => {
    const event = anEvent({ lines: [line(1)], wearers: [wears('ushers', 1, { names: ['Sam', 'Raj'] })] });
    expect(rowsOf(event)[0]?.wearer).toEqual({ role: 'ushers', number: 1, of: 1 });
  });

  test('on paper as in the thread', () => {
    const { laid } = sheetsAsLaid(named, yard, (piece) => ({ one: piece, many: `${piece}s` }));
    expect(laid.boards.flatMap(({ places }) => places.map(({ label }) => label))).toEqual([
      'Dan Reed, groom',
      'Sam, usher',
      'Raj, usher',
      'ushers, 3 of 3',
    ]);
  });
});
