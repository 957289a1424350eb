// What one wearer needs care with: "groom has a pacemaker", "pacemaker: grandad", "best man is allergic to lilies". Only the care is said, so the wearer
// keeps the count and the piece the list has. It reads words that others have taken too: "best man (pacemaker), 2 dads" is a list of wearers first.

import { tellsOfHealth } from '../../handbook/hazard-words.ts';
import { remembered } from '../../values/remembered.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { looksAsked } from '../questions/looks-asked.ts';
import { who } from '../recipes/recipe-headings.ts';
import type { Token } from '../text/token.ts';

const reach = 7; // words between the wearer and the care

const isCared = remembered(tellsOfHealth);
const isWord = (token: Token | undefined): token is Token => token?.kind === 'word';
const isCare = (token: Token | undefined): boolean => isWord(token) && isCared(token.text);
/** "Insulin pump", "heart monitor": only the two words together say it. */
const isPair = (first: Token | undefined, second: Token | undefined): boolean =>
  isWord(first) && isWord(second) && !isCare(first) && !isCare(second) && isCared(`${first.text} ${second.text}`);
const isRole = (token: Token | undefined): boolean => token?.means['role'] !== undefined || token?.means['owner'] !== undefined;
const joins = /^(,|and|&|\+|both|the|his|her|our|n)$/;
const apart = /^(no|not|never|without|hasn't|doesn't|isn't|none|nobody)$/;

/** Wearers named together up to here: "groom and best man both have pacemakers". */
const rolesBack = (reader: Reader, last: number, from: number): readonly number[] => {
  const roles = [last];
  for (let at = last - 1; at >= from; at--) {
    // "bride's granny has a nickel allergy" is the granny's.
    if (reader.tokens[at]?.means['owner'] !== undefined) continue;
    if (isRole(reader.tokens[at])) roles.unshift(at);
    else if (!joins.test(reader.tokens[at]?.text ?? '')) break;
  }
  return roles;
};

const nearest = (reader: Reader, care: number, from: number, end: number): number | undefined => {
  for (let at = care - 1; at >= Math.max(from, care - reach); at--) if (isRole(reader.tokens[at])) return at;
  for (let at = care + 1; at < Math.min(end, care + reach); at++) {
    if (reader.tokens[at]?.text === ',') return undefined;
    if (isRole(reader.tokens[at])) return at;
  }
  return undefined;
};

// "a nut allergy" says of what.
const opensCare = /^(has|have|had|having|got|with|w|a|an|the|is|are|and|&|n|his|her|their|both|some|also|who|whose|of)$/;
const careStart = ({ tokens }: Reader, care: number, from: number): number => {
  if (!/^(allergy|allergies)$/.test(tokens[care]?.text ?? '')) return care;
  let at = care;
  while (at > from && at > care - 3 && isWord(tokens[at - 1]) && !isRole(tokens[at - 1]) && !opensCare.test(tokens[at - 1]?.text ?? ''))
    at -= 1;
  return at;
};

// "allergic to lilies" says more than "allergic".
const careEnd = (reader: Reader, care: number, end: number): number => {
  if (isPair(reader.tokens[care], reader.tokens[care + 1])) return care + 2;
  if (!/^(allerg|implant)/.test(reader.tokens[care]?.text ?? '') || reader.tokens[care + 1]?.text !== 'to') return care + 1;
  let at = care + 2;
  while (at < end && at < care + 6 && reader.tokens[at]?.kind === 'word' && !isRole(reader.tokens[at])) at += 1;
  return at;
};

// "one bridesmaid is allergic": there are more of them; of "one groom" or "mum" there are not.
const severalOften = /^(bridesmaid|usher|groomsman|page ?boy|flower ?girl|junior bridesmaid|guest|child|kid|sister|brother)$/;
const oneOfSeveral = ({ tokens }: Reader, role: number): string | undefined =>
  /^(one|1)$/.test(tokens[role - 1]?.text ?? '') && severalOften.test(tokens[role]?.text ?? '') ? 'one' : undefined;

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  if (!tellsOfHealth(reader.message.clean.text)) return findings; // most messages are done with here
  for (const part of reader.message.parts) {
    if (looksAsked(reader, part)) continue; // "is the bride allergic to anything?"
    for (let care = part.start; care < part.end; care++) {
      if (!isCare(reader.tokens[care]) && !isPair(reader.tokens[care], reader.tokens[care + 1])) continue;
      const role = nearest(reader, care, part.start, part.end);
      if (role === undefined) continue;
      const [low, high] = [
        Math.min(role, careStart(reader, care, role < care ? role + 1 : part.start)),
        Math.max(role, careEnd(reader, care, part.end) - 1),
      ];
      const between = reader.tokens.slice(low, high).map((token) => token.text);
      if (between.some((word) => apart.test(word))) continue;
      const roles = role < care ? rolesBack(reader, role, part.start) : [role];
      const before = reader.tokens.slice(Math.max(part.start, role - 4), role).map((token) => token.text);
      const some =
        /(?:^| )(one|1|a|\d{1,2}|two|three|four|five|six) of(?: the| our| his| her)?$/.exec(before.join(' '))?.[1] ??
        oneOfSeveral(reader, role);
      const few = some === undefined ? undefined : /^(one|1|a)$/.test(some) ? 'one' : some;
      const words = reader
        .words(careStart(reader, care, role < care ? role + 1 : part.start), careEnd(reader, care, part.end))
        .replace(/(pacemaker|implant|defibrillator|icd)s$/i, '$1');
      const note = few === undefined ? words : `${few} of them: ${words}`;
      const takes = [...roles, ...Array.from({ length: high - low + 1 }, (_, offset) => low + offset)].filter((at) => reader.free(at));
      const wearers = [...new Set(roles.flatMap((at) => who(reader.tokens[at], reader.tokens[at + 1]) ?? []))];
      if (wearers.length === 0) continue;
      findings.push(
        found(
          reader,
          Math.min(low, ...roles),
          high + 1,
          [{ fact: 'wearers', wearers: wearers.map((wearer) => ({ wearer, count: 1, note })), notes: true }],
          [...new Set(takes)].sort((a, b) => a - b),
        ),
      );
    }
  }
  return findings;
};

export const wearerCare: Phrase = { name: 'wearer care', examples: ['groom has a pacemaker', 'best man is allergic to lilies'], find };
