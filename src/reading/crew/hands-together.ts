// Hands named one after the other: "me n the 2 juniors", "2 casuals and a senior", "me, jess and the new girl".

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { tagsOf } from '../text/means.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isSingle, type Token } from '../text/token.ts';

const myself = pattern('(me|myself|i)');
const counted = pattern(
  '(the|our|my|all)? <n:count> (extra|more|other|others|good|new|young|of my|of the)? (<bench>|other|others|more|mates|friends|cousins|sisters)',
);
const alone = pattern(
  '(a|an|one|the|our|my|another|her|his) (extra|new|young|other|good)? (girl|lad|boy|lady|kid|friend|mate|sister|brother|daughter|son|husband|wife|partner|niece|cousin|neighbour|mum|mam|mom|dad|<bench>)',
);
const another = pattern('(another|someone|somebody) (else)?');
const both = pattern('both (the|of the|our|my)? <bench>');
const joint = pattern('(,|and|&|n|plus|\\+){1,2} (also|then|maybe)?');
const several = /^(us|of us|staff|team|crew|people|ppl|hands|folk|women|men)$|s$/;
const place =
  /^(it|this|that|these|those|we|they|he|she|you|can|could|should|bench|studio|shop|home|work|workroom|workshop|everyone|others|rest|all|more|then|so|but|for|from|at|on|in|starting|start|each|day|days|shift|half|full|whole|week|weekend|hours|hrs|morning|mornings|afternoon|arvo|evening|lunch|tomorrow|tmrw|tmr|tomoz|today|tonight|this|next|coming|noon|midday|only|just|again|both|now|please|pls|we|we'll|we've|have|got|it's|its|there's|theres|are|is|will|be|working|total|between|till|til|until|to)$/;

interface Hands {
  readonly people: number;
  readonly end: number;
  readonly kind: 'me' | 'bench' | 'name';
}

const isName = (token: Token | undefined): boolean =>
  token?.kind === 'word' &&
  token.number === undefined &&
  token.text.length > 1 &&
  !place.test(token.text) &&
  tagsOf(token.means).every((tag) => tag === 'role');

const one = (match: Match, tokens: readonly Token[]): boolean => !several.test(tokens[match.end - 1]?.text ?? '');

const handsAt = (reader: Reader, index: number, end: number): Hands | undefined => {
  const { tokens } = reader;
  if (myself.at(tokens, index, end) !== undefined) return { people: 1, end: index + 1, kind: 'me' };
  const some = counted.at(tokens, index, end);
  const number = some?.kept['n']?.number;
  if (some !== undefined && number !== undefined) {
    return number.max === undefined ? { people: Number(number.amount), end: some.end, kind: 'bench' } : undefined;
  }
  const two = both.at(tokens, index, end);
  if (two !== undefined) return { people: 2, end: two.end, kind: 'bench' };
  const single = alone.at(tokens, index, end);
  if (single !== undefined && one(single, tokens)) return { people: 1, end: single.end, kind: 'bench' };
  const someone = another.at(tokens, index, end);
  if (someone !== undefined) return { people: 1, end: someone.end, kind: 'bench' };
  return isName(tokens[index]) ? { people: 1, end: index + 1, kind: 'name' } : undefined;
};

// "me plus 2, 4 hrs each", "me and 3 on fri": behind oneself a bare number counts others, when nothing follows that it could count.
const bareNumber = pattern('<n:count>');
const opensTime =
  /^(,|:|;|-|\(|on|in|at|from|for|this|next|all|both|working|each|doing|fri|tomorrow|tmrw|tomoz|today|tonight|till?|until|are|is|will|be|half|all|coming|free|rostered|and|&|\+|plus)$/;
const barely = (reader: Reader, index: number, end: number): Hands | undefined => {
  const match = bareNumber.at(reader.tokens, index, end);
  const number = match?.kept['n']?.number;
  const next = index + 1 < end ? reader.tokens[index + 1] : undefined;
  const hour = next?.number !== undefined && reader.tokens[index + 2]?.means['piece'] === undefined;
  const free = next === undefined || hour || next.means['weekday'] !== undefined || opensTime.test(next.text);
  return match === undefined || number?.max !== undefined || Number(number?.amount) > 12 || !free
    ? undefined
    : { people: Number(number?.amount), end: index + 1, kind: 'bench' };
};

const noName =
  /(ing|ed|ly)$|^(here|there|too|always|still|back|away|later|instead|am|was|off|out|late|alone|later|sick|well|plus|able|one|two)$/;
const standsInList = (reader: Reader, at: number, end: number): boolean => {
  const link = at + 1 < end ? joint.at(reader.tokens, at + 1, end) : undefined;
  const token = reader.tokens[at];
  return link !== undefined && isName(token) && !noName.test(token?.text ?? '') && handsAt(reader, link.end, end) !== undefined;
};

// "three of us working on it, Jo, Meg and me": those named are the three.
const ofUs = pattern('<n:count> <b:bench>');
const oneOfUs = pattern('(me|myself|i)');
const whoWeAre = (reader: Reader, { start, end }: Part): number | undefined => {
  const { tokens } = reader;
  const match = ofUs.in(tokens, start, end);
  const number = match?.kept['n']?.number;
  if (match?.kept['b']?.text !== 'of us' || !isSingle(number)) return undefined;
  const mark = firstWhere(tokens, match.end, Math.min(end, match.end + 5), ({ text }) => /^[,:(-]$/.test(text));
  if (mark < 0) return undefined;
  let [people, index, self] = [0, mark + 1, false];
  for (;;) {
    const one = handsAt(reader, index, end);
    if (one === undefined || one.people !== 1) break;
    self ||= oneOfUs.at(tokens, index, end) !== undefined;
    people += 1;
    const next = joint.at(tokens, one.end, end);
    if (next === undefined || handsAt(reader, next.end, end) === undefined) break;
    index = next.end;
  }
  return self && people === Number(number.amount) ? people : undefined;
};

const bothIn = pattern('both (in|working|free|available|here|at the bench|on)');

/** How many a list of hands makes; a name nobody knows counts only beside oneself or counted hands. */
export const handsTogether = (reader: Reader, part: Part): number | undefined => {
  const us = whoWeAre(reader, part);
  if (us !== undefined) return us;
  for (let start = part.start; start < part.end; start++) {
    let found = handsAt(reader, start, part.end);
    if (found === undefined) continue;
    let [people, at] = [found.people, found.end];
    const kinds = [found.kind];
    for (;;) {
      const next = joint.at(reader.tokens, at, part.end);
      const plus = next !== undefined && !/^,$/.test(reader.tokens[next.end - 1]?.text ?? '');
      found =
        next === undefined
          ? undefined
          : (handsAt(reader, next.end, part.end) ?? (plus && kinds.includes('me') ? barely(reader, next.end, part.end) : undefined));
      // "me jo n mia": the first name stands right behind oneself.
      if (found === undefined && next === undefined && kinds.join() === 'me' && standsInList(reader, at, part.end))
        found = { people: 1, end: at + 1, kind: 'name' };
      if (found === undefined) break;
      people += found.people;
      at = found.end;
      kinds.push(found.kind);
    }
    const named = kinds.filter((kind) => kind === 'name').length;
    // "jo and mia both in sat 9-1"
    if (named === 2 && kinds.length === 2 && bothIn.at(reader.tokens, at, part.end) !== undefined) return 2;
    if (kinds.length > 1 && kinds.length > named && (named === 0 || kinds.includes('me'))) return people;
  }
  return undefined;
};
