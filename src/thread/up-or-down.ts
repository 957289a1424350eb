// "Drop the corsages to 28" of six at £30: a drop makes a number less, so the one that can become 28 by it is meant. Where both can, it is asked.

import type { FactOf } from '../reading/fact.ts';
import type { Ask, Choice } from '../reading/reading.ts';
import { soMany } from '../reading/words/kind-words.ts';
import { decimal } from '../values/decimal.ts';
import { byFormerValue } from './by-former-value.ts';
import type { EventState, OrderLine } from './event.ts';
import { kindInOrder } from './kind-in-order.ts';
import { type Settled, settled } from './settled.ts';

type Change = FactOf<'change'>;

const down = /\b(drop|dropped|dropping|lower|lowered|reduce|reduced|cut|down|trim|trimmed)\b/i;
const up = /\b(up|raise|raised|bump|bumped|increase|increased|lift|lifted|hike|hiked)\b/i;

// "make the corsages 22" of two at £20: a number behind its kind, near what one costs and far from how many there are. Common practice, no source.
const leap = 4;
const isLikePrice = ({ to, words }: Change, { count, price }: OrderLine): boolean => {
  if (price === undefined || !new RegExp(`[a-z] (at |to |be )?${to}( now| please| pls| thanks| ta)?$`, 'i').test(words.trim()))
    return false;
  const share = decimal(String(to)).dividedBy(price.amount);
  return Number(to) >= leap * count && share.gte('0.7') && share.lte('1.4');
};

/** Which of a line's numbers a change to a new value means, where its word says which way it goes. */
export const upOrDown = (change: Change, line: OrderLine): Settled => {
  const { count, price } = line;
  const { to, words } = change;
  const isDown = down.test(words);
  // "drop the crowns": none of them. Nothing is sold at nothing.
  if (typeof to !== 'number' || to === 0 || change.from !== undefined || price?.per !== 'each') return settled(change);
  if (isDown === up.test(words)) return isLikePrice(change, line) ? askEither(change, line, to) : settled(change);
  const amount = decimal(price.amount);
  const [byCount, byPrice] = isDown ? [to < count, amount.gt(to)] : [to > count, amount.lt(to)];
  if (byPrice && !byCount) return settled(asPriceOf(change, line, to));
  return byPrice && byCount ? askEither(change, line, to) : settled(change);
};

const asPriceOf = (change: Change, { price }: OrderLine, to: number): Change => ({
  ...change,
  what: 'price',
  to: String(to),
  ...(price === undefined ? {} : { from: price.amount }),
  per: 'each',
});

const askEither = (change: Change, line: OrderLine, to: number): Settled => {
  const choices: Choice[] = [
    { words: soMany(to), facts: [{ ...change, from: line.count }] },
    { words: `${to} each`, facts: [asPriceOf(change, line, to)] },
  ];
  return { kind: 'ask', ask: { about: 'count', why: 'which number', words: change.words, choices } };
};

/** A question whether a number is how many or how much, which the order answers: its fact, or nothing where it stays one. */
export const answeredByOrder = (state: EventState, { why, choices }: Ask): Change | undefined => {
  const [first, second, third] = choices.map(({ facts }) => (facts.length === 1 ? facts[0] : undefined));
  if (why !== 'which number' || third !== undefined || choices.length !== 2) return undefined;
  if (first?.fact !== 'change' || first.what !== 'count' || !first.piece || second?.fact !== 'change' || second.what !== 'price')
    return undefined;
  const piece = kindInOrder(state.lines, first.piece);
  const ofKind = state.lines.filter((each) => each.piece === piece);
  const [line, another] = ofKind;
  // "corsages from 30 to 33" of two at £30
  const former = byFormerValue(state, { ...first, piece }, ofKind);
  if (former?.kind === 'fact' && former.fact.fact === 'change') return former.fact;
  if (line === undefined || another !== undefined || !down.test(first.words) === !up.test(first.words)) return undefined;
  const settledNow = upOrDown({ ...first, piece }, line);
  return settledNow.kind === 'fact' && settledNow.fact.fact === 'change' ? settledNow.fact : undefined;
};
