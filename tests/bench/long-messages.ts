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

const cost = (text: string): number => median(timed(60, () => read(text, context)).clock);

/** Read once first, all of the corpus: what is measured is a bot that has been at work for a while. */
export const longMessages = (): readonly Row[] => {
  for (const text of said) read(text, context);
  const cut = (text: string): string => text.slice(0, longest);
  const lines = Array.from({ length: choices }, (_, choice) => cost(cut(fromLine(choice).join('\n'))));
  const aim = 'under 20 ms';
  return [
    { what: '4,000 characters of talk, built', measured: ms(cost(cut(talk.repeat(40)))), aim },
    { what: '  of different orders in one sentence', measured: ms(cost(cut(said.join(', ')))), aim },
    {
      what: `  of some 110 different messages in lines: least and most of ${choices} choices`,
      measured: `${ms(Math.min(...lines))}, ${ms(Math.max(...lines))}`,
      aim,
    },
  ];
};
