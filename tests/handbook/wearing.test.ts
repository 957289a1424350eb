// Who wears what, where, and how many spares. Customs differ, so a source that disagrees is shown beside the usual.

import { describe, expect, test } from 'vitest';
import { caresInNote, sparesSuggested, usualFixings, wearerCustom, wearingSide } from '../../src/handbook/wearing.ts';

describe('the side a piece is worn on', () => {
  // Body flowers, class text; Designing Corsages and Boutonnieres, class unit: left lapel.
  test('a buttonhole on the left lapel', () => expect(wearingSide('buttonhole').side).toBe('left lapel'));

  // Corsage and boutonniere etiquette, 2016: left shoulder. Corsages and boutonnieres (a working florist): on the right.
  test('a pinned corsage on the left shoulder, and the florist who says right is named too', () => {
    const worn = wearingSide('pin corsage');
    expect(worn.side).toBe('left shoulder');
    expect(worn.dissent).toContain('right');
    expect(worn.sources.length).toBeGreaterThanOrEqual(2);
  });

  test('a wrist corsage on the left wrist, without a pin', () => {
    expect(wearingSide('wrist corsage').side).toBe('left wrist');
    expect(usualFixings['wrist corsage']).not.toContain('pin');
  });
});

describe('who wears what', () => {
  // Corsages and boutonniere FAQs (a working florist's page): boutonnieres for groom, best man, ushers, ring bearer, fathers; corsages for mothers and grandmothers.
  test.each([
    ['groom', 'buttonhole'],
    ['5 groomsmen', 'buttonhole'],
    ['best man', 'buttonhole'],
    ['ushers', 'buttonhole'],
    ['officiant', 'buttonhole'],
    ['father of the bride', 'buttonhole'],
    ['stepdad', 'buttonhole'],
    ['FOG', 'buttonhole'],
    ['mother of the groom', 'wrist corsage'],
    ['mums', 'wrist corsage'],
    ['grandmothers', 'wrist corsage'],
  ])('%s: %s', (role, piece) => expect(wearerCustom(role)?.usual[0]).toBe(piece));

  // Common practice, no source.
  test.each([
    ['bridesmaids', 'hair flower'],
    ['2 flower girls', 'flower crown'],
    ['bride', 'hair flower'],
  ])('%s: %s', (role, piece) => expect(wearerCustom(role)?.usual[0]).toBe(piece));

  test.each([
    ['ring bearer', true],
    ['page boy', true],
    ['flower girl', true],
    ['baby cousin', true],
    ['groom', false],
    ['grandad', false],
  ])('%s is a child: %s', (role, child) => expect(wearerCustom(role)?.child ?? false).toBe(child));

  test('an unknown role is left as written', () => expect(wearerCustom('dog of honour')).toBeUndefined());
});

describe('what a note asks for', () => {
  test.each([
    ['has a pacemaker', ['implant']],
    ['aged 3, no pins', ['child']],
    ['4 yrs old', ['child']],
    ['allergic to lilies', ['allergy']],
    ['heavy tweed coat', ['heavy coat']],
    ['wants it small', []],
    ['table 3', []],
  ])('%s', (note, cares) => expect(caresInNote(note)).toEqual(cares));
});

describe('spares', () => {
  // Why order extra boutonnieres; Tips to keep your flowers fresh, 2011: extra for the groom and for the list. No source gives a percentage.
  test('one for the list, one more for the groom', () => {
    expect(sparesSuggested(['groom', 'groomsmen']).spares).toBe(2);
    expect(sparesSuggested(['ushers', 'groomsmen']).spares).toBe(1);
    expect(sparesSuggested(['father of the groom']).spares).toBe(1);
    expect(sparesSuggested(['groom']).sources.length).toBeGreaterThan(0);
  });
});
