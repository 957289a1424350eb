// Messages of 4,000 characters, read by the built program: tsx names every function it makes, which slows reading.

import type { readMessage } from '../../src/reading/read-message.ts';
import { context } from '../reading/support/context.ts';
import { corpusLines } from '../reading/support/corpus-files.ts';
import { median, ms, type Row, timed } from './measure.ts';

const built = new URL('../../dist/reading/read-message.js', import.meta.url).href;
const { readMessage: read } = (await import(built)) as { readMessage: typeof readMessage };

const said = ['sample.jsonl', 'more.jsonl'].flatMap((name) => corpusLines<{ text: string }>(name).map(({ text }) => text));
const longest = 4000; // characters
const talk = 'we had such a lovely day at the market and then the van would not start so we all sat in the sun and had a coffee. ';
const choices = 8; // of lines, from all over the corpus
const fromLine = (choice: number): readonly string[] => said.slice(Math.floor((said.length * choice) / choices));

const cut = (text: string): string => text.slice(0, longest);
const overAndOver = (text: string): string => cut(`${text}\n`.repeat(Math.ceil(longest / (text.length + 1))));

/** What a reading takes the first time, and what it settles at: the engine has to meet a long message often before it is quick. */
const cost = (text: string, goes: number): { first: number; settled: number } => {
  const [first = Number.NaN] = timed(goes, () => read(text, context)).clock;
  return { first, settled: median(timed(goes, () => read(text, context)).clock) };
};

/** Read once first, all of the corpus: what is measured is a bot that has been at work for a while. */
export const longMessages = (): readonly Row[] => {
  for (const text of said) read(text, context);
  const settled = (text: string): number => cost(text, 60).settled;
  const lines = Array.from({ length: choices }, (_, choice) => cost(cut(fromLine(choice).join('\n')), 60));
  const of = lines.map((line) => line.settled);
  const alike = corpusLines<{ text: string }>('sample.jsonl').map(({ text }) => cost(overAndOver(text), 15).settled);
  const aim = 'under 20 ms';
  return [
    { what: '4,000 characters of talk, built', measured: ms(settled(cut(talk.repeat(40)))), aim },
    { what: '  of different orders in one sentence', measured: ms(settled(cut(said.join(', ')))), aim },
    {
      what: `  of some 110 different messages in lines: least and most of ${choices} choices`,
      measured: `${ms(Math.min(...of))}, ${ms(Math.max(...of))}`,
      aim,
    },
    { what: '    the first time such a message is met', measured: ms(median(lines.map(({ first }) => first))) },
    {
      what: '  of one sample message over and over, in lines: the middle and the most of them',
      measured: `${ms(median(alike))}, ${ms(Math.max(...alike))}`,
      aim,
    },
  ];
};
