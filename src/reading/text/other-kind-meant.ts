// A kind put right in the same breath: "10 crowns, sorry, combs" are ten combs.

import { formOf } from '../pattern.ts';
import type { Token } from './token.ts';

const form = formOf(
  '<piece> (,|-|\\.){0,3} (sorry|soz|i mean|oops|whoops|rather|no wait|no sorry|wait no|i mean to say){1,2} (,|-)? (the)? <b:piece>',
);
const ends = /^(,|;|\.|!|\?|not|please|pls|at|@|-|for)$/;

/** The tokens without the kind that was not meant and the words that take it back. */
export const withKindMeant = (tokens: readonly Token[]): readonly Token[] => {
  const kept: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const match = tokens[index - 1]?.number === undefined && tokens[index - 2]?.number === undefined ? undefined : form.at(tokens, index);
    const next = tokens[match?.end ?? 0];
    if (match === undefined || !(next === undefined || next.kind === 'line' || ends.test(next.text))) {
      kept.push(tokens[index] as Token);
      index += 1;
      continue;
    }
    kept.push(match.kept['b'] as Token);
    index = match.end;
  }
  return kept;
};
