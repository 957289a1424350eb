// What others charge: "whats the shop down the road charge for crowns". Our own price is no answer to it, and no other is kept.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

const asks = "(what|what's|whats|wot|how much|how much's) (does|do|is|are|did|would|has)?";
const charge =
  '(charge|charges|charging|charged|ask|asks|asking|sell|sells|selling|quote|quotes|quoting|want|wants|wanting|do|does|doing|get|gets|getting)';
const where =
  '(down|up|over|across) the (road|street|way|hill|coast)|in (town|the village|the city|the next town)|(round|around) the corner|(next|two) (door|doors down)|across town|on (the high street|main street|the corner)|over there|opposite|elsewhere|by the station|round here|around here|locally';
const forms = [
  // "the other florist", "another shop"
  `${asks} (the|that|this|a|some|our)? (other|another|rival|nearest|local) (florist|florists|shop|shops|studio|studios|place|places|people|one|ones|lot|crowd|girl|designer|designers) <any>{0,4} ${charge} (for|<each>|a|<piece>|them|these|those|it)`,
  `${asks} (the|that|this|a|some)? <word>{1,3} (${where}) <any>{0,2} ${charge} (for|<each>|a|<piece>|them|these|those|it)`,
  `${asks} (she|he|they|people|florists|shops|places|<unlisted>) ${charge} <any>{0,4} (${where})`,
  `${asks} (anyone else|others|other people|the others|the competition|competitors|our competitors|(most|other) (florists|people|places|shops|studios)) (usually|normally|generally|all|mostly|<word>){0,2} ${charge} (for|<each>|a|<piece>|them|these|those|it)`,
].map((source) => pattern(source));

// "everyone else" is one word to the reader, as of those who wear a piece.
const theRest = pattern(`${asks} <r:role> (usually|normally|generally|all|mostly)? ${charge} (for|<each>|a|<piece>|them|these|those|it)`);

/** Whether it is asked what somebody else takes for pieces or flowers. */
export const asksOfRivals = ({ tokens }: Reader, start: number, end: number): boolean =>
  (anyIn(forms, tokens, start, end) || / else$/.test(theRest.in(tokens, start, end)?.kept['r']?.text ?? '')) &&
  tokens
    .slice(start, end)
    .some(({ means, text }) => (means['piece'] ?? means['ingredient']) !== undefined || /^(florists?|flowers)$/.test(text));
