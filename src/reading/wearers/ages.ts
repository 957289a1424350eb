// How old a wearer is, said behind: "one ring bearer, hes 4, and one flower girl, shes 6", "2 flower girls, they're 4 and 6". It counts no one.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isSingle } from '../text/token.ts';

const only = '(only|just|about|nearly|almost|now)?';
const years = '(and a half|years old|yrs old|yr old|year old|years|yrs|yr|yo|months|months old|mths)?';
// An age may be marked as one by now, so any number will do. "ushers, they're 4" may count them; of one man, or of two with two numbers, it is an age.
const age = [
  pattern(`(,|-|\\(|who){0,2} (he's|hes|he is|she's|shes|she is|who's|whos|who is|aged|age) ${only} <n:any> ${years} (\\))?`),
  pattern(`(,|-|\\(|who){0,2} (they're|theyre|they are|who're|who are|aged|ages) ${only} <n:any> (and|&|n|,) <m:any> ${years} (\\))?`),
];
const oldest = 17; // of those whose age is told
const closes = /^(,|;|-|and|&|n|\+|plus|\.)$/;

/** Where the words end that tell how old the one just named is, or the two. */
export const ageEnd = ({ tokens }: Reader, index: number, end: number, count: number | undefined): number | undefined => {
  const match = age[count === 2 ? 1 : count === 1 ? 0 : 2]?.at(tokens, index, end);
  const { n, m } = match?.kept ?? {};
  const young = [n, m].every((token) => token === undefined || (isSingle(token.number) && Number(token.number.amount) <= oldest));
  const next = match === undefined || match.end >= end ? undefined : tokens[match.end];
  return match !== undefined && young && (next === undefined || next.kind === 'line' || closes.test(next.text)) ? match.end : undefined;
};
