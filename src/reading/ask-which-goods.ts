// "1 protea or 2 blushing brides in each lapel": a recipe that leaves open which of two goes in was held; it is read with the one and with the
// other, and where both are nothing but recipes it is asked which.

import { quantity } from './goods/quantity.ts';
import type { Ask, Reading } from './reading.ts';
import { type Message, messageOf } from './text/message.ts';
import { isSingle, type Token } from './text/token.ts';

const longest = 60; // tokens
const wonders = /^(should|shall|which|what|whether|if|unsure|maybe|would|could|how)$/;
const widest = 5; // tokens of one of the two

interface Side {
  readonly start: number;
  readonly goods: number; // where its name begins, behind how many
  readonly end: number;
}

const namesGoods = ({ means }: Token): boolean => means['ingredient'] !== undefined;
const isPlain = (tokens: readonly Token[], from: number, to: number): boolean =>
  tokens.slice(from, to).every(({ kind, means }) => kind === 'word' && means['piece'] === undefined && means['role'] === undefined);

/** What stands before the "or": how many, and of what. */
const sideBefore = (tokens: readonly Token[], or: number): Side | undefined => {
  for (let start = or - 2; start >= Math.max(0, or - widest); start--) {
    const goods = quantity(tokens, start)?.next;
    if (goods === undefined) continue;
    const ours = goods < or && isPlain(tokens, goods, or) && tokens.slice(goods, or).some(namesGoods);
    if (ours) return { start, goods, end: or };
  }
  return undefined;
};

/** What stands behind it: of what, and how many where that is said again. */
const sideBehind = (tokens: readonly Token[], start: number): Side | undefined => {
  const goods = quantity(tokens, start)?.next ?? start;
  let end = goods;
  while (end < goods + widest && tokens[end] !== undefined && !namesGoods(tokens[end] as Token)) end += 1;
  while (tokens[end] !== undefined && namesGoods(tokens[end] as Token)) end += 1;
  return end > goods && isPlain(tokens, goods, end) && tokens.slice(goods, end).some(namesGoods) ? { start, goods, end } : undefined;
};

const without = (tokens: readonly Token[], from: number, to: number): readonly Token[] => [...tokens.slice(0, from), ...tokens.slice(to)];

const isRecipe = ({ facts, asks, problems, unread }: Reading): boolean =>
  facts.length > 0 && asks.length + problems.length + unread.length === 0 && facts.every(({ fact }) => fact === 'recipe');

export const askWhichGoods = (message: Message, reading: Reading, read: (message: Message) => Reading): Ask | undefined => {
  const { clean, tokens, parts, words } = message;
  if (reading.facts.length + reading.asks.length + reading.problems.length > 0 || tokens.length > longest) return undefined;
  const [or, another] = tokens.flatMap(({ text }, at) => (text === 'or' ? [at] : []));
  // "should each bout have 1 rose or 2 spray roses"
  if (tokens.some(({ text }) => wonders.test(text))) return undefined;
  if (or === undefined || another !== undefined || parts.some(({ asked }) => asked)) return undefined;
  if (tokens.some(({ number }) => number !== undefined && !isSingle(number))) return undefined;
  const aside = tokens[or - 1]?.text === '(' ? 1 : 0;
  const [one, other] = [sideBefore(tokens, or - aside), sideBehind(tokens, or + 1)];
  if (one === undefined || other === undefined || (aside === 1 && tokens[other.end]?.text !== ')')) return undefined;
  // "1 rose or ranunculus": as many of either.
  const counted = other.goods > other.start;
  const first = without(tokens, one.end, other.end + aside);
  const second = without(without(tokens, other.end, other.end + aside), counted ? one.start : one.goods, other.start);
  const [low, high] = [first, second].map((each) => read(messageOf(clean, each)));
  if (low === undefined || high === undefined || !isRecipe(low) || !isRecipe(high) || low.facts.length !== high.facts.length)
    return undefined;
  const many = counted ? '' : `${words(one.start, one.goods)} `;
  const choices = [
    { words: words(one.start, one.end), facts: low.facts },
    { words: `${many}${words(other.start, other.end)}`, facts: high.facts },
  ];
  return { about: 'item', why: 'this or that', words: words(one.start, other.end + aside), choices };
};
