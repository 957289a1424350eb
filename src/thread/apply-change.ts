// Corrections: one thing to a new value or by a difference. Which thing a bare number means was settled before (resolve-change); here nothing is guessed.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import { materials } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';
import { addDays, parseDay } from '../values/day.ts';
import { decimal } from '../values/decimal.ts';
import { applyPriceEach, applyTotal } from './apply-order.ts';
import { madeOf, setBroke, setMade } from './apply-progress.ts';
import type { EventState, OrderLine } from './event.ts';
import { onDay } from './event-day.ts';
import { inPriceEach } from './in-price-each.ts';
import { joinedLines, withoutMaterials } from './joined-lines.ts';
import { totalNow } from './total-now.ts';

type Change = FactOf<'change'>;

export const applyChange = (state: EventState, change: Change): EventState => {
  switch (change.what) {
    case 'count':
      return changeCount(state, change);
    case 'price':
      return changePrice(state, change);
    case 'tax':
      return { ...state, tax: { ...state.tax, basis: change.to === 'included' || change.to === 'none' ? change.to : 'on top' } };
    case 'date':
      return changeDate(state, change);
    case 'time':
      if (typeof change.to !== 'string') return state;
      return change.of === 'hand over' ? { ...state, handOver: { ...state.handOver, time: change.to } } : { ...state, time: change.to };
    case 'material':
      return changeMaterial(state, change);
    case 'made':
      return changeMade(state, change);
    case 'broke':
      return typeof change.to === 'number' ? setBroke(state, change.piece ?? state.lines[0]?.piece ?? 'unspecified', change.to) : state;
    case 'piece':
      return changeKind(state, change);
    case 'number':
      return state; // unresolved: decide asks
  }
};

/** All of a kind made another, or so many of them: each keeps its price. */
const changeKind = (state: EventState, { from, to, some }: Change): EventState => {
  let left = typeof some === 'number' ? some : Number.POSITIVE_INFINITY;
  const lines = state.lines.flatMap((line): OrderLine[] => {
    const taken = line.piece === from ? Math.min(left, line.count) : 0;
    left -= taken;
    const rest = line.count - taken;
    return [...(rest > 0 ? [{ ...line, count: rest }] : []), ...(taken > 0 ? [{ ...line, count: taken, piece: to as PieceKind }] : [])];
  });
  return { ...state, lines };
};

/** The lines a correction of the count is about: those of its kind, or the only one there is. */
export const linesMeant = (state: EventState, piece: PieceKind | undefined): readonly OrderLine[] =>
  piece && piece !== 'unspecified' ? state.lines.filter((line) => line.piece === piece) : state.lines.length === 1 ? state.lines : [];

/** A count after its correction: to a value, by a difference, or times a factor. Half a piece is made whole. */
export const correctedCount = (count: number, { to, by, times }: Change): number =>
  typeof to === 'number' ? to : times === undefined ? count + Number(by ?? 0) : decimal(times).times(count).ceil().toNumber();

// To a value, or by a difference where so many stood under another kind.
const changeMade = (state: EventState, { to, by, piece }: Change): EventState => {
  const kind = piece ?? state.lines[0]?.piece ?? 'unspecified';
  if (typeof to === 'number') return setMade(state, kind, to);
  return typeof by === 'number' ? setMade(state, kind, madeOf(state, kind) + by) : state;
};

const changeCount = (before: EventState, change: Change): EventState => {
  const state = change.sameEach ? inPriceEach(before) : before;
  const { piece } = change;
  const [line] = linesMeant(state, piece);
  const count = correctedCount(line?.count ?? 0, change);
  if (line) {
    return {
      ...state,
      lines: state.lines.map((other) => (other === line ? { ...line, count } : other)).filter((other) => other.count > 0),
    };
  }
  return piece && count > 0 ? { ...state, lines: [...state.lines, { piece, count }] } : state;
};

const changePrice = (state: EventState, change: Change): EventState => {
  const { piece, to, by, per, from } = change;
  const moved = (amount: string): string =>
    to === undefined
      ? decimal(amount)
          .plus(String(by ?? 0))
          .toString()
      : String(to);
  const fact = { fact: 'price' as const, words: change.words };
  if (piece) {
    const price = (line: OrderLine) => ({ amount: moved(line.price?.amount ?? '0'), per: 'each' as const });
    const ofKind = state.lines.filter((line) => line.piece === piece);
    // "bouts are 15 not 14" where the groom's is 18: those at 14.
    const were = ofKind.filter((line) => from !== undefined && decimal(line.price?.amount ?? '0').eq(String(from)));
    const meant = new Set(were.length > 0 ? were : ofKind);
    return { ...state, lines: state.lines.map((line) => (meant.has(line) ? { ...line, price: price(line) } : line)) };
  }
  if (per === 'all' || (per === undefined && state.price?.per === 'all')) {
    return applyTotal(state, { ...fact, amount: moved(totalNow(state) ?? '0'), per: 'all' }, new Set());
  }
  if (to !== undefined) return applyPriceEach(state, { ...fact, amount: String(to), per: 'each' });
  return {
    ...state,
    lines: state.lines.map((line) => (line.price ? { ...line, price: { ...line.price, amount: moved(line.price.amount) } } : line)),
  };
};

const changeDate = (state: EventState, { to, by }: Change): EventState => {
  if (typeof to === 'string') {
    const date = parseDay(to);
    return date ? onDay(state, date) : state;
  }
  return typeof by === 'number' && state.date ? onDay(state, addDays(state.date, by)) : state;
};

const changeMaterial = (state: EventState, { to, from, piece, some, rest }: Change): EventState => {
  const material = materials.find((known): known is Material => known === to);
  if (!material) return state;
  if (typeof some === 'number') return { ...state, lines: joinedLines(someInMaterial(state, { material, some, piece, rest })) };
  return piece
    ? { ...state, lines: joinedLines(state.lines.map((line) => (line.piece === piece ? { ...line, material } : line))) }
    : { ...state, material, lines: withoutMaterials(state.lines, from) };
};

/** So many of a kind in a material, those that are in it already among them; the others in another where one was named. */
const someInMaterial = (
  { lines, material: ofAll }: EventState,
  {
    material,
    some,
    piece,
    rest,
  }: { readonly material: Material; readonly some: number; readonly piece: PieceKind | undefined; readonly rest: Material | undefined },
): readonly OrderLine[] => {
  const isIn = (line: OrderLine): boolean => (line.material ?? ofAll) === material;
  let left = some;
  const takenOf = new Map<OrderLine, number>();
  for (const line of [...lines.filter(isIn), ...lines.filter((each) => !isIn(each))].filter((each) => each.piece === piece)) {
    takenOf.set(line, Math.min(left, line.count));
    left -= takenOf.get(line) ?? 0;
  }
  return lines.flatMap((line) => {
    const taken = takenOf.get(line) ?? 0;
    const others = { ...line, count: line.count - taken, ...(takenOf.has(line) && rest !== undefined ? { material: rest } : {}) };
    return [...(taken > 0 ? [{ ...line, count: taken, material }] : []), ...(others.count > 0 ? [others] : [])];
  });
};
