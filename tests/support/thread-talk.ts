// One thread of the demo studio, its price list read in: the replies to what is said there, in order.

import { readFileSync } from 'node:fs';
import { talkJson } from './converse.ts';

export const demoPrices = readFileSync('demo-data/prices.csv', 'utf8');

/** Plain lines are said to the bot in thread t1; an object may name another thread, a file or a button. The price list's own reply is left out. */
export const replies = async (...lines: readonly (string | object)[]): Promise<readonly string[]> => {
  const said = lines.map((line) => (typeof line === 'string' ? { text: line, addressed: true } : { addressed: true, ...line }));
  const all = await talkJson([{ file: demoPrices }, ...said]);
  return all.slice(1).map(({ reply }) => reply?.text ?? '');
};

export const lastReply = async (...lines: readonly (string | object)[]): Promise<string> => (await replies(...lines)).at(-1) ?? '';
