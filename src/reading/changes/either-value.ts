// A new value that is one of two, or somewhere between them: "make the bouts 12 or 14 each", "actually 20 or 22 bouts". Which of them is asked.

import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Ask, Choice } from '../reading.ts';
import type { Token } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';

const endsOf = ({ number }: Token): readonly string[] | undefined => {
  if (number === undefined || !/^(plain|money)$/.test(number.form)) return undefined;
  return number.or ?? (number.max === undefined ? undefined : [number.amount, number.max]);
};

// "quote says £14 but i told her £12.50": one price of the same pieces cannot be both.
const contradicts = (facts: readonly Fact[]): boolean => {
  const told = new Map<string, string>();
  return facts.some((fact) => {
    if (fact.fact !== 'change' || fact.what !== 'price' || fact.to === undefined) return false;
    const [of, to] = [`${fact.piece ?? ''} ${fact.per === 'all' ? 'all' : 'each'}`, String(fact.to)];
    const other = told.get(of);
    told.set(of, to);
    return other !== undefined && other !== to;
  });
};

/** The finding, or a question where its one new value is not settled; more of them beside it are held. */
export const eitherValue = (reader: Reader, finding: Finding): Finding => {
  const { start, end, facts = [] } = finding;
  if (contradicts(facts)) return { start, end, held: true };
  const open = reader.tokens.slice(start, end).flatMap((token) => endsOf(token) ?? []);
  const [fact, another] = facts;
  const unsettled = facts.find((each) => each.fact === 'change' && open.includes(String(each.to)) && !open.includes(String(each.from)));
  if (fact?.fact !== 'change' || unsettled === undefined) return finding;
  if (another !== undefined || open.length !== 2 || (fact.what !== 'count' && fact.what !== 'price')) return { start, end, held: true };
  const [what, words] = [fact.what, reader.words(start, end)];
  const choices = open.map((value): Choice => {
    const to = what === 'count' ? Number(value) : value;
    const say = what === 'count' ? soMany(value) : `${value}${fact.per === 'all' ? ' for all' : ' each'}`;
    return { words: say, facts: [{ ...fact, to } as Fact] };
  });
  const ask: Ask = { about: what, why: 'which number', words, choices };
  return { start, end, asks: [ask] };
};
