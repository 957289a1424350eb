// One kind counted on either side: "groom's side 8, bride's side 7, all buttonholes", "9 for her family and 6 for his side, all bouts".

import type { PieceKind } from '../../handbook/pieces.ts';
import { beginsAt, firstAt, pattern } from '../pattern.ts';
import { allFree, type Reader } from '../phrase.ts';
import { firstWhere, isCount, type Token } from '../text/token.ts';
import type { Mention } from './mention.ts';

const who = "(the)? (groom|groom's|grooms|bride|bride's|brides|his|her|hers|<role>|<owner>) ('s)?";
const side = `${who} (side|family|lot|mob|crowd|people)`;
const has = '(:|-|=|x|is|has|have|need|needs|want|wants|get|gets)?';
const link = '(,|;|and|&|+|n|plus|/){0,2}';
const all = '(,|-|:|;|=|\\(|.)? (all|both|all of them|all the|they are all|so)? (<material>)?';
const forms = [
  pattern(`${side} ${has} <n:count> ${link} ${side} ${has} <m:count> ${all} <p:piece>`),
  pattern(
    `<n:count> (for|on|from|of)? ${side} ${link} <m:count> (for|on|from|of)? ${who} (side|family|lot|mob|crowd|people)? ${all} <p:piece>`,
  ),
  pattern(`<p:piece> (,|:|-|=|for){0,2} ${side} ${has} <n:count> ${link} ${side} ${has} <m:count>`),
  pattern(
    `<p:piece> (,|:|-|=){0,1} <n:count> (for|on|from) ${side} ${link} <m:count> (for|on|from)? ${who} (side|family|lot|mob|crowd|people)?`,
  ),
];
const links = /^(,|;|and|&|\+|n|plus|\/)$/;
const counted = /^(side|family|lot|mob|crowd|people)$/;

/** Both lines, where the place begins such a list. */
export const bySide = (reader: Reader, index: number): { lines: readonly [Mention, Mention]; end: number } | undefined => {
  const { tokens } = reader;
  const match = beginsAt(forms, tokens, index) ? firstAt(forms, tokens, index, tokens.length) : undefined;
  if (match === undefined) return undefined;
  const { n, m, p } = match.kept;
  if (n === undefined || m === undefined || p === undefined) return undefined;
  if (!allFree(reader, match.start, match.end) || !tokens.slice(match.start, match.end).some(({ text }) => counted.test(text)))
    return undefined;
  // "bride's side 9, groom's side 6 bouts, 3 corsages" goes on; a further kind or person behind the last number counts that.
  const next = tokens[match.end];
  if (tokens[match.end - 1] === m && ['piece', 'role', 'owner', 'each'].some((tag) => next?.means[tag] !== undefined)) return undefined;
  if (isCount(tokens[index - 1]) && tokens[index] === p) return undefined;
  const kind = p.means['piece'] as PieceKind;
  const line = (count: Token, from: number): Mention => {
    const at = tokens.indexOf(count, from);
    return { index: at, last: at, start: at, end: at + 1, kind, count, countIndex: at };
  };
  const [first, second] = [line(n, match.start), line(m, tokens.indexOf(n, match.start) + 1)];
  // Each line's words are its own: its side stands before its number or behind it, and the kind belongs to either.
  const sideFirst = firstWhere(tokens, match.start, first.index, ({ text }) => counted.test(text)) >= 0;
  const from = sideFirst ? first.index + 1 : second.index;
  const end = firstWhere(tokens, first.index + 1, from, (_, at) => tokens.slice(at, from).every(({ text }) => links.test(text)));
  const start = firstWhere(tokens, from, second.index, ({ text }) => !links.test(text));
  return {
    lines: [
      { ...first, start: match.start, end: end < 0 ? from : end },
      { ...second, start: start < 0 ? second.index : start, last: match.end - 1, end: match.end },
    ],
    end: match.end,
  };
};
