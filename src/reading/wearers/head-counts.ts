// How many wear a piece, said without a list of who: "14 wearing them all up", "11 in the wedding party counting the groom", "3 tables of 8, all wearing".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { allButSome } from './all-but-some.ts';
import { headsOfAKind } from './heads-of-a-kind.ts';
import { headsTold } from './heads-told.ts';
import { leaderAndMen } from './leader-and-men.ts';
import { nameOf } from './role-counts.ts';
import { setsOfParents } from './sets-of-parents.ts';
import { someCarry } from './some-carry.ts';
import { someOfARole } from './some-of-a-role.ts';
import { someWithout } from './some-without.ts';
import { bothSides, coupleFirst, couplesWear, eachSide } from './wearer-words.ts';

// "14 wearing them all up": how many, not who.
const opens =
  "(so|that's|thats|about|it's|its|there's|theres|there are|there is|there will be|there'll be|we have|we've|we've got|we got|got|i have|i've got|roughly|around|total of|a total of){0,2}";
const folk =
  '(people|persons|ppl|pax|folk|folks|guests|men|guys|gents|blokes|lads|chaps|fellas|ladies|women|adults|attendants|of them|of us|in all|all|family|in the party|(bridal|wedding) attendants|in the (bridal|wedding)? (party|retinue|line up|lineup|squad|group|entourage|procession))? ((,|-)? (each|all|everyone|all of them|each of them))?';
const wear =
  '(wearing|each wearing|to wear|to <piece>|are wearing|will be wearing|wearers|will wear|need|needing|getting|having|want|to pin|to be pinned|being pinned|get|getting pinned|are getting|are having)';
const headCount = pattern(
  `${opens} <n:count> ${folk} ${wear} (them|one|these|it|flowers|flower|a flower|<piece>)? ((on)? the day)? (<all>|all up|altogether|total|in all|in total|all told)? ((,|-) no (kids|children|babies|toddlers|bride|groom|<role>))? (,|-|\\()? (not counting|not including|not incl|excluding|excl|without|bar|minus|except)? (the)? (bride|the bride)? (not counted|not included|excluded|not incl|aside|apart)? (\\))?`,
);
// "3 tables of 8, all wearing"
const atTables = pattern(
  '<m:count> (tables|rows|pews) of <n:count> (,|-)? (all|everyone|everybody|<all>|each)? (of them)? (wearing|to wear|wear) (them|one)?',
);
// "was 7 ushers, one's dropped out so 6"
const fewer = pattern(
  "(was|were|had|used to be) <m:count> <r:role> (,|-|but|now)? (<any>){0,6} (so|now|makes it|makes|down to|that's|leaves|is) <n:count> (now)?",
);
// "11 guys total counting the groom", "11 wearing, groom incl"; "6 ushers and the celebrant" are seven.
// "7 lads in suits incl the groom"
const dressed =
  '(in (the|their|our)? (<unlisted>|matching|full|same|dark|black|navy|grey|green|blue){0,2} (suit|suits|tux|tuxes|tuxedos|kilts|waistcoats|tails|morning suits|morning dress|black tie|blazers|jackets|dinner jackets|linen|tweed|tweeds|tartan|uniform|uniforms|sherwanis|kurtas|dresses|frocks|saris))';
const withHim = pattern(
  `(so|that's|thats|about)? <n:count> (people|persons|ppl|folk|guests|men|guys|lads|gents|blokes|to wear|<role>|wearers|wearing|them|one|flowers|of them|of us|heads|in the party|in the bridal party|in the wedding party){0,3} ${dressed}? (<all>|total|in all|all up|wearing|in total)? (,|-|\\()? ((counting|including|incl|inc|<included>) (the)? (<role>|couple|bride and groom)|<role> <included>|<role> (included|counted)) (\\))? (to wear|wearing|to <piece>|needing|getting)? (one|them|flowers)?`,
);
const totalWithHim = pattern(
  "(so|that's|thats|about)? <n:count> (people|men|guys|lads|wearing|of them)? (<all>|total|in all|all up) with (the)? <role>",
);
/** How many wear them in all, where nobody is listed. */
export const headsAlone = (reader: Reader, part: Part): Finding | undefined => {
  if (reader.tokens.slice(part.start, part.end).some((token) => token.number?.max !== undefined)) return undefined;
  const but =
    someOfARole(reader, part) ??
    allButSome(reader, part) ??
    someWithout(reader, part) ??
    leaderAndMen(reader, part) ??
    headsOfAKind(reader, part) ??
    setsOfParents(reader, part) ??
    someCarry(reader, part);
  if (but !== undefined) return but;
  const sides = bothSides.map((form) => form.at(reader.tokens, part.start, part.end)).find((match) => match?.end === part.end);
  if (sides !== undefined) {
    const total = Number(sides.kept['n']?.number?.amount) + Number(sides.kept['m']?.number?.amount);
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total }]);
  }
  const couples = couplesWear.at(reader.tokens, part.start, part.end);
  const [first, second] = [couples?.kept['p']?.means['piece'], couples?.kept['q']?.means['piece']] as (PieceKind | undefined)[];
  if (couples?.end === part.end && first !== undefined && second !== undefined && first !== second) {
    const number = couples.kept['n']?.number;
    const count = { count: Number(number?.amount), ...(number?.approx === true ? { approx: true as const } : {}) };
    return found(
      reader,
      part.start,
      part.end,
      [first, second].map((piece) => ({ fact: 'pieces', piece, ...count })),
    );
  }
  const each = eachSide.at(reader.tokens, part.start, part.end) ?? coupleFirst.at(reader.tokens, part.start, part.end);
  if (each?.end === part.end && (each.kept['c'] === undefined || each.kept['c'].text === 'couple')) {
    const total = 2 * Number(each.kept['n']?.number?.amount) + (each.kept['c'] === undefined ? 0 : 2);
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total }]);
  }
  const him = withHim.at(reader.tokens, part.start, part.end) ?? totalWithHim.at(reader.tokens, part.start, part.end);
  if (
    him?.end === part.end &&
    reader.tokens
      .slice(him.start, him.end)
      .some((token) =>
        /^(wearing|wear|flowers|persons|to wear|to pin|total|wearers|men|guys|lads|gents|blokes|fellas|chaps|fellows|people|ppl|in all|groomsmen|ushers|bridesmaids|party|in the party|in the bridal party|in the wedding party)$/.test(
          token.text,
        ),
      )
  )
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total: Number(him.kept['n']?.number?.amount) }]);
  const count = headCount.at(reader.tokens, part.start, part.end);
  if (count?.end === part.end)
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total: Number(count.kept['n']?.number?.amount) }]);
  const tables = atTables.at(reader.tokens, part.start, part.end);
  if (tables?.end === part.end) {
    const total = Number(tables.kept['m']?.number?.amount) * Number(tables.kept['n']?.number?.amount);
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total }]);
  }
  const told = headsTold(reader, part);
  if (told !== undefined) return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total: told }]);
  const left = fewer.at(reader.tokens, part.start, part.end);
  const role = left?.kept['r']?.means['role'];
  const many = Number(left?.kept['n']?.number?.amount);
  if (left?.end !== part.end || role === undefined || !(many > 0)) return undefined;
  return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [{ wearer: nameOf(role, many), count: many }], total: many }]);
};
