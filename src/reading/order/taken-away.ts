// Pieces that are taken off an order or told of as lost: "strike 6 combs", "we're down 2 bouts", "15 lapels down".

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

/** Whether the words around a counted piece take it away, or may do. */
export const takesAway = (reader: Reader, { start, end }: Mention): boolean =>
  isTaken(reader, start) || isLess(reader, start, end) || isUpOrDown(reader, start) || isDown(reader, end);
