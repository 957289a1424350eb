// "10-12 bouts done", "crown takes me 35-40 mins": where a range or a choice held all there is, the message is read with the one end and with
// the other; where both say the same but for the number, it is asked which.

import type { Fact, FactName } from './fact.ts';
import type { Ask, Choice, Reading } from './reading.ts';
import type { Message } from './text/message.ts';
import { changed, isRangeOrChoice, type NumberRead, type Token } from './text/token.ts';

const longest = 30; // tokens
// What may be open in which facts; of how many so many stems are for, or of how many so many are made, nothing is asked.
const openIn: Readonly<Partial<Record<FactName, RegExp>>> = {
  made: /^(count|spares)$/,
  broke: /^count$/,
  left: /^count$/,
  crew: /^(people|hours|minutesPerPiece|piecesPerHour)$/,
  recipe: /^(stems|length)$/,
};
const derived = /^(totalHours|words)$/;

interface Difference {
  readonly key: string;
  readonly low: number;
  readonly high: number;
  readonly of: Readonly<Record<string, unknown>>; // what holds the value
}

/** Where two facts differ; undefined where they differ in more than a number. */
const differencesOf = (low: object, high: object): readonly Difference[] | undefined => {
  const [own, other] = [low, high] as Readonly<Record<string, unknown>>[];
  if (own === undefined || other === undefined || Object.keys(own).join() !== Object.keys(other).join()) return undefined;
  const found: Difference[] = [];
  for (const [key, value] of Object.entries(own)) {
    const mate = other[key];
    if (derived.test(key) || value === mate) continue;
    if (typeof value === 'number' && typeof mate === 'number') found.push({ key, low: value, high: mate, of: own });
    else {
      const within = typeof value === 'object' && typeof mate === 'object' && value && mate ? differencesOf(value, mate) : undefined;
      if (within === undefined) return undefined;
      found.push(...within);
    }
  }
  return found;
};

/** The only difference between two readings, where it is the two ends themselves. */
const onlyDifference = (
  low: Reading,
  high: Reading,
  [least, most]: readonly [number, number],
): (Difference & { fact: Fact }) | undefined => {
  const clear = ({ facts, asks, problems, unread }: Reading): boolean =>
    facts.length > 0 && asks.length + problems.length + unread.length === 0 && facts.every(({ fact }) => openIn[fact] !== undefined);
  if (!clear(low) || !clear(high) || low.facts.length !== high.facts.length) return undefined;
  const found: (Difference & { fact: Fact })[] = [];
  for (const [at, fact] of low.facts.entries()) {
    const differences = differencesOf(fact, high.facts[at] as Fact);
    if (differences === undefined) return undefined;
    found.push(...differences.map((each) => ({ ...each, fact })));
  }
  const [only, another] = found;
  const whole = another === undefined && only?.low === least && only.high === most;
  return whole && openIn[only.fact.fact]?.test(only.key) ? only : undefined;
};

const wordsFor = ({ key, of, fact }: Difference & { fact: Fact }, value: number): string => {
  if (fact.fact === 'recipe') {
    const { ingredient, unit = '' } = of as { ingredient?: string; unit?: string };
    const name = ingredient === 'stem' && value > 1 ? 'stems' : (ingredient ?? '');
    return key === 'length' ? `${value} ${unit} ${name}` : `${value} ${name}`;
  }
  if (key === 'spares') return value === 1 ? '1 spare' : `${value} spares`;
  if (fact.fact === 'made' && fact.stage !== undefined) return `${value} ${fact.stage}`;
  if (fact.fact === 'broke') return `${value} broken`;
  if (fact.fact !== 'crew') return `${value} ${fact.fact === 'made' && fact.remade ? 'remade' : fact.fact}`;
  if (fact.away) return `${value} away`;
  if (key === 'people') return value === 1 ? '1 person' : `${value} people`;
  if (key === 'hours') return fact.people === 1 ? `${value} hours` : `${value} hours each`;
  return key === 'piecesPerHour' ? `${value} an hour` : `${value} minutes each`;
};

// "bouts 16 to 20 done", "1-15 done" are pieces by their numbers.
const isNumbering = (tokens: readonly Token[], at: number): boolean => {
  const number = tokens[at]?.number;
  if (number?.form !== 'plain' || number.or !== undefined) return false;
  return tokens[at - 1]?.means['piece'] !== undefined || (number.amount === '1' && Number(number.max) > 3);
};

const withEnd = (tokens: readonly Token[], at: number, amount: string): Token[] =>
  tokens.map((token, index) => {
    if (index !== at || token.number === undefined) return token;
    const { max: _, or: __, ...number } = token.number;
    const single: NumberRead = { ...number, amount };
    return changed(token, { number: single, ...(number.form === 'plain' ? { text: amount } : {}) });
  });

export const askWhichEnd = (message: Message, reading: Reading, read: (tokens: readonly Token[]) => Reading): Ask | undefined => {
  const { tokens, parts } = message;
  if (reading.facts.length + reading.asks.length + reading.problems.length > 0 || tokens.length > longest) return undefined;
  if (parts.some((part) => part.asked)) return undefined;
  const at = tokens.findIndex(({ number }) => isRangeOrChoice(number));
  const number = tokens[at]?.number;
  const most = number?.max ?? number?.or?.[1];
  if (number === undefined || most === undefined || !/^(plain|duration|length)$/.test(number.form) || (number.or?.length ?? 2) !== 2)
    return undefined;
  if (tokens.some((token, index) => index !== at && isRangeOrChoice(token.number)) || isNumbering(tokens, at)) return undefined;
  const [low, high] = [read(withEnd(tokens, at, number.amount)), read(withEnd(tokens, at, most))];
  const difference = onlyDifference(low, high, [Number(number.amount), Number(most)]);
  if (difference === undefined) return undefined;
  const choices: Choice[] = [
    { words: wordsFor(difference, difference.low), facts: low.facts },
    { words: wordsFor(difference, difference.high), facts: high.facts },
  ];
  const about = difference.fact.fact === 'made' ? 'made' : difference.fact.fact === 'recipe' ? 'item' : 'count';
  return { about, why: 'low or high', words: message.words(0, tokens.length), choices };
};
