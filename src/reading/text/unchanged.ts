// "corsages are $36 now, bouts unchanged": what stays as it was changes nothing, and its name must not make the rest about two kinds.

import { formOf } from '../pattern.ts';
import type { Token } from './token.ts';

const stays =
  "(are|is|all|still|,)? (unchanged|(stay|stays|staying|remain|remains|stand|keep|kept|staying put|still|are still|to stay|to remain) (at)? (all)? (the same|same|as is|as are|as they are|as they were|as it was|unchanged|put)|stay|stays|stand|stands|as before|as they were|as they are|as it was|as is|as quoted|as agreed|(have|has)? (no|not) (change|changes|changed|changing)|(haven't|havent|hasn't|hasnt|don't|dont|didn't|didnt|aren't|arent) (changed|change|changing)|same (price|number|amount) as before|same as before|same as they were)";
const unchanged = formOf(`(the|all the|other)? <piece> ((and|&|\\+|,) (the)? <piece>)? ${stays}`);

const opens = new Set(['the', 'all', 'other']);
const isPiece = ({ means }: Token): boolean => means['piece'] !== undefined;
const isMark = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || /^[,;.)-]$/.test(token.text);
const joins = (token: Token | undefined): boolean => isMark(token) || /^(and|but|with|while|though)$/.test(token?.text ?? '');

/** The tokens without a kind that stays as it was, where another is spoken of. */
export const withoutUnchanged = (tokens: readonly Token[]): readonly Token[] => {
  if (tokens.findIndex(isPiece) === tokens.findLastIndex(isPiece)) return tokens;
  for (let index = 0; index < tokens.length; index++) {
    if (tokens[index]?.means['piece'] === undefined && !opens.has(tokens[index]?.text ?? '')) continue;
    const match = unchanged.at(tokens, index);
    if (match === undefined || (index > 0 && !joins(tokens[index - 1]))) continue;
    const last = match.end === tokens.length;
    if (!last && !joins(tokens[match.end])) continue;
    // Behind another matter its joint goes with it; before one, the joint that follows.
    const from = last || index > 0 ? index - (index > 1 && joins(tokens[index - 2]) && isMark(tokens[index - 2]) ? 2 : 1) : index;
    const to = index > 0 ? match.end : match.end + 1;
    return withoutUnchanged([...tokens.slice(0, Math.max(0, from)), ...tokens.slice(to)]);
  }
  return tokens;
};
