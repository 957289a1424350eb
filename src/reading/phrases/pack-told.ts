// What a pack holds, its price being known: "ruscus is a bunch of 10", "statice comes in 12s", "gyp 25 stems to a bunch", "the ribbon is a 10 m roll".

import type { FactOf } from '../fact.ts';
import { itemName, knowsItem } from '../goods/item-name.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const lead = '(is|are|comes|come|it is|has|have|holds|hold|sold|:|-){0,2} (in|as)? (a|the|packs of)?';
/** Behind the name of the goods, up to the end. */
const behind = [
  pattern(`${lead} <k:pack> of <n:count> (stems|stem|heads|pins)?`),
  pattern(`${lead} <m:length> <k:pack>`),
  pattern('(is|are|has|have|come|comes|:|-)? <n:count> (stems|stem|heads|pins)? (in|to) (a|the|each) <k:pack>'),
  // "gyp 10 a bunch" is what a bunch costs
  pattern('(is|are|has|have|come|comes|:|-)? <n:count> (stems|stem|heads|pins) (per|a|an|/) <k:pack>'),
  pattern('(has|have|holds|hold) <n:count> (per|a|/) <k:pack>'),
  pattern(
    "(only|now|always){0,2} (come|comes|are|is|are sold|sold) (only|now|always){0,2} in <n:count> ('s|s) (now|only|from them|these days|this year|this week){0,2}",
  ),
  pattern('(come|comes|are sold|sold) in <s:word>'),
];
/** Before the name of the goods. */
const ahead = [
  pattern(
    "(there's|there is|there are|it's|its|you get|i get|we get)? <n:count> (stems|stem|heads)? (in|to|per) (a|the|each|one) <k:pack> of",
  ),
  pattern('(the|a|each|one) <k:pack> of (<word>){1,3} (is|has|have|holds|comes with|comes as) <n:count> (stems|stem|heads)?'),
];
const tens = /^(\d{1,3})'?s$/; // "come in 10s"

const packOf = (item: string, { k, n, m, s }: Match['kept']): Omit<FactOf<'packed'>, 'words'> | undefined => {
  const size = m?.number?.amount ?? n?.number?.amount ?? tens.exec(s?.text ?? '')?.[1];
  const per = k?.means['pack'];
  if (size === undefined || n?.number?.max !== undefined || m?.number?.max !== undefined) return undefined;
  return {
    fact: 'packed',
    item,
    size: Number(size),
    ...(m?.number?.unit === undefined ? {} : { unit: m.number.unit }),
    ...(per === undefined ? {} : { per }),
  };
};

const told = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const { tokens, context } = reader;
  const named = (from: number, to: number): string | undefined => {
    const name = tokens.slice(from, to);
    const ours = name.every(({ kind, number, means }) => kind === 'word' && number === undefined && means['piece'] === undefined);
    return ours && knowsItem(name, context.items) ? itemName(name, true) : undefined;
  };
  const reads = (item: string | undefined, match: Match | undefined): Finding | undefined => {
    const fact = item === undefined || match === undefined ? undefined : packOf(item, match.kept);
    return fact === undefined ? undefined : found(reader, start, end, [fact]);
  };
  for (const form of behind)
    for (let index = form.next(tokens, start + 1, end); index < end; index = form.next(tokens, index + 1, end)) {
      const match = form.at(tokens, index, end);
      const finding = match?.end === end ? reads(named(start, index), match) : undefined;
      if (finding !== undefined) return finding;
    }
  const [before, around] = ahead.map((form) => form.at(tokens, start, end));
  if (before !== undefined && before.end < end) return reads(named(before.end, end), before);
  if (around?.end !== end) return undefined;
  const of = tokens.findIndex(({ text }, at) => at > start && text === 'of');
  const verb = tokens.findIndex(({ text }, at) => at > of && /^(is|has|have|holds|comes)$/.test(text));
  return reads(named(of + 1, verb), around);
};

const find = (reader: Reader): Finding[] => reader.untouched().flatMap((part) => told(reader, part) ?? []);

export const packTold: Phrase = { name: 'pack size', examples: ['ruscus is a bunch of 10', 'statice comes in 12s'], find };
