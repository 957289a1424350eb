// The pieces of a list with their tick buttons: made all of them, made some, or not today. One row of buttons for each event, kind and stage.

import type { Due } from '../../planning/due-on.ts';
import { everMade } from '../../thread/apply-progress.ts';
import type { EventState } from '../../thread/event.ts';
import type { Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Action, Block } from '../reply.ts';
import { text } from '../span.ts';
import { tickValue } from '../tick.ts';
import { dueLine } from './due.ts';

export type PiecesDue = Extract<Due, { due: 'pieces' }>;

// A list keeps to one screen: so many rows with buttons, then lines alone, then a count.
const mostRows = 6;
const mostLines = 12;

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
): readonly Block[] => {
  const more = due.length - mostLines;
  const rest: readonly Block[] = more > 0 ? [{ block: 'line', line: text`and ${more} more: ask “what's due today?”` }] : [];
  return [...due.slice(0, mostLines).flatMap((one, index) => tickRow(one, day, index < mostRows, answer)), ...rest];
};

const tickRow = (
  one: PiecesDue,
  day: Day,
  withButtons: boolean,
  { manner, titleOf, openEvents }: Pick<Answer, 'manner' | 'titleOf' | 'openEvents'>,
): readonly Block[] => {
  const line: Block = { block: 'line', line: dueLine(one, manner, titleOf(one.key)) };
  const state = openEvents().find(({ key }) => key === one.key)?.state;
  if (!state || one.pieces === 0 || !withButtons) return [line];
  const value = tickFor(one, state, day);
  const actions: readonly Action[] = [
    { label: `Made ${one.pieces === 1 ? 'it' : `all ${one.pieces}`}`, action: 'made all', value, style: 'main' },
    { label: 'Made some…', action: 'made some', value },
    { label: 'Move to…', action: 'move date', value },
  ];
  return [line, { block: 'actions', actions }];
};

/** What a button for these pieces carries. */
export const tickFor = ({ key, piece, stage, pieces }: PiecesDue, state: EventState, day: Day): string => {
  const [channel = '', ...thread] = key.split('/');
  const half = stage === 'base' ? 'base' : 'finished';
  const before = everMade(state, piece, half);
  return tickValue({ channel, thread: thread.join('/'), piece, stage: half, day, pieces, before });
};

/** Said under a list with buttons: the terminal has none, and not every phone shows them. */
export const tickHint: Block = { block: 'assumed', line: text`Tick off here, or say “made 12” in the event's own thread.` };
