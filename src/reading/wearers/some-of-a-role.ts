// Some of one role who wear none, and who comes on top of them: "7 groomsmen but one isn't wearing a flower so 6", "8 ushers but 2 of them
// won't wear one, plus the groom, so 7". Held where the number told behind is another.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';
import { countFor, nameOf } from './role-counts.ts';
import { noneOfThem, wearNone } from './who-wears-none.ts';

const more = (count: string, role: string): string =>
  `((,|-|and|&|n|plus|\\+|then|also|with|as well as){1,3} (the|his|her|our|a|an|one)? (<${count}:count>)? <${role}:role>)?`;
const allBut = pattern(
  `(so|we have|we've|there's|theres|there are|it's|its|got){0,2} ((the|a)? <h:role> (,|and|&|plus|\\+){1,2})? (the)? <m:count> <r:role> (in all|in total|total|<all>)? (,|-|\\(|but|and|though|only|;){1,3} (<l:count>|one|a couple) (of them|of those|of em|of whom)? (is|are|has|have|'s)? ${wearNone} ${noneOfThem} ${more('j', 'e')} ${more('k', 'f')} ((,|-|so|=|that's|thats|makes|makes it|leaves|leaving|is|down to){1,3} (it's|its)? (only|just)? <n:count> (wearing|to wear|in all|total|in total|flowers|<all>|of them|to make|<piece>)? (them|one|flowers|a flower)? (in all|in total|all up|all told|altogether)?)?`,
);

interface Worn {
  readonly wearer: string;
  readonly count: number;
}

// Nothing where how many they are is not said: "plus the dads" are two, "plus ushers" any number.
const worn = (role: Token | undefined, number: Token | undefined): readonly Worn[] | undefined => {
  if (role === undefined) return [];
  const count = countFor(role.text, number === undefined ? undefined : Number(number.number?.amount), false);
  const one = role.means['role'];
  return count === undefined || one === undefined ? undefined : [{ wearer: nameOf(one, count), count }];
};

export const someOfARole = (reader: Reader, part: Part): Finding | undefined => {
  const match = allBut.might(reader.tokens) ? allBut.at(reader.tokens, part.start, part.end) : undefined;
  const { h, m, r, l, j, e, k, f, n } = match?.kept ?? {};
  const role = r?.means['role'];
  if (match?.end !== part.end || m?.number === undefined || role === undefined) return undefined;
  const held = { start: part.start, end: part.end, held: true };
  const couple = reader.tokens.slice(match.start, match.end).some(({ text }) => text === 'a couple');
  const count = Number(m.number.amount) - (l === undefined ? (couple ? 2 : 1) : Number(l.number?.amount));
  const [first, second, third] = [worn(h, undefined), worn(e, j), worn(f, k)];
  if (first === undefined || second === undefined || third === undefined) return held;
  const wearers = [...first, { wearer: nameOf(role, count), count }, ...second, ...third];
  const total = wearers.reduce((sum, each) => sum + each.count, 0);
  const unsure = [m, l, n, j, k].some((token) => isRangeOrChoice(token?.number));
  const twice = new Set(wearers.map(({ wearer }) => wearer)).size < wearers.length;
  if (unsure || twice || count < 1 || (n !== undefined && Number(n.number?.amount) !== total)) return held;
  return found(reader, part.start, part.end, [{ fact: 'wearers', wearers, total }]);
};
