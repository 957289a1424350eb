// The buying list: whole packs by supplier and order day, what is left over, and whether the packs stay inside the money there is.

import { nothingToBuy, spareSaid, usualSpare } from '../../buying/buy-for-events.ts';
import { againstBudget, type BuyGroup, type BuyingList, type BuyRow } from '../../buying/buying-list.ts';
import { isSundry } from '../../buying/item.ts';
import { shownDown, shownUp } from '../../buying/shown-quantity.ts';
import { spares } from '../../handbook/spares.ts';
import { recipeOf } from '../../thread/apply-recipe.ts';
import { capital } from '../../values/capital.ts';
import { type Decimal, sum } from '../../values/decimal.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { dateSpan, joined, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { shortDate } from '../words/dates.ts';
import { inUnit, packsWords } from '../words/packs.ts';
import { evenCountBlocks } from './even-counts.ts';
import { missingBlocks } from './missing-prices.ts';
import { changeWords, movedSinceQuoted } from './since-quoted.ts';

/** `all`: over all open events, pooled; otherwise this event's own list. */
export const buyingBlocks = (list: BuyingList, answer: Answer, all: boolean): readonly Block[] => {
  if (nothingToBuy(list)) return [{ block: 'answer', line: text`There is no recipe to buy for yet. Say “3 bunny tails, 1 statice each”.` }];
  if (list.rows.length === 0) {
    return [
      { block: 'answer', line: text`I can't make a buying list yet: nothing in the recipe has a price.` },
      ...missingBlocks(list.missing),
    ];
  }
  const { manner } = answer;
  return [
    { block: 'answer', line: spendLine(list, answer, all) },
    ...list.groups.map((group) => groupTable(group, manner)),
    ...missingBlocks(list.missing),
    ...(list.saving.greaterThan(0)
      ? [{ block: 'line' as const, line: text`Buying for all of them together saves ${strong(manner.money(list.saving))}.` }]
      : []),
    ...(all ? [forLine(list, answer)] : [...evenCountBlocks(list, answer), ...sinceQuoted(answer)]),
    ...spareBlocks(list, answer, all),
    ...(list.piecesWithoutRecipe > 0 ? [withoutRecipe(list.piecesWithoutRecipe)] : []),
  ];
};

const toOrder = (list: BuyingList): readonly BuyRow[] => list.rows.filter((row) => row.status === 'to order' && row.packs > 0);

/** The spend; what of it is still to order; and, for one event with a price, how it stands to the money there is. */
const spendLine = (list: BuyingList, answer: Answer, all: boolean): Line => {
  const { manner } = answer;
  const spend = strong(manner.money(list.spend));
  const still = toOrder(list);
  const open = sum(still.map((row) => row.spend));
  const marked = still.length === list.rows.filter((row) => row.packs > 0).length;
  const rest = marked ? [] : still.length === 0 ? text`; all of it is ordered` : text`; ${strong(manner.money(open))} still to order`;
  const whole = list.missing.length === 0;
  const each = list.each && whole ? text`, ${moneySpan(manner.money(list.each))} a piece` : whole ? [] : text` so far`;
  return text`${spend} for whole packs${each}${all ? [] : budgetWords(list, answer)}${rest}.`;
};

/** Against the stems money; against all wholesale money where the recipe has sundries of its own. Only what has a recipe counts. */
const budgetWords = (list: BuyingList, answer: Answer): Line => {
  const { price, event, manner } = answer;
  if (!price?.ok || price.value.onePiece || list.missing.length > 0) return [];
  const lines = price.value.priced.lines.filter((line) => recipeOf(event, line.piece).length > 0);
  const sundries = list.rows.some((row) => isSundry(row.item));
  if (lines.reduce((pieces, line) => pieces + line.count, 0) !== list.pieces) return [];
  const { over } = againstBudget(list, sum(lines.map((line): Decimal => (sundries ? line.all.exact.wholesale : line.all.exact.stems))));
  const money = sundries ? 'there is for stems and sundries' : 'there is for stems';
  if (over.greaterThan(0)) return text`: ${strong(`${manner.money(over)} more`)} than ${money}`;
  return text`: ${manner.money(over.negated())} inside what ${money}`;
};

const groupTable = (group: BuyGroup, manner: Manner): Block => {
  const who = group.supplier ?? 'No supplier named';
  const when = group.orderBy ? `, by ${shortDate(group.orderBy, manner)}` : '';
  return {
    block: 'table',
    caption: `${who}${when}`,
    columns: [
      { title: `${who}${when}`, align: 'left' },
      { title: 'need', align: 'right' },
      { title: 'packs', align: 'right' },
      { title: 'spend', align: 'right' },
      { title: 'left', align: 'right' },
    ],
    rows: group.rows.map((row) => buyRow(row, manner)),
  };
};

const withLength = (quantity: string, row: BuyRow): string => (row.item.unit.measure === 'count' ? quantity : inUnit(quantity, row.item));

const packs = (row: BuyRow): string => {
  if (row.packs === 0) return 'in stock';
  return row.item.size.eq(1) ? String(row.packs) : `${row.packs} × ${withLength(row.item.size.toFixed(), row)}`;
};

const buyRow = (row: BuyRow, manner: Manner): readonly Line[] => [
  text`${ownWords(row.item.name)}${row.status === 'to order' ? '' : ` (${row.status})`}`,
  plainLine(withLength(shownUp(row.need), row)),
  plainLine(packs(row)),
  [moneySpan(manner.money(row.spend))],
  plainLine(withLength(shownDown(row.left), row)),
];

const forLine = (list: BuyingList, { titleOf }: Answer): Block => {
  const events = [...new Set(list.rows.flatMap((row) => row.events))];
  const names = joined(
    events.map((id) => [ownWords(titleOf(id))]),
    ', ',
  );
  return { block: 'assumed', line: text`For ${names}.` };
};

const sinceQuoted = (answer: Answer): readonly Block[] => {
  const moved = movedSinceQuoted(answer);
  if (moved.length === 0) return [];
  const words = joined(
    moved.map((change) => changeWords(change, answer.manner.money)),
    ', ',
  );
  return [{ block: 'line', line: text`At today's prices. Since it was quoted: ${words}.` }];
};

/** Whose figure it is: only the spare on fresh stems has been published. */
const spareBy = (usual: Decimal): string => {
  const published = spares.find(({ of, percent }) => of === 'fresh stems' && percent !== undefined && usual.eq(percent));
  return published?.source.publisher || 'common practice';
};

/** How much is bought beyond the recipes: the usual, and what the price list has of its own. */
const spareBlocks = (list: BuyingList, { event, openEvents }: Answer, all: boolean): readonly Block[] => {
  const events = new Set(list.rows.flatMap((row) => row.events));
  const states = all ? openEvents().flatMap(({ key, state }) => (events.has(key) ? [state] : [])) : [event];
  const usual = usualSpare(states);
  const byUsual = list.rows.some((row) => row.item.spare === undefined && !isSundry(row.item));
  const percents = [...new Set(list.rows.flatMap(({ item }) => item.spare?.toString() ?? []))];
  const own = percents.map((percent) => {
    const names = list.rows.flatMap(({ item }) => (item.spare?.toString() === percent ? [[ownWords(item.name)]] : []));
    const here = list.rows.some(({ item }) => item.spare?.toString() === percent && states.some((state) => spareSaid(state, item.name)));
    return text`${percent} % on ${names.length > 3 ? `${names.length} items` : joined(names, ', ')} (${here ? 'as said' : 'the price list'})`;
  });
  const by = states.some((state) => spareSaid(state)?.eq(usual)) ? 'as said' : spareBy(usual);
  const words = [...(byUsual ? [text`${usual.toString()} % on stems (${by})`] : []), ...own];
  return words.length > 0 ? [{ block: 'assumed', line: text`Spare: ${joined(words, ', ')}.` }] : [];
};

const withoutRecipe = (pieces: number): Block => ({
  block: 'assumed',
  line: plainLine(
    pieces === 1 ? '1 piece has no recipe yet and is not in this list.' : `${pieces} pieces have no recipe yet and are not in this list.`,
  ),
});

/** "3 roses", "40 cm ribbon". */
export const leftWords = (row: BuyRow): Line => text`${withLength(shownDown(row.left), row)} ${ownWords(row.item.name)}`;

/** "How many stems of statice do I order?": the one row. */
export const itemLine = (row: BuyRow, manner: Manner): Line => {
  const need = strong(inUnit(shownUp(row.need), row.item));
  const name = capital(ownWords(row.item.name).text);
  if (row.packs === 0) return text`${name}: ${need} needed, all in stock.`;
  const left = row.left.isZero() ? 'none left over' : `${withLength(shownDown(row.left), row)} left over`;
  const marked =
    row.status === 'to order' ? (row.orderBy ? text`, order by ${dateSpan(shortDate(row.orderBy, manner))}` : []) : text`, ${row.status}`;
  return text`${name}: ${need} needed, ${packsWords(row.packs, row.item)} for ${moneySpan(manner.money(row.spend))}, ${left}${marked}.`;
};
