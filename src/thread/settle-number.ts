// A number put right or added to without a word for what it counts: "make it 45", "45 not 40", "oops 18", "5 more". What it can mean in this thread is asked.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Choice } from '../reading/reading.ts';
import { kindWords, soMany } from '../reading/words/kind-words.ts';
import { decimal } from '../values/decimal.ts';
import { kindsMeant, madeOf } from './apply-progress.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';

/** "5 more" once some are made: ordered, or made since. `named`: the choices say which kind, where the order has others. */
export const askOrderedOrMade = (change: FactOf<'change'>, piece: PieceKind, named: boolean): Settled => {
  const count = Number(change.by);
  const kind = named ? ` ${kindWords(piece, count)}` : '';
  const choices: Choice[] = [
    { words: `${count} more${kind} ordered`, facts: [{ ...change, piece }] },
    { words: `${count} more${kind} made`, facts: [{ fact: 'made', count, piece, words: change.words }] },
  ];
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words: change.words, choices } };
};

/** What the last word of progress added to a kind: the 9 of "did another 9". */
const addedTo = ({ lately }: EventState, kind: PieceKind): number | undefined => (lately?.piece === kind ? lately.added : undefined);

/** "Hang on it was 8" of the last handful: the others stay made. */
const madeInstead = (state: EventState, change: FactOf<'change'>, piece: PieceKind): FactOf<'change'> => {
  const added = addedTo(state, piece) ?? madeOf(state, piece);
  const { from: _, ...rest } = change;
  return { ...rest, what: 'made', to: madeOf(state, piece) - added + Number(change.to), piece };
};

const isWhole = ({ to }: FactOf<'change'>): boolean => Number.isInteger(Number(to));

/** "45 not 40": where one kind alone was so many, so many made, or so much, and nothing else is that number. */
const toldFrom = (
  state: EventState,
  { from }: FactOf<'change'>,
  asCount: FactOf<'change'>,
  asPrice: FactOf<'change'>,
): Fact | undefined => {
  if (from === undefined) return undefined;
  // "12.50 not 12" counts nothing.
  const whole = isWhole(asCount);
  const counts = state.lines.filter((line) => whole && line.count === Number(from));
  const prices = state.lines.filter((line) => line.price !== undefined && decimal(line.price.amount).eq(String(from)));
  const made = kindsMeant(state, undefined).filter(
    (kind) => whole && (madeOf(state, kind) === Number(from) || addedTo(state, kind) === Number(from)),
  );
  const [count, price, begun] = [counts[0], prices[0], made[0]];
  if (counts.length + prices.length + made.length !== 1 || decimal(state.price?.amount ?? '0').eq(String(from))) return undefined;
  if (begun) return madeInstead(state, asCount, begun);
  return count ? { ...asCount, piece: count.piece } : { ...asPrice, per: 'each', ...(price ? { piece: price.piece } : {}) };
};

/** "Make it 45" before anything is ordered or priced. */
const askOfNothing = ({ to, words }: FactOf<'change'>): Settled => {
  const price = (per: 'each' | 'all'): Fact => ({ fact: 'price', amount: String(to), per, words });
  const choices: Choice[] = [
    ...(Number.isInteger(Number(to))
      ? [{ words: soMany(to), facts: [{ fact: 'pieces' as const, piece: 'unspecified' as const, count: Number(to), words }] }]
      : []),
    { words: `${to} each`, facts: [price('each')] },
    { words: `${to} in all`, facts: [price('all')] },
  ];
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words, choices } };
};

/** "Make it 45": the count where only a count is known, the price where only a price is. Where both are, or some are made, it may be any of them: we ask. */
export const settleBareNumber = (state: EventState, change: FactOf<'change'>): Settled => {
  const asCount: FactOf<'change'> = {
    ...change,
    what: 'count',
    ...(state.lines.length === 1 ? { piece: (state.lines[0] as { piece: PieceKind }).piece } : {}),
  };
  const asPrice: FactOf<'change'> = { ...change, what: 'price', ...(change.to === undefined ? {} : { to: String(change.to) }) };
  const known = toldFrom(state, change, asCount, asPrice);
  if (known) return settled(known);
  const hasPrice = state.price !== undefined || state.lines.some((line) => line.price);
  if (state.lines.length === 0) return hasPrice ? settled(asPrice) : askOfNothing(change);
  if (!isWhole(change)) return settled(asPrice);
  const [first, another] = kindsMeant(state, change.piece).filter((kind) => madeOf(state, kind) > 0);
  const begun = change.piece === undefined ? (state.lately?.piece ?? (another === undefined ? first : undefined)) : first;
  const added = begun === undefined ? undefined : addedTo(state, begun);
  const kind = begun === undefined || kindsMeant(state, undefined).length < 2 ? '' : ` ${kindWords(begun, Number(change.to))}`;
  const others = begun !== undefined && added !== undefined && madeOf(state, begun) > added;
  const choices: Choice[] = [
    { words: soMany(change.to), facts: [asCount] },
    ...(hasPrice ? [{ words: `${change.to} each`, facts: [asPrice] }] : []),
    // "oops 8" behind "did another 9" where others were made before
    ...(begun !== undefined && others
      ? [{ words: `${change.to}${kind} made, not ${added}`, facts: [madeInstead(state, change, begun)] }]
      : []),
    // "oops 18" behind "20 done"
    ...(begun !== undefined
      ? [
          {
            words: `${change.to}${kind} made${others ? ' in all' : ''}`,
            facts: [{ ...change, what: 'made' as const, to: Number(change.to), piece: begun }],
          },
        ]
      : []),
  ];
  if (choices.length === 1) return settled(asCount);
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words: change.words, choices } };
};
