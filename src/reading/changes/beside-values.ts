// What stands beside a new value and decides whether it is one.

import { pattern } from '../pattern.ts';

// "on the 9th, feb i mean, dried": what is put right is the day; "on thursday, make it fresh" puts nothing right.
export const monthMeant = pattern(
  '((make|do|have) (it|them|these|those|everything) (all)? <material>|<month> (,|-)? (i mean|i meant|sorry)|(sorry|i mean|i meant|no|rather) (,)? <month>)',
);

// "oops only 9 made, 2 broke"
export const lossBeside = pattern(
  '((<count>|one) (of (the|those|them|these))? (<piece>)? (is|are|was|were|has|have|got|just){0,2} (broke|broken|bust|wonky|dud|duds|snapped|dropped|got broken|fell apart)|(broke|snapped|dropped|lost) <count>)',
);

// "two of the corsages go to the vicar's wife": some of them are not all there are.
export const ofThem = pattern('of (the|those|these|her|his|my|our|their) (<count>)? <piece>');

// "sat not sun, 14 bouts not 12": the day is put right by its own phrase.
export const dayNotDay = pattern(
  "(its|it's|sorry|,|on|the|for){0,3} (<weekday>|<ordinal>|<ordinal> <month>|<month> <ordinal>) (,)? (not|instead of|rather than) (on|the){0,2} (<weekday>|<ordinal>|<ordinal> <month>|<month> <ordinal>) (,|-|;|and){1,2}",
);
