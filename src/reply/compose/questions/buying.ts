// Questions about recipes and buying: what goes in and what it costs, what to order, one plant's stems.

import { matchIngredient } from '../../../handbook/ingredient-names.ts';
import type { PieceKind } from '../../../handbook/pieces.ts';
import type { RecipeLineFact } from '../../../reading/fact.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { joined, ownWords, text } from '../../span.ts';
import { pieceName } from '../../words/names.ts';
import { buyingBlocks, itemLine } from '../buying.ts';
import { recipeCostBlocks } from '../recipe-cost.ts';
import type { Respond } from './questions.ts';

const answerLine = (line: Line): readonly Block[] => [{ block: 'answer', line }];

const recipe: Respond = (_question, answer) => {
  const { event, manner } = answer;
  const rows = Object.entries(event.recipes).map(([piece, lines]) => recipeWords(piece, lines ?? [], manner));
  const [first, ...rest] = rows;
  if (!first) return answerLine(text`There is no recipe yet. Say “3 bunny tails, 1 statice each”.`);
  return [...answerLine(first), ...rest.map((line): Block => ({ block: 'line', line })), ...recipeCostBlocks(answer)];
};

const recipeWords = (piece: string, lines: readonly RecipeLineFact[], { says }: Answer['manner']): Line => {
  const name = piece === 'any' ? 'Each piece' : `Each ${pieceName(piece as PieceKind, says)}`;
  const parts = lines.map((line) => {
    const amount = line.stems ?? (line.length === undefined ? '' : `${line.length}${line.unit ? ` ${line.unit}` : ''}`);
    return text`${amount} ${ownWords(line.ingredient)}${line.wearer ? text` (${ownWords(line.wearer)})` : []}`;
  });
  return text`${name}: ${joined(parts, ', ')}.`;
};

const buying: Respond = (_question, answer) => {
  const list = Object.keys(answer.event.recipes).length > 0 ? answer.buying.own() : answer.buying.all();
  return [...buyingBlocks(list, answer), ...(list.rows.length > 0 ? [buyingFile] : [])];
};

const buyingFile: Block = {
  block: 'file',
  file: { kind: 'buying list', name: 'buying-list.csv', alt: 'The buying list above as a table for a spreadsheet' },
};

/** Stems of one plant, or the whole list when none is named. */
const stemOrder: Respond = (question, answer) => {
  const list = answer.buying.own();
  const names = list.rows.map((row) => row.item.name);
  const found = question.item === undefined ? undefined : matchIngredient(question.item, names);
  const row = found && found.match !== 'none' ? list.rows.find((one) => one.item.name === found.name) : undefined;
  if (row) return answerLine(itemLine(row, answer.manner));
  if (question.item && list.rows.length > 0) return answerLine(text`${ownWords(question.item)} is in no recipe of this event.`);
  return buyingBlocks(list, answer);
};

const whatFits: Respond = () => answerLine(text`I can't answer that one. Say “help” for what I can do.`);

export const buyingQuestions = { recipe, buying, stemOrder, whatFits } satisfies Readonly<Record<string, Respond>>;
