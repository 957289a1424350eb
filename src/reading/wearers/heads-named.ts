// Somebody named beside how many wear one: one of them ("7 wearing, maid of honour is one of the 7"), or one who has none ("nothing for
// the DJ, just the 5 guys wearing").

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { sideOf, walkIn } from './wearer-words.ts';

const counted = '(the <k:count>|them|those|that|that number|that lot)';
export const oneOfTheCounted = [
  pattern(
    `(,|-|\\(|and|with|but){0,2} (the|his|her|our)? <role> (is|'s|being|are|as|was|,){0,1} (also|already|just)? ((one|1|part|<count>) (of|from|among)|among|in|in with|included in|incl in|<included> in|counted in|counted as one of|counted among) ${counted} (too|already|as well|btw)? (\\))?`,
  ),
  // "one of the 7 is the best man"
  pattern(
    `(,|-|\\(|and|with|but){0,2} (one|1|<count>) of ${counted} (is|'s|are|being) (also)? (the|his|her|our|a)? <role> (too|as well|btw)? (\\))?`,
  ),
];

// "11 wearing, thats with the two grandads", "14 in all including both nans": who is counted in it, and how many of those.
const theirs = (name: string): string =>
  `(the|both|his|her|our|my|their)? (<${name}:count>)? (of the)? (little)? (<role>|couple|bride and groom)`;
const such = "(,|-|that's|thats|that is|and|all|that|which|so|it){0,3} (\\()?";
const more = `((and|&|n|,) ${theirs('f')}){0,2}`;
export const theirsCounted = [
  pattern(`${such} (including|includes|incl|inc|counting|<included>) ${theirs('e')} ${more} (in that)? (\\))?`),
  pattern(
    `(,|-|\\(|and|so){0,2} (that's|thats|that is|that|it's|its) (all)? with ${theirs('e')} ${more} (included|counted|in|too|in that|already)? (\\))?`,
  ),
  pattern(`(,|-)? (\\()? (and|with)? ${theirs('e')} ${more} (included|incl|<included>|counted|in that|counted in) (in that|too)? (\\))?`),
];

const staff = '(<everyday>|photographer|photographers|photog|band|barman|bar staff|caterers|driver)';
const them = '(the|our|his|her|their|any of the|any)?';
const none = '(nothing|none|no one|not one|no flower|no flowers|no bout|no bouts|no buttonhole|no buttonholes|not) (for|on|the){1,2}';
const has =
  "(isn't|isnt|is not|aren't|arent|are not|doesn't|doesnt|does not|don't|dont|do not|won't|wont) (be)? (have|having|wear|wearing|get|getting|want|wanting|need|needing) ((any)? (flower|flowers)|one|any|them|a flower)?";
const goesOn = '(\\))? (,|-|;|after all|so|but|and){0,2}';
/** "nothing for the bride": what it tells first, before the count of those who wear one. */
export const nobodyThere = pattern(
  `(,|-|\\(|and|but|so){0,2} ${none} ${them} (<role>|<everyday>|<filler>) ((and|or|&|n|nor|/) ${them} (<role>|<everyday>|<filler>))? ${goesOn}`,
);
export const staffNone = pattern(`${none} ${them} ${staff} ((and|or|&|n|nor|/) ${them} ${staff})? ${goesOn}`);
// Who works there wears none, before or behind the count; a wearer by name may be one of those counted.
export const staffWithout = pattern(`(,|-|\\(|and|but|so){0,2} ${them} ${staff} ((and|or|&|n|nor) ${them} ${staff})? ${has} ${goesOn}`);

/** Words in a list of wearers that name none of them. */
export const namesNobody = [sideOf, walkIn, staffNone, staffWithout];

const saysWearing = /^(wearing|wear|to wear|wearers|party)$/;
const countsThem = ({ text, means }: Token): boolean => saysWearing.test(text) || means['role'] !== undefined;
/** Whether the stretch says of everyday people only that they wear none, in a message that counts those who wear one. */
export const tellsOfNone = (tokens: readonly Token[], start: number, end: number): boolean => {
  const ends = (match: Match | undefined): boolean => match !== undefined && match.end >= end;
  if (!nobodyThere.might(tokens) && !staffWithout.might(tokens)) return false;
  return (
    (ends(nobodyThere.at(tokens, start, end)) || ends(staffWithout.at(tokens, start, end))) &&
    tokens.some((token, at) => (at < start || at >= end) && countsThem(token))
  );
};

/** "9 in the bridal party, nothing for the ring bearer": whether he is one of the nine is not said. */
export const tellsWhoHasNone = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = nobodyThere.in(tokens, start, end);
  return match !== undefined && tokens.slice(match.start, match.end).some(({ means }) => means['role'] !== undefined);
};
