// What was said about prices: what one stem costs now, what it was, and whose recipes it touches. A whole list is told in one line and what moved.

import type { Item } from '../../buying/item.ts';
import { onePackPrice, packsPaid } from '../../buying/one-pack.ts';
import { type PriceChange, priceChanges } from '../../buying/price-changes.ts';
import type { PriceList } from '../../buying/price-list.ts';
import { itemsUsed } from '../../buying/quoted-prices.ts';
import { unitCost, unitCostShown } from '../../buying/unit-cost.ts';
import { ingredientKey, matchIngredient, slipOf } from '../../handbook/ingredient-names.ts';
import type { FactOf } from '../../reading/fact.ts';
import type { OpenQuestion } from '../../reading/reading.ts';
import { capital } from '../../values/capital.ts';
import { minorUnits } from '../../values/currency.ts';
import { decimal } from '../../values/decimal.ts';
import { fixedMoney } from '../../values/money.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { joined, moneySpan, ownWords, plainLine, strong, text } from '../span.ts';
import { inUnit, perUnit } from '../words/packs.ts';

type Pack = FactOf<'pack'>;

const packsOf = (answer: Answer): readonly Pack[] => answer.stated.filter((fact): fact is Pack => fact.fact === 'pack');

const listed = ({ items }: PriceList, name: string): Item | undefined =>
  items.find((item) => ingredientKey(item.name) === ingredientKey(name));

export const priceListBlocks = (answer: Answer): readonly Block[] => {
  if (answer.listRead !== undefined) return importBlocks(answer, answer.listRead);
  if (answer.how === 'undone') return takenBackBlocks(answer);
  const [first, ...rest] = packsOf(answer).map((pack) => packLine(pack, answer));
  if (!first) return [];
  return [{ block: 'answer', line: first }, ...rest.map((line): Block => ({ block: 'line', line })), ...touchedBlocks(answer)];
};

/** The one pack whose size the answer asks for: a bare "10" tells it. */
export const packAsked = (answer: Answer): OpenQuestion | undefined => {
  if (answer.listRead !== undefined || answer.how === 'undone') return undefined;
  const [only, another] = packsOf(answer).filter((pack) => listed(answer.prices(), pack.item) === undefined);
  if (only === undefined || another !== undefined) return undefined;
  return { kind: 'pack', item: only.item, ...(only.per === undefined ? {} : { per: only.per }) };
};

/** Whether any recipe of this event uses what was priced. */
export const isUsedHere = (pack: Pack, { event }: Answer): boolean =>
  Object.values(event.recipes).some((lines) => lines?.some((line) => matchIngredient(line.ingredient, [pack.item]).match !== 'none'));

const takenBackBlocks = (answer: Answer): readonly Block[] => {
  const packs = answer.takenBack.filter((fact): fact is Pack => fact.fact === 'pack');
  if (packs.length > mostShown) return [{ block: 'line', line: text`${packs.length} items of the price list are as they were before.` }];
  return packs.map((pack): Block => {
    const now = listed(answer.prices(), pack.item);
    const name = strong(capital(ownWords(pack.item).text));
    return { block: 'line', line: now ? text`${name}: back to ${priceWords(now, answer)}.` : text`${name} is off the price list.` };
  });
};

const packLine = (pack: Pack, answer: Answer): Line => {
  const { manner } = answer;
  const now = listed(answer.prices(), pack.item);
  const name = strong(capital(ownWords(pack.item).text));
  if (!now) {
    const per = pack.per ?? 'pack';
    const { currency } = answer.studio.settings;
    const one = onePackPrice(pack, pack.price, currency) ?? decimal(pack.price);
    const price = moneySpan(manner.money(one));
    return text`${name}: ${price} a ${per}${ofSeveral(pack, answer)}. How many are in a ${per}? Say “${pack.item} ${fixedMoney(one, currency)} a ${per} of 10”.`;
  }
  const before = listed(answer.pricesBefore(), pack.item);
  const drying = pack.dryingDays === undefined ? '' : `, ${pack.dryingDays} ${pack.dryingDays === 1 ? 'day' : 'days'} to dry`;
  const tax = pack.taxName ?? 'tax';
  const taxed =
    pack.basis === 'included' ? `, counted with the ${tax} in it` : pack.basis === 'on top' ? `, counted before the ${tax}` : '';
  const more = detailWords(pack);
  if (before) return text`${name}: ${changedPrice(before, now, answer)}${ofSeveral(pack, answer)}${taxed}${drying}${more}.`;
  return text`${name}: ${priceWords(now, answer)}${ofSeveral(pack, answer)}${said(pack, answer)}${taxed}${drying}${more}.${nearNames(pack, answer)}`;
};

/** What was said for several, where the price of one was reckoned from it. */
const ofSeveral = (pack: Pack, { manner }: Answer): Line =>
  packsPaid(pack) === 1 ? [] : text` (${moneySpan(manner.money(pack.price))} for ${packsPaid(pack)})`;

/** What stood behind the price: "focal, 12 in stock". The spare has a line of its own. */
const detailWords = ({ role, stock, leadDays }: Pack): string =>
  [
    ...(role === undefined ? [] : [role]),
    ...(stock === undefined ? [] : [`${stock} in stock`]),
    ...(leadDays === undefined ? [] : [`${leadDays} ${leadDays === 1 ? 'day' : 'days'} from the order`]),
  ]
    .map((words) => `, ${words}`)
    .join('');

/** A new name that is nearly one on the list may be a slip. */
const nearNames = (pack: Pack, answer: Answer): Line => {
  const names = answer.pricesBefore().items.map((item) => item.name);
  const near = slipOf(pack.item, names);
  return near === undefined ? [] : text` New on the list. Did you mean ${ownWords(near)}? Then say “undo” and send it again.`;
};

/** The old price a message names itself, where the list had none. */
const said = (pack: Pack, { manner }: Answer): Line => (pack.from ? text` (was ${moneySpan(manner.money(pack.from))})` : []);

const one = (item: Item, { manner, studio }: Answer) =>
  moneySpan(manner.money(unitCostShown(unitCost(item.packPrice, item.size), minorUnits(studio.settings.currency) ?? 2)));

const inPack = (item: Item): string => inUnit(item.size.toFixed(), item);

const priceWords = (item: Item, answer: Answer): Line => {
  if (item.packPrice.isZero()) return text`free`;
  const price = moneySpan(answer.manner.money(item.packPrice));
  return item.size.eq(1) ? text`${price} ${perUnit(item)}` : text`${price} for ${inPack(item)}, ${one(item, answer)} ${perUnit(item)}`;
};

const changedPrice = (before: Item, now: Item, answer: Answer): Line => {
  const money = (item: Item) => moneySpan(answer.manner.money(item.packPrice));
  const samePack = inPack(before) === inPack(now);
  if (samePack && before.packPrice.eq(now.packPrice)) return text`${priceWords(now, answer)}, as before`;
  if (!samePack) return text`${priceWords(before, answer)} → ${priceWords(now, answer)}`;
  if (now.size.eq(1)) return text`${money(before)} → ${money(now)} ${perUnit(now)}`;
  const each = text`${one(before, answer)} → ${one(now, answer)} ${perUnit(now)}`;
  return text`${money(before)} → ${money(now)} for ${inPack(now)}, so ${each}`;
};

const changesIn = (answer: Answer): readonly PriceChange[] =>
  priceChanges(
    answer.pricesBefore().items,
    answer.prices().items,
    packsOf(answer).map((pack) => pack.item),
  );

/** Open events, other than this one where its cost follows, whose recipes use what moved: they keep the prices they were quoted at. */
const touchedBlocks = (answer: Answer): readonly Block[] => {
  const moved = new Set(changesIn(answer).flatMap((change) => (change.change === 'new' ? [] : [change.item])));
  if (moved.size === 0) return [];
  const { items } = answer.prices();
  const touched = answer
    .openEvents()
    .filter(
      ({ state }) =>
        (answer.listRead !== undefined || state !== answer.event) && itemsUsed(state, items).some((item) => moved.has(item.name)),
    );
  if (touched.length === 0) return [];
  const names = joined(
    touched.map(({ title }) => [ownWords(title)]),
    ', ',
  );
  const keep = touched.length === 1 ? 'it keeps the price it was' : 'they keep the prices they were';
  return [{ block: 'line', line: text`Used in ${names}; ${keep} quoted at.` }];
};

const mostShown = 8;

const importBlocks = (answer: Answer, rows: number): readonly Block[] => {
  const changes = changesIn(answer);
  const fresh = changes.filter((change) => change.change === 'new').length;
  const moved = changes.filter((change) => change.change === 'price' || change.change === 'pack');
  const dearer = moved.filter((change) => change.dearer).length;
  const details = packsOf(answer).length - fresh - moved.length;
  const same = rows - packsOf(answer).length;
  const parts = [
    [fresh, 'new'],
    [dearer, 'dearer'],
    [moved.length - dearer, 'cheaper'],
    [details, 'with other details'],
    [same, 'as before'],
  ] as const;
  const told = parts.flatMap(([count, words]) => (count > 0 ? [`${count} ${words}`] : [])).join(', ');
  const others = answer.prices().items.length - rows;
  const items = strong(`${rows} ${rows === 1 ? 'item' : 'items'}`);
  return [
    { block: 'answer', line: text`${items} on the price list: ${told}.` },
    ...(moved.length > 0 ? [{ block: 'list' as const, items: moved.slice(0, mostShown).map((change) => changeLine(change, answer)) }] : []),
    ...(moved.length > mostShown ? [{ block: 'line' as const, line: text`And ${moved.length - mostShown} more.` }] : []),
    ...touchedBlocks(answer),
    ...(others > 0
      ? [{ block: 'assumed' as const, line: plainLine(`${others} other ${others === 1 ? 'item stays' : 'items stay'} as before.`) }]
      : []),
  ];
};

const changeLine = (change: PriceChange, answer: Answer): Line => {
  const before = listed(answer.pricesBefore(), change.item);
  const now = listed(answer.prices(), change.item);
  return before && now ? text`${ownWords(change.item)}: ${changedPrice(before, now, answer)}` : text`${ownWords(change.item)}`;
};
