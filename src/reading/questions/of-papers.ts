// "is order 8841 the one for 3pm?", "has inv 60231 been paid?": asked of a paper by its number, which no thread knows. The number counts nothing.

import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isSingle } from '../text/token.ts';

const paper = '(order|job|booking|quote|ticket|inv|invoice|po|docket|receipt|statement|ref|reference|account|acct|enquiry)';
const numbered = [pattern(`${paper} (no|nr|number|num|ref|#|:|-){0,2} <n:number>`), pattern(`(the|that|is) <n:number> ${paper}`)];
// "can we order 1450 by friday"
const verb = /^(we|i|you|they|to|can|should|could|must)$/;

export const asksOfPaper = ({ tokens }: Reader, start: number, end: number): boolean => {
  const match = firstIn(numbered, tokens, start, end);
  const said = match?.kept['n'];
  const next = tokens[match?.end ?? end]?.means;
  // "can we order 1450 stems"
  if (match === undefined || said === undefined || ['piece', 'ingredient', 'pack', 'each'].some((tag) => next?.[tag] !== undefined))
    return false;
  if (/^(stems?|of|more|extra|in|x)$/.test(tokens[match.end]?.text ?? '') || verb.test(tokens[match.start - 1]?.text ?? '')) return false;
  return (
    said.number?.form === 'code' ||
    (isSingle(said.number) && said.number.form === 'plain' && /^\d{4,}$/.test(said.text) && !said.text.endsWith('00'))
  );
};
