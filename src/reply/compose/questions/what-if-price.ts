// Price questions that change one thing and look: "can we do 22?", "try 20 to 30", "how many at 25 for 600", "what to charge to keep 3.20 for stems".
// Worked out on a copy of the event; nothing is stored.

import { countFor } from '../../../pricing/count-for.ts';
import { orderOf } from '../../../pricing/order-of-event.ts';
import { priceEvent } from '../../../pricing/price-event.ts';
import { priceForStems } from '../../../pricing/price-for.ts';
import { type LadderRow, priceLadder } from '../../../pricing/price-ladder.ts';
import { chainRules } from '../../../pricing/price-order.ts';
import type { TaxTerms } from '../../../pricing/tax-terms.ts';
import { termsOf } from '../../../pricing/terms.ts';
import type { FactOf } from '../../../reading/fact.ts';
import { applyFacts } from '../../../thread/apply-facts.ts';
import type { EventState } from '../../../thread/event.ts';
import { type Decimal, decimal } from '../../../values/decimal.ts';
import type { Problem } from '../../../values/problem.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { moneySpan, plainLine, strong, text } from '../../span.ts';
import { counted, pieceName, plural } from '../../words/names.ts';
import { basisWords } from '../../words/order.ts';
import { problemLine } from '../../words/problems.ts';
import { budgetBlocks } from '../budget.ts';
import { otherTaxSaid } from '../price-notes.ts';
import { type Respond, storedNothing } from './respond.ts';
import { whatIfItem } from './what-if-item.ts';

const problemBlocks = (problem: Problem, { manner }: Answer): readonly Block[] => [
  { block: 'problem', line: problemLine(problem, manner.money) },
];

// Behind an order that was just noted with two prices, only the price is open.
const noPriceYet: Block = { block: 'assumed', line: plainLine('Only worked out: no price is kept yet.') };

// Before what is only worked out: the tax goes by another name.
const taxBlocks = (tax: TaxTerms, event: EventState): readonly Block[] => otherTaxSaid(tax, event).map((line) => ({ block: 'line', line }));

/** The event with the question's own basis and, where the thread has none, its piece. */
const asAsked = (question: FactOf<'question'>, event: EventState): EventState => {
  const basis = question.basis ? { ...event, tax: { ...event.tax, basis: question.basis } } : event;
  const count = question.number ?? 1;
  return basis.lines.length === 0 ? { ...basis, lines: [{ piece: question.piece ?? 'unspecified', count }] } : basis;
};

/** "What about 16?": the price each or the number, whichever of the two it is nearer to. The answer's first line shows which was taken. */
const settled = (question: FactOf<'question'>, event: EventState): FactOf<'question'> => {
  const { number, ...rest } = question;
  const [line, another] = event.lines;
  const price = line?.price ?? event.price;
  if (number === undefined || number <= 0 || question.amount !== undefined || question.piece !== undefined) return question;
  if (line === undefined || another !== undefined || price === undefined || price.per === 'all') return question;
  const away = (from: Decimal): Decimal => (from.greaterThan(number) ? from.dividedBy(number) : decimal(number).dividedBy(from));
  return away(decimal(price.amount)).lessThan(away(decimal(line.count))) ? { ...rest, amount: String(number) } : question;
};

const saysEach = /\b(each|ea|apiece|per|a (piece|pop|head|bout|lapel|buttonhole|corsage|crown|comb))\b/i;

/** What is missing to try it, with a way to say it. */
const missingLine = ({ number, piece, amount }: FactOf<'question'>, { manner, event }: Answer): Line => {
  const ordered = event.lines.length > 0 || number !== undefined;
  if (!ordered && amount !== undefined) return text`How many pieces would that be for? Say “16 buttonholes, 400 all in”.`;
  const pieces = number === undefined ? '18 buttonholes' : counted(number, piece ?? 'unspecified', manner.says);
  return ordered
    ? text`At what price each? Say “${pieces} at 14 inc”, and I work it out.`
    : text`I need a price and a number of pieces to try that.`;
};

export const whatIfBlocks: Respond = (asked, answer) => {
  const ofGoods = whatIfItem(asked, answer);
  if (ofGoods !== undefined) return ofGoods;
  const question = settled(asked, answer.event);
  const ofNothing = question.per === 'all' && question.number === undefined && answer.event.lines.length === 0;
  if (ofNothing) return [{ block: 'answer', line: missingLine(question, answer) }];
  const facts = [
    ...(question.number !== undefined
      ? [
          {
            fact: 'change' as const,
            what: 'count' as const,
            to: question.number,
            ...(question.piece ? { piece: question.piece } : {}),
            words: question.words,
          },
        ]
      : []),
    ...(question.amount !== undefined
      ? [
          {
            fact: 'change' as const,
            what: 'price' as const,
            to: question.amount,
            per:
              question.per ?? (answer.event.price?.per === 'all' && !saysEach.test(question.words) ? ('all' as const) : ('each' as const)),
            ...(question.piece ? { piece: question.piece } : {}),
            words: question.words,
          },
        ]
      : []),
  ];
  const tried = applyFacts(asAsked(question, answer.event), facts);
  const price = priceEvent(answer.studio.settings, tried, answer.today);
  if (!price) return [{ block: 'answer', line: missingLine(question, answer) }];
  return price.ok
    ? [...budgetBlocks(price.value, { ...answer, event: tried, price }), storedNothing]
    : problemBlocks(price.problem, answer);
};

export const ladderBlocks: Respond = (question, answer) => {
  const { studio, today, manner } = answer;
  const event = asAsked(question, answer.event);
  const terms = termsOf(studio.settings, event, today);
  if (!terms.ok) return problemBlocks(terms.problem, answer);
  const wanted = {
    from: decimal(question.amount ?? String(question.number ?? 0)),
    to: decimal(question.amountMax ?? String(question.numberMax ?? 0)),
    ...(question.step ? { step: decimal(question.step) } : {}),
    ...(question.piece ? { piece: question.piece } : {}),
  };
  const rows = priceLadder(orderOf(event), terms.value, wanted);
  if (!rows.ok) return problemBlocks(rows.problem, answer);
  const timed = rows.value.some((row) => row.minutesPaid !== undefined);
  const pieces = event.lines.reduce((count, line) => count + line.count, 0);
  const moved = question.piece ?? event.lines[0]?.piece ?? 'unspecified';
  const several = event.lines.length > 1;
  return [
    { block: 'answer', line: text`${ladderName(event, manner.says)}, ${basisWords(terms.value.tax)}: what each price leaves.` },
    ...(several
      ? [{ block: 'line' as const, line: text`Only the ${plural(moved, manner.says)} change price; the rest stay as they are.` }]
      : []),
    {
      block: 'table',
      caption: 'What each price leaves',
      columns: [
        { title: 'each', align: 'right' },
        { title: 'stems', align: 'right' },
        ...(timed ? [{ title: 'min paid', align: 'right' as const }] : []),
        { title: `to spend, ${pieces}`, align: 'right' },
        ...(several ? [{ title: 'client pays', align: 'right' as const }] : []),
      ],
      rows: rows.value.map((row) => [...ladderRow(row, timed, answer), ...(several ? [totalOf(row, answer)] : [])]),
    },
    ...taxBlocks(terms.value.tax, event),
    answer.event.price === undefined && answer.event.lines.every((line) => line.price === undefined) ? noPriceYet : storedNothing,
  ];
};

const totalOf = ({ priced }: LadderRow, { manner }: Answer): Line => (priced ? [moneySpan(manner.money(priced.all.printed.price))] : []);

const ladderName = (event: EventState, says: Answer['manner']['says']): Line =>
  text`${event.lines.map((line) => counted(line.count, line.piece, says)).join(', ')}`;

const ladderRow = (row: LadderRow, timed: boolean, { manner }: Answer): readonly Line[] => {
  const price = [moneySpan(manner.money(row.price))];
  if (!row.priced || !row.line) return [price, plainLine('none'), ...(timed ? [plainLine('')] : []), plainLine('')];
  const each =
    row.minutesPaid === undefined
      ? ''
      : String(Math.floor(row.minutesPaid / row.priced.lines.reduce((count, line) => count + line.count, 0)));
  return [
    price,
    [strong(manner.money(row.line.each.printed.stems))],
    ...(timed ? [plainLine(each)] : []),
    [moneySpan(manner.money(row.priced.all.printed.wholesale))],
  ];
};

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
