// npm run bench: prints what things cost as one table. It never fails on a time: the machine under it may be busy.

import { growth } from './growth.ts';
import { longMessages } from './long-messages.ts';
import { type Row, table } from './measure.ts';
import { oneMessage } from './one-message.ts';
import { reading } from './reading.ts';
import { scale } from './scale.ts';
import { wholeBot } from './whole-bot.ts';

const parts: readonly (readonly [string, () => readonly Row[] | Promise<readonly Row[]>])[] = [
  ['reading', reading],
  ['long messages', longMessages],
  ['one message', oneMessage],
  ['growth', growth],
  ['scale', scale],
  ['the whole bot', wholeBot],
];
const wanted = process.argv.slice(2);
const rows: Row[] = [];
for (const [name, run] of parts) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  const begun = performance.now();
  rows.push(...(await run()));
  process.stderr.write(`${name}: ${((performance.now() - begun) / 1000).toFixed(0)} s\n`);
}
process.stdout.write(`${table(rows)}\n`);
process.exit(0);
