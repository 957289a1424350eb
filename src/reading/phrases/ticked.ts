// "6 bouts ✅ 2 corsages ✅": ticked behind, counted pieces may be made or ordered, and it is asked.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import { allFree, type Finding, type Phrase, type Reader } from '../phrase.ts';
import { amountOf } from '../progress/made-facts.ts';
import { kindOf, ofKind } from '../text/kind-named.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';

const tick = /[✅✔☑✓]|:(white|heavy)_check_mark:|:ballot_box_with_check:/;
// The tick itself is a comma by now.
const item = pattern('(and|&|n|plus|\\+)? (<n:count>) (x)? (<material>)? <p:piece>');

// What was typed between two tokens.
const between = ({ message: { clean }, tokens }: Reader, from: number, to: number): string =>
  clean.original.slice(clean.at[tokens[from - 1]?.end ?? 0] ?? 0, clean.at[tokens[to]?.start ?? clean.text.length]);

const findIn = (reader: Reader, start: number, end: number): Finding[] => {
  const { tokens } = reader;
  const counts: { count: number; piece: PieceKind }[] = [];
  const ticks: boolean[] = [];
  let index = start;
  while (index < end) {
    const match = item.at(tokens, index, end);
    const { n, p } = match?.kept ?? {};
    if (match === undefined) return [];
    if (isRangeOrChoice(n?.number)) return [{ start, end, held: true }];
    index = match.end;
    while (index < end && isBreak(tokens[index] as Token)) index += 1;
    ticks.push(tick.test(between(reader, match.end, index)));
    counts.push({ count: amountOf(n), piece: kindOf(p).piece ?? 'unspecified' });
  }
  // Ticked in front they are the points of a list; ticked in part, nobody can tell.
  if (!ticks.includes(true) || tick.test(between(reader, start, start))) return [];
  if (ticks.includes(false)) return [{ start, end: index, held: true }];
  const words = reader.words(start, end);
  const said = counts.map(({ count }) => count).join(' and ');
  const choices: { words: string; facts: Fact[] }[] = [
    { words: `${said} made`, facts: counts.map(({ count, piece }): Fact => ({ fact: 'made', count, ...ofKind(piece), words })) },
    { words: `${said} ordered`, facts: counts.map(({ count, piece }): Fact => ({ fact: 'pieces', piece, count, words })) },
  ];
  return [{ start, end: index, asks: [{ about: 'count', why: 'which number', words, choices }] }];
};

const isBreak = ({ kind, text }: Token): boolean => kind === 'line' || /^[,.]$/.test(text);

// Lines ticked one by one are one list.
const find = (reader: Reader): readonly Finding[] => {
  const parts = tick.test(reader.message.clean.original) ? reader.untouched() : [];
  const [first, last] = [parts[0], parts.at(-1)];
  if (first === undefined || last === undefined || parts.some(({ asked }) => asked) || !allFree(reader, first.start, last.end)) return [];
  return findIn(reader, first.start, last.end);
};

export const ticked: Phrase = { name: 'ticked', examples: [], find };
