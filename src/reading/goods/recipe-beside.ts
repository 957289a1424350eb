// "2 roses 1 gyp each, roses are £1.20 a stem, gyp 9 for 25 stems": what goes in and what it costs in one sentence, the recipe first or last.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part, Stretch } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';

const line = '<plain> (x|stem|stems|sprig|sprigs|heads|bits)? (of)? (<word>)? <ingredient>';
const inEach = '((in|on|for)? each (<piece>)?|(per|a|in each|in every|in a) <piece>|apiece)';
const recipe = `(use|using|put|take|with|we use|i use|need)? ${line} ((,|and|&|\\+|n|with){0,2} ${line}){0,5} ${inEach}`;
const ahead = pattern(`${recipe} (,|;|-|\\.)`);
const behind = pattern(`(,|;|-|\\.) (and|with)? ${recipe}`);

const isPriced = (tokens: readonly Token[], { start, end }: Stretch): boolean =>
  tokens.slice(start, end).some(({ number, text }) => number?.form === 'money' || /^\d+[.,]\d{2}$/.test(text)) &&
  tokens.slice(start, end).some(({ means }) => means['ingredient'] !== undefined);

// No number of it is money: "2 roses 1.50 each" prices them.
const counts = (tokens: readonly Token[], { start, end }: Match): boolean =>
  !tokens.slice(start, end).some(({ number, text }) => number?.form === 'money' || /[.,]\d/.test(text));

const nearby = 4; // tokens from a number to the name it counts
/** The recipe of such a stretch; undefined where a number in it counts nothing that is known. */
const recipeOf = (tokens: readonly Token[], match: Match): Unworded | undefined => {
  const lines: FactOf<'recipe'>['lines'] = [];
  for (let index = match.start; index < match.end; index++) {
    const { number } = tokens[index] ?? {};
    if (number === undefined) continue;
    const named = tokens.slice(index + 1, Math.min(index + 1 + nearby, match.end)).find(({ means }) => means['ingredient'] !== undefined);
    if (!isSingle(number) || named === undefined) return undefined;
    lines.push({ ingredient: named.means['ingredient'] ?? '', stems: Number(number.amount) });
  }
  const kind = tokens.slice(match.start, match.end).findLast(({ means }) => means['piece'] !== undefined)?.means['piece'];
  return lines.length === 0 ? undefined : { fact: 'recipe', lines, ...ofKind(kind as PieceKind | undefined) };
};

export interface RecipeBeside {
  readonly rest: Part; // what is left for the prices
  readonly recipe: Stretch & { readonly fact: Unworded };
}

/** A recipe that stands ahead of its prices or behind them, and the part without it. */
export const recipeBeside = (tokens: readonly Token[], part: Part): RecipeBeside | undefined => {
  const first = ahead.at(tokens, part.start, part.end);
  const fact = first !== undefined && counts(tokens, first) ? recipeOf(tokens, first) : undefined;
  if (first !== undefined && fact !== undefined) {
    const rest = { ...part, start: first.end };
    if (isPriced(tokens, rest)) return { rest, recipe: { start: first.start, end: first.end, fact } };
  }
  for (let index = behind.next(tokens, part.start + 2, part.end); index < part.end; index = behind.next(tokens, index + 1, part.end)) {
    const last = behind.at(tokens, index, part.end);
    const told = last?.end === part.end && counts(tokens, last) ? recipeOf(tokens, last) : undefined;
    const rest = { ...part, end: index };
    if (told !== undefined && isPriced(tokens, rest)) return { rest, recipe: { start: index, end: part.end, fact: told } };
  }
  return undefined;
};
