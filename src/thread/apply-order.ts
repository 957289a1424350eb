// How pieces and prices said in one message change the order. A kind said again replaces its lines; "and 2 more" adds to them;
// a price each goes to the lines that have none, so that a later kind never takes another kind's price in silence.

import type { Material, PieceKind } from '../handbook/pieces.ts';
import type { FactOf } from '../reading/fact.ts';
import { decimal } from '../values/decimal.ts';
import type { EventState, OrderLine } from './event.ts';

type LinePrice = NonNullable<OrderLine['price']>;

const asLine = (fact: FactOf<'pieces'>): OrderLine => {
  const { fact: _fact, words: _words, adds: _adds, sameEach: _same, ...line } = fact;
  return line;
};

/** Which kinds a line of this kind takes the place of: its own, and the unnamed "40 pieces" said before anyone said which. */
const takesPlaceOf = (kind: PieceKind, lines: readonly OrderLine[]): ((line: OrderLine) => boolean) => {
  const onlyKind = lines.length > 0 && lines.every((line) => line.piece === lines[0]?.piece);
  return (line) => line.piece === kind || line.piece === 'unspecified' || (kind === 'unspecified' && onlyKind);
};

export const applyPieces = (state: EventState, facts: readonly FactOf<'pieces'>[]): EventState => {
  const kind = state.lines.length === 0 ? onlyTold(state) : undefined;
  const named = facts.map((fact) => (kind !== undefined && fact.piece === 'unspecified' ? { ...fact, piece: kind } : fact));
  const added = named.filter((fact) => fact.adds).map(asLine);
  const stated = named.filter((fact) => !fact.adds).map(asLine);
  let lines = state.lines;
  for (const kind of new Set(stated.map((line) => line.piece))) {
    const replaced = state.lines.filter(takesPlaceOf(kind, state.lines)).filter((line) => lines.includes(line));
    const place = lines.findIndex((line) => replaced.includes(line));
    const fresh = stated.filter((line) => line.piece === kind).map((line) => inherit(line, replaced));
    const kept = lines.filter((line) => !replaced.includes(line));
    const at = place === -1 ? kept.length : place;
    lines = [...kept.slice(0, at), ...fresh, ...kept.slice(at)];
  }
  for (const line of added) lines = addLine(lines, line, state.material);
  return { ...state, lines: lines.filter((line) => line.count > 0) };
};

/** A restated line keeps the price and the material it had, and its kind when only the number was said again. */
const inherit = (line: OrderLine, replaced: readonly OrderLine[]): OrderLine => {
  const old = replaced[0];
  if (!old || replaced.length > 1) return line;
  return {
    ...line,
    piece: line.piece === 'unspecified' ? old.piece : line.piece,
    ...(old.price && !line.price ? { price: old.price } : {}),
    ...(old.material && !line.material ? { material: old.material } : {}),
  };
};

const addLine = (lines: readonly OrderLine[], added: OrderLine, ofAll: Material | undefined): readonly OrderLine[] => {
  const kind = added.piece === 'unspecified' && lines.length === 1 ? (lines[0] as OrderLine).piece : added.piece;
  // "3 more fresh" go to those that are fresh.
  const isAlike = (line: OrderLine): boolean => added.material === undefined || (line.material ?? ofAll) === added.material;
  const same = lines.findIndex(
    (line) => line.piece === kind && line.wearer === added.wearer && isAlike(line) && (!added.price || samePrice(line.price, added.price)),
  );
  if (same === -1) {
    const sibling = lines.find((line) => line.piece === kind);
    return [...lines, { ...added, piece: kind, ...(added.price || !sibling?.price ? {} : { price: sibling.price }) }];
  }
  return lines.map((line, index) => (index === same ? { ...line, count: line.count + added.count } : line));
};

const samePrice = (a: LinePrice | undefined, b: LinePrice): boolean => a?.amount === b.amount && a.per === b.per;

/** A price each said beside pieces is those pieces' price, unless a line brought its own. */
export const withPriceBeside = (facts: readonly FactOf<'pieces'>[], each: FactOf<'price'> | undefined): readonly FactOf<'pieces'>[] =>
  each ? facts.map((fact) => (fact.price ? fact : { ...fact, price: linePrice(each) })) : facts;

/** A price each said alone goes to the lines that have none; when all have one, it replaces them. Before any piece, it waits. */
export const applyPriceEach = (state: EventState, fact: FactOf<'price'>): EventState => {
  if (state.lines.length === 0) return { ...state, price: { ...linePrice(fact), ...(fact.kind ? { kind: fact.kind } : {}) } };
  // "crowns are 140 each": for this kind alone.
  if (fact.piece && fact.piece !== 'unspecified' && state.lines.some((line) => line.piece === fact.piece)) {
    return { ...state, lines: state.lines.map((line) => (line.piece === fact.piece ? { ...line, price: linePrice(fact) } : line)) };
  }
  const { price: _total, ...rest } = state;
  const unpriced = state.lines.some((line) => !line.price);
  return { ...rest, lines: state.lines.map((line) => (unpriced && line.price ? line : { ...line, price: linePrice(fact) })) };
};

/** The one kind whose price was told before anybody counted anything. */
export const onlyTold = ({ told = {} }: EventState): PieceKind | undefined => {
  const [kind, second] = Object.keys(told) as PieceKind[];
  return second === undefined ? kind : undefined;
};

/** "Crowns are 140 each": for that kind alone. Where none is ordered yet it waits for them. */
export const applyKindPrice = (state: EventState, piece: PieceKind, fact: FactOf<'price'>): EventState => {
  if (state.lines.some((line) => line.piece === piece)) return applyPriceEach(state, fact);
  const { per: _, ...amounts } = linePrice(fact);
  return { ...state, told: { ...state.told, [piece]: amounts } };
};

// "Corsages are 45": wrist corsages too.
const toldKind = (told: NonNullable<EventState['told']>, piece: PieceKind): PieceKind =>
  told[piece] === undefined && /corsage$/.test(piece) ? 'corsage' : piece;

/** Prices told before go to the lines of their kind once there are any. */
export const bindTold = (state: EventState): EventState => {
  const { told, ...rest } = state;
  if (!told) return state;
  const priceFor = new Map(state.lines.map((line) => [line.piece, toldKind(told, line.piece)]));
  const ordered = new Set(priceFor.values());
  const waiting = Object.fromEntries(Object.entries(told).filter(([piece]) => !ordered.has(piece as PieceKind)));
  const lines = state.lines.map((line) => {
    const price = told[priceFor.get(line.piece) ?? line.piece];
    return price && !line.price ? { ...line, price: { ...price, per: 'each' as const } } : line;
  });
  return { ...rest, lines, ...(Object.keys(waiting).length > 0 ? { told: waiting } : {}) };
};

/** A total is for the whole order. The kinds said beside it, or else every line, lose their own price and share what the others leave of it. */
export const applyTotal = (state: EventState, fact: FactOf<'price'>, beside: ReadonlySet<PieceKind>): EventState => {
  const { amount, amountMax, kind } = fact;
  const price = { amount, ...(amountMax ? { amountMax } : {}), ...(kind ? { kind } : {}), per: 'all' as const };
  const covered = (line: OrderLine): boolean => beside.size === 0 || beside.has(line.piece);
  return { ...state, price, lines: state.lines.map((line) => (covered(line) ? withoutPrice(line) : line)) };
};

/** Whether a total is what lines with prices of their own come to. */
export const isSumOf = (total: FactOf<'price'>, lines: readonly FactOf<'pieces'>[]): boolean => {
  if (lines.length < 2 || total.kind || total.amountMax || lines.some((line) => !line.price || line.price.amountMax || line.countMax))
    return false;
  const parts = lines.map(({ count, price }) => decimal(price?.amount ?? '0').times(price?.per === 'line' ? 1 : count));
  return parts.reduce((sum, part) => sum.plus(part)).equals(total.amount);
};

/** A price said before any piece goes to the first pieces said. */
export const bindWaitingPrice = (state: EventState): EventState => {
  if (state.price?.per !== 'each' || state.lines.length === 0) return state;
  const { price: waiting, ...rest } = state;
  const { kind: _kind, per: _per, ...amounts } = waiting;
  return { ...rest, lines: state.lines.map((line) => (line.price ? line : { ...line, price: { ...amounts, per: 'each' } })) };
};

const linePrice = (fact: FactOf<'price'>): LinePrice & { per: 'each' } => ({
  amount: fact.amount,
  ...(fact.amountMax ? { amountMax: fact.amountMax } : {}),
  per: 'each',
});

const withoutPrice = (line: OrderLine): OrderLine => {
  const { price: _, ...rest } = line;
  return rest;
};
