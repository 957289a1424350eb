// What a tick button carries: which pieces of which event it stands for, how many the list asked for, and how many had ever been made by then.
// From the last two a tick counts only what nobody has counted since, so tapping twice, or in two places, has one effect.

import { type PieceKind, pieceKinds } from '../handbook/pieces.ts';
import { type Day, parseDay } from '../values/day.ts';

export interface Tick {
  readonly channel: string; // of the event's own thread
  readonly thread: string;
  readonly piece: PieceKind;
  readonly stage: 'base' | 'finished'; // the dried base of a mixed piece, or whole pieces
  readonly day: Day; // of the list
  readonly pieces: number; // on the list
  readonly before: number; // ever made when the list was written
}

/** At most a few hundred characters: button values have room for 2,000. */
export const tickValue = ({ channel, thread, piece, stage, day, pieces, before }: Tick): string =>
  JSON.stringify(['tick', channel, thread, piece, stage, day, pieces, before]);

const isCount = (value: unknown): value is number => typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;

/** Undefined for any other button's value. What was typed or picked with it stands on a second line and is not read here. */
export const readTick = (value: string): Tick | undefined => {
  const parts = parsed(value.split('\n')[0] ?? '');
  if (!Array.isArray(parts) || parts.length !== 8 || parts[0] !== 'tick') return undefined;
  const [, channel, thread, kind, stage, date, pieces, before] = parts as unknown[];
  const piece = pieceKinds.find((known) => known === kind);
  const day = typeof date === 'string' ? parseDay(date) : undefined;
  if (typeof channel !== 'string' || typeof thread !== 'string' || thread === '' || !piece || !day) return undefined;
  if ((stage !== 'base' && stage !== 'finished') || !isCount(pieces) || !isCount(before)) return undefined;
  return { channel, thread, piece, stage, day, pieces, before };
};

/** What was typed or picked with a tap: a number, a day. */
export const tapEntry = (value: string): string | undefined => value.split('\n')[1];

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

/** Stands in the words of a question that a tick with nothing new in it becomes. */
export const countedAlready = 'counted already';
