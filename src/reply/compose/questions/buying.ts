// Questions about recipes and buying: what goes in and what it costs, what to order, one plant's stems, what the money would buy.

import { matchIngredient } from '../../../handbook/ingredient-names.ts';
import type { PieceKind } from '../../../handbook/pieces.ts';
import type { RecipeLineFact } from '../../../reading/fact.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { joined, ownWords, text } from '../../span.ts';
import { pieceName } from '../../words/names.ts';
import { lineWords } from '../../words/recipes.ts';
import { buyingBlocks, itemLine } from '../buying.ts';
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

/** Stems of one plant, or the whole list when none is named. */
const stemOrder: Respond = (question, answer) => {
  const list = answer.buying.own();
  const names = list.rows.map((row) => row.item.name);
  const found = question.item === undefined ? undefined : matchIngredient(question.item, names);
  const row = found && found.match !== 'none' ? list.rows.find((one) => one.item.name === found.name) : undefined;
  if (row) return answerLine(itemLine(row, answer.manner));
  if (question.item && list.rows.length > 0) return answerLine(text`${ownWords(question.item)} is in no recipe of this event.`);
  return buyingBlocks(list, answer, false);
};

export const buyingQuestions = {
  recipe,
  prices: (_question, answer) => pricesHeldBlocks(answer),
  buying,
  stemOrder,
  whatFits: fitBlocks,
} satisfies Readonly<Record<string, Respond>>;
