// A day on which somebody has to be in for goods, or fetch them: "someone be here at 7 tmrw for the bucket delivery", "frames pick up is friday".

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';
import type { DateRead } from './date-read.ts';

// What comes in or is hired, and never goes out to a client by this name.
const sundry =
  '(bucket|buckets|vase|vases|foam|oasis|ribbon|ribbons|wholesaler|wholesalers|wholesale|supplier|suppliers|market|stock|stems|stem|foliage|greenery|sundries|sundry|box|boxes|carton|cartons|wire|tape|parcel|parcels|courier|frame|frames|stand|stands|plinth|plinths|arch|hire|van|fridge|compost|moss|pot|pots|jar|jars|candle|candles|crate|crates|pallet|packaging|tissue|print|printer|card|cards|linen|furniture|grower|growers|auction|sample|samples|blank|blanks|pin|pins|magnet|magnets|glue|<ingredient>)';
const brought =
  "(delivery|deliveries|delivery's|drop|drop off|dropoff|drop - off|pick up|pickup|pick - up|pick ups|pickups|collection|collections|run|arrival|courier|order|return|returns)";
const goods = pattern(`${sundry} (van|hire|box|order|stock|flower|flowers)? ${brought}`);

const place =
  '(here|in|around|about|on site|onsite|at (the|our)? (shop|studio|barn|shed|unit|workshop|store|warehouse|farm|bench|yard|gate|door))';
const courtesy = '(please|pls|plz|just|also|to|all){0,2}';
// Somebody of the shop is wanted there.
const present = [
  pattern(
    `(someone|somebody|anyone|anybody|some one|one of you|one of us|one of yous|one of ye|whoever|everyone|everybody|2 of you|both of you|you|u|yous|y'all|i|i'll|we|we'll) (can|could|will|would|needs|need|has|have|got|gotta|must|should|please|pls|plz|just|also|to|free){0,4} (be|wait|stay|hang|is) ${place}`,
  ),
  pattern(`(need|want|needing) (someone|somebody|anyone|one of you|2 of you|you|u|a body|a pair of hands|an extra) (to be)? ${place}`),
  pattern(`(who|who's|whos|whose) (is|can|could|will|wants to|be|free to|able to){0,2} ${place}`),
  pattern('(can|could|will|would) (someone|somebody|anyone|anybody|one of you|you|u) (wait in|sign for|take in|receive|let in)'),
  pattern(
    '(someone|somebody|anyone|anybody|one of you|one of us|you|pls|please) (to|please|pls|can|could|needs|need){0,2} (wait in|sign for|take in|receive)',
  ),
];
// "pls cover sat 13 feb 9-1", "can you work sunday the 14th"
const shift = pattern(
  '(pls|please|someone|anyone|somebody|you|u|who|can|could|need|needs) (can|could|will|to|please|pls|someone|anyone|you|u|just){0,3} (cover|work) (for me|a|the|my|our|me|on|shop|shift|counter|till|bench){0,3} (<weekday>|<ordinal>|<plain>|<slashed>|<month>|next|this|tomorrow|tmrw)',
);
// "driver's picking up the frames sat 13 feb 8am"
const fetched = pattern(
  `((pick|picks|picking) up|(drop|drops|dropping) (off|back)|collect|collects|collecting|collected|fetch|fetching|return|returns|returning|bring back|take back) (back|the|our|all|my|some|those|these|more|hire|hired){0,3} (bucket|buckets|vase|vases|foam|oasis|ribbon|ribbons|sundries|parcel|parcels|frame|frames|stand|stands|plinth|plinths|arch|hire van|van|moss|pots|jars|candles|crates|pallet|packaging|tissue|linen|furniture|samples|blanks|magnets|supplies|stock|stems)`,
);
// "wire needed by 1 feb", "need 40 magnets by 10 feb", "delivery from the grower"
const supplies =
  '(wire|tape|foam|oasis|ribbon|ribbons|magnets|pins|blanks|buckets|sundries|twine|raffia|glue|moss|tissue|bags|labels|stickers|frames|pearls|wax|vases|candles|crates|cellophane|pearl pins)';
const supplied = pattern(
  `(${supplies} (are|is|all|to be){0,2} (needed|wanted|required|due|due in|in|here) (by|before|on)|(need|needs|order|get|buy|want|reorder) (<count>|more|some|another|the|a|new|rolls of|boxes of|packs of|of|extra){0,3} (<word>)? ${supplies} (in|here)? (by|before)|(delivery|deliveries|shipment|consignment|stems|flowers|stock) from (the|our)? (holland|dutch|kenya|amsterdam|ecuador|colombia|italy|wholesaler|wholesalers|market|grower|growers|supplier|suppliers|farm|nursery|auction|depot))`,
);
const opening = pattern(
  `(ok|right|hi|hey|and|team|all|folks|,|-|need to|must|gotta|please|pls|plz|just|also|to){0,3} (be|wait) ${courtesy} ${place}`,
);
const boundary = /^(;|\.|!|\?|then|but)$/;
const ours = pattern('<count> (x)? (<material>)? <piece>');
const errand = pattern(
  'for (the|a|an|our|my|that|this|some)? (<any>){0,3} (delivery|deliveries|drop|drop off|pick up|pickup|collection|courier|run|driver|rep)',
);

const stretchAround = ({ tokens }: Reader, read: DateRead, stop: RegExp): readonly [number, number] => {
  let [start, end] = [read.start, read.end];
  while (start > 0 && !stop.test(tokens[start - 1]?.text ?? '') && tokens[start - 1]?.kind !== 'line') start -= 1;
  while (end < tokens.length && !stop.test(tokens[end]?.text ?? '') && tokens[end]?.kind !== 'line') end += 1;
  return [start, end];
};

/** Whether somebody here has to be in that day, or fetch what is needed. */
export const isErrandDay = (reader: Reader, read: DateRead): boolean => {
  const { tokens } = reader;
  // "ribbon needed by 1 feb for the 13 feb wedding"
  if ([read.start - 1, read.end].some((at) => isOccasion(tokens[at]?.text ?? ''))) return false;
  const [start, end] = stretchAround(reader, read, boundary);
  const [from, to] = stretchAround(reader, read, /^[,;.!?]$/);
  const ofEvent = (token: Token): boolean => isOccasion(token.text) || token.means['piece'] !== undefined;
  const fetches = [fetched, goods, supplied].some((form) => form.in(tokens, from, to) !== undefined);
  if (fetches || shift.in(tokens, from, to) !== undefined)
    return fetches ? ours.in(tokens, from, to) === undefined : !tokens.slice(from, to).some(ofEvent);
  if (opening.at(tokens, start, end) === undefined && !anyIn(present, tokens, start, end)) return false;
  if (ours.in(tokens, start, end) !== undefined) return false;
  // "wedding sat 13 feb, someone be in thurs for the rose delivery": each day has its own.
  if (errand.in(tokens, from, to) !== undefined) return true;
  const brings = [goods, errand].some((form) => form.in(tokens, start, end) !== undefined);
  return brings ? !tokens.slice(from, to).some(ofEvent) : !tokens.some(({ text }) => isOccasion(text));
};
