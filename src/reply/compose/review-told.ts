// What the thread was told about money, time and leftovers, each with what it means against the plan.

import { usualSpare } from '../../buying/buy-for-events.ts';
import { orderCounts } from '../../handover/order-counts.ts';
import { plannedMinutes } from '../../handover/planned-minutes.ts';
import type { FactOf } from '../../reading/fact.ts';
import { goodOf, learnedSpares } from '../../review/learned-spares.ts';
import { spendingOf } from '../../review/spending.ts';
import { isSpoilt } from '../../review/spoilt.ts';
import { madeOf } from '../../thread/apply-progress.ts';
import { capital } from '../../values/capital.ts';
import { type Decimal, decimal, sum, zero } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { moneySpan, ownWords, strong, text } from '../span.ts';
import { duration, paceWords } from '../words/dates.ts';
import { counted } from '../words/names.ts';
import { spentOnOf } from './spent-on.ts';

type Actual = FactOf<'actual'>;

/** What this message told. */
export const toldNow = (answer: Answer): readonly Block[] =>
  toldBlocks(
    answer,
    answer.stated.filter((fact): fact is Actual => fact.fact === 'actual'),
  ).map((block): Block => (block.block === 'line' ? { block: 'answer', line: block.line } : block));

/** One line for the spending, one for the time, one for each leftover, of everything told so far. */
export const toldBlocks = (answer: Answer, facts: readonly Actual[] = answer.event.actuals): readonly Block[] => {
  const lines = [
    ...(facts.some(({ what }) => what === 'spent') ? [spentLine(answer)] : []),
    ...(facts.some(({ what }) => what === 'minutes') ? [timeLine(answer)] : []),
    ...facts.filter(({ what }) => what === 'unused').map((fact) => unusedLine(fact, answer)),
  ];
  return lines.map((line): Block => ({ block: 'line', line }));
};

/** "£12.40 over", "£3.00 under", "as planned". */
const offWords = (over: Decimal, { money }: Manner): Line =>
  money(over.abs()) === money(zero)
    ? text`just as planned`
    : text`${strong(`${money(over.abs())} ${over.isNegative() ? 'under' : 'over'}`)}`;

/** What was spent, beside what was planned for it. */
export const spentLine = (answer: Answer): Line => {
  const { event, price, manner } = answer;
  const spent = sum(event.actuals.filter(({ what }) => what === 'spent').map(({ amount }) => decimal(amount ?? '0')));
  const several = event.actuals.filter(({ what }) => what === 'spent').length > 1 ? ' in all' : '';
  const said = text`Spent: ${moneySpan(manner.money(spent))}${several}`;
  const whole = price?.ok && price.value.unpriced.length === 0 && !price.value.onePiece ? price.value.priced.all.exact : undefined;
  const spending = spendingOf(event.actuals, zero, spentOnOf(event));
  if (!whole) return text`${said}, noted. There is no price to compare it with.`;
  if (!spending)
    return text`${said}; ${moneySpan(manner.money(whole.sundries))} planned for sundries: ${offWords(spent.minus(whole.sundries), manner)}.`;
  const withSundries = spending.sundriesFrom !== 'planned';
  const planned = withSundries ? whole.wholesale : whole.stems;
  const what = withSundries ? 'for stems and sundries' : 'for stems';
  return text`${said}; ${moneySpan(manner.money(planned))} planned ${what}: ${offWords(spending.stems.plus(spending.sundries).minus(planned), manner)}.`;
};

const timeLine = ({ event, studio }: Answer): Line => {
  const timed = event.actuals.filter(({ what, minutes }) => what === 'minutes' && minutes !== undefined);
  const taken = timed.reduce((total, { minutes }) => total + (minutes ?? 0), 0);
  const order = orderCounts(event);
  const [only, another] = order;
  const [first, second] = timed;
  if (first?.count !== undefined && second === undefined) {
    const piece = first.piece ?? (another === undefined ? only?.piece : undefined);
    const each = decimal(taken).dividedBy(first.count);
    const plan = piece === undefined ? '' : `; planned ${plannedMinutes(event, studio, piece).each.value}`;
    return text`Took ${duration(taken)} for ${first.count}: ${strong(paceWords(each.toNumber()))} each${plan}.`;
  }
  const said = text`Took ${duration(taken)}${timed.length > 1 ? ' in all' : ''}`;
  if (!only) return text`${said}, noted.`;
  const planned = order.reduce((total, { piece, count }) => total + count * plannedMinutes(event, studio, piece).each.value, 0);
  const part = timed.some(({ count, piece }) => count !== undefined || (piece !== undefined && another !== undefined));
  if (part) return text`${said}; ${duration(planned)} planned for the whole order.`;
  // Hours told while a part is made are of that part: the plan for all of it is no measure of them.
  const left = order.reduce(
    (total, { piece, count }) => total + Math.max(0, count - madeOf(event, piece)) * plannedMinutes(event, studio, piece).each.value,
    0,
  );
  if (left > 0 && order.some(({ piece }) => madeOf(event, piece) > 0))
    return text`${said} so far; ${duration(planned)} planned for all ${order.reduce((all, { count }) => all + count, 0)}, ${strong(duration(left))} of it still to make.`;
  const off = Math.round(taken - planned);
  const how = off === 0 ? text`just as planned` : text`${strong(`${duration(Math.abs(off))} ${off > 0 ? 'over' : 'under'}`)}`;
  return text`${said}; ${duration(planned)} planned: ${how}.`;
};

const unusedLine = (fact: Actual, { event, studio, manner }: Answer): Line => {
  const count = fact.count ?? 0;
  if (fact.piece) return text`${counted(count, fact.piece, manner.says)} not used, noted.`;
  if (fact.item === undefined) return text`${count} not used, noted. If they were stems, say which: “${count} statice unused”.`;
  if (isSpoilt(fact)) return spoiltLine(fact.item, count, { event, studio });
  const [learned] = learnedSpares({ ...event, actuals: [fact] }, studio, usualSpare([event]));
  const said = text`${count} ${ownWords(fact.item)} not used`;
  if (!learned) return text`${said}, noted.`;
  const { percent, recipe, now } = learned;
  return text`${said}. If you bought by the list, you needed ${strong(`${percent.toString()} % spare`)} beyond the recipe's ${printNumber(recipe)}; you buy ${now.toString()} %.`;
};

/** "3 dead": how many are good still, and whether they are enough. */
const spoiltLine = (item: string, count: number, { event, studio }: Pick<Answer, 'event' | 'studio'>): Line => {
  const said = text`${capital(ownWords(item).text)}: ${count} can't be used`;
  const kept = goodOf(item, event, studio, usualSpare([event]));
  if (kept === undefined || kept.good.isNegative()) return text`${said}, noted.`;
  const { have, good, recipe } = kept;
  const over = good.minus(recipe);
  const enough = over.isNegative()
    ? text`${strong(`${printNumber(over.abs())} short`)} of the ${printNumber(recipe)} the recipe takes`
    : text`enough for the ${printNumber(recipe)} the recipe takes, ${over.isZero() ? 'none' : strong(printNumber(over))} to spare`;
  return text`${said}. If you bought by the list, ${printNumber(good)} of ${printNumber(have)} are good: ${enough}.`;
};
