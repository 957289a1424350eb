// What to say, in a few lines. Asked for, or given when someone speaks to the bot and nothing was understood.

import type { Block } from '../reply.ts';
import { strong, text } from '../span.ts';

export const helpBlocks: readonly Block[] = [
  { block: 'answer', line: text`Type an order and I work out the rest. One thread is one event.` },
  {
    block: 'list',
    items: [
      text`${strong('40 buttonholes at 25 inc tax')}: what is left for stems, and labour`,
      text`${strong('dried, event 14 March')}: when to order, dry, start and board`,
      text`${strong('make that 45')}, ${strong('no, ex tax')}, ${strong('undo')}: correct me`,
      text`${strong('can we do 22?')}, ${strong('try 20 to 30')}: look without changing anything`,
      text`${strong('made 12')}, ${strong('2 broke')}, ${strong('what is left?')}: the bench`,
      text`${strong('groom, 5 groomsmen, 2 dads')}, ${strong('bench card')}, ${strong('packing list')}, ${strong('print the sheets')}: hand over`,
      text`${strong('spent 182.40 at the market')}, ${strong('took 9 hours')}, ${strong('how did we do?')}: look back`,
      text`${strong('when do we start?')}, ${strong("what's due today?")}, ${strong('summary')}`,
    ],
  },
];

export const notUnderstoodBlocks: readonly Block[] = [
  { block: 'answer', line: text`I could not read that, so nothing has changed.` },
  { block: 'next', line: text`Try “40 buttonholes at 25 inc tax”, or say “help”.` },
];
