// The words behind a number that make it a total: "450 all up", "1,450 even for everything", "€220, for the lot", "R2 400 all".

import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';
import { codesAfter } from '../words/currency-words.ts';
import { forSeveral, isTogether } from './for-kinds.ts';

const allAfter = pattern(
  '(,)? (even|flat|straight|dead|round|net|clean)? (<k:upTo>|<k:budget>)? (\\( )? (<all>|for (all|the) <n:count>|for everyone|the lot|for (the|both) (pair|two|set|trio|lot)|for all of <filler>|for (the|that) line|per line|line total|the (two|three|four|five|six|pair|set)) (\\))? (<k:upTo>)?',
);
const taxScope = pattern('(each)? (n|and|&|is|are)? (<included>|<onTop>|plus|\\+|<tax>)');
// "4 corsages $28, total $220": the word heads the number behind it.
const headsNext = pattern("<all> (is|of|:|=|-|comes to|will be|would be|price|cost|'s)? (about|around)? <n:amount>");
const ofNext = (tokens: readonly Token[], end: number): boolean => {
  const match = headsNext.at(tokens, end + (tokens[end]?.text === ',' ? 1 : 0), tokens.length);
  if (match === undefined) return false;
  const next = tokens[match.end];
  return !(next?.text === 'x' || next?.means['piece'] !== undefined || next?.means['material'] !== undefined);
};

// "$150 for all 12": the number counts them; "150 for all 12 bouts" says it of bouts.
const forAllOf = pattern('(,)? <all> <n:count>');
const closes = (tokens: readonly Token[], end: number): boolean =>
  tokens[end] === undefined || tokens[end]?.kind !== 'word' || taxScope.at(tokens, end, tokens.length) !== undefined;

// "24 bouts at 12, total": what they come to is asked for, where the number can only be the price of one.
const lastWord = (tokens: readonly Token[], end: number): boolean =>
  tokens[end]?.text === ',' && /^(total|tot|ttl|the total)$/.test(tokens[end + 1]?.text ?? '') && tokens[end + 2] === undefined;
const ofOne = (tokens: readonly Token[], end: number): boolean =>
  /^(at|@)$/.test(tokens[end - 2]?.text ?? '') && Number(tokens[end - 1]?.number?.amount) < 60;

/** What stands behind the number ending here, when it says that it is for all. */
export const allBehind = (tokens: readonly Token[], end: number): Match | undefined => {
  const counted = forAllOf.at(tokens, end, tokens.length);
  if (counted !== undefined && tokens[counted.end - 2]?.text === 'for all' && closes(tokens, counted.end)) return counted;
  const kinds = forSeveral(tokens, end);
  if (kinds !== undefined && isTogether(tokens, kinds)) return kinds;
  const said = allAfter.at(tokens, end, tokens.length);
  if (said === undefined || ofNext(tokens, end) || (lastWord(tokens, end) && ofOne(tokens, end))) return undefined;
  // "12 bouts at 14, all in euros"
  if (Object.hasOwn(codesAfter, tokens[said.end]?.text ?? '')) return undefined;
  // "bouts 10 at 16, everything plus GST": what is all in or out of tax is no total.
  const ofTax =
    (tokens[end]?.text === ',' || /^(everything|both)$/.test(tokens[end]?.text ?? '')) &&
    taxScope.at(tokens, said.end, tokens.length) !== undefined;
  return ofTax ? undefined : said;
};

// "R2 400 all. 40 lapels": the word ends what it says.
export const loneAll = (tokens: readonly Token[], end: number): boolean => {
  const next = tokens[end + 1];
  return tokens[end]?.text === 'all' && (next === undefined || /^[.;)]$/.test(next.text) || next.kind === 'line');
};

/** "cap the whole thing at £400", "keep it all to $500" ahead of the number. */
export const wholeCapped = pattern(
  '(cap|keep|kept|capped|limit) (it all|all of it|everything|the (whole|entire|full) (thing|lot|job|order|bill)|the lot|it) (at|to)',
);
