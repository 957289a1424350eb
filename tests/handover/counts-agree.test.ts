// The counts on the order, the sheet, the boards, the packing list, the bench cards and the printed pages are one count, whatever the order.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boardRule } from '../../src/handbook/packing.ts';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import { benchCards } from '../../src/handover/bench-card.ts';
import { boardLabel, layBoards } from '../../src/handover/boards.ts';
import { packingList } from '../../src/handover/packing-list.ts';
import { pinOnList } from '../../src/handover/pin-on-list.ts';
import { wearersList } from '../../src/handover/wearers.ts';
import { anEvent, line, wears, yard } from './an-event.ts';
import { randomOrder } from './random-orders.ts';

type Counted = readonly [PieceKind, number];

/** Pieces by kind; a kind of nothing is no kind. */
const tally = (all: readonly Counted[]): Readonly<Record<string, number>> => {
  const counts: Record<string, number> = {};
  for (const [piece, count] of all) if (count > 0) counts[piece] = (counts[piece] ?? 0) + count;
  return counts;
};

describe('for any order', () => {
  test('every paper holds exactly the pieces ordered', () => {
    fc.assert(
      fc.property(randomOrder, (event) => {
        const order = tally(event.lines.map(({ piece, count }) => [piece, count]));
        const packing = packingList(event, yard);
        const papers: Readonly<Record<string, readonly Counted[]>> = {
          wearers: wearersList(event).kinds.map(({ piece, pieces }) => [piece, pieces]),
          boards: layBoards(event).boards.map(({ piece, places }) => [piece, places.length]),
          sheet: pinOnList(event).groups.flatMap(({ rows }) => rows.map((row): Counted => [row.piece, 1])),
          packed: packing.pieces.map(({ piece, count }) => [piece, count]),
          labels: packing.boards.map(({ board, holds, unnamed }) => [board.piece, holds.reduce((all, { count }) => all + count, unnamed)]),
          cards: benchCards(event, yard).map(({ piece, count }) => [piece, count]),
          batches: benchCards(event, yard).flatMap(({ piece, batches }) => batches.map(({ pieces }): Counted => [piece, pieces])),
        };
        for (const [paper, counted] of Object.entries(papers)) expect(tally(counted), paper).toEqual(order);
      }),
    );
  });

  test('every wearer has a piece or is named as going without, and nobody has two', () => {
    fc.assert(
      fc.property(randomOrder, (event) => {
        const list = wearersList(event);
        const { groups, without } = pinOnList(event);
        const named = groups.flatMap(({ rows }) => rows.filter((row) => row.wearer !== undefined)).length;
        const short = without.reduce((total, one) => total + one.short, 0);
        expect(named + short).toBe(list.all.wearers);
        const over = list.kinds.reduce((total, kind) => total + Math.max(0, -kind.over), 0);
        expect(short).toBe(over); // someone goes without only where the kind has too few
      }),
    );
  });

  test('no board holds more than its rule, or two kinds or materials, and boards count up to their total', () => {
    fc.assert(
      fc.property(randomOrder, (event) => {
        const { boards } = layBoards(event);
        boards.forEach((board, at) => {
          expect(board.number).toBe(at + 1);
          expect(board.of).toBe(boards.length);
          expect(board.places.length).toBeGreaterThan(0);
          expect(board.places.length).toBeLessThanOrEqual(boardRule(board.piece).perBoard);
          expect(board.places.every((place) => place.piece === board.piece && place.material === board.material)).toBe(true);
        });
      }),
    );
  });
});

describe('a real order', () => {
  const wearers = [wears('groom'), wears('groomsmen', 5), wears('dads', 2), wears('page boy'), wears('mums', 2)];
  const wedding = anEvent({ lines: [line(10), line(2, 'wrist corsage')], wearers, material: 'dried' });

  test('one board of buttonholes in the order of the list, one box of corsages', () => {
    const labels = layBoards(wedding).boards.map(boardLabel);
    expect(labels.map(({ board }) => [board.number, board.of, board.on, board.piece])).toEqual([
      [1, 2, 'board', 'buttonhole'],
      [2, 2, 'box', 'wrist corsage'],
    ]);
    expect(labels[0]?.holds).toEqual([
      { role: 'groom', count: 1 },
      { role: 'groomsmen', count: 5 },
      { role: 'dads', count: 2 },
      { role: 'page boy', count: 1 },
    ]);
    expect(labels[0]?.unnamed).toBe(1);
  });

  // Twelve lapel pieces to a board: common practice, no source.
  test('forty buttonholes fill three boards and start a fourth', () => {
    const { boards } = layBoards(anEvent({ lines: [line(40)] }));
    expect(boards.map(({ places }) => places.length)).toEqual([12, 12, 12, 4]);
  });

  test('a wearer added at the end moves nobody', () => {
    const before = layBoards(wedding).boards[0]?.places ?? [];
    const after = layBoards({ ...wedding, wearers: [...wearers, wears('best man')] }).boards[0]?.places ?? [];
    expect(after.slice(0, 9)).toEqual(before.slice(0, 9));
    expect(after[9]?.named?.wearer.role).toBe('best man');
  });

  test('dried and fresh pieces of one kind are boarded apart', () => {
    const lines = [line(3, 'buttonhole', { material: 'dried' }), line(2, 'buttonhole', { material: 'fresh' })];
    expect(layBoards(anEvent({ lines })).boards.map(({ material, places }) => [material, places.length])).toEqual([
      ['dried', 3],
      ['fresh', 2],
    ]);
  });

  test("the groom's own fresh piece goes to the groom", () => {
    const lines = [line(3, 'buttonhole', { material: 'dried' }), line(1, 'buttonhole', { material: 'fresh', wearer: 'groom' })];
    const { boards } = layBoards(anEvent({ lines, wearers: [wears('groom'), wears('ushers', 3)] }));
    expect(boards[1]?.places.map(({ named }) => named?.wearer.role)).toEqual(['groom']);
  });
});
