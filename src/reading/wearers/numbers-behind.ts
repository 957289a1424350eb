// Numbers that stand behind those they count: "ushers four", "groom 1 best man 1 ushers 4", "ushers - five".

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isCount, type Token } from '../text/token.ts';
import { isPlural, pairs } from './role-counts.ts';
import { countedBehind } from './wearer-words.ts';

// "groom 1 best man 1 ushers 4": every number stands behind its name.
export const countsBehind = ({ tokens }: Reader, part: Part): boolean => {
  const sum = firstWhere(tokens, part.start, part.end, ({ text }) => /^(total|in total|altogether|so|=|makes)$/.test(text));
  const told = tokens
    .slice(part.start, sum < 0 ? part.end : sum)
    .filter((token) => token.means['role'] !== undefined || token.number?.form === 'plain');
  return told.length >= 4 && told.length % 2 === 0 && told.every((token, at) => (token.means['role'] !== undefined) === (at % 2 === 0));
};

// "ushers - five, 2 dads", "groomsmen, 5 of them, groom": a number behind a pause, with nothing more said of it.
const paused = pattern('<r:role> (,|-|:|\\() <n:count> (of (them|those|em|these))? (\\))?');
const ofThem = pattern('<r:role> (,|-|:|;|\\()? <n:count> of (them|those|em|these) (\\))?');
export const behindPause = (reader: Reader, index: number, end: number): Match | undefined => {
  const match = ofThem.at(reader.tokens, index, end) ?? paused.at(reader.tokens, index, end);
  const next = reader.tokens[match?.end ?? end];
  const closes = match?.end === end || next?.kind === 'sign' || next?.kind === 'line' || /^(and|n|plus)$/.test(next?.text ?? '');
  return closes && isPlural(match?.kept['r']?.text ?? '') ? match : undefined;
};

/** How many are counted back to those named last: "groomsmen, 5 of them, groom and two grandpas" are five groomsmen, and five is no total. */
export const countsThem = (reader: Reader, start: number, end: number): Match | undefined => {
  for (let index = ofThem.next(reader.tokens, start, end); index < end; index = ofThem.next(reader.tokens, index + 1, end)) {
    const match = isCount(reader.tokens[index - 1]) ? undefined : behindPause(reader, index, end);
    if (match !== undefined && ofThem.at(reader.tokens, index, end) !== undefined) return match;
  }
  return undefined;
};
const joint = /^(and|&|n|plus|\+|\/)$/;
/** "groom, best man, ushers, 6 of them", "ushers and groomsmen, 5 of them, groom": of the last or of all of them. */
export const countsThemOrAll = (reader: Reader, { start, end }: Part): boolean => {
  const match = countsThem(reader, start, end);
  if (match === undefined || !/^[,;:-]$/.test(reader.tokens[match.start + 1]?.text ?? '')) return false;
  const wearers = (from: number, to: number): boolean =>
    firstWhere(reader.tokens, from, to, ({ means }) => means['role'] !== undefined) >= 0;
  return wearers(start, match.start) && (joint.test(reader.tokens[match.start - 1]?.text ?? '') || !wearers(match.end, end));
};

const reach = 5; // words: "and the two grooms mums ="
/** Where the name at `index` has to end: before the "=" of a sum ("bridesmaids + mums + nans = 11"); "ushers = 4 + dads = 2" counts each. */
export const upToSum = (tokens: readonly Token[], index: number, end: number): number => {
  if (!/^(\+|plus|and|&|n)$/.test(tokens[index - 1]?.text ?? '')) return end;
  const equals = (from: number, to: number): number => firstWhere(tokens, from, to, ({ text }) => text === '=');
  let line = index;
  while (line > 0 && tokens[line - 1]?.kind !== 'line') line -= 1;
  const at = equals(index, Math.min(end, index + reach));
  return at < 0 || equals(line, index) >= 0 ? end : at;
};

export const behind = (reader: Reader, index: number, end: number, numbersLast: boolean): Match | undefined => {
  const match = countedBehind.at(reader.tokens, index, end);
  const text = match?.kept['r']?.text ?? '';
  const next = reader.tokens[match?.end ?? end];
  if (numbersLast) return match;
  // "groom 1", and nothing more in the line
  if (match !== undefined && match.kept['n']?.number?.amount === '1' && (match.end === end || next?.kind === 'line')) return match;
  return match !== undefined && (isPlural(text) || pairs.has(text)) && next?.means['role'] === undefined ? match : undefined;
};
