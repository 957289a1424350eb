// The pieces of a list with their tick buttons: made all of them, made some, or not today. One row of buttons for each event, kind and stage.

import type { Due } from '../../planning/due-on.ts';
import { everMade } from '../../thread/apply-progress.ts';
import type { EventState } from '../../thread/event.ts';
import type { Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { text } from '../span.ts';
import { tickValue } from '../tick.ts';
import { dueLine } from './due.ts';

export type PiecesDue = Extract<Due, { due: 'pieces' }>;

const mostRows = 8; // longer lists keep to one screen; the rest is listed without buttons

/** Two lines of one kind in one event are ticked together, since progress is told by kind. */
export const piecesDue = (due: readonly Due[]): readonly PiecesDue[] => {
  const all = new Map<string, PiecesDue>();
  for (const one of due) {
    if (one.due !== 'pieces') continue;
    const id = JSON.stringify([one.key, one.piece, one.stage === 'base']);
    const before = all.get(id);
    all.set(id, before ? { ...before, pieces: before.pieces + one.pieces, minutes: before.minutes + one.minutes } : one);
  }
  return [...all.values()];
};

export const tickBlocks = (
  due: readonly PiecesDue[],
  day: Day,
  answer: Pick<Answer, 'manner' | 'titleOf' | 'openEvents'>,
): readonly Block[] =>
  due.flatMap((one, index): readonly Block[] => {
    const line: Block = { block: 'line', line: dueLine(one, answer.manner, answer.titleOf(one.key)) };
    const state = answer.openEvents().find(({ key }) => key === one.key)?.state;
    if (!state || one.pieces === 0 || index >= mostRows) return [line];
    const value = tickFor(one, state, day);
    const all = `Made ${one.pieces === 1 ? 'it' : `all ${one.pieces}`}`;
    return [
      line,
      {
        block: 'actions',
        actions: [
          { label: all, action: 'made all', value, style: 'main' },
          { label: 'Made some…', action: 'made some', value },
          { label: 'Move to…', action: 'move date', value },
        ],
      },
    ];
  });

/** What a button for these pieces carries. */
export const tickFor = ({ key, piece, stage, pieces }: PiecesDue, state: EventState, day: Day): string => {
  const [channel = '', ...thread] = key.split('/');
  const half = stage === 'base' ? 'base' : 'finished';
  const before = everMade(state, piece, half);
  return tickValue({ channel, thread: thread.join('/'), piece, stage: half, day, pieces, before });
};

/** Said under a list with buttons: the terminal has none, and not every phone shows them. */
export const tickHint: Block = { block: 'assumed', line: text`Tick off here, or say “made 12” in the event's own thread.` };
