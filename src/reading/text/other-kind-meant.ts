// A kind or a price put right in the same breath: "10 crowns, sorry, combs" are ten combs, "12 pcs £9.50 - no wait 9.75" cost 9.75.

import { formOf } from '../pattern.ts';
import { changed, type Token } from './token.ts';

const form = formOf(
  '<piece> (,|-|\\.){0,3} (sorry|soz|i mean|oops|whoops|rather|no wait|no sorry|wait no|i mean to say){1,2} (,|-)? (the)? <b:piece>',
);
const ends = /^(,|;|\.|!|\?|not|please|pls|at|@|-|for)$/;

// Behind a counted piece only, so that "bouts at 12, sorry 14" stays a change of what was said before. A comma alone puts nothing right: "£19, £36 each"
// behind two kinds are the prices of both.
const price = formOf(
  "(,|-|:|at|@|for)? <a:amount> (<e:each>)? (,|-|\\.|\\.\\.){0,3} ((sorry|soz|oops|whoops|no wait|wait no|no sorry|hang on|hold on|no|wait|i mean|rather|make that|make it|actually) (,)?){1,3} (its|it's|that's|make that|make it|at)? <b:amount> (<f:each>)?",
);
const counted = formOf('<count> (<material>)? <piece>');
const countedFrom = (tokens: readonly Token[], start: number, index: number): boolean =>
  start >= 0 && counted.at(tokens, start, index)?.end === index;
const ofCounted = (tokens: readonly Token[], index: number): boolean =>
  countedFrom(tokens, index - 2, index) || countedFrom(tokens, index - 3, index);
const isPrice = (token: Token | undefined, each: Token | undefined): boolean => token?.number?.form === 'money' || each !== undefined;

/** Where a price that was not meant ends, if one begins here. */
const priceMeant = (tokens: readonly Token[], index: number): { readonly rest: readonly Token[]; readonly end: number } | undefined => {
  const match = ofCounted(tokens, index) ? price.at(tokens, index) : undefined;
  if (match === undefined) return undefined;
  const { a, b, e, f } = match.kept;
  const next = tokens[match.end];
  if (a === undefined || b === undefined || !(isPrice(a, e) || isPrice(b, f))) return undefined;
  if (!(next === undefined || next.kind === 'line' || /^(,|;|\.|!|plus|\+|inc|incl|ex|please|pls|and)$/.test(next.text))) return undefined;
  const [was, is] = [Number(a.number?.amount), Number(b.number?.amount)];
  if (a.number?.max !== undefined || b.number?.max !== undefined || is > 2 * was || was > 2 * is) return undefined;
  const { currency, symbol } = a.number ?? {};
  const unit =
    b.number?.form === 'money' || a.number?.form !== 'money'
      ? {}
      : { form: 'money' as const, ...(currency === undefined ? {} : { currency }), ...(symbol === undefined ? {} : { symbol }) };
  const meant = b.number === undefined ? b : changed(b, { number: { ...b.number, ...unit } });
  return { rest: [meant, ...((f ?? e) === undefined ? [] : [(f ?? e) as Token])], end: match.end };
};

/** The tokens without what was not meant and the words that take it back. */
export const withKindMeant = (tokens: readonly Token[]): readonly Token[] => {
  const kept: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const right = priceMeant(tokens, index);
    if (right !== undefined) {
      kept.push(...right.rest);
      index = right.end;
      continue;
    }
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
