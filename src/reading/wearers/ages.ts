// How old a wearer is, said behind: "one ring bearer, hes 4, and one flower girl, shes 6", "2 flower girls, they're 4 and 6". It counts no one.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isSingle, type Token } from '../text/token.ts';

const only = '(only|just|about|nearly|almost|now)?';
const years = '(and a half|years old|yrs old|yr old|year old|years|yrs|yr|yo|months|months old|mths)?';
// An age may be marked as one by now, so any number will do. "ushers, they're 4" may count them; of one man, or of two with two numbers, it is an age.
const age = [
  pattern(`(,|-|\\(|who){0,2} (he's|hes|he is|she's|shes|she is|who's|whos|who is|aged|age) ${only} <n:any> ${years} (\\))?`),
  pattern(`(,|-|\\(|who){0,2} (they're|theyre|they are|who're|who are|aged|ages) ${only} <n:any> (and|&|n|,) <m:any> ${years} (\\))?`),
];
// "flower girl is 4", "page boys are 3 and 5": of children, beside others who wear them, where nothing is priced.
const child =
  /^((junior|jr|mini|wee|little) .*|flower ?girls?|page ?boys?|pages?|ring ?bearers?|train ?bearers?|nieces?|nephews?|godsons?|goddaughters?)$/;
const ofChild = [
  pattern(`(is|'s|turns|turned|turning|just turned|is only|is just) ${only} <n:plain> ${years}`),
  pattern(`(are|both) ${only} <n:plain> (and|&|n|,) <m:plain> ${years}`),
];
const oldestChild = 12;
const priced = ({ means, number }: Token): boolean => means['each'] !== undefined || number?.form === 'money';
const is = /^(is|are|'s)$/;
const childAge = (tokens: readonly Token[], index: number, end: number, count: number | undefined) => {
  // The verb may have been read with the child.
  const from = is.test(tokens[index - 1]?.text ?? '') ? index - 1 : index;
  const listed = tokens.slice(0, end).some(({ means, text }) => means['role'] !== undefined && !child.test(text));
  if (!child.test(tokens[from - 1]?.text ?? '') || !listed || tokens.slice(0, end).some(priced)) return undefined;
  const match = ofChild[count === 2 ? 1 : count === 1 ? 0 : 2]?.at(tokens, from, end);
  const { n, m } = match?.kept ?? {};
  return [n, m].every((each) => each === undefined || Number(each.number?.amount) <= oldestChild) ? match : undefined;
};

const oldest = 17; // of those whose age is told
const closes = /^(,|;|-|and|&|n|\+|plus|\.)$/;

/** Where the words end that tell how old the one just named is, or the two. */
export const ageEnd = ({ tokens }: Reader, index: number, end: number, count: number | undefined): number | undefined => {
  const match = age[count === 2 ? 1 : count === 1 ? 0 : 2]?.at(tokens, index, end) ?? childAge(tokens, index, end, count);
  const { n, m } = match?.kept ?? {};
  const young = [n, m].every((token) => token === undefined || (isSingle(token.number) && Number(token.number.amount) <= oldest));
  const next = match === undefined || match.end >= end ? undefined : tokens[match.end];
  return match !== undefined && young && (next === undefined || next.kind === 'line' || closes.test(next.text)) ? match.end : undefined;
};
