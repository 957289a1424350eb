// Pieces that are taken off an order or told of as lost: "strike 6 combs", "we're down 2 bouts", "15 lapels down".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';

const takenAway = new Set('strike scrap drop cancel ditch axe remove delete lose undo forget ignore scratch scrub'.split(' '));
// "we're down 2 bouts": lost, or fewer ordered; "put me down 2 bouts" orders them.
const isUpOrDown = ({ tokens }: Reader, start: number): boolean =>
  /^(up|down)$/.test(tokens[start - 1]?.text ?? '') &&
  (start === 1 ||
    /^(we're|we|are|were|i'm|im|is|now|ok|,|-|\.|and|so|count|order|numbers|it's|its)$/.test(tokens[start - 2]?.text ?? '') ||
    tokens[start - 2]?.kind === 'line');
const isTaken = ({ tokens }: Reader, start: number): boolean =>
  tokens[start - 1]?.text === 'no' || // "no 2 crowns alike"
  takenAway.has(tokens[start - 1]?.text ?? '') ||
  (/^(the|those|that|about)$/.test(tokens[start - 1]?.text ?? '') &&
    /^(undo|forget|ignore|scratch|scrub)$/.test(tokens[start - 2]?.text ?? ''));

const isDown = ({ tokens }: Reader, end: number): boolean => tokens[end]?.text === 'down' && tokens[end + 1] === undefined;

// "lose the gyp, have 2 less bouts": two off them, and no order for two.
const isLess = ({ tokens }: Reader, start: number, end: number): boolean =>
  tokens.slice(start, end).some(({ text }) => /^(less|fewer)$/.test(text));

// "20 corsages not needed, 12 bouts enough", "dont need 200 bouts": none of those.
const unwanted = pattern(
  "(are|is|were|we|really|definitely|now){0,2} (not needed|no longer needed|not required|no longer required|not wanted|no longer wanted|not necessary|isn't needed|aren't needed|arent needed)",
);
const unneeded = pattern(
  "(don't|dont|do not|doesn't|doesnt|won't|wont|no longer) (need|want|require) (the|those|all|all the)? <count> (<material>)? <piece>",
);
const isUnwanted = ({ tokens }: Reader, { start, end, last }: Mention): boolean =>
  [last + 1, end].some((at) => unwanted.at(tokens, at, tokens.length) !== undefined) ||
  [start - 2, start - 3, start - 4].some((at) => (unneeded.at(tokens, at, tokens.length)?.end ?? 0) > start);

/** Whether the words around a counted piece take it away, or may do. */
export const takesAway = (reader: Reader, mention: Mention): boolean => {
  const { start, end } = mention;
  return (
    isUnwanted(reader, mention) || isTaken(reader, start) || isLess(reader, start, end) || isUpOrDown(reader, start) || isDown(reader, end)
  );
};
