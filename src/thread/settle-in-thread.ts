// A fact that leans on the thread ("make that 45", "made 12", "minus one") is completed from it, asked about, or refused.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import { kindWords } from '../reading/words/kind-words.ts';
import { decimal } from '../values/decimal.ts';
import { problem } from '../values/result.ts';
import { correctedCount, linesMeant } from './apply-change.ts';
import { kindsMeant, madeOf, ordered } from './apply-progress.ts';
import { byFormerValue } from './by-former-value.ts';
import type { EventState, OrderLine } from './event.ts';
import { isMissing, kindInOrder } from './kind-in-order.ts';
import { isGiven, ofKindHeld } from './kind-meant.ts';
import { askedOnceBegun } from './settle-begun.ts';
import { settleBrokenRight, settleOnlyBroke } from './settle-broken.ts';
import { settleSomeMaterial } from './settle-material.ts';
import { settleMoreInMaterial } from './settle-more.ts';
import { askOrderedOrMade, settleBareNumber } from './settle-number.ts';
import { settlePriceOff } from './settle-price-off.ts';
import { settleRecipe } from './settle-recipe.ts';
import { settleSomeKind } from './settle-some-kind.ts';
import { settleSpent } from './settle-spent.ts';
import { settleWearers } from './settle-wearers.ts';
import { type Settled, settled } from './settled.ts';
import { upOrDown } from './up-or-down.ts';

/** `beside`: all facts of the message, since "40 buttonholes, made 12" settles its own question. */
export const settleInThread = (state: EventState, said: Fact, beside: readonly Fact[]): Settled => {
  const fact = ofKindHeld(state, said, beside);
  if (fact.fact === 'material' && fact.piece && isMissing(state.lines, fact.piece) && !beside.some((other) => names(other, fact.piece)))
    return noSuchPiece(state, fact.piece);
  const begun = askedOnceBegun(state, fact, beside) ?? settleMoreInMaterial(state, fact) ?? settleOnlyBroke(state, fact);
  if (begun) return begun;
  if (fact.fact === 'change') return settleChange(state, fact, beside);
  if (fact.fact === 'made' || fact.fact === 'broke' || fact.fact === 'left') return settleProgress(state, fact, beside);
  if (fact.fact === 'wearers') return settleWearers(state, fact);
  if (fact.fact === 'price' && isLone(fact, beside)) return settleLonePrice(state, fact);
  if (fact.fact === 'recipe') return settleRecipe(state, fact);
  if (fact.fact === 'actual') {
    const spent = settleSpent(fact);
    return 'ask' in spent ? { kind: 'ask', ask: spent.ask } : settled(spent.fact);
  }
  return settled(fact);
};

const names = (fact: Fact, piece: PieceKind | undefined): boolean => fact.fact === 'pieces' && fact.piece === piece;

const noSuchPiece = (state: EventState, piece: PieceKind): Settled => ({
  kind: 'problem',
  problem: problem('no-such-piece', { piece, known: kindsMeant(state, undefined) }),
});

/** "Price is 14 now" of kinds that cost differently is hardly said of all of them. */
const differInPrice = ({ lines }: EventState): boolean =>
  new Set(lines.flatMap(({ price }) => (price === undefined ? [] : [price.amount]))).size > 1 &&
  new Set(lines.map(({ piece }) => piece)).size > 1;

/** "Price is 14 not 12": the kinds that were 12. */
const kindsPriced = ({ lines }: EventState, was: string | number | undefined): readonly PieceKind[] => [
  ...new Set(lines.flatMap(({ piece, price }) => (was !== undefined && price && decimal(price.amount).eq(String(was)) ? [piece] : []))),
];

/** "65" and no word for each or for what. */
const isLone = ({ per, piece, amounts, kind, words }: FactOf<'price'>, beside: readonly Fact[]): boolean =>
  per === 'each' &&
  !piece &&
  !amounts &&
  !kind &&
  !/\b(each|ea|every|all|both|apiece|per|a (piece|pop|go))\b/i.test(words) &&
  !beside.some((other) => other.fact === 'pieces' || other.fact === 'change');

/** One price for several kinds that have none is hardly meant for all: 65 for a crown and for a buttonhole. */
const settleLonePrice = (state: EventState, price: FactOf<'price'>): Settled => {
  const kinds = [...new Set(state.lines.flatMap((line) => (line.price ? [] : [line.piece])))];
  if (kinds.length < 2 || state.price !== undefined) return settled(price);
  return askPiece(price, kinds, (piece) => ({ ...price, piece }), 'all of them');
};

const isOtherCount = (fact: Fact, than: FactOf<'change'>): boolean =>
  fact.fact === 'pieces' || (fact.fact === 'change' && fact.what === 'count' && fact.piece !== than.piece);

const settleChange = (state: EventState, change: FactOf<'change'>, beside: readonly Fact[]): Settled => {
  if (change.what === 'number') return settleBareNumber(state, change);
  const off = settlePriceOff(state, change);
  if (off) return off;
  const kinds = kindsMeant(state, undefined);
  const broken = change.what === 'broke' ? settleBrokenRight(state, change, kindsMeant(state, change.piece)) : undefined;
  if (broken) return broken;
  if ((change.what === 'made' || change.what === 'broke') && !change.piece && kinds.length > 1)
    return askPiece(change, kinds, (piece) => ({ ...change, piece }));
  if ((change.what === 'piece' || change.what === 'material') && change.piece && isMissing(state.lines, change.piece))
    return noSuchPiece(state, change.piece);
  if (
    change.what === 'price' &&
    change.to !== undefined &&
    change.per !== 'all' &&
    !change.ofEvery &&
    !change.piece &&
    differInPrice(state)
  ) {
    const [only, other] = kindsPriced(state, change.from);
    if (only && !other) return settled({ ...change, piece: only });
    return askPiece(change, kinds, (piece) => ({ ...change, piece }), 'all of them');
  }
  if (change.what === 'material' && change.some !== undefined) return settleSomeMaterial(state, change);
  if (change.what === 'piece' && change.some !== undefined) return settleSomeKind(state, change, beside);
  if (change.what !== 'count') return settled(change);
  const [kind, second] = kinds;
  const [begun, other] = kinds.filter((each) => madeOf(state, each) > 0);
  if (isGiven(change) && !change.piece && begun && !other) return askOrderedOrMade(change, begun, second !== undefined);
  const meant = linesMeant(state, change.piece);
  const former = byFormerValue(state, change, meant);
  if (former || meant.length === 1) return former ?? upOrDown(change, meant[0] as OrderLine);
  if (meant.length > 1) return askWhichLine(meant, change);
  // "actually 16 bouts" after "40 pieces": those were they.
  if (change.piece && typeof change.to === 'number' && change.to > 0 && kind === 'unspecified' && second === undefined)
    return settled({ fact: 'pieces', piece: change.piece, count: change.to, words: change.words });
  // "add 2 crowns", "change 4 of the bouts to combs": what is given makes a new kind, and none can be taken from it.
  if (change.piece && (change.by !== undefined || change.times !== undefined) && kinds.length > 0 && !isGiven(change))
    return noSuchPiece(state, change.piece);
  // "scrap the combs" of an order without any, and nothing in their place
  if (change.to === 0 && change.piece && isMissing(state.lines, change.piece) && !beside.some((other) => isOtherCount(other, change)))
    return noSuchPiece(state, change.piece);
  if (!change.piece && kinds.length > 1) return askPiece(change, kinds, (piece) => ({ ...change, piece }));
  return settled(change.piece ? change : { ...change, piece: kinds[0] ?? 'unspecified' });
};

const settleProgress = (state: EventState, fact: FactOf<'made'> | FactOf<'broke'> | FactOf<'left'>, beside: readonly Fact[]): Settled => {
  const begun = fact.fact === 'made' && fact.stage !== undefined && fact.stage !== 'base' && fact.stage !== 'finished';
  if (fact.fact === 'made' && fact.all && fact.count !== undefined && !fact.piece) return settleAllOf(state, fact, beside);
  if (fact.fact === 'made' && (fact.all || fact.count === 0 || begun)) return settled(fact);
  // "2 crowns snapped" where none are ordered or made; what was made before it is ordered is kept.
  if (fact.piece && fact.fact !== 'made' && isMissing(state.lines, fact.piece) && madeOf(state, fact.piece) === 0)
    return beside.some((other) => names(other, fact.piece)) ? settled(fact) : noSuchPiece(state, fact.piece);
  if (fact.piece && fact.piece !== 'unspecified') return moreOrThose(state, fact, fact.piece);
  if (beside.some((other) => other.fact === 'pieces')) return settled(fact);
  const kinds = kindsMeant(state, undefined);
  if (kinds.length <= 1) return kinds[0] ? moreOrThose(state, { ...fact, piece: kinds[0] }, kinds[0]) : settled(fact);
  // "2 of them broke" once only buttonholes are made
  const [made, another] = kinds.filter((kind) => madeOf(state, kind) > 0);
  if (fact.fact === 'broke' && made && !another) return settled({ ...fact, piece: made });
  const same = fact.fact === 'left' ? leftOfMade(state, fact.count, beside) : undefined;
  if (same) return settled({ ...fact, piece: same });
  return askPiece(fact, kinds, (piece) => ({ ...fact, piece }));
};

/** "Corsages 5 done 3 to go" of eight: those left are of the kind just made, where the two add up to what is ordered. */
const leftOfMade = (state: EventState, left: number, beside: readonly Fact[]): PieceKind | undefined => {
  const [made, another] = beside.filter((fact) => fact.fact === 'made');
  if (made?.piece === undefined || made.count === undefined || another !== undefined) return undefined;
  const piece = kindInOrder(state.lines, made.piece);
  const rest = ordered(state, piece) - left;
  return rest === made.count || (!made.total && rest === madeOf(state, piece) + made.count) ? piece : undefined;
};

/** "All 24 done", "12 done, that's all of them" of several kinds: the whole order, the only kind that is so many, or asked. */
const settleAllOf = (state: EventState, fact: FactOf<'made'>, beside: readonly Fact[]): Settled => {
  const kinds = kindsMeant(state, undefined);
  const whole = kinds.reduce((sum, kind) => sum + ordered(state, kind), 0);
  if (kinds.length < 2 || whole === fact.count || beside.some((other) => other.fact === 'pieces')) return settled(fact);
  const [kind, another] = kinds.filter((each) => ordered(state, each) === (fact.of ?? fact.count));
  return kind && !another ? settled({ ...fact, piece: kind }) : askPiece(fact, kinds, (piece) => ({ ...fact, piece }));
};

/** "Boxed 12" once some are made: those, or twelve more. Boxing alone makes nothing. */
const boxed = /\b(boxed|packed|boarded|bagged|labelled|tagged|wrapped)\b/i;
const madeToo = /\b(made|make|did|done|finished|wired|complete|completed|another|more)\b/i;
const moreOrThose = (state: EventState, fact: FactOf<'made'> | FactOf<'broke'> | FactOf<'left'>, piece: PieceKind): Settled => {
  const before = madeOf(state, piece);
  if (fact.fact !== 'made' || fact.count === undefined || fact.total || fact.stage || fact.remade || before === 0) return settled(fact);
  if (!boxed.test(fact.words) || madeToo.test(fact.words)) return settled(fact);
  const total = (count: number): Fact => ({ ...fact, count, total: true });
  const choices = [
    { words: `${fact.count} of those made`, facts: [total(Math.max(before, fact.count))] },
    { words: `${fact.count} more made`, facts: [total(before + fact.count)] },
  ];
  return { kind: 'ask', ask: { about: 'made', why: 'which number', words: fact.words, choices } };
};

const askPiece = (fact: { words: string }, kinds: readonly PieceKind[], complete: (piece: PieceKind) => Fact, all?: string): Settled => ({
  kind: 'ask',
  ask: {
    about: 'piece',
    why: 'which piece',
    words: fact.words,
    choices: [
      ...kinds.map((piece) => ({ words: piece, facts: [complete(piece)] })),
      ...(all ? [{ words: all, facts: kinds.map(complete) }] : []),
    ],
  },
});

/** Two lines of one kind ("4 BH, 1 BH for the groom"): each choice restates both with one of them corrected. */
const askWhichLine = (lines: readonly OrderLine[], change: FactOf<'change'>): Settled => {
  const restated = (changed: OrderLine): Fact[] =>
    lines.map((line) => ({
      fact: 'pieces',
      words: change.words,
      ...line,
      count: line === changed ? correctedCount(line.count, change) : line.count,
    }));
  const choices = lines.map((line) => ({
    words: `the ${line.count} ${line.wearer ? `for the ${line.wearer}` : kindWords(line.piece, line.count)}`,
    facts: restated(line),
  }));
  return { kind: 'ask', ask: { about: 'piece', why: 'which piece', words: change.words, choices } };
};
