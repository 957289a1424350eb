// "How did we do?": planned against what came out, in all and for one piece, what it would have to cost next time, and what the event taught.

import { usualSpare } from '../../buying/buy-for-events.ts';
import type { Compared } from '../../review/compared.ts';
import { type Review, reviewEvent } from '../../review/review-event.ts';
import type { ReviewFigures } from '../../review/review-figures.ts';
import type { Decimal } from '../../values/decimal.ts';
import type { Problem } from '../../values/problem.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, moneySpan, plainLine, strong, text } from '../span.ts';
import { duration, fullDate, paceWords } from '../words/dates.ts';
import { counted, listed, pieceName, plural } from '../words/names.ts';
import { basisWords } from '../words/order.ts';
import { percent } from '../words/percent.ts';
import { problemLine } from '../words/problems.ts';
import { toldBlocks } from './review-told.ts';
import { spentOnOf } from './spent-on.ts';

export const reviewOf = ({ event, studio, today }: Pick<Answer, 'event' | 'studio' | 'today'>) =>
  reviewEvent(studio, event, today, { spentOn: spentOnOf(event), usualSpare: usualSpare([event]) });

export const reviewBlocks = (answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  if (event.lines.length === 0) return [{ block: 'answer', line: text`There are no pieces in this thread to look back on.` }];
  const review = reviewOf(answer);
  if (!review.ok) return tooSoon(review.problem, answer);
  const { value } = review;
  return [
    { block: 'answer', line: answerLine(value, manner) },
    figuresTable(value.printed.all, value.pieces === 1 ? 'one piece' : `all ${value.pieces}`, manner),
    ...(value.pieces > 1 ? [figuresTable(value.printed.each, 'one piece', manner)] : []),
    ...nextBlocks(value, answer),
    ...lossBlocks(value, manner),
    ...smallPrint(value, answer),
  ];
};

/** A look-back before the event, or with nothing told: what is known so far, and what to say. */
const tooSoon = (problem: Problem, answer: Answer): readonly Block[] => {
  const { event, manner } = answer;
  if (problem.code !== 'review-before-event') return [{ block: 'answer', line: problemLine(problem, manner.money) }];
  const date = event.date ? fullDate(event.date, manner) : problem.data.date;
  return [
    { block: 'answer', line: text`The event is on ${dateSpan(date)}: ask again once it is over.` },
    ...(event.actuals.length > 0 ? [{ block: 'line' as const, line: text`So far:` }, ...toldBlocks(answer)] : []),
  ];
};

/** What was left, of the price before tax, and against the plan: after labour where it is known, else after stems and sundries. */
const answerLine = ({ printed, afterGoods, afterLabour, time }: Review, manner: Manner): Line => {
  const { exTax, leftAfterLabour, leftAfterGoods } = printed.all;
  const whole = leftAfterLabour.actual !== undefined;
  const left = whole ? leftAfterLabour : leftAfterGoods;
  if (exTax === undefined || left.actual === undefined) {
    if (printed.all.wholesale.actual) return text`${strong(manner.money(printed.all.wholesale.actual))} went on stems and sundries.`;
    if (time) return text`It took ${strong(duration(time.recorded.toNumber()))} at the bench.`;
    return text`No spending and no time told yet: say “spent 182.40” or “took 9 hours”.`;
  }
  const rate = (whole ? afterLabour : afterGoods).margin;
  const after = whole ? 'after stems, sundries and labour' : 'after stems and sundries, labour not counted';
  const share = rate.actual === undefined ? '' : `, ${percent(rate.actual)} of the price before tax`;
  const planned =
    left.planned === undefined
      ? []
      : text`; planned ${moneySpan(manner.money(left.planned))}${rate.planned === undefined ? '' : ` (${percent(rate.planned)})`}`;
  if (left.actual.isNegative()) return text`${strong(`${manner.money(left.actual.negated())} lost`)} ${after}${planned}.`;
  return text`${strong(`${manner.money(left.actual)} left`)} ${after}${share}${planned}.`;
};

const figuresTable = (figures: ReviewFigures, title: string, manner: Manner): Block => {
  const money = (amount: Decimal | undefined): Line => (amount === undefined ? plainLine('–') : [moneySpan(manner.money(amount))]);
  const minutes = (amount: Decimal | undefined): Line => plainLine(amount === undefined ? '–' : timeWords(amount));
  const row = (name: string, of: Compared, shown: (amount: Decimal | undefined) => Line): readonly (readonly Line[])[] =>
    of.planned === undefined && of.actual === undefined ? [] : [[plainLine(name), shown(of.planned), shown(of.actual), shown(of.over)]];
  return {
    block: 'table',
    caption: `Planned and real, ${title}`,
    columns: [
      { title, align: 'left' },
      { title: 'planned', align: 'right' },
      { title: 'really', align: 'right' },
      { title: 'more', align: 'right' },
    ],
    rows: [
      ...row('Wholesale', figures.wholesale, money),
      ...row('Labour', figures.labour, money),
      ...row('Left', figures.leftAfterLabour.actual === undefined ? figures.leftAfterGoods : figures.leftAfterLabour, money),
      ...row('Bench time', figures.minutes, minutes),
    ],
  };
};

/** "3 h 20 min", "−45 min"; below an hour to a tenth: "13.5 min". */
const timeWords = (minutes: Decimal): string => {
  const sign = minutes.isNegative() ? '−' : '';
  const size = minutes.abs();
  return `${sign}${paceWords(size.toNumber())}`;
};

/** What each kind would have to cost next time; silent where the price was enough. */
const nextBlocks = ({ next }: Review, { price, manner }: Answer): readonly Block[] => {
  if (next.length === 0) return [];
  const basis = price?.ok ? text`, ${basisWords(price.value.priced.terms.tax)}` : [];
  const items = next.map(({ piece, wearer, was, price: worked, because, forGoods, forLabour }): Line => {
    const name = `${pieceName(piece, manner.says)}${wearer === undefined ? '' : ` (${wearer})`}`;
    const only = forGoods && forLabour ? '' : because === 'labour' ? ' for the time it took' : ' for what was bought';
    if (worked.price.lessThanOrEqualTo(was)) return text`a ${name}: ${moneySpan(manner.money(was))} was enough${only}`;
    const why = because === 'labour' ? 'for the time it took' : 'for what was bought';
    return text`a ${name}: ${strong(manner.money(worked.price))}, ${why} (was ${moneySpan(manner.money(was))})`;
  });
  return [{ block: 'list', title: text`Next time, by your own rules${basis}:`, items }];
};

const lossBlocks = ({ breakages, unusedPieces }: Review, { says }: Manner): readonly Block[] => [
  ...breakages.map(({ piece, broke, ordered, percent: spare }): Block => {
    const them = broke === 1 ? 'it' : 'them';
    return {
      block: 'line',
      line: text`${counted(broke, piece, says)} broke, of ${ordered}: ${spare.toString()} % spare would have covered ${them}.`,
    };
  }),
  ...unusedPieces.map(
    (fact): Block => ({
      block: 'line',
      line: text`${fact.piece ? counted(fact.count ?? 0, fact.piece, says) : String(fact.count ?? 0)} not used.`,
    }),
  ),
];

const smallPrint = (review: Review, answer: Answer): readonly Block[] => {
  const { manner } = answer;
  const { afterGoods, sundriesFrom, time, wageKnown, unpriced, notPriced } = review;
  const lines: Line[] = [];
  if (afterGoods.margin.actual !== undefined && afterGoods.markup.actual !== undefined)
    lines.push(
      text`After stems and sundries: margin ${percent(afterGoods.margin.actual)} of the price before tax, which is a markup of ${percent(afterGoods.markup.actual)} on their cost.`,
    );
  if (sundriesFrom === 'planned') lines.push(text`Ribbon, pins and the like are counted as planned, since you told me the stems only.`);
  if (time?.estimated) lines.push(text`Not every piece was timed; the others count as the timed ones.`);
  if (time && time.forOrder === undefined) lines.push(text`The time told does not cover every kind, so it is not compared.`);
  if (time && !wageKnown) lines.push(text`Without a wage in your settings I can't say what the time cost.`);
  if (unpriced.length > 0)
    lines.push(
      text`No price for the ${listed([...new Set(unpriced)].map((piece) => plural(piece, manner.says)))}, so there is no plan to compare the money with.`,
    );
  if (notPriced) lines.push(problemLine(notPriced, manner.money));
  return lines.map((line): Block => ({ block: 'assumed', line }));
};
