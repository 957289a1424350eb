// "my no is 0491 570 156": the number to ring, and nobody says no.

import { paper } from './papers.ts';
import { changed, type Token } from './token.ts';

const whose = /^(my|her|his|their|our|your|phone|mobile|mob|cell|contact|tel|order|job|invoice|ref|account|booking|whatsapp)$/;
// "invoice no 60231": the number of a paper, long enough to be no count put right.
const isPaper = (tokens: readonly Token[], index: number): boolean => {
  const [before, next] = [tokens[index - 1], tokens[index + 1]];
  return paper.test(before?.text ?? '') && next?.number?.form === 'plain' && /^\d{3,}$/.test(next.text);
};
const nearby = 3; // tokens from "no" to the number

export const withOwnNumbers = (tokens: readonly Token[]): readonly Token[] => {
  const isNumber = (index: number): boolean =>
    isPaper(tokens, index) ||
    (whose.test(tokens[index - 1]?.text ?? '') &&
      tokens.slice(index + 1, index + 1 + nearby).some(({ number }) => number?.form === 'code'));
  if (!tokens.some(({ text }, index) => text === 'no' && isNumber(index))) return tokens;
  return tokens.map((token, index) => (token.text === 'no' && isNumber(index) ? changed(token, { text: 'number' }) : token));
};
