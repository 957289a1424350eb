// The same order as the printed sheets take it: plain rows in the studio's words. The printing is later in the import order, so the shape is declared here
// and a test keeps the two alike.

import type { Amount, RecipeLine } from '../buying/recipe-lines.ts';
import type { Caution } from '../handbook/cautions.ts';
import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { printNumber } from '../values/money.ts';
import { type BenchCard, benchCards } from './bench-card.ts';
import type { PieceNames } from './sheets-as-laid.ts';
import { wearersList } from './wearers.ts';
import { cautionsOnSheet } from './work-at-hand.ts';

export interface SheetRows {
  readonly pieces: readonly {
    readonly kind: PieceKind;
    readonly one: string;
    readonly many: string;
    readonly count: number;
    readonly spares: number; // none: a suggested spare is not an order
    readonly material?: Material; // left out where the kind is made of several
    readonly minutes: number;
    readonly recipe: readonly { readonly ingredient: string; readonly amount: string }[];
  }[];
  readonly wearers: readonly { readonly wearer: string; readonly count: number; readonly kind: PieceKind; readonly note?: string }[];
  readonly cautions: readonly Caution[];
  readonly eventDay?: Day;
  readonly time?: string;
}

const amountWords = (amount: Amount): string => {
  if (amount.kind === 'unclear') return amount.words;
  if (amount.kind === 'cut') return `${printNumber(amount.length)} ${amount.unit}`;
  return printNumber(amount.stems);
};

/** One recipe in a row a line; where wearers have their own, each line says whose it is. */
const recipeRows = ({ batches }: BenchCard): readonly { ingredient: string; amount: string }[] =>
  batches.flatMap(({ wearer, lines }) =>
    lines.map((line: RecipeLine) => ({
      ingredient: wearer === undefined ? line.ingredient : `${line.ingredient} (${wearer})`,
      amount: amountWords(line.amount),
    })),
  );

export const sheetRows = (event: EventState, studio: StudioState, names: PieceNames): SheetRows => {
  const cautions = (['bench card', 'pin-on sheet', 'packing list'] as const).flatMap((sheet) => cautionsOnSheet(sheet, event, studio));
  return {
    pieces: benchCards(event, studio).map((card) => {
      const [material, another] = card.materials;
      return {
        kind: card.piece,
        ...names(card.piece),
        count: card.count,
        spares: 0,
        ...(material === undefined || another !== undefined ? {} : { material }),
        minutes: card.minutes.each.value,
        recipe: recipeRows(card),
      };
    }),
    wearers: wearersList(event).wearers.map(({ role, count, piece, note }) => ({
      wearer: role,
      count,
      kind: piece.value,
      ...(note === '' ? {} : { note }),
    })),
    cautions: [...new Map(cautions.map((caution) => [caution.id, caution])).values()],
    ...(event.date === undefined ? {} : { eventDay: event.date }),
    ...(event.time === undefined ? {} : { time: event.time }),
  };
};
