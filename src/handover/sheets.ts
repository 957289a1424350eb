// The order as the printed sheets take it: plain rows in the studio's words, from the same bench cards and cautions as the thread shows.

import { amountWords } from '../buying/amount-words.ts';
import type { RecipeLine } from '../buying/recipe-lines.ts';
import type { Caution } from '../handbook/cautions.ts';
import type { Material } from '../handbook/pieces.ts';
import type { StudioState } from '../studio/studio.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';
import { type BenchCard, benchCards } from './bench-card.ts';
import type { PieceNames } from './sheets-as-laid.ts';
import { cautionsOnSheet } from './work-at-hand.ts';

/** One bench card. */
export interface SheetCard extends Pick<BenchCard, 'count' | 'worn' | 'steps' | 'cautions'> {
  readonly one: string; // the studio's word for one piece
  readonly material?: Material; // left out where the kind is made of several
  readonly minutes: number; // bench minutes for one
  readonly recipe: readonly { readonly ingredient: string; readonly amount: string }[]; // for one piece: "2", "2/3", "30 cm"
}

export interface SheetRows {
  readonly cards: readonly SheetCard[]; // one for each kind
  readonly cautions: readonly Caution[]; // of any of the sheets, each once
  readonly eventDay?: Day;
  readonly time?: string;
}

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
    cards: benchCards(event, studio).map((card) => {
      const { count, worn, steps, cautions: here } = card;
      const [material, another] = card.materials;
      return {
        one: names(card.piece).one,
        count,
        ...(material === undefined || another !== undefined ? {} : { material }),
        minutes: card.minutes.each.value,
        recipe: recipeRows(card),
        worn,
        steps,
        cautions: here,
      };
    }),
    cautions: [...new Map(cautions.map((caution) => [caution.id, caution])).values()],
    ...(event.date === undefined ? {} : { eventDay: event.date }),
    ...(event.time === undefined ? {} : { time: event.time }),
  };
};
