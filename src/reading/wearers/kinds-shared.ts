// One sort of wearers who have two kinds between them: "8 bridesmaids, 3 combs and the rest crowns". Read only where the kinds make up all of them.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount } from '../text/token.ts';
import { isPlural, nameOf } from './role-counts.ts';

const has = '(are|is|in|with|get|gets|getting|have|has|having|want|wants|wanting|need|wear|wears|wearing|for|going|to have|w)';
const head = pattern(
  `(ok|so|we have|we've|there's|theres|there are|it's|its|got|,){0,3} (the|our)? <n:count> <r:role> (,|-|:|;|\\(|so|:|of which|of whom|wearing){1,2}`,
);
const share = pattern(
  `(,|and|&|n|plus|\\+|then|but){0,2} (<k:count> (of (them|those|em|whom))?|(all|the){0,2} (<e:role>|others|rest|the rest|other ones|remaining ones|(other|remaining) <o:count>|remaining|other)) ${has}{0,2} (a|the)? (<material>)? <p:piece> (each)?`,
);
const tail = pattern('(\\)|please|pls|thanks|ta|instead){0,2}');

export const kindsShared = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const opened = head.might(tokens) && share.might(tokens) ? head.at(tokens, part.start, part.end) : undefined;
  const { n, r } = opened?.kept ?? {};
  const role = r?.means['role'];
  if (opened === undefined || part.asked || n === undefined || r === undefined || role === undefined) return undefined;
  if (!isCount(n) || !isPlural(r.text)) return undefined;
  const shares: Match[] = [];
  const isOthers = ({ kept }: Match): boolean => (kept['e']?.means['role'] ?? 'rest') === 'rest';
  let index = opened.end;
  for (let match = share.at(tokens, index, part.end); match !== undefined; match = share.at(tokens, index, part.end)) {
    shares.push(match);
    index = match.end;
  }
  if (shares.length < 2 || !shares.every(isOthers) || (tail.at(tokens, index, part.end)?.end ?? index) !== part.end) return undefined;
  const all = Number(n.number?.amount);
  const said = shares.map(({ kept }) => kept['k'] ?? kept['o']);
  const kinds = shares.map(({ kept }) => kept['p']?.means['piece'] as PieceKind);
  if (said.some((token) => token !== undefined && !isCount(token))) return undefined;
  const open = said.filter((token) => token === undefined).length;
  const left = all - said.reduce((sum, token) => sum + Number(token?.number?.amount ?? 0), 0);
  const whole = { start: part.start, end: part.end };
  // "8 bridesmaids, 3 combs and 4 crowns": one of them has neither, or a number is wrong.
  if (open > 1 || (open === 1 && left < 1)) return { ...whole, held: true };
  if ((open === 0 && left !== 0) || kinds.includes('unspecified') || new Set(kinds).size < kinds.length) return undefined;
  const shared = kinds.map((piece, at) => ({ piece, count: Number(said[at]?.number?.amount ?? left) }));
  return found(reader, part.start, part.end, [
    { fact: 'wearers', wearers: shared.map(({ piece, count }) => ({ wearer: nameOf(role, count), count, piece })) },
    ...shared.map(({ piece, count }) => ({ fact: 'pieces' as const, piece, count })),
  ]);
};
