// Pieces said with who wears them, in an order that holds their kind: "groom and best man in bouts" names two of thirty, it does not make them two.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Fact, FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import { decimal } from '../values/decimal.ts';
import { ordered } from './apply-progress.ts';
import { roleOf } from './apply-wearers.ts';
import type { EventState, OrderLine } from './event.ts';
import { kindInOrder } from './kind-in-order.ts';
import { asFacts, countedUp } from './lines-as-facts.ts';

type Pieces = FactOf<'pieces'>;
type Price = FactOf<'price'>;

/** Of a message: what it says of one kind that the order holds, with who wears them. */
interface Worn {
  readonly kind: PieceKind;
  readonly pieces: readonly Pieces[];
  readonly count: number;
  readonly roles: ReadonlySet<string>;
}

const isPieces = (fact: Fact): fact is Pieces => fact.fact === 'pieces';
const wearersIn = (facts: readonly Fact[]) => facts.flatMap((fact) => (fact.fact === 'wearers' && !fact.notes ? fact.wearers : []));

/** Whether a kind that is said is served by this one of the order: "40 pieces" may be any that the order does not name. */
const isServedBy = (lines: readonly OrderLine[], kind: PieceKind, said: PieceKind): boolean => {
  const held = kindInOrder(lines, said);
  return held === kind || (kind === 'unspecified' && !lines.some(({ piece }) => piece === held));
};

/** What the message says of the kind, where all of it is said of wearers; a plain number beside them is the order's. */
const wornOf = ({ lines }: EventState, facts: readonly Fact[], kind: PieceKind): Worn | undefined => {
  const pieces = facts.filter(isPieces).filter(({ piece }) => isServedBy(lines, kind, piece));
  const wearers = wearersIn(facts).filter(({ piece }) => piece !== undefined && isServedBy(lines, kind, piece));
  const apart = pieces.filter(({ wearer }) => wearer === undefined);
  const count = countedUp(pieces);
  if (pieces.length === 0 || pieces.some(({ adds, countMax }) => adds || countMax !== undefined)) return undefined;
  if (apart.length > 0 && countedUp(apart) !== countedUp(wearers)) return undefined;
  const roles = [...pieces.flatMap(({ wearer }) => wearer ?? []), ...wearers.map(({ wearer }) => wearer)].map(roleOf);
  return { kind, pieces, count, roles: new Set(roles) };
};

/** Those of the kind who are named already, each role once. */
const namedBefore = ({ lines, wearers }: EventState, kind: PieceKind): readonly { readonly role: string; readonly count: number }[] => {
  const listed = wearers.flatMap(({ wearer, count, piece }) =>
    piece !== undefined && isServedBy(lines, kind, piece) ? [{ role: roleOf(wearer), count }] : [],
  );
  const known = new Set(listed.map(({ role }) => role));
  const byLine = lines.flatMap(({ piece, wearer, count }) => (piece === kind && wearer ? [{ role: roleOf(wearer), count }] : []));
  return [...listed, ...byLine.filter(({ role }) => !known.has(role))];
};

const priceOf = ({ pieces }: Worn, facts: readonly Fact[]): string | undefined => {
  const each = facts.find((fact): fact is Price => fact.fact === 'price' && fact.per === 'each' && fact.piece === undefined);
  return pieces.find(({ price }) => price !== undefined)?.price?.amount ?? each?.amount;
};

const ofThose = /\b(is|are|will be|was|were) for\b/i;

/** All of the kind were said with their wearers, so more wearers are more pieces: the order's lines as they are then. */
const withTheirs = (state: EventState, { kind, pieces, count, roles }: Worn, named: readonly { role: string; count: number }[]): Fact[] => {
  const lines = state.lines.filter(({ piece }) => piece === kind);
  const [only, another] = lines;
  const [{ words }] = pieces as [Pieces];
  if (only !== undefined && another === undefined && only.wearer === undefined) {
    const others = countedUp(named.filter(({ role }) => !roles.has(role)));
    return asFacts([{ ...only, count: others + count }], words);
  }
  const kept = lines.filter(({ wearer }) => wearer === undefined || !roles.has(roleOf(wearer)));
  const price = lines.find((line) => line.price !== undefined)?.price;
  const said = pieces.map(({ fact: _, words: __, ...line }) => ({ ...(price ? { price } : {}), ...line, piece: kind }));
  return asFacts([...kept, ...said], words);
};

/** Whether they are some of those at another price, or more of them. */
const askOfThoseOrMore = (state: EventState, line: OrderLine, { kind, pieces, count }: Worn, amount: string): Ask => {
  const [{ words }] = pieces as [Pieces];
  const own = pieces.map(
    ({ adds: _, ...fact }): Pieces => ({ ...fact, piece: heldAs(kind, fact.piece), price: fact.price ?? { amount, per: 'each' } }),
  );
  const ofKind = state.lines.filter((each) => each.piece === line.piece);
  const fewer = asFacts(
    ofKind.map((each) => (each === line ? { ...line, count: line.count - count } : each)).filter((each) => each.count > 0),
    words,
  );
  const all = ordered(state, kind);
  return {
    about: 'count',
    why: 'which number',
    words,
    choices: [
      { words: `${count} of the ${all}`, facts: [...fewer, ...own] },
      { words: `${count} more`, facts: own.map((fact) => ({ ...fact, adds: true })) },
    ],
  };
};

/** The kind they are then: the order's, unless it has none yet. */
const heldAs = (kind: PieceKind, said: PieceKind): PieceKind => (kind === 'unspecified' ? said : kind);

const asWearers = ({ kind, pieces }: Worn): Fact[] => {
  const wearers = pieces.flatMap(({ wearer, count, piece }) =>
    wearer === undefined ? [] : [{ wearer, count, piece: heldAs(kind, piece) }],
  );
  return wearers.length === 0 ? [] : [{ fact: 'wearers', wearers, words: (pieces[0] as Pieces).words }];
};

/** The facts with what was said of wearers put as the order has it; and a question where their price is another. */
export const wornInOrder = (state: EventState, said: readonly Fact[]): { readonly facts: readonly Fact[]; readonly ask?: Ask } => {
  let facts = said;
  for (const kind of new Set(state.lines.map(({ piece }) => piece))) {
    const worn = wornOf(state, facts, kind);
    const all = ordered(state, kind);
    // "40 pieces", and then all forty by kind: that is the order.
    if (worn === undefined || (kind === 'unspecified' && worn.count >= all)) continue;
    // All of them, each with its price: that is what they are then.
    if (worn.pieces.length > 1 && worn.count === all && worn.pieces.every(({ price }) => price !== undefined)) continue;
    const own = new Set<Fact>(worn.pieces);
    const replacedBy = (others: readonly Fact[]): readonly Fact[] => [...facts.filter((fact) => !own.has(fact)), ...others];
    const lines = state.lines.filter(({ piece }) => piece === kind);
    const amount = priceOf(worn, facts);
    const dearer = amount !== undefined && !lines.some(({ price }) => price?.per === 'each' && decimal(price.amount).eq(amount));
    const named = namedBefore(state, kind);
    const isAllNamed = named.length > 0 && countedUp(named) >= all;
    // "One crown is for a baby so 40" of crowns that the others have already: of those nobody wears yet.
    const saidOfThem = ofThose.test(worn.pieces[0]?.words ?? '');
    const [line, second] = saidOfThem ? lines.filter(({ wearer }) => wearer === undefined) : lines;
    if (amount !== undefined && dearer && lines.some(({ price }) => price !== undefined)) {
      if (line !== undefined && second === undefined && saidOfThem && worn.count === all) {
        facts = replacedBy(worn.pieces.map((fact) => ({ ...fact, piece: heldAs(kind, fact.piece) })));
        continue;
      }
      if (line !== undefined && second === undefined && worn.count < all && (saidOfThem ? worn.count <= line.count : !isAllNamed))
        return { facts: replacedBy([]).filter((fact) => fact.fact !== 'price'), ask: askOfThoseOrMore(state, line, worn, amount) };
      facts = replacedBy(worn.pieces.map((fact) => ({ ...fact, piece: heldAs(kind, fact.piece), adds: true })));
    } else if (isAllNamed) facts = replacedBy(withTheirs(state, worn, named));
    else if (worn.count > all) facts = replacedBy(worn.pieces.map((fact) => ({ ...fact, piece: kind })));
    else
      facts = replacedBy(asWearers(worn)).map((fact) => (fact.fact === 'price' && fact.per === 'each' ? { piece: kind, ...fact } : fact));
  }
  return { facts };
};
