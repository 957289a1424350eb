// What all of it comes to, said alone where pieces are ordered already: "they're paying 600 all in", "total is 600".

import { currencyFields } from '../order/read-order.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import { isSingle } from '../text/token.ts';

const lead = '(ok|okay|so|and|now|actually|sorry|update|,){0,3}';
const who =
  "(they're|theyre|they are|she's|shes|she is|he's|hes|he is|they|she|he|(the)? (client|bride|couple|groom) (is|are)?|(client's|clients)|make it|call it|let's say|lets say|agreed|agreed on|settled on|we agreed|i said|i told them|i quoted)";
const pays =
  '(paying|pay|pays|will pay|to pay|happy to pay|happy with|happy at|wants to pay|want to pay|agreed to|agreed|gone for|going for)';
const forms = [
  pattern(`${lead} (${who} (now)? (${pays})?)? (only|about)? <n:amount> <a:all>`),
  pattern(`${lead} (the|our|their|her)? (new|agreed)? <a:all> (price)? (is|was|=|:|now|to be|will be){1,2} (now)? <n:amount>`),
];
const least = 30; // a bare number below it is hardly what a whole order costs: common practice, no source

const onlyTax = ({ tokens }: Reader, start: number, end: number): boolean =>
  tokens.slice(start, end).every((token) => tellsOfTax(token) || /^[,.]$/.test(token.text));

const totalIn = (reader: Reader, part: Part): Match | undefined => {
  for (const form of forms) {
    const match = form.at(reader.tokens, part.start, part.end);
    const number = match?.kept['n']?.number;
    if (match === undefined || !isSingle(number) || number.approx === true) continue;
    if (number.form === 'plain' && Number(number.amount) < least) continue;
    if (onlyTax(reader, match.end, part.end)) return match;
  }
  return undefined;
};

const find = (reader: Reader): Finding[] => {
  if (reader.context.pieces.length === 0) return [];
  for (const part of reader.untouched()) {
    const match = totalIn(reader, part);
    const number = match?.kept['n']?.number;
    if (match !== undefined && number !== undefined)
      return [found(reader, match.start, match.end, [{ fact: 'price', amount: number.amount, ...currencyFields(number), per: 'all' }])];
  }
  return [];
};

export const totalTold: Phrase = {
  name: 'total told',
  examples: [],
  find,
};
