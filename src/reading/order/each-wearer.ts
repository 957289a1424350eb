// "Each" said of people and not of a price: "10 tables of 8, each guest gets a bout", "1 per guest". How many that makes is told by the people, if at all.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const gets =
  '(gets|get|getting|has|have|having|wears|wear|wearing|needs|need|wants|want|is getting|are getting|will get|to get|to have|will have|will wear)';
const whoGets = pattern(
  `(,|-)? ((each|all)? (<role>|guest|person|table|one|of them|man|lady|bloke|member|player|kid|child) ${gets}|(gets|get|getting|wears|wearing|is getting|are getting|will get|to get|to have|will have|will wear))`,
);
const forThem = pattern(
  '(for|to) (the|our|all the|his|her|their|both)? (<count>)? (<role>|tables|families|guests|couples|people|party|sides)',
);
const perHead = /^(per (guest|person|head)|a (head|person)|per|\/(head|person))$/;

/** Whether the "each" behind a bare number opens what is told of people, or the number is what each of them gets. */
export const ofPeople = (tokens: readonly Token[], number: number, each: number): boolean => {
  const token = tokens[number];
  if (token?.number?.form !== 'plain') return false;
  const word = tokens.slice(number + 1, each).findLast((one) => one.means['each'] !== undefined);
  // "1 per guest": nobody sells for one.
  if (word !== undefined && perHead.test(word.text) && /^[12]$/.test(token.number.amount)) return true;
  // "24 bouts, 2 each for the ushers": nobody sells for two either, unless "at" says so.
  const priced = /^(at|@)$/.test(tokens[number - 1]?.text ?? '');
  if (word !== undefined && !priced && /^[1-3]$/.test(token.text) && forThem.at(tokens, each, tokens.length) !== undefined) return true;
  return word !== undefined && /^(each|per)$/.test(word.text) && whoGets.at(tokens, each, tokens.length) !== undefined;
};

const before = pattern(
  `(each|every|everyone|everybody|all) <any>{0,3} (${gets}|makes|make|making|will make|to make) (the same (thing|one|piece)? (,|-|:)?)? (a|an|one|1|their|his|her)?`,
);
const behind = pattern('(<each>|(per|a) (guest|person|head|table|man|lady|couple))');

/** Whether one piece is what each of several gets: no order of one. */
export const oneForEach = (tokens: readonly Token[], start: number, end: number): boolean => {
  const lone = tokens[start];
  if (lone === undefined || !/^(a|an|one|1|their|his|her)$/.test(lone.text)) return false;
  const after = behind.at(tokens, end, tokens.length);
  const next = tokens[after?.end ?? end];
  if (after !== undefined && next?.number === undefined && !/^(@|at|:|=|for|to)$/.test(next?.text ?? '')) return true;
  // "14 people, one crown each to make"
  if (after !== undefined && next?.text === 'to' && tokens[after.end + 1]?.text === 'make') return true;
  for (let from = Math.max(0, start - 9); from < start; from++) {
    const match = /^(each|every|everyone|everybody|all)$/.test(tokens[from]?.text ?? '') ? before.at(tokens, from, start + 1) : undefined;
    if (match?.end === start + 1 || match?.end === start) return true;
  }
  return false;
};
