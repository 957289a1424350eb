// "What fits?": up to three recipes from the price list that use the stems money best in whole packs for this count, and a choice to take one of them.

import { amountWords } from '../../buying/amount-words.ts';
import type { FitForEvent } from '../../buying/fit-event.ts';
import type { FittingRecipe } from '../../buying/what-fits.ts';
import type { FactOf } from '../../reading/fact.ts';
import type { Ask } from '../../reading/reading.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { joined, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { counted, pieceName, plural } from '../words/names.ts';
import { problemLine } from '../words/problems.ts';

type Question = FactOf<'question'>;

const places = ['first', 'second', 'third'] as const;

export const fitBlocks = (question: Question, answer: Answer): readonly Block[] => {
  const { manner, price } = answer;
  if (!price) return [{ block: 'answer', line: text`What fits depends on the price. Say “40 buttonholes at 25 inc”, then ask again.` }];
  if (!price.ok) return [{ block: 'problem', line: problemLine(price.problem, manner.money) }];
  if (price.value.onePiece)
    return [{ block: 'answer', line: text`How many pieces? Packs only come whole, so the count decides what fits.` }];
  const fit = answer.fitting(question.piece);
  if (!fit) {
    const name = plural(question.piece ?? 'unspecified', manner.says);
    return [{ block: 'answer', line: text`There are no ${name} with a price in this thread.` }];
  }
  if (!fit.fits.ok) return [{ block: 'answer', line: text`${problemLine(fit.fits.problem, manner.money)}${nothingHelps(fit, answer)}` }];
  const { recipes, withoutRole } = fit.fits.value;
  return [
    { block: 'answer', line: answerLine(fit, recipes, answer) },
    { block: 'list', items: recipes.map((recipe) => recipeLine(recipe, answer)) },
    ...(fit.searched < fit.plants ? [looked(fit)] : []),
    ...(withoutRole.length > 0 ? [noRole(withoutRole)] : []),
    ...otherKinds(fit, answer),
  ];
};

const answerLine = (fit: FitForEvent, recipes: readonly FittingRecipe[], { manner }: Answer): Line => {
  const order = counted(fit.pieces, fit.piece, manner.says);
  const money = moneySpan(manner.money(fit.stems.times(fit.pieces)));
  const found = recipes.length === 1 ? 'One recipe fits' : `${recipes.length === 2 ? 'Two' : 'Three'} recipes fit`;
  return text`${strong(found)} the ${money} of stems money for ${order}.`;
};

/** "£118.40 (£2.96 each): 3 Bunny tails (3 × 50), 1 Lavender (1 × 100) …", with the whole packs each takes. */
const recipeLine = ({ recipe, list }: FittingRecipe, { manner }: Answer): Line => {
  const inIt = recipe.map((line) => {
    const row = list.rows.find(({ item }) => item.name === line.ingredient);
    const packs = row === undefined || row.packs === 0 ? 'in hand' : `${row.packs} × ${row.item.size.toFixed()}`;
    return text`${amountWords(line.amount)} ${ownWords(line.ingredient)} (${packs})`;
  });
  const each = list.each ? text` (${moneySpan(manner.money(list.each))} each)` : [];
  return text`${strong(manner.money(list.spend))}${each}: ${joined(inIt, ', ')}.`;
};

const nothingHelps = ({ fits, piece }: FitForEvent, { manner }: Answer): Line =>
  !fits.ok && fits.problem.code === 'nothing-fits' && fits.problem.data.least
    ? text` A higher price, or more ${plural(piece, manner.says)} to share the packs, would help.`
    : [];

const looked = ({ searched, plants, pieces }: FitForEvent): Block => ({
  block: 'assumed',
  line: plainLine(`From the ${searched} of ${plants} plants whose packs come out best for ${pieces}.`),
});

const noRole = (names: readonly string[]): Block => ({
  block: 'assumed',
  line: text`Left out, as the price list gives them no role: ${joined(
    names.slice(0, 5).map((name) => [ownWords(name)]),
    ', ',
  )}${names.length > 5 ? ` and ${names.length - 5} more` : ''}.`,
});

const otherKinds = (fit: FitForEvent, { event, manner }: Answer): readonly Block[] => {
  const other = event.lines.find((line) => line.piece !== fit.piece);
  if (!other) return [];
  return [{ block: 'assumed', line: plainLine(`For the others say “what fits a ${pieceName(other.piece, manner.says)}?”.`) }];
};

/** Taking one of them states it as the recipe. */
export const fitAsk = (answer: Answer): Ask | undefined => {
  const question = answer.questions.find(({ asks }) => asks === 'whatFits');
  const fit = question && answer.price?.ok && !answer.price.value.onePiece ? answer.fitting(question.piece) : undefined;
  if (!question || !fit?.fits.ok) return undefined;
  const { recipes } = fit.fits.value;
  return {
    about: 'item',
    why: 'which recipe',
    words: question.words,
    choices: recipes.map(({ recipe }, at) => ({
      words: recipes.length === 1 ? 'use it' : `use the ${places[at] ?? at + 1}`,
      facts: [
        {
          fact: 'recipe',
          lines: recipe.map(({ ingredient, amount }) => ({
            ingredient,
            ...(amount.kind === 'stems' ? { stems: amount.stems.toNumber() } : {}),
          })),
          ...(fit.piece === 'unspecified' ? {} : { piece: fit.piece }),
          words: question.words,
        },
      ],
    })),
  };
};
