// "What if roses go up to 22?", "what if I use 2 roses each?": the recipes costed with one thing changed. Worked out on a copy; nothing is stored.

import type { Item } from '../../../buying/item.ts';
import { itemsUsed } from '../../../buying/quoted-prices.ts';
import { matchIngredient } from '../../../handbook/ingredient-names.ts';
import { applyFacts } from '../../../thread/apply-facts.ts';
import { capital } from '../../../values/capital.ts';
import { decimal } from '../../../values/decimal.ts';
import type { Answer } from '../../answer.ts';
import type { Block } from '../../reply.ts';
import { ownWords, strong, text } from '../../span.ts';
import { pieceName } from '../../words/names.ts';
import { recipeCostBlocks } from '../recipe-cost.ts';
import { answerLine, below, type Question, storedNothing } from './respond.ts';

/** Blocks where the question is about goods; undefined where it is about pieces or their price. */
export const whatIfItem = (question: Question, answer: Answer): readonly Block[] | undefined => {
  const { item, piece, amount, number, stems } = question;
  if (item !== undefined && stems !== undefined) return withStems(item, stems, question, answer);
  const price = amount ?? number?.toString();
  return item === undefined || piece !== undefined || price === undefined ? undefined : withPrice(item, price, answer);
};

const withStems = (item: string, stems: number, { piece, words }: Question, answer: Answer): readonly Block[] => {
  if (Object.keys(answer.event.recipes).length === 0)
    return answerLine(text`There is no recipe in this thread to try that in. Say “3 bunny tails, 1 statice each”.`);
  const kind = piece === undefined ? {} : { piece };
  const event = applyFacts(answer.event, [{ fact: 'recipe', lines: [{ ingredient: item, stems }], adds: true, ...kind, words }]);
  return [
    {
      block: 'answer',
      line: text`With ${strong(String(stems))} ${ownWords(item)} in each ${pieceName(piece ?? 'unspecified', answer.manner.says)}:`,
    },
    ...below(recipeCostBlocks({ ...answer, event })),
    storedNothing,
  ];
};

const withPrice = (item: string, price: string, answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  const list = answer.quotedPrices();
  const found = matchIngredient(
    item,
    list.items.map(({ name }) => name),
  );
  const listed = found.match === 'none' ? undefined : list.items.find(({ name }) => name === found.name);
  if (listed === undefined)
    return answerLine(text`${capital(ownWords(item).text)} has no price yet to change. Say “${item} 4.80 a bunch of 10”.`);
  if (!itemsUsed(event, list.items).includes(listed))
    return answerLine(text`No recipe in this thread has ${ownWords(listed.name)} in it, so its price changes nothing here.`);
  const packPrice = decimal(price);
  const tried = { ...list, items: list.items.map((each): Item => (each === listed ? { ...each, packPrice } : each)) };
  return [
    {
      block: 'answer',
      line: text`With ${ownWords(listed.name)} at ${strong(manner.money(packPrice))} a ${listed.pack ?? 'pack'} instead of ${manner.money(listed.packPrice)}:`,
    },
    ...below(recipeCostBlocks({ ...answer, prices: () => tried, quotedPrices: () => tried })),
    storedNothing,
  ];
};
