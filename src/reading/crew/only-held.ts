// Talk of hands and time whose numbers are nobody's: "double time sundays", "3 hrs for 20 lapels", "need 2 extra hands sat", "10 mins to wire, 5 to tape".

import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { noCount, premium, timeForSome } from './crew-forms.ts';
import { dateIn } from './days-at-bench.ts';
import { handsWanting } from './hands.ts';

const inAll = pattern(
  '(so|ok)? <count> (<material>)? <piece> (=|:|is|are|about|roughly|would be|will be|- \\>){1,2} (about|roughly)? <d:duration> (all up|total|in total|work|labour)?',
);

// "£15 an hour for delivery, 2 hrs", "driver 15 an hour": what another's work costs, and no wage of the bench.
const theirs =
  '(delivery|deliveries|delivering|deliver|setup|setups|set up|setting up|set-up|install|installs|installation|installing|pack down|packdown|bump in|bump out|bump|breakdown|break down|teardown|driver|drivers|driving|travel|travelling|traveling|courier|couriers|loading|unloading|cleaning|cleaner|cleaners|babysitter|sitter|photographer|dj|electrician|plumber)';
const anHour = '((an|per|a|/|p|each per) (/)? (hour|hr|h|hrs)|ph|p/h|phr|hourly)';
const othersWage = [
  `<amount> ${anHour} (each|,|-)? (for|to do|to|on|the|our|my|her|his|a){0,3} ${theirs}`,
  `${theirs} (charge|fee|cost|costs|rate|guy|man|lad|lads|team|crew|time|is|are|at|@|:|-|=|,|<duration>|<count>|hours|hrs|for|on|us|me|now){0,5} <amount> ${anHour}`,
].map((source) => pattern(source));

// "arch install, 3 people, 90 min", "setup: 4 lads, 2 hrs": hands at something else.
const othersHands = pattern(
  `${theirs} (<word>){0,2} (,|-|:|;|\\||with|needs|takes|by){1,2} <count> (<word>)? (<bench>|people|men|lads|guys|women|crew|hands) (,|-|for|x|\\|)? <duration>`,
);
// "11 categories, 2 min each", "toasts: 4 people, 3 min each": how long each of something else takes.
const eachOfOthers = pattern('<count> (<unlisted>)? <w:word> (,|-|at|for|@|x|\\|)? <duration> <each>');
const partOfDay =
  /^(categories|groupings|groups|speeches|toasts|songs|readings|hymns|rounds|courses|slots|sessions|appointments|tables|shots|photos|pictures|games|dances|talks|acts)$/;
const ofProgramme = (reader: Reader, part: Part): boolean =>
  partOfDay.test(eachOfOthers.in(reader.tokens, part.start, part.end)?.kept['w']?.text ?? '');

/** Whether the sentence is kept from every phrase and named as unread. */
export const onlyHeld = (reader: Reader, part: Part): boolean => {
  const { tokens } = reader;
  if (firstIn(noCount, tokens, part.start, part.end) !== undefined) return true;
  if (firstIn(othersWage, tokens, part.start, part.end) !== undefined || ofProgramme(reader, part)) return true;
  if (othersHands.in(tokens, part.start, part.end) !== undefined) return true;
  if (handsWanting(reader, part) && dateIn(reader, part) !== undefined) return true;
  const held = premium.in(tokens, part.start, part.end) ?? timeForSome.at(tokens, part.start, part.end);
  // "40 bouts = 6 hrs" says what so many take, and orders none.
  const some = inAll.at(tokens, part.start, part.end);
  if (some?.end === part.end && some.kept['d']?.number?.unit === 'hour') return true;
  return held !== undefined && (held.end === part.end || held.kept['n'] === undefined);
};
