// "anzac day lunch, dried": an occasion on a day that goes by a name. Whoever has lunch with the family that day is not at work.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { named } from './named-dates.ts';

const opening = /^(the|a|an|another|new|job|order|event|enquiry|inquiry|client|for|on|it's|its|this|that's|is|,|-|:|next)$/;
const meal = pattern(
  "(long|gala|charity|family|staff|club|rsl|board|garden|street|beach|harbour|works|office|school|dawn|memorial|civic|big){0,2} (lunch|luncheon|dinner|brunch|breakfast|brekkie|supper|drinks|service|mass|party|picnic|parade|dance|ball|gala|tea|high tea|bash|do|function|ceremony|concert|bbq|barbecue|braai|feast|reunion|memorial|social|gathering|lunch do|wedding|formal|races|fete|fair)('s)?",
);
const own = pattern(
  "(with (the|my|our) (<word>)? (family|fam|kids|kid|mates|friends|parents|in laws|inlaws|in - laws|girls|lads|mum|mam|mom|dad|nan|gran|husband|wife|partner|crew)|at (mine|mums|mum's|ours|nans|nan's|home|my|our|yours)|(we're|we are|shop|shop's|studio|everyone|all|i'm|im|i am) (is|are|be)? (off|away|going|cooking|hosting|bringing|shut|closed|closing)|(bring|bringing|who's|whos) <any>)",
);

const made = pattern('(<material>|<piece>)');
/** Whether the message opens with such a day and the occasion on it, and says what it is to be made of. */
export const opensWithNamedOccasion = (reader: Reader): boolean => {
  const { tokens, context } = reader;
  if (!meal.might(tokens) || !made.might(tokens)) return false;
  let index = 0;
  while (index < 4 && opening.test(tokens[index]?.text ?? '')) index += 1;
  const read = named(tokens, index, context);
  if (read === undefined || read.days.length === 0) return false;
  return meal.at(tokens, read.end, tokens.length) !== undefined && own.in(tokens, 0, tokens.length) === undefined;
};
