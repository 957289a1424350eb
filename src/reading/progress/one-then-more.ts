// One handful after the other: "did 5 then 4 then another 3 bouts", "made 8 crowns, then 6 more". Their sum, and of the kind that is named once.

import { type Form, formOf, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';
import { didWord } from './done-words.ts';
import { amountOf } from './made-facts.ts';

const when =
  '(today|yesterday|tonight|this (morning|arvo|afternoon|evening)|(before|after|since) (lunch|tea|breakfast|smoko|the break|break)|already|done|made|finished)';
const some = `(about|another|a further|other|the|all){0,2} <n:count> (of them)? (more|other|of the|of)? (<material>)? (<p:piece>)? (${when})?`;
const first = pattern(`(so|ok|today|i|we|i've|ive|we've|weve|have|just|,){0,3} (${didWord}) ${some}`);
// "then" says that each is told of its own: "did 5, 4 corsages" may be anything.
const next: Form = formOf(`(,|and|&|n|-){0,2} (then|after that|afterwards) (i|we)? (did|made|finished|boxed|it was)? ${some}`);
const last: Form = formOf(`(,|and|&|n|plus|-){1,2} (another|a further) <n:count> (more)? (<material>)? (<p:piece>)? (${when})?`);
const closing = pattern('(,|today|so far|now|already|done|made|all done|yay|phew|x|lol|\\.|!){0,3}');

interface Handful {
  readonly count: Token | undefined;
  readonly kind: Token | undefined;
}

// Each count of its own kind, or all of the one that is named.
const factsOf = (handfuls: readonly Handful[]): readonly Unworded[] | undefined => {
  const named = handfuls.map(({ kind }) => kindOf(kind).piece);
  const kinds = [...new Set(named.flatMap((piece) => piece ?? []))];
  if (kinds.length > 1 && named.some((piece) => piece === undefined)) return undefined;
  const sum = (of: readonly Handful[]): number => of.reduce((total, { count }) => total + amountOf(count), 0);
  if (kinds.length < 2) return [{ fact: 'made', count: sum(handfuls), ...(kinds[0] === undefined ? {} : { piece: kinds[0] }) }];
  return kinds.map((piece) => ({ fact: 'made', count: sum(handfuls.filter((_, at) => named[at] === piece)), piece }));
};

const inPart = ({ tokens, ...rest }: Reader, { start, end, asked }: Part): Finding | undefined => {
  const opens = asked ? undefined : first.at(tokens, start, end);
  if (opens === undefined) return undefined;
  const handfuls: Handful[] = [{ count: opens.kept['n'], kind: opens.kept['p'] }];
  let index = opens.end;
  for (let more = next.at(tokens, index, end); more !== undefined; more = next.at(tokens, index, end) ?? last.at(tokens, index, end)) {
    handfuls.push({ count: more.kept['n'], kind: more.kept['p'] });
    index = more.end;
  }
  if (handfuls.length < 2 || (closing.at(tokens, index, end)?.end ?? index) !== end) return undefined;
  const facts = handfuls.some(({ count }) => isRangeOrChoice(count?.number)) ? undefined : factsOf(handfuls);
  return facts === undefined ? { start, end, held: true } : found({ tokens, ...rest }, start, end, facts);
};

export const oneThenMore = (reader: Reader): Finding[] =>
  first.might(reader.tokens) ? reader.untouched().flatMap((part) => inPart(reader, part) ?? []) : [];
