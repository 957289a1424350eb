// The quiet afternoon word: today's pieces of events nobody has said anything about today, with their tick buttons. Nobody is told twice what they know.

import { dueOn } from '../../planning/due-on.ts';
import { soMany } from '../../reading/words/kind-words.ts';
import type { Day } from '../../values/day.ts';
import type { Reply } from '../reply.ts';
import { strong, text } from '../span.ts';
import type { Bench } from './morning.ts';
import { piecesDue, tickBlocks, tickHint } from './tick-actions.ts';

/** `isTold`: whether anybody has said today how that event's pieces stand. */
export const nudgeReply = (bench: Bench, day: Day, isTold: (key: string) => boolean): Reply | undefined => {
  const open = piecesDue(dueOn(bench.bench(), day)).filter((one) => one.pieces > 0 && !isTold(one.key));
  const pieces = open.reduce((count, one) => count + one.pieces, 0);
  if (pieces === 0) return undefined;
  const first = text`How far did you get? ${strong(soMany(pieces))} of today not ticked yet.`;
  return { blocks: [{ block: 'answer', line: first }, ...tickBlocks(open, day, bench), tickHint] };
};
