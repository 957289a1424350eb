// A new value that is one of two, or somewhere between them: "make the bouts 12 or 14 each", "actually 20 or 22 bouts". Which of them is asked.

import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Ask, Choice } from '../reading.ts';
import type { Token } from '../text/token.ts';

const endsOf = ({ number }: Token): readonly string[] | undefined => {
  if (number === undefined || !/^(plain|money)$/.test(number.form)) return undefined;
  return number.or ?? (number.max === undefined ? undefined : [number.amount, number.max]);
};

/** The finding, or a question where its one new value is not settled; more of them beside it are held. */
export const eitherValue = (reader: Reader, finding: Finding): Finding => {
  const { start, end, facts = [] } = finding;
  const open = reader.tokens.slice(start, end).flatMap((token) => endsOf(token) ?? []);
  const [fact, another] = facts;
  const unsettled = facts.find((each) => each.fact === 'change' && open.includes(String(each.to)) && !open.includes(String(each.from)));
  if (fact?.fact !== 'change' || unsettled === undefined) return finding;
  if (another !== undefined || open.length !== 2 || (fact.what !== 'count' && fact.what !== 'price')) return { start, end, held: true };
  const [what, words] = [fact.what, reader.words(start, end)];
  const choices = open.map((value): Choice => {
    const to = what === 'count' ? Number(value) : value;
    const say = what === 'count' ? `${value} pieces` : `${value}${fact.per === 'all' ? ' for all' : ' each'}`;
    return { words: say, facts: [{ ...fact, to } as Fact] };
  });
  const ask: Ask = { about: what, why: 'which number', words, choices };
  return { start, end, asks: [ask] };
};
