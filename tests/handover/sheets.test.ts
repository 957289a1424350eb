// The rows the printed sheets are made from, and that the pages drawn from them still hold the order.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutBoards } from '../../src/attachments/boards.ts';
import type { SheetsInput } from '../../src/attachments/sheet-input.ts';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import { sheetRows } from '../../src/handover/sheets.ts';
import { wearersList } from '../../src/handover/wearers.ts';
import { anEvent, line, wears, yard } from './an-event.ts';
import { randomOrder } from './random-orders.ts';

const names = (piece: PieceKind) => ({ one: piece, many: `${piece}s` });

/** Also the proof that the shapes match: this does not compile otherwise. */
const onPaper = (event: ReturnType<typeof anEvent>): SheetsInput => ({
  ...sheetRows(event, yard, names),
  studio: 'Creel and Cork',
  event: 'harbour dance',
  dayFirst: true,
  paper: 'A4',
  stamp: 0,
});

test('whatever the order, the printed boards hold it and name the same people', () => {
  fc.assert(
    fc.property(randomOrder, (event) => {
      const laid = layOutBoards(onPaper(event));
      const list = wearersList(event);
      const places = laid.boards.flatMap((board) => board.places);
      expect(places).toHaveLength(list.all.pieces);
      const short = laid.withoutPiece.reduce((total, { missing }) => total + missing, 0);
      expect(places.filter(({ is }) => is === 'named').length + short).toBe(list.all.wearers);
    }),
  );
});

describe('rows', () => {
  const recipe = [
    { ingredient: 'statice', stems: 1.5 },
    { ingredient: 'ribbon', length: 30, unit: 'cm' },
    { ingredient: 'rose', stems: 1, wearer: 'groom' },
  ];
  const event = anEvent({ lines: [line(3)], wearers: [wears('groom')], material: 'dried', recipes: { buttonhole: recipe } });

  test('recipe lines say whose they are where wearers have their own', () => {
    expect(sheetRows(event, yard, names).pieces[0]?.recipe).toEqual([
      { ingredient: 'statice (groom)', amount: '1.5' },
      { ingredient: 'ribbon (groom)', amount: '30 cm' },
      { ingredient: 'rose (groom)', amount: '1' },
      { ingredient: 'statice', amount: '1.5' },
      { ingredient: 'ribbon', amount: '30 cm' },
    ]);
  });

  test('a suggested spare is not printed as made', () => expect(sheetRows(event, yard, names).pieces[0]?.spares).toBe(0));

  test('each caution once', () => {
    const ids = sheetRows(event, yard, names).cautions.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('dried-dust');
  });
});
