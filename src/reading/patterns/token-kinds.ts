// Kinds of tokens that patterns and phrases ask for by name: number forms, 'count', 'number', 'word', 'any', or a tag of the vocabulary.

import { none, tagsOf } from '../text/means.ts';
import { namesTax } from '../text/of-tax.ts';
import { isCount, type NumberForm, type Token } from '../text/token.ts';
import { isOtherThings, isUnlisted } from '../words/other-things.ts';

const numberForms: Readonly<Record<string, readonly NumberForm[]>> = {
  money: ['money'],
  amount: ['plain', 'money'],
  percent: ['percent'],
  duration: ['duration'],
  length: ['length'],
  weight: ['weight'],
  time: ['time'],
  ordinal: ['ordinal'],
  slashed: ['slashed'],
  code: ['code'],
  plain: ['plain'],
  quantity: ['plain', 'length', 'weight'],
};

export type Test = (token: Token) => boolean;

const notFillers = ['piece', 'all', 'each', 'budget', 'taxName', 'taxWord'];
const ofNumbers: Readonly<Record<string, Test>> = {
  count: isCount,
  number: (token) => token.number !== undefined,
  range: (token) => token.number?.max !== undefined || (token.number?.or?.length ?? 0) > 1,
};
const ofWords: Readonly<Record<string, Test>> = {
  word: (token) => token.kind === 'word',
  filler: (token) => token.kind === 'word' && token.number === undefined && !notFillers.some((tag) => token.means[tag] !== undefined),
  things: isOtherThings,
  unlisted: isUnlisted,
  reaching: (token) => /^(up to|upto)$/.test(token.text), // "we're up to 30"; "max 30" is a limit
};
const special: Readonly<Record<string, Test>> = {
  ...ofNumbers,
  ...ofWords,
  any: (token) => token.kind !== 'line',
  line: (token) => token.kind === 'line',
  tax: namesTax,
};

const testFor = (tag: string): Test => {
  const forms = numberForms[tag];
  if (forms !== undefined) return (token) => token.number !== undefined && forms.includes(token.number.form);
  return special[tag] ?? ((token) => token.means[tag] !== undefined);
};
const tests = new Map<string, Test>();

/** The test for a kind. */
export const testOf = (tag: string): Test => {
  const known = tests.get(tag) ?? testFor(tag);
  tests.set(tag, known);
  return known;
};

const formTags = (form: NumberForm): string[] => Object.keys(numberForms).filter((tag) => numberForms[tag]?.includes(form));
const tagsOfForm = new Map<NumberForm, readonly string[]>();
const own = new Set([...Object.keys(special), ...Object.keys(numberForms)]);
const [numberTests, wordTests] = [Object.entries(ofNumbers), Object.entries(ofWords)];

/** Every kind a token is of: looked up by its number and its meanings, so that few tests are made. */
export const kindsOf = (token: Token): readonly string[] => {
  if (token.kind === 'line') return ['line'];
  const kinds = ['any'];
  if (token.kind === 'word') for (const [tag, test] of wordTests) if (test(token)) kinds.push(tag);
  if (token.means !== none) {
    for (const tag of tagsOf(token.means)) if (!own.has(tag)) kinds.push(tag);
    if (namesTax(token)) kinds.push('tax');
  }
  if (token.number === undefined) return kinds;
  for (const [tag, test] of numberTests) if (test(token)) kinds.push(tag);
  const { form } = token.number;
  const forms = tagsOfForm.get(form) ?? formTags(form);
  tagsOfForm.set(form, forms);
  kinds.push(...forms);
  return kinds;
};

/** Whether a token is of a kind: a number form, 'count', 'number', 'word', 'any', or a tag of the vocabulary. */
export const isA = (token: Token, tag: string): boolean => testOf(tag)(token);
