// The packing list as data: what goes in the van, counted from the boards, and how each material is kept on the way.

import { boardRule, keepingDegrees, keepingFor, sparePins } from '../handbook/packing.ts';
import { sourceLine } from '../handbook/sources.ts';
import type { Board } from './boards.ts';
import type { SheetsInput } from './sheet-input.ts';

export interface PackingList {
  readonly pieces: readonly string[]; // "40 buttonholes and 2 spares"
  readonly take: readonly string[]; // things to tick off
  readonly boards: readonly { readonly label: string; readonly holds: string }[];
  readonly keep: readonly { readonly words: string; readonly source: string }[];
}

const some = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** "groom, groomsmen × 5, 2 not named yet, 2 spares": the wearers of one board in a line. */
const holders = (board: Board): string => {
  const counts = new Map<string, number>();
  for (const place of board.places) {
    const name = place.is === 'named' ? place.wearer.replace(/, \d+ of \d+$/, '') : place.is;
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts]
    .map(([name, count]) => {
      if (name === 'unnamed') return `${count} not named yet`;
      if (name === 'spare') return some(count, 'spare', 'spares');
      return count === 1 ? name : `${name} × ${count}`;
    })
    .join(', ');
};

/** Two sheets of tissue to a board, scissors, tape and ribbon ends: common practice, no source. */
export const packingList = (input: SheetsInput, boards: readonly Board[]): PackingList => {
  const pins = boards.reduce((total, board) => total + board.places.length * boardRule(board.kind).pinsEach, 0);
  const materials = input.pieces.flatMap((piece) => piece.material ?? []);
  const fresh = materials.some((material) => material === 'fresh' || material === 'mixed');
  const onBoards = boards.filter((board) => board.on === 'board').length;
  const inBoxes = boards.length - onBoards;
  return {
    pieces: input.pieces.map((piece) => {
      const spares = piece.spares > 0 ? ` and ${some(piece.spares, 'spare', 'spares')}` : '';
      return `${some(piece.count, piece.one, piece.many)}${spares}`;
    }),
    take: [
      ...(onBoards > 0 ? [`${some(onBoards, 'covered board', 'covered boards')}, labelled`] : []),
      ...(inBoxes > 0 ? [`${some(inBoxes, 'box', 'boxes')}, labelled`] : []),
      ...(pins > 0 ? [`${pins} pins on or with the pieces, and ${sparePins(pins)} spare`] : []),
      `${boards.length * 2} sheets of tissue`,
      'scissors, tape, and an end of each ribbon for repairs',
      ...(fresh ? ['cool box; wrap the ice packs so that they touch no flower'] : []),
      'this list, the pin-on sheet and a pen',
    ],
    boards: boards.map((board) => ({
      label: `${board.on === 'board' ? 'Board' : 'Box'} ${board.number}: ${board.pieces}`,
      holds: holders(board),
    })),
    keep: keepingFor(
      materials,
      input.pieces.flatMap((piece) => piece.recipe.map((line) => line.ingredient)),
    ).map((keeping) => ({
      words: [`${keeping.what}: ${keeping.how}`, keepingDegrees(keeping)].filter((words) => words !== '').join('; '),
      source: keeping.sources.map(sourceLine).join('; '),
    })),
  };
};
