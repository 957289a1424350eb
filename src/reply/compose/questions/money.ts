// Questions about price, stems money and labour.

import type { PricedEvent } from '../../../pricing/price-event.ts';
import { workingOf } from '../../../pricing/working.ts';
import { printNumber } from '../../../values/money.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { moneySpan, plainLine, strong, text } from '../../span.ts';
import { counted, plural } from '../../words/names.ts';
import { basisWords, notPricedYet, rateWords } from '../../words/order.ts';
import { partName } from '../../words/parts.ts';
import { problemLine } from '../../words/problems.ts';
import { budgetBlocks } from '../budget.ts';
import { clientBlocks } from '../client-form.ts';
import { labourLine } from '../labour.ts';
import { notOrderedLines } from '../not-ordered.ts';
import { recipeCostBlocks } from '../recipe-cost.ts';
import { spentLine } from '../review-told.ts';
import { splitLines } from '../stem-split.ts';
import { ladderBlocks } from './ladder.ts';
import { marginBlocks } from './margin.ts';
import { notKept } from './not-kept.ts';
import { answerLine, below, type Respond } from './respond.ts';
import { orTried } from './tried.ts';
import { countForBlocks, priceForBlocks, whatIfBlocks } from './what-if-price.ts';

/** The priced event, or the one sentence that says why there is no price. */
const withPrice =
  (respond: (priced: PricedEvent, answer: Answer) => readonly Block[]): Respond =>
  (_question, answer) => {
    const { price, manner } = answer;
    if (!price) return [{ block: 'answer', line: text`There is no price in this thread yet. Say “40 buttonholes at 25 inc”.` }];
    return price.ok ? respond(price.value, answer) : [{ block: 'problem', line: problemLine(price.problem, manner.money) }];
  };

/** With a recipe, what its ingredients take of it; without, what five or six could cost each. */
const stemBudget = withPrice(({ priced }, answer) => {
  const { manner, event } = answer;
  const rows = priced.lines.map((line): Line => {
    const name = plural(line.piece, manner.says);
    const { stems, sundries, wholesale } = line.each.printed;
    return sundries.isZero()
      ? text`${strong(manner.money(wholesale))} each for stems and sundries (${name})`
      : text`${strong(manner.money(stems))} of stems each, plus ${moneySpan(manner.money(sundries))} sundries (${name})`;
  });
  const [first, ...rest] = [...rows, ...splitLines(priced, answer)];
  const costs = Object.keys(event.recipes).length > 0 ? recipeCostBlocks(answer) : [];
  return [...(first ? answerLine(first) : []), ...rest.map((line): Block => ({ block: 'line', line })), ...costs];
});

const soFar = ({ unpriced }: PricedEvent, { manner }: Answer): { readonly mark: string; readonly rest: string } => {
  const missing = notPricedYet(unpriced, manner);
  return missing === '' ? { mark: '', rest: '' } : { mark: ' so far', rest: `; ${missing}` };
};

const toSpend = withPrice((event, answer) => {
  const { priced } = event;
  const { manner } = answer;
  const { mark, rest } = soFar(event, answer);
  const { wholesale, stems, sundries } = priced.all.printed;
  const split = sundries.isZero() ? [] : text`: ${moneySpan(manner.money(stems))} stems, ${moneySpan(manner.money(sundries))} sundries`;
  return answerLine(
    text`${strong(manner.money(wholesale))} to spend for the ${mark === '' ? 'whole order' : `order${mark}`}${split}${rest}.`,
  );
});

/** "How much have we spent", "what's left in the budget": what was told so far; before that, what there is to spend. */
const asksSpent = /\bspent\b|\bleft\b.*\b(budget|spend)\b|\bbudget\b.*\bleft\b/i;
const spend: Respond = (question, answer) => {
  if (!asksSpent.test(question.words)) return toSpend(question, answer);
  if (answer.event.actuals.some(({ what }) => what === 'spent')) return answerLine(spentLine(answer));
  return [...answerLine(text`Nobody has said what was spent yet: say “spent 182.40 at the market”.`), ...below(toSpend(question, answer))];
};

const allOfIt = withPrice((event, answer) => {
  const { priced } = event;
  const { manner } = answer;
  const { mark, rest } = soFar(event, answer);
  const { price, tax } = priced.all.printed;
  const taxed = tax.isZero() ? [] : text`, of which ${moneySpan(manner.money(tax))} ${priced.terms.tax.name}`;
  return answerLine(text`${strong(manner.money(price))} in all${mark}${taxed}${rest}.`);
});

/** "What does she still owe?": what it comes to; payments are nowhere kept. */
const total: Respond = (question, answer) => [
  ...allOfIt(question, answer),
  ...(answer.price?.ok ? notOrderedLines(answer).map((line): Block => ({ block: 'line', line })) : []),
  ...(/\bow(e|es|ed|ing)\b|\bto pay\b/i.test(question.words)
    ? [{ block: 'assumed' as const, line: text`I keep no deposits or payments: take off what is paid.` }]
    : []),
];

const labour = withPrice((event, answer) => {
  const { priced } = event;
  const { manner } = answer;
  const { mark, rest } = soFar(event, answer);
  const share = priced.lines[0] ? printNumber(priced.lines[0].labourOfExTax, 1) : '0';
  return [
    ...answerLine(
      text`${strong(manner.money(priced.all.printed.labour))} labour in all${mark}, ${share} % of the price before tax${rest}.`,
    ),
    { block: 'line', line: labourLine(priced, answer) },
  ];
});

const taxStatus = withPrice(({ priced }, { manner }) => {
  const { tax } = priced.terms;
  const amount = tax.basis.value === 'none' ? [] : text`: ${rateWords(tax)}, ${moneySpan(manner.money(priced.all.printed.tax))} in all`;
  return answerLine(text`${basisWords(tax)}${amount}. Check with your accountant.`);
});

const count: Respond = (_question, { event, manner }) => {
  const total = event.lines.reduce((pieces, line) => pieces + line.count, 0);
  if (total === 0) return answerLine(text`Nobody has said how many yet.`);
  return answerLine(text`${strong(total)} in all: ${event.lines.map((line) => counted(line.count, line.piece, manner.says)).join(', ')}.`);
};

const working = withPrice(({ priced }, { manner }) =>
  priced.lines.flatMap((line, index): Block[] => {
    const title = text`Working for one of the ${line.count} ${plural(line.piece, manner.says)}, rounded once at the end`;
    const chain = workingOf(line, priced.currency);
    const shared = chain.filter((row) => row.shared).map((row) => partName(row.part));
    const rows = chain.map((row) => [
      plainLine(partName(row.part)),
      plainLine(row.formula),
      plainLine(row.exact),
      [moneySpan(row.printed)],
    ]);
    return [
      index === 0 ? { block: 'answer', line: title } : { block: 'line', line: title },
      {
        block: 'table',
        caption: 'Working',
        columns: [
          { title: '', align: 'left' },
          { title: 'worked out', align: 'left' },
          { title: 'exactly', align: 'right' },
          { title: 'printed', align: 'right' },
        ],
        rows,
      },
      ...(shared.length === 0
        ? []
        : [{ block: 'assumed' as const, line: text`The last coin is placed so that the parts add up: ${shared.join(', ')}.` }]),
    ];
  }),
);

const client: Respond = (_question, answer) => clientBlocks(answer);

export const moneyQuestions = {
  price: orTried(withPrice((priced, answer) => budgetBlocks(priced, answer))),
  total: orTried(total),
  stemBudget: orTried(stemBudget),
  spend: orTried(spend),
  labour: orTried(labour),
  margin: orTried(withPrice(marginBlocks)),
  count,
  countFor: countForBlocks,
  priceFor: priceForBlocks,
  ladder: ladderBlocks,
  whatIf: whatIfBlocks,
  taxStatus,
  notKept,
  working,
  client,
} satisfies Readonly<Record<string, Respond>>;
