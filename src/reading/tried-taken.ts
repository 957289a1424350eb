// "Yes", "yes do that", "go with 150" behind what was only worked out: it is to be so. A bare "ok" or "great" has only heard it.

import type { Fact } from './fact.ts';
import type { Message } from './text/message.ts';
import type { Token } from './text/token.ts';
import { wordList } from './words/word-list.ts';

const agrees =
  /\b(yes|yep|yeah|yup|yea|aye|yah|definitely|agreed|add (it|them|those)|(do|make|book|use|take|confirm) (it|that|those|them|this|so|\d+)|(go|going|went|gone) (ahead|with|for))\b/;
const beside = new Set(
  wordList(`
  yes, yep, yeah, yup, yea, aye, yah, definitely, agreed, ok, okay, please, pls, plz, thanks, ta, thank you, great, perfect, lovely, good, fine,
  brilliant, cool, right, sure, so, let's, lets, let, us, we, we'll, well, i, i'll, ill, will, would, can, you, could, is, it's, its, she, he, they, bride,
  client, the, mum, says, said, say, wants, want, happy, to, do, that, it, this, those, them, then, go, going, went, gone, ahead, with, for, make, book, use, take,
  add, confirm, now, just, on, be, all, x, and, a, at, of, each, ea
`),
);
const signs = /^[,.!:;-]$/;

const valueTold = (fact: Fact): string | undefined => {
  if (fact.fact === 'change') return fact.to === undefined ? undefined : String(fact.to);
  return fact.fact === 'pieces' ? String(fact.count) : fact.fact === 'price' ? fact.amount : undefined;
};
const isPrice = (fact: Fact): boolean => fact.fact === 'price' || (fact.fact === 'change' && fact.what === 'price');

/** A number said again has to be one that was tried, and a sum of money the price that was. */
const isTried = ({ number }: Token, tried: readonly Fact[]): boolean =>
  number?.max === undefined &&
  tried.some(
    (fact) =>
      Number(valueTold(fact)) === Number(number?.amount) && (number?.form === 'plain' || (number?.form === 'money' && isPrice(fact))),
  );

const isKindTried = ({ means }: Token, tried: readonly Fact[]): boolean => {
  const kind = means['piece'];
  if (kind === undefined) return false;
  const kinds = tried.flatMap((fact) => ('piece' in fact && fact.piece !== undefined ? [fact.piece] : []));
  return kind === 'unspecified' || kinds.length === 0 || kinds.some((each) => each === kind || each.endsWith(` ${kind}`));
};

/** The facts tried, where all of the message agrees to them. */
export const triedTaken = (message: Message, tried: readonly Fact[]): readonly Fact[] | undefined => {
  const { tokens, parts, clean } = message;
  if (parts.some(({ asked }) => asked) || !agrees.test(clean.original.toLowerCase())) return undefined;
  const known = (token: Token): boolean =>
    token.kind === 'line' ||
    signs.test(token.text) ||
    (token.number !== undefined
      ? isTried(token, tried)
      : isKindTried(token, tried) || token.text.split(' ').every((word) => beside.has(word)));
  if (!tokens.every(known)) return undefined;
  const words = clean.original.trim();
  return tried.map((fact) => ({ ...fact, words }));
};
