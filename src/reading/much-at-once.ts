// A client's mail or a run sheet pasted whole: where something in it was not read, what was read is asked about before any of it is kept.
// Among so many numbers one may be another's, and nobody reads a long answer as closely as a question.

import type { Ask, Reading } from './reading.ts';

const fromLength = 250; // characters: what people type themselves is shorter
type Read = Pick<Reading, 'facts' | 'asks' | 'unread'>;

/** Lines of a price list stand each for itself: those that are read are kept, the others named. */
const isPriceList = ({ facts }: Read): boolean => facts.every(({ fact }) => fact === 'pack' || fact === 'tax' || fact === 'packed');

export const askedAtOnce = (length: number, read: Read): Read => {
  const told = read.facts.filter(({ fact }) => fact !== 'question');
  const open = [...read.unread, ...read.asks.map(({ words }) => words)].filter((words) => words !== '');
  const isAsked = read.asks.some(({ why }) => why === 'part left');
  if (length < fromLength || told.length === 0 || open.length === 0 || isAsked || isPriceList(read)) return read;
  const ask: Ask = { about: 'event', why: 'part left', words: open.join(', '), choices: [{ words: 'take the rest', facts: told }] };
  return { ...read, facts: [], asks: [ask] };
};
