// Pieces of an order that is not this thread's: "my other wedding has 8 corsages", "jess made 12 for the other wedding",
// "Kim has 10 bouts for the Tarrowby wedding at 18 each", "Sue does 30 bouts at 22", "sue charges 22 a bout". They are held from everybody.

import { type Pattern, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { clausesOf, reachOf } from './clauses.ts';

const many = (sources: readonly string[]): readonly Pattern[] => sources.map((source) => pattern(source));
const job =
  "(wedding|weddings|wedding's|job|jobs|event|event's|order|orders|bride|bride's|brides|client|client's|clients|couple|couple's|party|prom|gig|funeral|formal|christening|booking)";
const some = '(about|around|only|just|the|all)? <count> (<material>)? (<word>)? <piece>';
/** The word is in the clause, whatever else it says. */
const others = many([
  `(my|our|the|his|her|their|your|that|an) other (<word>)? ${job}`,
  `(for|from|on|of|in|to) (another|a different|a separate|somebody else's|someone else's) (<word>)? ${job}`,
  `other ${job} (has|is|gets|needs|wants|got|had|takes|:|-)`,
]);
/** Somebody by name, or "she", with an order of their own. */
const theirs = many([
  `<w:word> (does|is doing|doing|making|sells|made|has made|quoted|quotes|charges|charged|is making|offers) ${some} (at|@|for) (about|only|just)? <amount>`,
  `<w:word> (has|has got|got|is doing|doing|does|is on|took|has taken on) ${some} (for|at|in) (the|a|another|her|his|their|that) <any>{1,3} (wedding|party|prom|funeral|formal|do|ball|gala|christening|job|event|gig|bash|show)`,
  '<w:word> (charges|charged|sells|asks|quotes|quoted) (about|around|only|just|like)? <amount> (<each>|a|per|an|for|for a|for each|apiece){0,2} (for)? (her|his|their|the)? <piece>',
  '<w:word> (gets|makes) (about|around|only|just|like)? <amount> <each> (for)? (her|his|their|the)? <piece>',
  '<w:word> (sells|sold|does|charges for|prices|makes|sells her|sells his|does her|does his) (her|his|their)? <piece> (at|@|for) (about|only|just|around)? <amount>',
]);
// "same as the other wedding, 20 bouts"
const likened = /^(same|as|like|than|since|unlike)$/;
// "said 18 done but 4 were for the other job": a share of what was told, taken off it.
const share = pattern('<count> (of them|of those|of these)? (were|was|are|is) (meant)? for');
const notSome =
  /^(i'm|im|i've|ive|we're|we've|weve|you're|youre|they're|theyre|they've|just|still|now|order|job|event|total|quote|price|that|this|it|which|recipe|bunch|pack|roll|batch|wrap|we|i|you|us|who|what|one|each|groom|bride|client|couple)$/;

/** A name nobody knows, "she", "he" or "they": never a word of an order. */
const isSomebody = ({ tokens }: Reader, index: number): boolean => {
  const token = tokens[index];
  if (token === undefined || token.number !== undefined || notSome.test(token.text)) return false;
  if (/^(she|he|they|she's|he's)$/.test(token.text)) return true;
  return unlisted.at(tokens, index, index + 1) !== undefined;
};
const unlisted = pattern('<unlisted>');

const placesOf = ({ tokens }: Reader, { start, end }: Part): number[] =>
  others.flatMap((form) => {
    const places: number[] = [];
    for (let index = form.next(tokens, start, end); index < end; index = form.next(tokens, index + 1, end))
      if (form.at(tokens, index, end) !== undefined && !likened.test(tokens[index - 1]?.text ?? '')) places.push(index);
    return places;
  });

export const otherOrders = (reader: Reader, part: Part): Stretch[] => {
  const { tokens } = reader;
  const { start, end } = part;
  const numbered = tokens.slice(start, end).some(({ number }) => number !== undefined);
  if (part.asked || !numbered || share.in(tokens, start, end) !== undefined) return [];
  const clauses = clausesOf(reader, part);
  const held = placesOf(reader, part).flatMap((at) => reachOf(reader, clauses, at, false) ?? []);
  for (const form of theirs)
    for (let index = form.next(tokens, start, end); index < end; index = form.next(tokens, index + 1, end))
      if (form.at(tokens, index, end) !== undefined && isSomebody(reader, index)) {
        const own = clauses.find((clause) => clause.start <= index && index < clause.end);
        held.push({ start: index, end: own?.end ?? end });
      }
  return held;
};
