// Two kinds with one word behind the first or the second: "3 bouts left + 1 corsage", "2 crowns n 5 bouts so far today", "ready to go: 12 bouts, 3 corsages".

import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { amountOf } from './made-facts.ts';

const opens = "(ok|so|just|only|still|and|now|we've|ive|i've|got|have|at|,|-){0,3}";
const first = '(<n:count>|a|one) (<material>)? <p:piece>';
const second = '(the|a)? (<m:count>|one) (<material>)? <q:piece>';
const and = '(and|&|n|plus|\\+|,){1,2}';
const left = pattern(
  `${opens} ${first} (left|to go|still to do|left to do|to do|still to go|remaining|outstanding|left to make|to make) (now)? ${and} ${second} (now|too|as well|left|to go)?`,
);
const soFar = pattern(`${opens} ${first} ${and} ${second} (done|made|finished)? (so far|sofar|to date) (today|now|this morning)?`);
const ready = pattern(`${opens} (all)? ready to go (:|-|,) ${first} (${and} ${second})?`);
const forms: readonly (readonly [ReturnType<typeof pattern>, (count: number) => Unworded])[] = [
  [left, (count) => ({ fact: 'left', count })],
  [soFar, (count) => ({ fact: 'made', count, total: true })],
  [ready, (count) => ({ fact: 'made', count })],
];
const unsure = ({ kept: { n, m } }: Match): boolean => [n, m].some((token) => isRangeOrChoice(token?.number));

export const twoKinds = (reader: Reader): Finding[] =>
  forms.some(([form]) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part): Finding[] => {
        for (const [form, fact] of part.asked ? [] : forms) {
          const match = form.at(reader.tokens, part.start, part.end);
          if (match?.end !== part.end) continue;
          const { n, m, p, q } = match.kept;
          if (unsure(match) || (q !== undefined && kindOf(p).piece === kindOf(q).piece))
            return [{ start: part.start, end: part.end, held: true }];
          const many = (token: typeof n): number => (token === undefined ? 1 : amountOf(token));
          const facts = [{ ...fact(many(n)), ...kindOf(p) }, ...(q === undefined ? [] : [{ ...fact(many(m)), ...kindOf(q) }])];
          return [found(reader, part.start, part.end, facts as Unworded[])];
        }
        return [];
      })
    : [];
