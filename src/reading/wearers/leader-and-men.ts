// How many he and those with him are: "groom and his mates, six of them counting him" are he and five more.

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount, isSingle } from '../text/token.ts';
import { isPlural, nameOf } from './role-counts.ts';

const head =
  "(so|ok|just|it's|its|flowers for|for|we have|the|our){0,3} <a:role> (and|&|n|\\+|plus|with) (his|her|the|all his|all the|all)? <b:role> (,|-|:|;|\\(|=|so|that's|thats|there's|theres|there are|is|are){0,2} (about|all)?";
const of = '(of them|of em|of those|lads|guys|men|people|girls|women|in all|total|in total|<all>|wearing){0,2}';
const him = '(him|her|himself|herself|the groom|the bride|the <c:role>|<c:role>)';
const tail = '(\\))? (wearing|in all|total|in total|<all>)? (one|flowers|them)? (\\))?';
const withHim = [
  pattern(`${head} <n:count> ${of} (,|-|\\()? (counting|including|incl|inc|with|<included>) ${him} ${tail}`),
  pattern(`${head} <n:count> ${of} (,|-|\\()? ${him} (included|incl|<included>|counted) ${tail}`),
  // "groom and the boys, 7 all up"
  pattern(`${head} <n:count> (of them|of those|wearing)? (<all>|total|in total|in all) (wearing)? (one|flowers|them)? (\\))?`),
];
const besideHim = [
  pattern(
    `${head} <n:count> ${of} (,|-|\\()? (not counting|not including|not incl|excluding|excl|without|besides|plus|and|\\+) ${him} ${tail}`,
  ),
];

// "7 groomsmen not counting the best man, so 8 with him"
const menThenHim = pattern(
  `(so|ok|just|it's|its|we have|the){0,2} <n:count> <b:role> (,|-|\\()? (not counting|not including|not incl|excluding|excl|without|besides|before) (the|his|her)? <a:role> (\\))? (,|-|so|that's|thats|makes|makes it|and|=|which makes){1,3} <m:count> (with|counting|including|incl|inc) (him|her|<c:role>|the <c:role>) ${tail}`,
);
const oneMore = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : menThenHim.at(reader.tokens, start, end);
  const { a, b, c, n, m } = match?.kept ?? {};
  const [leader, men, count] = [a?.means['role'], b?.means['role'], Number(n?.number?.amount)];
  if (match?.end !== end || leader === undefined || men === undefined || isPlural(a?.text ?? '') || !isSingle(n?.number)) return undefined;
  if (Number(m?.number?.amount) !== count + 1 || (c !== undefined && c.means['role'] !== leader)) return { start, end, held: true };
  const wearers = [
    { wearer: nameOf(men, count), count },
    { wearer: leader, count: 1 },
  ];
  return found(reader, start, end, [{ fact: 'wearers', wearers, total: count + 1 }]);
};

export const leaderAndMen = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const more = oneMore(reader, part);
  if (more !== undefined) return more;
  const one = firstAt(withHim, tokens, part.start, part.end);
  const match = one?.end === part.end ? one : firstAt(besideHim, tokens, part.start, part.end);
  const { a, b, c, n } = match?.kept ?? {};
  const [leader, men] = [a?.means['role'], b?.means['role']];
  if (match?.end !== part.end || part.asked || leader === undefined || men === undefined || b === undefined || a === undefined)
    return undefined;
  if (isPlural(a.text) || !isPlural(b.text) || !isCount(n)) return undefined;
  if (c !== undefined && c.means['role'] !== leader && !/^(himself|herself)$/.test(c.text)) return undefined;
  // "about 7 all up", "7 or 8 of them"
  if (!isSingle(n?.number) || n.number.approx === true) return { start: part.start, end: part.end, held: true };
  const count = Number(n.number.amount) - (match === one ? 1 : 0);
  if (count < 1) return undefined;
  const wearers = [
    { wearer: leader, count: 1 },
    { wearer: nameOf(men, count), count },
  ];
  return found(reader, part.start, part.end, [{ fact: 'wearers', wearers, total: count + 1 }]);
};
