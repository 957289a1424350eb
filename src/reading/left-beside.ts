// What nobody read beside an order: money, counted pieces, counted stems. Then what was read is a part of what was meant, and it is asked before it is kept.

import { decimal } from '../values/decimal.ts';
import type { Fact, FactName } from './fact.ts';
import { longList } from './goods/whole-list.ts';
import type { Ask } from './reading.ts';
import type { Message } from './text/message.ts';
import { isCount, type Token } from './text/token.ts';
import { wordList } from './words/word-list.ts';

const ofOrder: ReadonlySet<FactName> = new Set<FactName>(['pieces', 'price', 'tax', 'material', 'change', 'pack', 'recipe']);

// "delivery $40 on top", "€600 for the tables": money of another matter.
const others = new Set(
  wordList(`
  delivery, deliver, delivered, deposit, paid, pays, owes, owed, hall, table, tables, bouquet, bouquets, arch, decor,
  setup, venue, ticket, tickets, box, boxes, favour, favours, favor, favors, van, petrol, fuel, parking, toll, balance, hire, vase, vases, invoice, invoiced, budget, transport, courier, postage, shipping
`),
);
const near = 6; // words

// What stands in another line is no word of this money: "2 corsages @ £24 = £50", and delivery in the line below.
const isOthers = (tokens: readonly Token[], index: number): boolean => {
  const ofOthers = ({ text, means }: Token): boolean => others.has(text) || means['other'] !== undefined;
  for (const step of [-1, 1])
    for (let at = index; Math.abs(at - index) <= near && tokens[at] !== undefined && tokens[at]?.kind !== 'line'; at += step)
      if (ofOthers(tokens[at] as Token)) return true;
  return false;
};

/** What the order comes to, so far as it is read: "£2.25 each so £168.75" leaves nothing open. */
const comesTo = (facts: readonly Fact[]): readonly string[] => {
  const each = facts.flatMap((fact) => (fact.fact === 'price' && fact.per === 'each' ? [fact.amount] : []))[0];
  return facts.flatMap((fact) => {
    if (fact.fact === 'price') return [fact.amount];
    const price = fact.fact === 'pieces' ? (fact.price?.amount ?? each) : undefined;
    return fact.fact !== 'pieces' || price === undefined ? [] : [price, decimal(price).times(fact.count).toString()];
  });
};

// "16.50 each, no hang on 17.50": what is put right is not what was read.
const putsRight = /^(no|nope|wait|no wait|hang|hang on|hold|hold on|sorry|soz|oops|whoops|actually|rather|meant|correction)$/;
// "pass no. 118": the number of a pass.
const isNumbered = (tokens: readonly Token[], index: number): boolean =>
  tokens[index - 1]?.text === '.' &&
  tokens[index - 1]?.glued === true &&
  tokens[index - 2]?.text === 'no' &&
  tokens[index - 3]?.kind === 'word';
const isPutRight = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.number?.form === 'plain' &&
  !isNumbered(tokens, index) &&
  tokens.slice(Math.max(0, index - 3), index).some(({ text }) => putsRight.test(text));

/** `isUnread`: nobody took it; `isHeld`: kept from all, as none of the order's or as not to be told; `isApart`: surely none of the order's. */
interface Left {
  readonly isUnread: (index: number) => boolean;
  readonly isHeld: (index: number) => boolean;
  readonly isApart: (index: number) => boolean;
}

const isLeftOver = (tokens: readonly Token[], { isUnread, isHeld, isApart }: Left, facts: readonly Fact[]): boolean => {
  const isLeft = (index: number): boolean => isUnread(index) || isHeld(index);
  const counted = (index: number): boolean => [index - 1, index + 1].some((at) => isLeft(at) && isCount(tokens[at]));
  const known = comesTo(facts);
  const ofGoods = facts.every(({ fact }) => fact === 'pack' || fact === 'tax') && facts.some(({ fact }) => fact === 'pack');
  const listed = ofGoods && facts.filter(({ fact }) => fact === 'pack').length >= longList;
  return tokens.some(({ number, means }, index) => {
    if (isUnread(index) && isPutRight(tokens, index)) return true;
    // Steps of a price, and what flowers somebody else had, are held on purpose.
    if (!(means['piece'] !== undefined || (number?.form === 'money' && !ofGoods) ? isLeft(index) : isUnread(index))) return false;
    if (isApart(index) || isOthers(tokens, index)) return false;
    // Beside a whole list of prices other money is the seller's: named as unread.
    if (number?.form === 'money') return !listed && !known.includes(decimal(number.amount).toString());
    return (means['piece'] !== undefined || means['ingredient'] !== undefined) && counted(index);
  });
};

/** What becomes of the facts: kept, asked about, or dropped where they are nothing without what was left ("40 bouts …, all dried"). */
export const keptBeside = (
  message: Message,
  left: Left,
  facts: readonly Fact[],
  unread: readonly string[],
): { readonly facts: readonly Fact[]; readonly asks: readonly Ask[] } => {
  const weighs = facts.some(({ fact }) => ofOrder.has(fact)) && !facts.some(({ fact }) => fact === 'question');
  if (!weighs || !isLeftOver(message.tokens, left, facts)) return { facts, asks: [] };
  if (facts.every(({ fact }) => fact === 'tax' || fact === 'material')) return { facts: [], asks: [] };
  return {
    facts: [],
    asks: [{ about: 'event', why: 'part left', words: unread.join(', '), choices: [{ words: 'take the rest', facts }] }],
  };
};
