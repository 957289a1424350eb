// A day of the month in words: "the tenth", "twenty-second of may".

import type { Token } from './token.ts';
import { skipHyphen } from './worded-numbers.ts';

const ordinalUnits: Readonly<Record<string, number>> = {
  first: 1,
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
};
const ordinalTens: Readonly<Record<string, number>> = {
  tenth: 10,
  eleventh: 11,
  twelfth: 12,
  thirteenth: 13,
  fourteenth: 14,
  fifteenth: 15,
  sixteenth: 16,
  seventeenth: 17,
  eighteenth: 18,
  nineteenth: 19,
  twentieth: 20,
  thirtieth: 30,
};
const inWords = new Set([...Object.keys(ordinalUnits), ...Object.keys(ordinalTens)]);

const month =
  /^(january|february|march|april|may|june|july|august|september|october|november|december|jan|feb|apr|jun|jul|aug|sep|sept|oct|nov|dec)$/;

// "twenty-second of may", "the tenth": a day of the month in words. "first" and "second" alone mean too much else.
export const ordinalWords = (tokens: readonly Token[], start: number): { day: number; next: number } | undefined => {
  const text = tokens[start]?.text ?? '';
  if (text === 'twenty' || text === 'thirty') {
    const at = skipHyphen(tokens, start + 1);
    const unit = ordinalUnits[tokens[at]?.text ?? ''];
    return unit === undefined ? undefined : { day: (text === 'twenty' ? 20 : 30) + unit, next: at + 1 };
  }
  // "sixth feb", "may the first"
  if (!inWords.has(text)) return undefined;
  const unit = ordinalUnits[text];
  const [ahead, further] = [tokens[start + 1]?.text ?? '', tokens[start + 2]];
  const named = month.test(ahead) && further?.text !== 'bank' && (ahead !== 'may' || further?.kind !== 'word');
  if (unit !== undefined && text !== 'second' && named) return { day: unit, next: start + 1 };
  const before = tokens[start - 1]?.text === 'the' ? tokens[start - 2] : tokens[start - 1];
  if (unit !== undefined && month.test(before?.text ?? '') && (text !== 'second' || tokens[start - 1]?.text === 'the'))
    return { day: unit, next: start + 1 };
  const day =
    ordinalTens[text] ??
    (tokens[start + 1]?.text === 'of' && !/^(the|all|them)$/.test(tokens[start + 2]?.text ?? '') ? ordinalUnits[text] : undefined);
  return day === undefined ? undefined : { day, next: start + 1 };
};
