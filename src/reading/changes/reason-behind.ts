// "make it 6, her sister's coming too", "sorry 6, i forgot the flower girl": why the number is another one, told behind it.

import { firstWhere, type Token } from '../text/token.ts';

const leads = /^(,|-|;|\(|as|cos|coz|cuz|because|since|bc|now)$/;
const tells =
  /^(coming|comes|come|forgot|forgotten|missed|left|added|joined|joining|realised|realized|remembered|found|turns|turned|another|extra|also|miscounted|pulled|dropped|cancelled|canceled|sick|ill|wants|want|asked|needs|well)$/;
const ofOrder = [
  'piece',
  'ingredient',
  'material',
  'other',
  'pack',
  'month',
  'weekday',
  'each',
  'all',
  'taxName',
  'taxWord',
  'included',
  'onTop',
  'bench',
];
const longest = 12; // words

const isReason = (said: readonly Token[]): boolean =>
  said.length >= 2 &&
  said.length <= longest &&
  said.every(({ number, means, kind, text }) => {
    if (number !== undefined) return number.worded === true && number.amount === '1' && number.form === 'plain';
    return kind === 'word' ? !ofOrder.some((tag) => means[tag] !== undefined) : /^['")]$/.test(text);
  }) &&
  said.some(({ means, text }) => means['role'] !== undefined || means['owner'] !== undefined || tells.test(text));

/** Where a reason begins behind the number, with the mark or word that leads to it; `end` where there is none. */
export const reasonBehind = (tokens: readonly Token[], start: number, end: number): number => {
  const number = firstWhere(tokens, start, end, (token) => token.number !== undefined);
  const at = number < 0 ? -1 : firstWhere(tokens, number + 1, Math.min(end, number + 4), ({ text }) => leads.test(text));
  return at >= 0 && isReason(tokens.slice(at + 1, end)) ? at : end;
};
