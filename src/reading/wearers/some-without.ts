// Some of a party who wear none, named by what they are: "12 in the party but the ring bearer won't wear one", "10 in the party incl 3
// kids, kids don't get one". Read where it is sure that they are counted in it, or where the number told behind agrees.

import { type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount, type Token } from '../text/token.ts';
import { countFor } from './role-counts.ts';
import { noneOfThem, wearNone } from './who-wears-none.ts';

const opens =
  "(so|ok|we have|we've|weve|there's|theres|there are|there is|it's|its|got|i have|i've got|about|total of|a total of|the|our|all of){0,3}";
const folk = '(people|persons|ppl|pax|folk|folks|men|guys|gents|blokes|lads|adults|attendants|heads|in all|total|<all>){0,2}';
const group =
  "(the|our|his|her|their|this)? (bridal|wedding|whole|full|entire|groom's|grooms|bride's|brides)? (party|line up|lineup|squad|court|crew|procession)";
const within =
  '((,|-|\\(){0,1} ((including|incl|inc|counting|with|<included>|of which|of whom|of them) (the|both|his|her|our)? (<k:count>)? (are|is)?|<k:count> (of them|of whom|of which|of those) (are|is|being)?) (little|small)? <g:role> (\\))?)?';
const sum =
  "((,|-|<line>|so|=|that's|thats|makes|making|makes it|leaves|leaving|which leaves|down to|and){1,3} (it's|its|we need|that's|thats)? (only|just)? (<s:count>) (wearing|to wear|in all|total|in total|flowers|<all>|of them|to make|<piece>)? (them|one|flowers)?)?";

const parties = [
  `${opens} <n:count> ${folk} (in|of|on|for) ${group}`,
  `${opens} ${group} (is|of|has|are|:|=|-|of about){1,2} <n:count> ${folk}`,
];
const but = '(,|-|\\(|;|\\.|<line>|but|and|though|only){0,3}';
const named = `${but} (the|his|her|our|their|both|all|those|both the|all the|one)? (<l:count>)? (little|small)? (<r:role>|<t:word>) (is|are|has|have)? ${wearNone} ${noneOfThem}`;
// "12 in the party but not the ring bearer": whether he is one of the twelve is not said, unless the number behind says it.
const notHim = `${but} <x:word> (for)? (the|his|her|our)? (<l:count>)? <r:role>`;
// "11 in the party, 3 are kids and don't get one"
const someWho = `${but} <k:count> (of them|of those|of whom|of which)? (are|is)? (just)? (little|small)? <g:role> (and|who|that|so|,)? (they|they're|theyre)? (is|are|has|have)? ${wearNone} ${noneOfThem}`;
// "12 in the party, 2 are babies so 10": whatever is said of the two, the sum says that they wear none.
const someSo = `${but} <j:count> (of them|of those|of whom)? (<any>){1,7} ${sum.replace(/\?$/, '')}`;
const forms = [
  ...parties.flatMap((party) => [
    `${party} ${within} ${named} ${sum}`,
    `${party} ${someWho} ${sum}`,
    `${party} ${notHim} ${sum}`,
    `${party} ${someSo}`,
  ]),
  // "party of 10 less 2 so 8", "bridal party of 12 less the 2 babies"
  ...parties.map(
    (party) =>
      `${party} (,)? (less|minus) (the)? (<j:count>) (of (them|those|whom))? (little|small)? (<role>|people|who <any> <any>)? ${sum}`,
  ),
  // "9 people incl the celebrant, celebrant doesn't want one"
  `${opens} <n:count> ${folk} ${within.replace(/\?$/, '')} ${named} ${sum}`,
].map((source) => pattern(source));

// Who walks with the couple is one of the party; whether a parent or whoever marries them is counted is for the florist to say.
const walks =
  /^(groom|groomsm[ae]n|best m[ae]n|ushers?|page ?boys?|ring bearers?|flower (girl|boy)s?|(junior |chief )?bridesmaids?|m(aids?|atrons?|[ae]n) of hono(u)?r|bridesm[ae]n|groomswom[ae]n|best wom[ae]n|attendants?|child|children|boys?|girls?)$/;

/** How many of them wear none; undefined where that is not said. */
const goneOf = ({ kept }: Match, both: boolean): number | undefined => {
  const { g, k, l, r, t } = kept;
  const inside = g?.means['role'];
  const among = g === undefined ? undefined : countFor(g.text, k === undefined ? undefined : Number(k.number?.amount), false);
  if (t !== undefined) return /^(they|them|those)$/.test(t.text) ? among : undefined;
  if (r === undefined || (l === undefined && inside !== undefined && inside === r.means['role'])) return among;
  return countFor(r.text, l === undefined ? undefined : Number(l.number?.amount), both);
};

/** How many of a party wear one, where all of the part tells of it, or of it and the next; held where it is not sure. */
export const someWithout = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens, message } = reader;
  const likely = forms.filter((form) => form.might(tokens));
  if (likely.length === 0 || part.asked) return undefined;
  // "12 in the party / ring bearer won't wear one"
  const next = message.parts.find(({ start }) => start >= part.end);
  const near = next !== undefined && !next.asked && next.start - part.end <= 2 && allFree(reader, part.start, next.end);
  for (const end of near ? [next.end, part.end] : [part.end]) {
    for (const form of likely) {
      const match = form.at(tokens, part.start, end);
      const finding = match?.end === end ? told(reader, match) : undefined;
      if (finding !== undefined) return finding;
    }
  }
  return undefined;
};

const told = (reader: Reader, match: Match): Finding | undefined => {
  const { tokens } = reader;
  const { n, k, l, s, g, r, x, j } = match.kept;
  if (n === undefined) return undefined;
  // "10 in the bridal party, 2 crowns for the girls so 8 bouts": what they wear
  const kinds = tokens.slice(match.start, match.end).filter(({ means }) => (means['piece'] ?? 'unspecified') !== 'unspecified');
  if (j !== undefined && kinds.length > (s !== undefined && kinds.includes(tokens[match.end - 1] as Token) ? 1 : 0)) return undefined;
  if (x !== undefined && !(s === undefined ? /^not$/ : /^(not|except|minus|bar|without|excluding)$/).test(x.text)) return undefined;
  const held = { start: match.start, end: match.end, held: true };
  if ([n, k, l, s, j].some((token) => token !== undefined && !isCount(token))) return held;
  const all = Number(n.number?.amount);
  const left = s === undefined ? undefined : Number(s.number?.amount);
  const both = tokens.slice(match.start, match.end).some(({ text }) => /^both( the)?$/.test(text));
  const gone = j === undefined ? goneOf(match, both) : Number(j.number?.amount);
  const count = gone === undefined ? left : all - gone;
  const inside = g !== undefined && (r === undefined || g.means['role'] === r.means['role']);
  const sure = left !== undefined || inside || j !== undefined || (x === undefined && walks.test(r?.means['role'] ?? ''));
  if (count === undefined || !sure || count < 1 || count >= all || (left !== undefined && left !== count)) return held;
  return found(reader, match.start, match.end, [{ fact: 'wearers', wearers: [], total: count }]);
};
