// How many wear a piece, told in several ways at once: "16 ppl wearing flowers, 10 his side 6 hers", "7 in the bridal party plus the
// celebrant, so 8 all up". Read only when every word is understood and the numbers agree.

import { firstAt, firstIn, type Pattern, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount, isSingle } from '../text/token.ts';
import { besideHeads } from './beside-heads.ts';
import { agreed, fewOf } from './heads-agree.ts';
import { nobodyThere, oneOfTheCounted, staffNone, staffWithout, theirsCounted } from './heads-named.ts';
import { countFor } from './role-counts.ts';
import { leaves, lessForm, noneFor, onlySoMany, onlyThese } from './who-wears-none.ts';

const folk =
  '(people|persons|ppl|pax|folk|folks|men|guys|gents|blokes|lads|chaps|fellas|ladies|women|girls|boys|adults|grown ups|kids|children|attendants|family|relatives|family members|heads|wearers|of them|of us|of the family|in the family|in total|total|in all|<all>)';
const whose = "(the)? (<owner>|<role>|his|her|their|boy|girl|boys|girls) ('s)?";
const opens =
  "(so|that's|thats|it's|its|it'll be|itll be|it will be|will be|that'll be|thatll be|that makes|makes|all up|in total|altogether|there's|theres|there are|there is|there will be|there'll be|therell be|we have|we've|weve|we've got|got|i have|i've got|roughly|around|about|all|all of the|total|total of|a total of|the|whole|immediate|just|only|family of|group of|squad of){0,3}";
const sumUp =
  "(,|-)? (so|=|that's|thats|makes|making|that makes|which makes|which is|makes it|total|totals|in total|altogether|is|it's|its|comes to|or|- \\>){1,2}";

/** Whether some of those counted wear none. */
export const tellsLess = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const { n, s } = leaves.in(tokens, start, end)?.kept ?? {};
  const fewer = Number(s?.number?.amount) < Number(n?.number?.amount);
  return fewer || firstIn([lessForm, ...noneFor, onlyThese, onlySoMany], tokens, start, end) !== undefined;
};

/** What each form tells: how many in all, on one side, on each side, beside them, or only that they wear one. */
type Told =
  | 'heads'
  | 'less'
  | 'only'
  | 'side'
  | 'each side'
  | 'plus'
  | 'sum'
  | 'wear'
  | 'party'
  | 'included'
  | 'left out'
  | 'no one'
  | 'some'
  | 'table'
  | 'pause';

const told: readonly (readonly [Told, Pattern])[] = [
  ...oneOfTheCounted.map((form) => ['included', form] as const),
  ['pause', staffNone],
  ['pause', staffWithout],
  ['no one', nobodyThere],
  ['less', lessForm],
  ...noneFor.map((form) => ['less', form] as const),
  ['only', onlyThese],
  ['only', onlySoMany],
  ['each side', pattern(`(,|-|:)? ${opens} <n:count> (${folk}){0,2} (on)? (each|either|<a:word>) side`)],
  [
    'side',
    pattern(
      `(,|-|:|\\()? (and|plus|&|n)? ${whose} (side|family|lot|party|crew|squad|camp) (:|-|=|,|has|have|is|are|of)? <n:count> (${folk}){0,2}`,
    ),
  ],
  [
    'side',
    pattern(
      `(,|-|:|\\()? (and|plus|&|n)? <n:count> (${folk})? (wearing|to wear|will wear)? (on|for|from|of|in|off)? ${whose} (side|family|lot|party|crew|squad|camp)`,
    ),
  ],
  ['side', pattern(`(,|-|:|\\()? (and|plus|&|n)? <n:count> (${folk})? (on|for|from|of|off)? (the)? (his|hers|theirs)`)],
  ['side', pattern(`(,|-|:|\\()? (and|plus|&|n)? <n:count> (${folk})? (on|for|from) (the)? (groom's|bride's|grooms|brides|groom|bride)`)],
  ...theirsCounted.map((form) => ['included', form] as const),
  [
    'left out',
    pattern('(,|-)? (\\()? (not including|not counting|not incl|excluding|excl|without|minus|apart from) (the|his)? <r:role> (\\))?'),
  ],
  [
    'some',
    pattern(
      '(,|-)? (\\()? <count> of (them|those|whom|which|the <count>) (are|is|being|r)? (kids|children|men|women|ladies|boys|girls|guys|adults|little|small|<role>) (\\))?',
    ),
  ],
  ['plus', pattern('(,|-)? (plus|\\+|and|&|n) (the|both|his|her|our)? (<m:count>)? <r:role>')],
  ['plus', pattern('(,|-)? (plus|\\+|and|&|n) (the)? (happy)? <c:word>')],
  [
    'party',
    pattern(
      `(in|from|of|for|all)? (the|our)? (whole|full|entire)? (bridal|wedding|whole|full|groom's|grooms|bride's|brides|entire) (party|squad|line up|lineup)`,
    ),
  ],
  ['party', pattern('(of|in|for) (the)? (party|line up|lineup|bridal)')],
  // "bridal party of 12"; a "party of 12" may be guests
  ['pause', pattern('(a|the|whole)? (party|group|squad|family|line up|lineup) of')],
  ['pause', pattern('of')],
  [
    'heads',
    pattern(
      '(total|no|number|number of|nos)? (of)? (wearers|people wearing|ppl wearing) (is|are|:|-|=|total|count|now|up to|<upTo>|down to|went|gone){0,3} <w:count> (now)?',
    ),
  ],
  ['heads', pattern('(headcount|head count|number|numbers|count|total) (for)? (the)? (flowers|wearing) (is|are|:|-|=)? <w:count>')],
  ['sum', pattern(`${sumUp} (of|about|it|all)? <n:count> (${folk}){0,2}`)],
  ['heads', pattern(`(,|-|:|=|is|has)? ${opens} <n:count> (${folk}){0,2}`)],
  [
    'wear',
    pattern(
      "(,|-|all|everyone|everybody|each|who|that|they|they're|theyre|all of them|each of them|and|<all>){0,3} (is|are|will be|'s|to be|to|will|being)? (wearing|wear|wears|pinned|being pinned|having one pinned) (a flower|one each|one|them|these|it|flowers|flower|something|each)? (each|on|now)? (on)? (the)? (day)?",
    ),
  ],
  [
    'wear',
    pattern(
      '(,|-|all|everyone|everybody|each|who|they|and|<all>){0,3} (will)? (need|needs|needing|getting|get|gets|having|have|has|want|wants) (a flower|one each|one|flowers)',
    ),
  ],
  // "16 people in flowers"
  ['wear', pattern('(,)? (in|with) (the)? (flowers|buttonholes and corsages)')],
  ...besideHeads.map((form) => ['pause', form] as const),
  // "head table is 10 people, all of them wearing one"
  // "everyone at the top table": a word of its own among what else a florist makes flowers for
  ['pause', pattern('(everyone|everybody|all) (at|on) (the)? (<other>|<any> table)')],
  ['table', pattern('(at|on)? (the)? ((head|top|main|bridal|family) table|<t:other>) (is|are|has|have|of|will be|:|-|=)?')],
  // "and groom's side is 5, nobody else"
  [
    'pause',
    pattern(
      "(,|-|and|;|\\(){0,2} (that's it|thats it|that's all|thats all|(that's|thats|there's|theres)? (nobody|noone|no one|none) (else|besides|extra|other|more) (wearing|to wear|needs|wants|having|getting)? (one|any|them|flowers|anything)?) (\\))?",
    ),
  ],
  ['pause', pattern(`(,|-|:|\\(|\\)|and|&|<all>|on the day|on|the day|in total|total|in all|in the end|altogether|confirmed|final|now)`)],
];
const forms = told.map(([, form]) => form);

/** How many in all, where all of the part tells of it and no two numbers disagree. */
export const headsTold = (reader: Reader, part: Part): number | undefined => {
  const { tokens } = reader;
  const heads: number[] = [];
  const sides: number[] = [];
  let [plus, beside, seated, sum, less] = [0, false, false, 0, 0];
  let [worn, party, included, game, atTable, few, named, without, ours] = [false, false, false, false, false, false, false, false, false];
  for (let index = part.start; index < part.end; ) {
    const match = firstAt(forms, tokens, index, part.end);
    if (match === undefined) return undefined;
    // Each form is asked in turn: a number behind others is a sum only where it says so, and the first is none.
    let taken = 0;
    for (const [kind, form] of told) {
      const own = form.at(tokens, index, part.end);
      if (own === undefined || (kind === 'sum' && heads.length + sides.length === 0)) continue;
      const number = own.kept['n'] ?? own.kept['w'];
      if (kind === 'only' && number !== undefined && heads.length !== 1) continue; // "only 6 wearing" is the first said
      const count = Number(number?.number?.amount);
      if (number !== undefined && !(isCount(number) && isSingle(number.number))) return undefined;
      if (kind === 'table') {
        if (own.kept['t'] !== undefined && !/table$/.test(own.kept['t'].text)) continue;
        atTable = true;
      }
      // "5 a side" is a game of football too.
      if (kind === 'each side' && own.kept['a'] !== undefined) {
        if (!/^(a|per|every)$/.test(own.kept['a'].text)) continue;
        game = true;
      }
      if (kind === 'plus' || kind === 'left out') {
        const role = own.kept['r'];
        const both = tokens.slice(own.start, own.end).some(({ text }) => text === 'both');
        const many = own.kept['m'] === undefined ? undefined : Number(own.kept['m'].number?.amount);
        if (role === undefined && own.kept['c']?.text !== 'couple') continue;
        const more = role === undefined ? 2 : countFor(role.text, many, both);
        if (more === undefined) return undefined;
        plus += more;
        // "5 on the top table wearing, plus 2 readers": those at a table are named by where they sit, and the readers come on top.
        beside ||= !(atTable && tokens.slice(own.start, own.start + 2).some(({ text }) => /^(plus|\+)$/.test(text)));
        seated ||= !beside;
      } else if (kind === 'less') {
        if (heads.length + sides.length === 0 || less > 0) return undefined;
        const who = own.kept['r'];
        const couple = tokens.slice(own.start, own.end).some(({ text }) => text === 'couple');
        const many = number !== undefined ? count : who !== undefined ? countFor(who.text, undefined, false) : couple ? 2 : 1;
        // "12 wearing but the ring bearer won't": whether he is one of those wearing is not said.
        named ||= who !== undefined && number === undefined;
        // "but the ushers say no so 7"
        few ||= many === undefined;
        less = many ?? 0;
      } else if (kind === 'only') {
        if (heads.length !== 1) return undefined;
        few = true;
        if (number !== undefined) heads.push(count);
      } else if (kind === 'heads') heads.push(count);
      else if (kind === 'side') {
        sides.push(count);
        ours ||= tokens.slice(own.start, own.end).some(({ text }) => /^(party|crew|squad)$/.test(text));
      } else if (kind === 'each side') sides.push(count, count);
      else if (kind === 'sum') sum = sum === 0 || sum === count ? count : Number.NaN;
      else if (kind === 'wear') worn = true;
      else if (kind === 'party') party = true;
      else if (kind === 'no one') without = true;
      else if (kind === 'included') included = true;
      // "7 wearing, thats with the 9 grandads", "7 wearing, maid of honour is one of the 8"
      if (kind === 'included' && [own.kept['e'], own.kept['f']].some((some) => Number(some?.number?.amount) >= (heads[0] ?? 0)))
        return undefined;
      if (kind === 'included' && own.kept['k'] !== undefined && Number(own.kept['k'].number?.amount) !== heads[0]) return undefined;
      if (own.kept['w'] !== undefined) worn = true;
      taken = own.end - index;
      break;
    }
    if (taken === 0) return undefined;
    index += taken;
  }
  // "nothing for the ring bearer, 12 in the party": whether he is one of the twelve is not said.
  if (without && !worn) return undefined;
  if (named && worn && !party && sum === 0) return undefined;
  if (game && !worn && !party && !beside) return undefined;
  // "groom side 11 people total wearing"
  const inAll = tokens.slice(part.start, part.end).some(({ text, means }) => text === 'total' || means['all'] !== undefined);
  if (sides.length === 1 && heads.length === 0 && ((worn && inAll) || (ours && less === 0)) && !beside && sum === 0) return sides[0];
  if (seated && heads.length === 1 && sides.length === 0 && sum === 0)
    return worn && !beside && less === 0 ? (heads[0] ?? 0) + plus : undefined;
  if (few) return fewOf({ heads, sides, plus, beside, sum, less });
  return agreed({ heads, sides, plus, beside, sum, less }, worn || party || included);
};
