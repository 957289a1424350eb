// "15 lapels n one spare so 16 all up", "11 lapels all up (10 plus a spare)": what is ordered is what they come to, the spare among them. Where the sum is wrong, nothing is changed.

import { formOf, type Match } from '../pattern.ts';
import { changed, isSingle, type Token } from './token.ts';

const and = '(and|&|n|\\+|plus|with|w)';
const spare = '(<b:count>|a|one) (spare|spares)';
const so = "(,|-|=|so|that's|thats|that is|makes|making|making it|makes it|which makes|which is|ie|i.e|call it|it's|its|total of){1,4}";
const pieces = '(<material>)? <piece>';
const behind = [
  `<a:count> ${pieces} (,|-|\\()? ${and} ${spare} (<piece>|ones|one)? (\\))? ${so} <c:count> (<all>|<piece>){0,2}`,
  `<c:count> ${pieces} (<all>)? (,|-|:|\\(|so|that's|thats|is){0,2} <a:count> (<piece>)? ${and} ${spare} (<piece>|ones|one)? (\\))?`,
  `<c:count> <all> (,|-|:|so|that's|thats|is){0,2} <a:count> ${pieces} ${and} ${spare}`,
  `<c:count> ${pieces} (<all>)? \\( <a:count> (\\+|plus) <b:count> \\)`,
].map((source) => formOf(source));

const done = /^(made|did|done|finished|completed|boxed|left|wired|taped|packed|ready|go)$/;
const near = 4; // words
const amount = (token: Token | undefined): number | undefined => (!isSingle(token?.number) ? undefined : Number(token.number.amount));

const ofWork = (tokens: readonly Token[], { start, end }: Match): boolean =>
  tokens.slice(Math.max(0, start - near), end + near).some(({ text }) => done.test(text));

const sumAt = (tokens: readonly Token[], index: number): { end: number; tokens: readonly Token[] } | undefined => {
  for (const form of behind) {
    const match = form.at(tokens, index);
    if (match === undefined) continue;
    const { a, b, c } = match.kept;
    const [first, spares, sum] = [amount(a), b === undefined ? 1 : amount(b), amount(c)];
    if (c === undefined || first === undefined || spares === undefined || first + spares !== sum) continue;
    // "15 lapels and a spare so 16 each" is a price.
    if (match.kept['c'] === tokens[match.end - 1] && tokens[match.end]?.means['each'] !== undefined) continue;
    if (ofWork(tokens, match)) continue;
    const last = tokens[match.end - 1] as Token;
    const said = tokens.slice(match.start, match.end);
    const kind = said.slice(0, said.findIndex(({ means }) => means['piece'] !== undefined) + 1);
    const named = kind.filter(({ means }) => means['material'] !== undefined || means['piece'] !== undefined);
    return {
      end: match.end,
      tokens: [
        changed(c, { start: (tokens[index] as Token).start, glued: false }),
        ...named.map((token) => (token.means['piece'] === undefined ? token : changed(token, { end: Math.max(token.end, last.end) }))),
      ],
    };
  }
  return undefined;
};

const hints = new Set(['spare', 'spares', ')']);
/** The tokens with such sums as one count. */
export const withSparesCounted = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => hints.has(text))) return tokens;
  const read: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const sum = tokens[index]?.number?.form === 'plain' ? sumAt(tokens, index) : undefined;
    if (sum === undefined) read.push(tokens[index] as Token);
    else read.push(...sum.tokens);
    index = sum?.end ?? index + 1;
  }
  return read;
};
