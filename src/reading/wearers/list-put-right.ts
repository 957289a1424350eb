// What is said against the list of wearers a thread has: "actually 3 ushers", "and the mums", "not the best man", "and a pageboy".
// Without such a list the same words are nobody's.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isSingle, type Token } from '../text/token.ts';
import { readWearers } from './read-wearers.ts';
import { nameOf } from './role-counts.ts';

const slip =
  "(actually|sorry|soz|oops|whoops|no|nope|wait|hang on|correction|scratch that|i mean|i meant|meant|it's|its|there's|theres|there are|there is|only|just|it should be|should be|make it|make that|turns out|,|-|:)";
const end = '(sorry|please|pls|thanks|ta|then|now|in the end|after all|too|as well|aswell|also|,){0,3}';
const counted = pattern(`${slip}{1,5} (<n:count>|one|a|just the one) <r:role> (not (<m:count>|one) (<role>)?|instead)? ${end}`);
const none = pattern(
  `(oh|ok|sorry|actually|no|and|but|,|-){0,3} (not|minus|without|except|excluding|bar|leave out|take out|take off|drop|scrap|scratch|lose|cross off|forget|delete|remove) (the|his|her|our)? <r:role> ((off|from) (the)? (list)?)? ${end}`,
);
const joins = pattern(
  "(oh|ok|so|sorry|actually|,|-){0,2} (and|&|plus|also|\\+|n|add|forgot|i forgot|we forgot|don't forget|dont forget|there's|theres|there is|there are|then|as well as){1,3}",
);
const behind = pattern('(too|as well|aswell|also|please|pls|sorry|thanks|ta|to the list|,){1,3}');

const isListed = ({ context }: Reader, role: string): boolean =>
  (context.wearers ?? []).some((wearer) => wearer === nameOf(role, 1) || wearer === nameOf(role, 2));

const fact = (wearer: string, count: number, by?: 'more' | 'none'): Unworded => ({
  fact: 'wearers',
  wearers: [{ wearer, count }],
  ...(by === undefined ? {} : { by }),
});

const countedNow = (reader: Reader, part: Part): Unworded | undefined => {
  const match = counted.at(reader.tokens, part.start, part.end);
  const { n, r } = match?.kept ?? {};
  const role = r?.means['role'];
  if (match?.end !== part.end || role === undefined || !isListed(reader, role)) return undefined;
  if (n !== undefined && (!isSingle(n.number) || n.number.approx === true)) return undefined;
  const count = n === undefined ? 1 : Number(n.number?.amount);
  return count < 1 ? undefined : fact(nameOf(role, count), count);
};

const takenOff = (reader: Reader, part: Part): Unworded | undefined => {
  const match = none.at(reader.tokens, part.start, part.end);
  const role = match?.kept['r']?.means['role'];
  return match?.end !== part.end || role === undefined || !isListed(reader, role) ? undefined : fact(nameOf(role, 1), 0, 'none');
};

const small = /^(the|both|his|her|our|a|an|one|and|n|plus|also|of|x|get|gets|in)$/;
/** A number is theirs right before them: "the mums 40 each" is what theirs cost. */
const isNamed = ({ kind, means, number, text }: Token, next: Token | undefined): boolean => {
  if (number !== undefined) return number.form === 'plain' && isSingle(number) && (next?.means['role'] !== undefined || next?.text === 'x');
  return kind !== 'word' || means['role'] !== undefined || means['piece'] !== undefined || small.test(text);
};

/** Those who join; whom the list has already, it has. "And the ushers" of nobody knows how many is left unread. */
const joining = (reader: Reader, part: Part): Unworded | undefined => {
  const { tokens } = reader;
  const opened = joins.at(tokens, part.start, part.end);
  let last = part.end;
  for (let index = part.start + 1; index < part.end; index++)
    if (last === part.end && behind.at(tokens, index, part.end)?.end === part.end) last = index;
  const start = opened?.end ?? part.start;
  if ((opened === undefined && last === part.end) || start >= last) return undefined;
  const own = { ...part, start, end: last };
  const said = tokens.slice(start, last);
  if (!said.every((token, at) => isNamed(token, said[at + 1]))) return undefined;
  const roles = said.flatMap(({ means }) => means['role'] ?? []);
  const read = readWearers(reader, own);
  if (read.unknown || read.unsaid || read.loose || read.entries.length === 0 || read.entries.length !== roles.length) return undefined;
  if (roles.some((role) => isListed(reader, role)) && !(roles.length === 1 && /^(a|an)$/.test(said[0]?.text ?? ''))) return undefined;
  if (read.entries.some(({ most, approx }) => (most ?? approx) !== undefined)) return undefined;
  return { fact: 'wearers', wearers: read.entries.map(({ at: _, most: __, ...entry }) => entry), by: 'more' };
};

export const listPutRight = (reader: Reader, part: Part): Finding | undefined => {
  if (part.asked || part.end - part.start > 16 || (reader.context.wearers?.length ?? 0) === 0) return undefined;
  const said = countedNow(reader, part) ?? takenOff(reader, part) ?? joining(reader, part);
  return said === undefined ? undefined : found(reader, part.start, part.end, [said]);
};
