// A client's mail or a run sheet pasted whole: where something in it was not read, what was read is asked about before any of it is kept.
// Among so many numbers one may be another's, and nobody reads a long answer as closely as a question.

import type { Ask, Reading } from './reading.ts';
import type { Message } from './text/message.ts';
import { isOfTrade, unreadWords } from './unread.ts';

const fromLength = 250; // characters: what people type themselves is shorter
type Read = Pick<Reading, 'facts' | 'asks' | 'unread'>;

/** Lines of a price list and of recipes stand each for itself: those that are read are kept, the others named. */
const isOfGoods = ({ facts }: Read): boolean => facts.every(({ fact }) => /^(pack|packed|tax|recipe)$/.test(fact));
const isPriceList = ({ facts }: Read): boolean => facts.some(({ fact }) => fact === 'pack');

/** What was left in sentences that were read in part, and whatever is of the trade; a phone number in a line of its own weighs nothing. */
const leftOpen = (message: Message, isLeft: (index: number) => boolean, ofGoods: boolean): readonly string[] => {
  const inPart = new Set<number>();
  for (const { start, end } of message.parts) {
    let taken = false;
    for (let index = start; index < end; index++) taken ||= !isLeft(index);
    for (let index = start; taken && index < end; index++) inPart.add(index);
  }
  const { tokens } = message;
  const weighs = (index: number): boolean =>
    isLeft(index) && tokens[index]?.number?.form !== 'time' && (inPart.has(index) || (!ofGoods && isOfTrade(tokens[index])));
  const open = unreadWords(message, weighs);
  // One plain number, "there before 10", is no reason.
  const [only, another] = open;
  return only !== undefined && another === undefined && !tokens.some((token, index) => weighs(index) && isOfTrade(token)) ? [] : open;
};

/** `isLeft`: nobody read this token, or it was held. */
export const askedAtOnce = (message: Message, read: Read, isLeft: (index: number) => boolean): Read => {
  if (message.clean.text.length < fromLength) return read;
  const told = read.facts.filter(({ fact }) => fact !== 'question');
  const ofGoods = isOfGoods(read);
  if (told.length === 0 || (ofGoods && isPriceList(read)) || read.asks.some(({ why }) => why === 'part left')) return read;
  const open = [...leftOpen(message, isLeft, ofGoods), ...read.asks.map(({ words }) => words)];
  if (open.length === 0) return read;
  const ask: Ask = { about: 'event', why: 'part left', words: open.join(', '), choices: [{ words: 'take the rest', facts: told }] };
  return { ...read, facts: [], asks: [ask] };
};
