// A list of wearers with one price behind it: "1 groom 9 groomsmen all lapels, 14 each", "groom, best man, 4 ushers buttonholes £12 each".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isSingle, type Token } from '../text/token.ts';
import { readWearers } from './read-wearers.ts';

// "2 dads lapels 15 each": fifteen of them would be many for each; "6 ushers each side" counts.
const leastPrice = 8;
const pricesEach = (token: Token, next: Token | undefined): boolean =>
  token.number?.form === 'plain' && Number(token.number.amount) >= leastPrice && next?.text === 'each';
const speaksOfMoney = (token: Token, next: Token | undefined): boolean =>
  token.number?.form === 'money' ||
  (token.means['each'] !== undefined && token.text !== 'each' && token.text !== 'a piece' && next?.text !== 'side') ||
  token.means['budget'] !== undefined ||
  token.means['other'] !== undefined ||
  (next?.number?.form === 'plain' && (token.text === 'at' || token.text === '@')) ||
  token.number?.form === 'duration';

/** The part without a price behind its list: "1 groom 9 groomsmen all lapels, 14 each"; undefined when money stands anywhere else. */
export const beforePrice = (reader: Reader, part: Part): Part | undefined => {
  const { tokens } = reader;
  const comma = firstWhere(
    tokens,
    part.start,
    part.end,
    ({ text }, at) =>
      text === ',' &&
      tokens[at + 1]?.number !== undefined &&
      (priceTail.at(tokens, at, part.end) !== undefined || endsAtPrice(tokens, at + 1, part.end)),
  );
  const cut = comma < 0 ? behindKind(tokens, part) : comma;
  const own = cut < 0 ? part : { ...part, end: cut };
  for (let index = own.start; index < own.end; index++) {
    const token = tokens[index];
    if (token === undefined) continue;
    const next = tokens[index + 1];
    if (speaksOfMoney(token, next)) return undefined;
    if (pricesEach(token, next) && tokens[index + 2]?.text !== 'side' && index + 1 < own.end) return undefined;
  }
  if (cut < 0) return own;
  const { entries, clean, unknown } = readWearers(reader, own);
  return clean && !unknown && entries.length >= 2 && entries.every((each) => each.piece !== undefined) ? own : undefined;
};
const taxed = '(plus|\\+|<included>|<onTop>|<tax>)';
const priceTail = pattern(`, (at|@)? (<money>|<plain> (<each>|${taxed}))`);
// "groom, best man, 4 ushers buttonholes £12 each": right behind the kind they all wear, with nobody named behind it.
const kindTail = pattern(`(-|:|=|at|@){0,2} (<money>|<plain> (<each>|${taxed}))`);
// "2 mums 2 nans wrist corsages at 50": no hour of the day; "200 total", "for 75": more than wear them.
const atTail = pattern('(at|@) <n:plain>');
const sumTail = pattern('((-|:|=|at|@|for){0,2} <n:plain> (for)? <all>|for <n:plain>)');
const leastAt = 13;
const leastSum = 25;
const endsAtPrice = (tokens: readonly Token[], index: number, end: number): boolean => {
  const match = sumTail.at(tokens, index, end) ?? atTail.at(tokens, index, end);
  const number = match?.kept['n']?.number;
  const next = match === undefined ? undefined : tokens[match.end];
  if (match === undefined || !isSingle(number)) return false;
  const ends = match.end === end || next?.kind === 'line' || /^[,.;]$/.test(next?.text ?? '');
  return ends && Number(number.amount) >= (match.end - index > 2 || tokens[index]?.text === 'for' ? leastSum : leastAt);
};
// "lapels lads x4 dads x2 groom x1 15 ea", "buttonholes for groom, best man, 4 ushers £12 each": right behind the last who is named.
const endsList = (tokens: readonly Token[], index: number): boolean => {
  const [before, x] = [tokens[index - 1], tokens[index - 2]];
  if (before?.means['piece'] !== undefined || before?.means['role'] !== undefined) return true;
  return before?.number?.form === 'plain' && (x?.text === 'x' || x?.means['role'] !== undefined);
};
const named = pattern('(<role>|<owner>|<piece>)');
const behindKind = (tokens: readonly Token[], { start, end }: Part): number => {
  const at = firstWhere(
    tokens,
    start + 1,
    end,
    (_, index) => endsList(tokens, index) && (kindTail.at(tokens, index, end) !== undefined || endsAtPrice(tokens, index, end)),
  );
  if (at < 0 || named.in(tokens, at, end) !== undefined) return -1;
  // "5 corsages for the mums, 4 ushers bouts £12 each": two kinds, and one price.
  return tokens.slice(start, end).filter(({ means }) => means['piece'] !== undefined).length === 1 ? at : -1;
};
