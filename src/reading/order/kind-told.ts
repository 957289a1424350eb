// What a price is, told apart from its number: "R2 000 for all of them, that's the budget", "£300 inc vat - that's the max", "their budget for 12 corsages is 360".

import { beginsAt, firstAt, pattern } from '../pattern.ts';
import { placesIn } from '../text/places-in.ts';
import type { Token } from '../text/token.ts';
import type { Price } from './price-at.ts';

const whose = "(the|our|a|her|his|my|their|an|client's|bride's|the client's|the bride's|the couple's)?";
const that = "(that's|thats|that is|it's|its|this is|which is|is|that'd be|that would be|that being|being)";
const behind = [
  pattern(
    `(,|-|;|.|\\(|and|but){0,2} ${that} (really|about)? ${whose} (absolute|total|whole|full|top|very|max|maximum|entire|client)? (<k:budget>|<k:upTo>) (budget|price|spend)? (\\))?`,
  ),
  pattern(`\\( ${whose} (total|max|whole|full)? (<k:budget>|max|maximum|limit|ceiling|cap) \\)`),
  pattern(
    `(,|-|;|.|and|but){0,2} ${that} (all|the most|as much as|as far as) (they've|they have|they can|they'll|they will|they want to|she's|she has|she can|she'll|she will|he's|he has|he can|he'll|he will|we've|we have|we can|we'll) (got|have|pay|spend|go|go to|afford|manage|stretch to|put in|set aside|put aside)? (to spend|for it|for them|for these)?`,
  ),
  pattern("is what (they've|they have|she's|she has|he's|he has|we've) (set aside|put aside|got|budgeted|got to spend|saved)"),
];
const goOver = pattern('(,|-|;|and|but){1,2} (they|she|he|we|client)? <k:upTo> (it|that|this)?');
const over = /(over|above|more than|past|higher than)$/;
const ceiling = /^(max|maximum|limit|cap|ceiling|tops|top whack|at most|at the most)$/;
// "that's the budget gone", "£300, that's under budget": says something else.
const otherwise = /^(gone|blown|spent|used|bust|busted|done|sorted|blew|over|under|wise|line|meeting|sheet|range)$/;

const ahead = pattern(
  "(<budget>|max|maximum|limit|cap|ceiling) for (the|our|all|all the|her|his|my|these|those)? (<count>)? <word>{0,2} <piece> ((and|&|\\+|,|n) (<count>)? <word>{0,1} <piece>){0,2} (is|'s|was|:|=|of|about|around|at|-){0,2}",
);

interface KindTold {
  readonly kind: NonNullable<Price['kind']>;
  readonly tokens: readonly number[];
}

const kindToldBehind = (tokens: readonly Token[], end: number): KindTold | undefined => {
  const cap = goOver.at(tokens, end, tokens.length);
  const next = tokens[cap?.end ?? end];
  if (over.test(cap?.kept['k']?.text ?? '') && next?.kind !== 'word' && next?.number === undefined)
    return { kind: 'up to', tokens: placesIn({ start: end, end: cap?.end ?? end }) };
  if (!beginsAt(behind, tokens, end)) return undefined;
  const match = firstAt(behind, tokens, end, tokens.length);
  if (match === undefined || otherwise.test(tokens[match.end]?.text ?? '') || tokens[match.end]?.number !== undefined) return undefined;
  const said = match.kept['k'];
  if (said?.means['upTo'] !== undefined && !ceiling.test(said.text)) return undefined;
  const capped = placesIn(match).some((index) => ceiling.test(tokens[index]?.text ?? ''));
  return { kind: capped ? 'up to' : 'budget', tokens: placesIn(match) };
};

// What is said before the pieces the price is for.
const kindToldAhead = (tokens: readonly Token[], start: number): KindTold | undefined => {
  if (!ahead.might(tokens)) return undefined;
  for (let from = Math.max(0, start - 12); from < start - 2; from++) {
    const match = ahead.at(tokens, from, start);
    if (match?.end === start)
      return {
        kind: tokens[from]?.means['budget'] !== undefined ? 'budget' : 'up to',
        tokens: placesIn(match).filter((index) => tokens[index]?.number === undefined && tokens[index]?.means['piece'] === undefined),
      };
  }
  return undefined;
};

const said = [...behind, goOver, ahead];
const taxBetween = pattern('(plus|+|<included>|<onTop>|w|with)? (<tax>|<included>|<onTop>) (in|on top|added|<included>|<onTop>)?');

// "€140 for 10 lapels, that's her budget"
const piecesBetween = pattern(
  'for (the|our|all|all the|her|his|their|these|those)? <count> <word>{0,2} <piece> ((and|&|\\+|,|n) (<count>)? <word>{0,1} <piece>){0,2}',
);

/** What else than its number says what a price is; the tax may stand between. */
export const kindTold = (tokens: readonly Token[], start: number, end: number): KindTold | undefined => {
  if (!said.some((form) => form.might(tokens))) return undefined;
  const tax = taxBetween.at(tokens, end, tokens.length);
  const pieces = piecesBetween.at(tokens, end, tokens.length);
  return (
    kindToldBehind(tokens, end) ??
    (tax && kindToldBehind(tokens, tax.end)) ??
    (pieces && kindToldBehind(tokens, pieces.end)) ??
    kindToldAhead(tokens, start)
  );
};
