// Recipe lines said back: "3 bunny tails", "2/3 rose", "30 cm velvet ribbon (groom)".

import { amountWords } from '../../buying/amount-words.ts';
import { recipeLine } from '../../buying/recipe-lines.ts';
import { matchIngredient } from '../../handbook/ingredient-names.ts';
import type { FactOf, RecipeLineFact } from '../../reading/fact.ts';
import type { Line } from '../reply.ts';
import { joined, ownWords, text } from '../span.ts';
import { pieceName, plural, type Says } from './names.ts';

/** `listed`: names on the price list, which know the plural; without one the ingredient stays as it was said. */
export const lineWords = (fact: RecipeLineFact, listed: readonly string[], said = ''): Line => {
  const line = recipeLine(fact);
  const amount = line ? amountWords(line.amount) : '0';
  return text`${amount} ${ownWords(nameFor(fact, listed, said))}${fact.wearer ? text` (${ownWords(fact.wearer)})` : []}`;
};

/** "3 bunny tails" as it was said, where the name alone is kept as one. */
const saidMany = (ingredient: string, said: string): boolean =>
  ` ${said.toLowerCase()} `
    .split(/[^\p{L}\p{N}'-]+/u)
    .join(' ')
    .includes(` ${ingredient}s `);

const nameFor = ({ ingredient, stems }: RecipeLineFact, listed: readonly string[], said: string): string => {
  if ((stems ?? 1) > 1 && saidMany(ingredient, said)) return `${ingredient}s`;
  if (ingredient === 'stem' && (stems ?? 1) > 1) return 'stems';
  const found = (stems ?? 1) > 1 ? matchIngredient(ingredient, listed) : undefined;
  return found?.match === 'same' ? found.name.charAt(0).toLowerCase() + found.name.slice(1) : ingredient;
};

/** One recipe fact said back: what it sets, or what it changes. */
export const recipeWords = (fact: FactOf<'recipe'>, says: Says, listed: readonly string[]): Line => {
  const list = (lines: readonly RecipeLineFact[]): Line =>
    joined(
      lines.map((line) => lineWords(line, listed, fact.words)),
      ', ',
    );
  if (fact.name !== undefined) return text`Saved as “${ownWords(fact.name).text}”${fact.piece ? ` (${pieceName(fact.piece, says)})` : ''}.`;
  const kind = fact.piece ?? 'unspecified';
  const changes = [
    ...(fact.drops ?? []).map((name) => text`without ${ownWords(name)}`),
    ...(fact.swaps ?? []).map((swap) => text`${ownWords(swap.with)} instead of ${ownWords(swap.ingredient)}`),
    ...(fact.scale === undefined ? [] : [text`everything × ${fact.scale}`]),
  ];
  if (fact.like !== undefined) {
    const more = fact.lines.length > 0 ? [text`with ${list(fact.lines)}`] : [];
    return text`${plural(kind, says)} the same as the ${plural(fact.like, says)}${also([...more, ...changes])}.`;
  }
  if (fact.adds || fact.lines.length === 0)
    return text`Recipe: ${joined([...(fact.lines.length > 0 ? [list(fact.lines)] : []), ...changes], ', ')}${oneEach(fact)}.`;
  const each = fact.pieces && fact.pieces !== 1 ? `${fact.pieces} ${plural(kind, says)}` : `each ${pieceName(kind, says)}`;
  const from = fact.from === undefined ? [] : text` from “${ownWords(fact.from).text}”`;
  return text`Recipe for ${each}${from}: ${list(fact.lines)}${also(changes)}.`;
};

/** "and pins": no number was said. */
const oneEach = ({ adds, lines }: FactOf<'recipe'>): string =>
  adds && lines.some(({ stems, length }) => stems === undefined && length === undefined) ? ' (no number was said, so one each)' : '';

const also = (changes: readonly Line[]): Line => (changes.length > 0 ? text`, ${joined(changes, ', ')}` : []);
