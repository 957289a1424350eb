// The rows the printed sheets are made from: they hold the order, its people and its boards.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import { layBoards } from '../../src/handover/boards.ts';
import { sheetRows } from '../../src/handover/sheets.ts';
import { sheetsAsLaid } from '../../src/handover/sheets-as-laid.ts';
import { wearersList } from '../../src/handover/wearers.ts';
import { anEvent, line, wears, yard } from './an-event.ts';
import { randomOrder } from './random-orders.ts';

const names = (piece: PieceKind) => ({ one: piece, many: `${piece}s` });

test('whatever the order, the boards hold it and name the same people', () => {
  fc.assert(
    fc.property(randomOrder, (event) => {
      const { laid, packing } = sheetsAsLaid(event, yard, names);
      const list = wearersList(event);
      const places = laid.boards.flatMap((board) => board.places);
      expect(places).toHaveLength(list.all.pieces);
      expect(packing.boards).toHaveLength(layBoards(event).boards.length);
      const short = laid.withoutPiece.reduce((total, { missing }) => total + missing, 0);
      expect(places.filter(({ is }) => is === 'named').length + short).toBe(list.all.wearers);
    }),
  );
});

describe('as laid, in words', () => {
  const party = anEvent({
    lines: [line(3), line(1, 'wrist corsage')],
    wearers: [wears('groom'), wears('page boy'), wears('mum'), wears('ushers', 2)],
    material: 'dried',
  });
  const { laid, packing } = sheetsAsLaid(party, yard, names);

  test('boards', () => {
    expect(laid.boards.map(({ pieces }) => pieces)).toEqual(['3 buttonholes, dried', '1 wrist corsage, dried']);
    expect(laid.boards[0]?.places.map(({ wearer }) => wearer)).toEqual(['groom', 'page boy', 'ushers, 1 of 2']);
    expect(laid.withoutPiece).toEqual([{ wearer: 'ushers', missing: 1 }]);
  });

  test('packing', () => {
    expect(packing.pieces).toEqual(['3 buttonholes', '1 wrist corsage']);
    expect(packing.take.slice(0, 4)).toEqual([
      '1 covered board, labelled',
      '1 box, labelled',
      '4 pins on or with the pieces',
      '10 spare pins',
    ]);
    expect(packing.boards[0]).toEqual({ label: 'Board 1: 3 buttonholes, dried', holds: 'groom, page boy, ushers' });
    expect(packing.keep[0]?.words).toMatch(/^dried pieces: dark, cool and dry/);
  });
});

describe('rows', () => {
  const recipe = [
    { ingredient: 'statice', stems: 1.5 },
    { ingredient: 'ribbon', length: 30, unit: 'cm' },
    { ingredient: 'rose', stems: 1, wearer: 'groom' },
  ];
  const event = anEvent({ lines: [line(3)], wearers: [wears('groom')], material: 'dried', recipes: { buttonhole: recipe } });

  test('recipe lines say whose they are where wearers have their own', () => {
    expect(sheetRows(event, yard, names).cards[0]?.recipe).toEqual([
      { ingredient: 'statice (groom)', amount: '1.5' },
      { ingredient: 'ribbon (groom)', amount: '30 cm' },
      { ingredient: 'rose (groom)', amount: '1' },
      { ingredient: 'statice', amount: '1.5' },
      { ingredient: 'ribbon', amount: '30 cm' },
    ]);
  });

  test('each caution once', () => {
    const ids = sheetRows(event, yard, names).cautions.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('dried-dust');
  });
});
