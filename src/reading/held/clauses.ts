// The stretch that a word reaches over: its clause, the clause that holds the number it speaks of, and those that go on with it.

import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const breaks = new Set([',', 'but', 'though', 'whereas', 'while']);
// A clause that begins so speaks of this order again.
const turns =
  /^(but|now|this|we|we're|we'll|we'd|i|i'm|i'll|i'd|today|so|she|he|they|client|bride|instead|ours|ok|made|did|done|finished|let's|lets|make|quote|do|whereas|though|while)$/;

export const clausesOf = ({ tokens }: Reader, part: Part): readonly Stretch[] => {
  const clauses: Stretch[] = [];
  let start = part.start;
  for (let index = part.start; index <= part.end; index++) {
    const token = tokens[index];
    const dash = token?.text === '-' && !token.glued && tokens[index + 1]?.glued !== true;
    if (index < part.end && !dash && !breaks.has(token?.text ?? '')) continue;
    if (index > start) clauses.push({ start, end: index });
    start = index;
  }
  return clauses;
};

const numbered = (tokens: readonly Token[], { start, end }: Stretch): boolean =>
  tokens.slice(start, end).some((token) => token.number !== undefined);

const opens = (tokens: readonly Token[], { start, end }: Stretch): string =>
  tokens.slice(start, end).find((token) => token.kind === 'word' || token.number !== undefined)?.text ?? '';

/** From the clause of the word on, until the talk turns back to this order. Nothing when no number is spoken of. */
export const reachOf = (reader: Reader, clauses: readonly Stretch[], at: number, alone: boolean): Stretch | undefined => {
  const { tokens } = reader;
  const own = clauses.findIndex((clause) => clause.start <= at && at < clause.end);
  const clause = clauses[own];
  if (clause === undefined) return undefined;
  let { start, end } = clause;
  const goesOn = (next: Stretch | undefined): next is Stretch => next !== undefined && !turns.test(opens(tokens, next));
  let next = own + 1;
  if (!numbered(tokens, clause)) {
    const [ahead, behind] = [clauses[next], clauses[own - 1]];
    if (own === 0 && ahead !== undefined && numbered(tokens, ahead)) end = clauses[next++]?.end ?? end;
    else if (behind !== undefined && numbered(tokens, behind) && /^(that|which|but|this|it|not)$/.test(opens(tokens, clause)))
      start = behind.start;
    else return undefined;
  }
  if (alone) return { start, end };
  for (let more = clauses[next]; goesOn(more) && numbered(tokens, more); more = clauses[++next]) end = more.end;
  return { start, end };
};
