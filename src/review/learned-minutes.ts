// What the event taught about the minutes one piece takes. Only offered: nothing is stored until somebody accepts the fact that comes with it.

import type { PieceKind } from '../handbook/pieces.ts';
import { plannedMinutes } from '../handover/planned-minutes.ts';
import type { FactOf } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';
import { type EventState, newEvent } from '../thread/event.ts';
import type { Decimal } from '../values/decimal.ts';
import type { Known } from '../values/known.ts';
import { roundTo } from '../values/rounding.ts';
import type { TimeTaken } from './time-taken.ts';

export interface LearnedMinutes {
  readonly piece: PieceKind;
  readonly minutes: Decimal; // for one, to a tenth, half up
  readonly timed: number; // pieces it was learned from
  readonly now: Known<number>; // what the studio plans with
  readonly offer?: FactOf<'crew'>; // left out where it is what the studio plans with already
}

/** The studio's own figure, not this event's rule, is what would change. */
export const learnedMinutes = (time: TimeTaken | undefined, event: EventState, studio: StudioState): readonly LearnedMinutes[] =>
  (time?.kinds ?? [])
    .filter(({ timed, piece }) => timed > 0 && piece !== 'unspecified')
    .map(({ piece, minutes: all, timed }): LearnedMinutes => {
      const minutes = roundTo(all.dividedBy(timed), 1, 'half up');
      const now = plannedMinutes(newEvent, studio, piece).each;
      const words = event.actuals.findLast(({ what }) => what === 'minutes')?.words ?? '';
      const offer: FactOf<'crew'> = { fact: 'crew', piece, minutesPerPiece: minutes.toNumber(), words };
      return { piece, minutes, timed, now, ...(minutes.equals(now.value) && now.origin === 'studio' ? {} : { offer }) };
    });
