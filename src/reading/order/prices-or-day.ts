// Two numbers with a stroke behind two counted kinds and nothing else: "12 bouts & 3 corsages, 11/18" may give their prices or a day.

import { slashForms } from '../dates/slash-dates.ts';
import type { Fact } from '../fact.ts';
import type { Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { Token } from '../text/token.ts';
import type { Line } from './match-prices.ts';
import type { Mention } from './mention.ts';
import { isPriceSeries } from './price-series.ts';
import { lineFacts } from './read-order.ts';

const ofDays = (token: Token): boolean =>
  ['month', 'weekday', 'event'].some((tag) => token.means[tag] !== undefined) ||
  /^(event|wedding|wed|party|date|day|due|needed|on|by|for|gala|prom|formal|dance|function|ceremony|today|tomorrow|before|from)$/.test(
    token.text,
  );

/** Whether the numbers at this token are such a pair. */
export const isPricesOrDay = (reader: Reader, index: number): boolean => {
  const { tokens } = reader;
  const token = tokens[index];
  const parts = token?.number?.form === 'slashed' ? token.number.parts : undefined;
  if (token === undefined || parts?.length !== 2 || !token.text.includes('/') || parts.some((part) => part < 5)) return false;
  const before = tokens[index - 1];
  const closed = before?.text === '(' && tokens[index + 1]?.text === ')' ? 1 : 0;
  const apart = before?.kind === 'line' || /^[,:.(-]$/.test(before?.text ?? '') || before?.means['piece'] !== undefined;
  if (!apart || isPriceSeries(reader, index)) return false;
  if (index + closed !== tokens.length - 1 || tokens.some((each, at) => at !== index && (ofDays(each) || each.number?.form === 'money')))
    return false;
  const numbers = tokens.filter((each, at) => at < index && each.number !== undefined);
  const kinds = tokens.filter((each, at) => at < index && each.means['piece'] !== undefined);
  return numbers.length === 2 && kinds.length === 2 && numbers.every((each) => each.number?.form === 'plain') && reader.free(index);
};

/** The question which of the two is meant. */
export const askPricesOrDay = (reader: Reader, mentions: readonly Mention[]): { index: number; ask: Ask } | undefined => {
  const lines = mentions.filter((mention) => mention.countIndex !== undefined);
  const index = reader.tokens.length - (reader.tokens.at(-1)?.text === ')' ? 2 : 1);
  const parts = reader.tokens[index]?.number?.parts ?? [];
  if (lines.length !== 2 || !isPricesOrDay(reader, index)) return undefined;
  const priced = lines.map(
    (mention, at): Line => ({
      mention,
      price: { index, start: index, end: index + 1, number: { form: 'money', amount: String(parts[at]) }, per: 'each', at: false },
    }),
  );
  const words = reader.words(index, index + 1);
  const [day] = slashForms(reader.tokens, index, reader.context)?.days ?? [];
  if (day === undefined) return undefined;
  const choices = [
    { words: `the prices ${parts.join(' and ')}`, facts: lineFacts(reader, { lines: priced, spare: [] }) },
    { words: `the day ${day}`, facts: [{ fact: 'date', date: day, yearAssumed: true, orderAssumed: true, words } satisfies Fact] },
  ];
  return { index, ask: { about: 'price', why: 'which number', words, choices } };
};
