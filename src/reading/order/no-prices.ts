// Numbers that look like prices and are none: the hour of a reception ("hotel from 5"), when somebody can be rung ("call after 6"), what a ticket
// or a meal costs a head.

import { hourOf } from '../dates/clock-time.ts';
import { pattern } from '../pattern.ts';
import { isEnd } from '../text/sentence-end.ts';
import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { isVenue } from '../words/venue-words.ts';

const opens = new Set(['from', 'after', 'before', 'until', 'till', 'til']);
const place = /^(home|evenings|everyone|people|shop|studio|office|open|opens|there|here|in|kitchen)$/;
// "call me after 6", "he's home from 5"
const reached =
  /^(call|ring|phone|text|txt|reach|whatsapp|message|contact|free|available|home|awake|work|mobile|him|her|me|us|back|in|up|out|there|here|off|finish|finishes|leaves)$/;
const boundary = /^(,|;|\.|\(|\)|!|\?)$/;
const spread = 8;

const clauseBefore = (tokens: readonly Token[], index: number): readonly Token[] => {
  let start = index;
  while (start > Math.max(0, index - spread) && tokens[start - 1]?.kind !== 'line' && !boundary.test(tokens[start - 1]?.text ?? ''))
    start -= 1;
  return tokens.slice(start, index);
};
const ofOurs = ({ means, text }: Token): boolean =>
  ['piece', 'each', 'all', 'budget', 'upTo', 'material', 'ingredient'].some((tag) => means[tag] !== undefined) ||
  /^(price|prices|priced|start|starts|starting|cost|costs|charge|quote|rate|rates|go|going|they|those|these)$/.test(text);

/** Whether the bare number is an hour told behind "from" or "after", in a clause about where people are or when somebody can be reached. */
export const isHourToldSo = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  const ahead = tokens[index - 1]?.text ?? '';
  const there = /^(at|@)$/.test(ahead) && tokens[index - 2]?.text !== 'do' && isVenue(tokens[index - 2]?.text ?? ''); // "doors at 3"
  if (token?.number?.form !== 'plain' || hourOf(token) === undefined || !(opens.has(ahead) || there)) return false;
  const next = tokens[index + 1];
  if (
    next !== undefined &&
    ['each', 'piece', 'included', 'onTop', 'taxName', 'taxWord', 'all'].some((tag) => next.means[tag] !== undefined)
  )
    return false;
  const clause = clauseBefore(tokens, index - 1);
  if (clause.length === 0 || clause.some(ofOurs)) return false;
  return clause.some(({ text }) => isOccasion(text) || isVenue(text) || place.test(text) || reached.test(text));
};

const other =
  '(ticket|tickets|ticket money|entry|entrance|admission|dinner|dinners|lunch|meal|meals|menu|catering|caterer|caterers|buffet|food|drinks|canapes|bar|coach|bus|hog roast|breakfast|brunch|supper|tea|cake|band|hotel|rooms|venue|photographer|donation)';
const others = pattern(other);
const othersCost = pattern(
  `${other} (money)? (is|are|costs|cost|comes to|come to|charge|charges|works out at|price|,){0,2} (about|around|only)?`,
);
const aHead = /^(a|per|\/) ?(head|person|guest|ticket|plate|cover)$|^(pp|p\/p|p\.p|\/head|\/person)$/;
const isFor = (tokens: readonly Token[], start: number): boolean => [1, 2].some((by) => tokens[start - by]?.text === 'for');
const named = ({ means }: Token): boolean => means['piece'] !== undefined;
/** "the photographer comes out of the ticket money, R450 a head": what something else costs each guest. */
export const costsOthers = (tokens: readonly Token[], index: number): boolean => {
  const next = tokens[index + 1]?.text ?? '';
  const said = aHead.test(next) || aHead.test(`${next} ${tokens[index + 2]?.text ?? ''}`);
  if (!said) return false;
  let [start, end] = [index, index];
  while (start > 0 && !isEnd(tokens, start - 1)) start -= 1;
  while (!isEnd(tokens, end)) end += 1;
  if (others.in(tokens, start, index) === undefined) return false;
  if (!tokens.slice(start, end).some(named)) return true;
  // "60 bouts and 20 corsages, dinner is £45 a head": right before the number, and no "for the dinner, £8 a head".
  return [1, 2, 3, 4].some((by) => othersCost.at(tokens, index - by, index)?.end === index && !isFor(tokens, index - by));
};

// "corsages for both mums and my gran, 3 in all": so few are no total of money.
const sumWords = /^(in all|altogether|all told|in total|all together)$/;
const mostCounted = 12;
/** Whether a bare number is a small count that is said to be all of them. */
export const isSumOfFew = (tokens: readonly Token[], index: number): boolean => {
  const number = tokens[index]?.number;
  if (number?.form !== 'plain' || !/^\d{1,2}$/.test(number.amount) || Number(number.amount) > mostCounted) return false;
  return sumWords.test(tokens[index + 1]?.text ?? '') && !/^(at|@|for|is|=|:|to)$/.test(tokens[index - 1]?.text ?? '');
};
