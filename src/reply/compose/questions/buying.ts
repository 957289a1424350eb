// Questions about recipes and buying: what goes in and what it costs, what to order, one plant's stems, what the money would buy.

import { nothingToBuy } from '../../../buying/buy-for-events.ts';
import type { MissingPrice } from '../../../buying/priced-lines.ts';
import { matchIngredient } from '../../../handbook/ingredient-names.ts';
import type { PieceKind } from '../../../handbook/pieces.ts';
import type { RecipeLineFact } from '../../../reading/fact.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { joined, moneySpan, ownWords, text } from '../../span.ts';
import { pieceName } from '../../words/names.ts';
import { lineWords } from '../../words/recipes.ts';
import { buyingBlocks, itemLine, leftWords } from '../buying.ts';
import { missingBlocks } from '../missing-prices.ts';
import { pricesHeldBlocks } from '../prices-held.ts';
import { recipeCostBlocks } from '../recipe-cost.ts';
import { fitBlocks } from '../what-fits.ts';
import { answerLine, type Question, type Respond } from './respond.ts';

const recipe: Respond = (_question, answer) => {
  const { event } = answer;
  const rows = Object.entries(event.recipes).map(([piece, lines]) => recipeWords(piece, lines ?? [], answer));
  const [first, ...rest] = rows;
  if (!first) return answerLine(text`There is no recipe yet. Say “3 bunny tails, 1 statice each”.`);
  return [...answerLine(first), ...rest.map((line): Block => ({ block: 'line', line })), ...recipeCostBlocks(answer)];
};

const recipeWords = (piece: string, lines: readonly RecipeLineFact[], answer: Answer): Line => {
  const { says } = answer.manner;
  const listed = answer.prices().items.map((item) => item.name);
  const name = piece === 'any' ? 'Each piece' : `Each ${pieceName(piece as PieceKind, says)}`;
  return text`${name}: ${joined(
    lines.map((line) => lineWords(line, listed)),
    ', ',
  )}.`;
};

/** "Buying list for everything", and any buying list asked for where there is no recipe of one's own. */
const isForAll = (question: Question, answer: Answer): boolean =>
  question.all === true ||
  (!/\b(ordered|bought)\b/i.test(question.words) &&
    /\b(everything|everyone|all|every|whole|week|open|events|together)\b/i.test(question.words)) ||
  Object.keys(answer.event.recipes).length === 0;

const buying: Respond = (question, answer) => {
  const all = isForAll(question, answer);
  const list = all ? answer.buying.all() : answer.buying.own();
  return [...buyingBlocks(list, answer, all), ...(list.rows.length > 0 ? [buyingFile(all)] : [])];
};

const buyingFile = (all: boolean): Block => ({
  block: 'file',
  file: {
    kind: 'buying list',
    name: all ? 'buying-list-all-events.csv' : 'buying-list.csv',
    alt: 'The buying list above as a table for a spreadsheet',
    ...(all ? { all: true } : {}),
  },
});

/** "Is that everything?" behind a list: yes, or what is not on it yet. */
const allBought: Respond = (_question, answer) => {
  const list = answer.buying.own();
  if (nothingToBuy(list)) return buyingBlocks(list, answer, false);
  const { missing, piecesWithoutRecipe: without } = list;
  const lacking = [...new Set(missing.map(({ ingredient }) => ingredient))].map((name) => [ownWords(name)]);
  const lacks = [
    ...(lacking.length > 0 ? [text`${joined(lacking, ', ')} can't be costed yet`] : []),
    ...(without > 0 ? [text`${without} ${without === 1 ? 'piece has' : 'pieces have'} no recipe yet`] : []),
  ];
  if (lacks.length > 0) return [...answerLine(text`Not everything yet: ${joined(lacks, ', and ')}.`), ...missingBlocks(missing)];
  const items = list.rows.length === 1 ? '1 item' : `${list.rows.length} items`;
  return answerLine(text`That is all the recipes take: ${items} for ${list.pieces} ${list.pieces === 1 ? 'piece' : 'pieces'}.`);
};

/** What whole packs leave once everything is made. */
const leftOver: Respond = (_question, answer) => {
  const list = answer.buying.own();
  if (list.rows.length === 0) return buyingBlocks(list, answer, false);
  const names = list.rows.flatMap((row) => (row.left.isZero() ? [] : [leftWords(row)]));
  const value = moneySpan(answer.manner.money(list.leftValue));
  const words =
    names.length === 0 ? text`Nothing is left over: the packs come out even.` : text`Left over: ${joined(names, ', ')}; ${value} of goods.`;
  return [...answerLine(words), ...(list.missing.length > 0 ? missingBlocks(list.missing) : [])];
};

/** Stems of one plant, or the whole list when none is named. */
const stemOrder: Respond = (question, answer) => {
  const list = answer.buying.own();
  const names = list.rows.map((row) => row.item.name);
  const found = question.item === undefined ? undefined : matchIngredient(question.item, names);
  const row = found && found.match !== 'none' ? list.rows.find((one) => one.item.name === found.name) : undefined;
  if (row) return answerLine(itemLine(row, answer.manner));
  const waits = waiting(question.item, list.missing);
  if (waits.length > 0) return [...answerLine(text`I can't say yet.`), ...missingBlocks(waits)];
  if (question.item && list.rows.length > 0) return answerLine(text`${ownWords(question.item)} is in no recipe of this event.`);
  return buyingBlocks(list, answer, false);
};

/** It is in the recipe, and its price or its pack is not known. */
const waiting = (item: string | undefined, missing: readonly MissingPrice[]): readonly MissingPrice[] => {
  const found =
    item === undefined
      ? undefined
      : matchIngredient(
          item,
          missing.map(({ ingredient }) => ingredient),
        );
  return found === undefined || found.match === 'none' ? [] : missing.filter(({ ingredient }) => ingredient === found.name);
};

export const buyingQuestions = {
  recipe,
  prices: (_question, answer) => pricesHeldBlocks(answer),
  buying,
  allBought,
  leftOver,
  stemOrder,
  whatFits: fitBlocks,
} satisfies Readonly<Record<string, Respond>>;
