// Every word and name the reader knows, in one table: what it is called here (tag) and what it stands for (value).

import { lex } from '../text/lex.ts';
import { type Means, meansOf, none, type Tag } from '../text/means.ts';
import { benchPeople } from './bench-people.ts';
import { monthWords, weekdayWords } from './calendar-words.ts';
import { everydayWords } from './everyday-words.ts';
import { materialWords } from './material-words.ts';
import { roles } from './people-words.ts';
import { pieceWords } from './piece-words.ts';
import { allWords, budgetWords, eachWords, fromWords, upToWords } from './price-words.ts';
import { sheetNames } from './sheet-names.ts';
import { includedWords, onTopWords, taxNames } from './tax-words.ts';
import { goodsNames, ingredients, otherWork, packWords } from './trade-words.ts';

export interface Entry {
  readonly words: readonly string[];
  readonly tag: Tag;
  readonly value: string;
}

const plurals = (name: string): string[] => {
  const forms = [name, `${name}s`];
  if (/(s|x|ch|sh)$/.test(name)) forms.push(`${name}es`);
  if (/[^aeiou]y$/.test(name)) forms.push(`${name.slice(0, -1)}ies`);
  if (/leaf$/.test(name)) forms.push(`${name.slice(0, -4)}leaves`);
  return forms;
};

const table = new Map<string, Entry[]>();
const known = new Set<string>();
/** Every word of every name. */
export const knownWords: ReadonlySet<string> = known;

const add = (name: string, tag: Tag, value: string): void => {
  const words = lex(name).map((token) => token.text);
  const first = words[0];
  if (first === undefined) return;
  for (const word of words) known.add(word);
  const entries = table.get(first) ?? [];
  if (!entries.some((entry) => entry.tag === tag && entry.words.join(' ') === words.join(' '))) entries.push({ words, tag, value });
  table.set(first, entries);
};
const addAll = (lists: Readonly<Record<string, readonly string[]>>, tag: Tag, many: boolean): void => {
  for (const [value, names] of Object.entries(lists)) {
    for (const name of names) for (const form of many ? plurals(name) : [name]) add(form, tag, value);
  }
};

addAll(pieceWords, 'piece', true);
addAll(materialWords, 'material', false);
addAll(taxNames, 'taxName', false);
addAll({ tax: ['tax', 'taxes', 'duty', 'tx', 'taxs'] }, 'taxWord', false);
addAll({ included: includedWords }, 'included', false);
addAll({ 'on top': onTopWords }, 'onTop', false);
addAll({ each: eachWords }, 'each', false);
addAll({ all: allWords }, 'all', false);
addAll({ from: fromWords }, 'from', false);
addAll({ 'up to': upToWords }, 'upTo', false);
addAll({ budget: budgetWords }, 'budget', false);
addAll(ingredients, 'ingredient', true);
for (const name of goodsNames) for (const form of plurals(name)) add(form, 'ingredient', name);
addAll(packWords, 'pack', false);
addAll({ other: otherWork }, 'other', true);
addAll({ everyday: everydayWords }, 'everyday', true);
addAll({ bench: benchPeople }, 'bench', false);
addAll(sheetNames, 'sheet', false);
for (const role of roles) {
  for (const name of role.said) add(name, 'role', role.one);
  add(`${role.one}'s`, 'owner', role.one);
}
for (const [word, month] of monthWords) add(word, 'month', month);
for (const [word, day] of weekdayWords) add(word, 'weekday', day);
/** What several names of one word come to; of one tag the last counts. */
export const ofNames = (names: readonly Entry[]): Means => meansOf(Object.fromEntries(names.map(({ tag, value }) => [tag, value])));

const alone = new Map<string, Means>();
const ofSeveral = new Map<string, Map<string, Entry[]>>(); // by the first word and the second
for (const [word, entries] of table) {
  entries.sort((a, b) => b.words.length - a.words.length);
  const bySecond = new Map<string, Entry[]>();
  for (const entry of entries) {
    const second = entry.words[1];
    if (second !== undefined) bySecond.set(second, [...(bySecond.get(second) ?? []), entry]);
  }
  ofSeveral.set(word, bySecond);
  const names = entries.filter((entry) => entry.words.length === 1).reverse();
  if (names.length > 0) alone.set(word, ofNames(names));
}

/** Names that begin with this word, the longest first. */
export const namesFrom = (word: string): readonly Entry[] => table.get(word) ?? [];

/** Names of several words that begin with these two, the longest first. */
export const namesOfSeveral = (first: string, second: string): readonly Entry[] => ofSeveral.get(first)?.get(second) ?? [];

/** What the word stands for where no longer name begins with it. */
export const meansAlone = (word: string): Means => alone.get(word) ?? none;

/** Whether the word occurs in any name, so that it is never taken for a slip. */
export const isKnownWord = (word: string): boolean => known.has(word);
