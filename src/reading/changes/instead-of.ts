// One kind goes and another comes in its place: "scrap the corsages, 3 crowns instead", "scratch the 4 crowns, they want 4 combs instead".

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';

export const kind = (token: Token | undefined): PieceKind => (token?.means['piece'] ?? 'unspecified') as PieceKind;
export const numberOf = (token: Token | undefined): number | undefined =>
  token?.number === undefined ? undefined : Number(token.number.amount);

// "scrap the corsages, 3 crowns instead"
const others = pattern(
  "(,|-|and|n|&|:|do|make|make it|have|give|we want|they want|she wants|he wants|want|wants|put|use|go with|gone with|it's|its|now|just|them|us|with|for){0,4} (<n:count>|a|an) (<material>)? <b:piece> (instead|please|pls|now|in their place|in its place|rather|thanks)? ((at|@) <c:amount> (<each>)?|<c:money> (<each>)?)? (instead|please|pls)?",
);
export const insteadOf = (reader: Reader, start: number, end: number, from: PieceKind): Match | undefined => {
  const match = others.at(reader.tokens, start, end);
  const to = kind(match?.kept['b']);
  // "scrap the corsages and 2 bouts": two of them, or all but two.
  const joined = /^(and|&|n)$/.test(reader.tokens[start]?.text ?? '') && reader.tokens[start + 1]?.number !== undefined;
  if (joined && !reader.tokens.slice(start, end).some(({ text }) => /^(instead|rather|place)$/.test(text))) return undefined;
  return match?.end === end && to !== from && to !== 'unspecified' && match.kept['n']?.number?.max === undefined ? match : undefined;
};

// "scratch the 4 crowns, they want 4 combs instead"
const goneCounted = pattern(
  '(ok|actually|sorry|no|oh|,){0,2} (scrap|scratch|scrub|drop|cancel|lose|remove|ditch|forget|bin|skip|cut|delete|nix|axe) (<t:word>)? <n:count> (of)? (the|those|them)? (<material>)? <p:piece>',
);

// All of them where they are "the 4 crowns"; "scratch 2 crowns" takes two off.
export const countedGone = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = goneCounted.at(reader.tokens, start, end);
  if (match === undefined) return undefined;
  const [from, count, article] = [kind(match.kept['p']), numberOf(match.kept['n']), match.kept['t']?.text];
  const instead = insteadOf(reader, match.end, end, from);
  const said = reader.tokens.slice(match.end, end).some((token) => /^(instead|rather|place)$/.test(token.text));
  // "scratch the 4 crowns, they'd rather have combs": how many of those is not said.
  const after = reader.tokens.slice(match.end, end);
  const others =
    article !== undefined &&
    after.some(({ means }) => (means['piece'] ?? 'unspecified') !== 'unspecified') &&
    after.some(({ text }) => /^(want|wants|rather|prefer|prefers|instead|like|swap)$/.test(text));
  if (instead === undefined && others) return { start, end, held: true };
  if (instead === undefined || count === undefined || from === 'unspecified' || !said) return undefined;
  if (article !== undefined && !/^(the|those|all|our|her)$/.test(article)) return undefined;
  const whole = article !== undefined && reader.tokens[match.end - 2]?.text !== 'the';
  const [to, given, price] = [kind(instead.kept['b']), numberOf(instead.kept['n']) ?? 1, instead.kept['c']?.number];
  if (match.kept['n']?.number?.max !== undefined) return undefined;
  return found(reader, match.start, instead.end, [
    whole ? { fact: 'change', what: 'count', to: 0, from: count, piece: from } : { fact: 'change', what: 'count', by: -count, piece: from },
    whole ? { fact: 'change', what: 'count', to: given, piece: to } : { fact: 'change', what: 'count', by: given, piece: to },
    ...(price === undefined
      ? []
      : [{ fact: 'change', what: 'price', to: price.amount, per: 'each', ...currencyFields(price), piece: to } as const]),
  ]);
};
