// Price questions that change one thing and look: "can we do 22?", "try 20 to 30", "how many at 25 for 600", "what to charge to keep 3.20 for stems".
// Worked out on a copy of the event; nothing is stored.

import { countFor } from '../../../pricing/count-for.ts';
import { type PricedEvent, priceEvent } from '../../../pricing/price-event.ts';
import { priceForStems } from '../../../pricing/price-for.ts';
import { chainRules } from '../../../pricing/price-order.ts';
import type { TaxTerms } from '../../../pricing/tax-terms.ts';
import { termsOf } from '../../../pricing/terms.ts';
import type { Fact, FactOf } from '../../../reading/fact.ts';
import { applyFacts } from '../../../thread/apply-facts.ts';
import type { EventState } from '../../../thread/event.ts';
import { kindInOrder } from '../../../thread/kind-in-order.ts';
import { type Decimal, decimal } from '../../../values/decimal.ts';
import type { Problem } from '../../../values/problem.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { moneySpan, strong, text } from '../../span.ts';
import { counted, pieceName, plural } from '../../words/names.ts';
import { basisWords, notPricedYet } from '../../words/order.ts';
import { problemLine } from '../../words/problems.ts';
import { budgetBlocks } from '../budget.ts';
import { otherTaxSaid } from '../price-notes.ts';
import { eitherSum, forEachOrAll, saysEach, whichKind } from './each-or-all.ts';
import { type Question, type Respond, storedNothing } from './respond.ts';
import { whatIfItem } from './what-if-item.ts';

export const problemBlocks = (problem: Problem, { manner }: Answer): readonly Block[] => [
  { block: 'problem', line: problemLine(problem, manner.money) },
];

// Before what is only worked out: the tax goes by another name.
export const taxBlocks = (tax: TaxTerms, event: EventState): readonly Block[] =>
  otherTaxSaid(tax, event).map((line) => ({ block: 'line', line }));

/** The event with the question's own basis and, where the thread has none, its piece. */
export const asAsked = (question: FactOf<'question'>, event: EventState): EventState => {
  const basis = question.basis ? { ...event, tax: { ...event.tax, basis: question.basis } } : event;
  const count = question.number ?? 1;
  return basis.lines.length === 0 ? { ...basis, lines: [{ piece: question.piece ?? 'unspecified', count }] } : basis;
};

/** "What about 16?": the price each or the number, whichever of the two it is nearer to. The answer's first line shows which was taken. */
const settled = (asked: Question, event: EventState): Question => {
  const named = asked.piece === undefined ? asked : { ...asked, piece: kindInOrder(event.lines, asked.piece) };
  const question = forEachOrAll(named, event);
  const { number, ...rest } = question;
  if (question.differs !== undefined) return question;
  const [line, another] = event.lines;
  const price = line?.price ?? event.price;
  if (number === undefined || number <= 0 || question.amount !== undefined || question.piece !== undefined) return question;
  if (line === undefined || another !== undefined || price === undefined || price.per === 'all') return question;
  const away = (from: Decimal): Decimal => (from.greaterThan(number) ? from.dividedBy(number) : decimal(number).dividedBy(from));
  return away(decimal(price.amount)).lessThan(away(decimal(line.count))) ? { ...rest, amount: String(number) } : question;
};

/** What is missing to try it, with a way to say it. */
const missingLine = ({ number, piece, amount }: FactOf<'question'>, { manner, event }: Answer): Line => {
  const ordered = event.lines.length > 0 || number !== undefined;
  if (!ordered && amount !== undefined) return text`How many pieces would that be for? Say “16 buttonholes, 400 all in”.`;
  const pieces = number === undefined ? '18 buttonholes' : counted(number, piece ?? 'unspecified', manner.says);
  return ordered
    ? text`At what price each? Say “${pieces} at 14 inc”, and I work it out.`
    : text`I need a price and a number of pieces to try that.`;
};

/** "What if the corsages were 40?": so many of them, or what each costs. */
const endsInNumber = /\b(were|was|are|is|be|(went|go|goes) (up |down )?to) (only |about |just )?\d+\W*$/i;
const countOrPrice = ({ number, piece, amount, differs, words }: Question, { event, manner }: Answer): Line | undefined => {
  const line = event.lines.find((each) => each.piece === piece);
  if (number === undefined || amount !== undefined || differs !== undefined || line?.price === undefined || !endsInNumber.test(words))
    return undefined;
  const pieces = counted(number, line.piece, manner.says);
  return text`${pieces}, or ${moneySpan(manner.money(String(number)))} each? Ask “what about ${pieces}” or “what about ${plural(line.piece, manner.says)} at ${String(number)} each”.`;
};

// A kind tried that has no price is in none of the figures.
const unpricedLine = ({ unpriced }: PricedEvent, { manner }: Answer): readonly Line[] =>
  unpriced.length === 0 ? [] : [text`Not in these figures: ${notPricedYet(unpriced, manner)}.`];

// "How much for 5 more?": what they come to alone, beside what it all would come to.
const differenceLine = ({ differs }: Question, { priced }: PricedEvent, { price, manner }: Answer): readonly Line[] => {
  if (differs === undefined || !price?.ok) return [];
  const by = priced.all.printed.price.minus(price.value.priced.all.printed.price);
  return by.isZero() ? [] : [text`That is ${moneySpan(manner.money(by.abs()))} ${by.isPositive() ? 'more' : 'less'} than now.`];
};

/** What is tried, as the facts that would make it so. */
const factsTried = ({ words, ...question }: Question, { event }: Answer): readonly Fact[] => {
  const { number, amount, piece, differs, per = event.price?.per === 'all' && !saysEach.test(words) ? 'all' : 'each' } = question;
  const ofKind = piece === undefined ? {} : { piece };
  const facts: Fact[] = [];
  if (number !== undefined)
    facts.push({
      fact: 'change',
      what: 'count',
      ...(differs === undefined ? { to: number } : { by: differs === 'more' ? number : -number }),
      ...ofKind,
      words,
    });
  if (amount !== undefined) facts.push({ fact: 'change', what: 'price', to: amount, per, ...(per === 'all' ? {} : ofKind), words });
  return facts;
};

export interface TriedOut {
  readonly blocks: readonly Block[];
  readonly facts: readonly Fact[]; // empty where nothing was worked out
}

export const tryOut = (asked: Question, answer: Answer): TriedOut => {
  const only = (blocks: readonly Block[]): TriedOut => ({ blocks, facts: [] });
  const ofGoods = whatIfItem(asked, answer);
  if (ofGoods !== undefined) return only(ofGoods);
  const question = settled(asked, answer.event);
  const either = countOrPrice(question, answer) ?? eitherSum(question, answer) ?? whichKind(question, answer);
  if (either !== undefined) return only([{ block: 'answer', line: either }]);
  const ofNothing = question.per === 'all' && question.number === undefined && answer.event.lines.length === 0;
  if (ofNothing) return only([{ block: 'answer', line: missingLine(question, answer) }]);
  const facts = factsTried(question, answer);
  const tried = applyFacts(asAsked(question, answer.event), facts);
  const price = priceEvent(answer.studio.settings, tried, answer.today);
  if (!price) return only([{ block: 'answer', line: missingLine(question, answer) }]);
  if (!price.ok) return only(problemBlocks(price.problem, answer));
  const besides = [...unpricedLine(price.value, answer), ...differenceLine(question, price.value, answer)];
  const blocks = [
    ...budgetBlocks(price.value, { ...answer, event: tried, price }),
    ...besides.map((line): Block => ({ block: 'line', line })),
    storedNothing,
  ];
  return {
    blocks,
    facts: question.basis === undefined ? facts : [...facts, { fact: 'tax', basis: question.basis, words: question.words }],
  };
};

export const whatIfBlocks: Respond = (asked, answer) => tryOut(asked, answer).blocks;

export const countForBlocks: Respond = (question, answer) => {
  const { studio, today, manner } = answer;
  const event = asAsked(question, answer.event);
  const terms = termsOf(studio.settings, event, today);
  if (!terms.ok) return problemBlocks(terms.problem, answer);
  const each = question.amount ?? event.lines[0]?.price?.amount;
  if (!each || !question.amountMax)
    return [{ block: 'answer', line: text`I need a price each and what there is to spend: “how many at 25 for 600”.` }];
  const line = { piece: question.piece ?? event.lines[0]?.piece ?? 'unspecified', ...(event.material ? { material: event.material } : {}) };
  const found = countFor(decimal(question.amountMax), decimal(each), line, terms.value);
  if (!found.ok) return problemBlocks(found.problem, answer);
  const left = found.value.left.isZero() ? [] : text`, ${moneySpan(manner.money(found.value.left))} over`;
  return [
    {
      block: 'answer',
      line: text`${strong(counted(found.value.count, line.piece, manner.says))} at ${moneySpan(manner.money(each))}, ${basisWords(terms.value.tax)}: ${moneySpan(manner.money(found.value.total))}${left}.`,
    },
    ...taxBlocks(terms.value.tax, event),
    storedNothing,
  ];
};

export const priceForBlocks: Respond = (question, answer) => {
  const { studio, today, manner } = answer;
  const event = asAsked(question, answer.event);
  const terms = termsOf(studio.settings, event, today);
  if (!terms.ok) return problemBlocks(terms.problem, answer);
  if (!question.amount)
    return [{ block: 'answer', line: text`How much should be left for stems in each? Say “what must I charge to keep 3.20 for stems”.` }];
  const material = event.lines[0]?.material ?? event.material;
  const line = { piece: question.piece ?? event.lines[0]?.piece ?? 'unspecified', ...(material ? { material } : {}) };
  const found = priceForStems(line, decimal(question.amount), terms.value);
  if (!found.ok) return problemBlocks(found.problem, answer);
  const name = pieceName(line.piece, manner.says);
  const sundries = terms.value.sundriesEach(line.piece).value;
  const count = question.number ?? event.lines.find((one) => one.piece === line.piece)?.count ?? 1;
  const total =
    count > 1 ? text`, ${moneySpan(manner.money(found.value.price.times(count)))} for ${counted(count, line.piece, manner.says)}` : [];
  const rules = chainRules(line, terms.value);
  return [
    {
      block: 'answer',
      line: text`Charge ${strong(manner.money(found.value.price))} for a ${name}, ${basisWords(terms.value.tax)}, to keep ${moneySpan(manner.money(question.amount))} for stems${total}.`,
    },
    {
      block: 'assumed',
      line: text`Exactly ${manner.money(found.value.exact)}, rounded up to the next ${manner.money(found.value.step)}. Stems ×${rules.stemsMultiple.toString()}, sundries ${manner.money(sundries)} ×${rules.sundriesMultiple.toString()}, labour ${rules.labour.share.toString()} % ${rules.labour.rule}.${found.value.raisedToMinimum ? ` Your minimum for a ${name} applies.` : ''}`,
    },
    ...taxBlocks(terms.value.tax, event),
    storedNothing,
  ];
};
