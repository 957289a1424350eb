// "The combs are 28 not 26" of three at £26: what a number was tells whether it counts them, prices them or tells how many are made. Where it is none of these alone, it is asked.

import type { Fact, FactOf } from '../reading/fact.ts';
import type { Choice } from '../reading/reading.ts';
import { soMany } from '../reading/words/kind-words.ts';
import { decimal } from '../values/decimal.ts';
import { madeOf } from './apply-progress.ts';
import type { EventState, OrderLine } from './event.ts';
import { type Settled, settled } from './settled.ts';

type Change = FactOf<'change'>;

/** "28 combs not 26", and not "combs are 28 not 26": a number before its kind is said as a count. */
const isSaidAsCount = ({ to, words }: Change): boolean =>
  new RegExp(`(^|\\s)${to}( more)? (?!not\\b|instead\\b|now\\b)[a-z]`, 'i').test(words);

const asPrice = (change: Change): Change => ({ ...change, what: 'price', to: String(change.to), per: 'each' });

const isPriced = ({ price }: OrderLine): boolean => price?.per === 'each';

/** The kind as so many: where it has several lines, all of them with the one put right. */
const counted = (change: Change, lines: readonly OrderLine[]): Fact[] => {
  const [line, another] = lines;
  if (another === undefined) return [{ ...change, ...(line ? { from: line.count } : {}) }];
  const right = lines.find(({ count }) => count === Number(change.from)) ?? line;
  return lines.map((each) => ({ fact: 'pieces', words: change.words, ...each, count: each === right ? Number(change.to) : each.count }));
};

/** What a corrected number of a kind is, by what it was; nothing where only a count can be meant. `lines`: those of its kind. */
export const byFormerValue = (state: EventState, change: Change, lines: readonly OrderLine[]): Settled | undefined => {
  const { to, from, piece, words } = change;
  const [line] = lines;
  if (typeof to !== 'number' || to === 0 || from === undefined || line === undefined) return undefined;
  const isPrice = lines.some((each) => isPriced(each) && decimal(each.price?.amount ?? '0').eq(String(from)));
  const isCount = lines.some(({ count }) => count === Number(from)) || lines.reduce((sum, { count }) => sum + count, 0) === Number(from);
  const isMade = madeOf(state, line.piece) > 0 && madeOf(state, line.piece) === Number(from);
  if (isPrice && !isCount && !isMade && !isSaidAsCount(change)) return settled(asPrice({ ...change, piece: piece ?? line.piece }));
  if (isMade && !isCount && !isPrice) return settled({ ...change, what: 'made', piece: piece ?? line.piece });
  const isOpen = isPrice || (isCount ? isMade : lines.length === 1 && lines.some(isPriced) && !isSaidAsCount(change));
  if (!isOpen || (lines.length > 1 && isSaidAsCount(change))) return undefined;
  const named: Change = { ...change, piece: piece ?? line.piece };
  const choices: Choice[] = [
    { words: soMany(to), facts: counted(named, lines) },
    ...(lines.some(isPriced) ? [{ words: `${to} each`, facts: [asPrice(named)] }] : []),
    ...(isMade ? [{ words: `${to} made`, facts: [{ ...named, what: 'made' as const }] }] : []),
  ];
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words, choices } };
};
