// In a channel shared with another organisation only the client's form is shown, and why.

import { clientFigures } from '../../pricing/client-figures.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { plainLine, text } from '../span.ts';
import { orderWords } from '../words/order.ts';
import { clientBlocks } from './client-form.ts';

export const sharedBlocks = (answer: Answer): readonly Block[] => {
  const { price, event, manner } = answer;
  const form = price?.ok
    ? clientBlocks(clientFigures(price.value.priced), answer)
    : [{ block: 'answer' as const, line: text`Noted${event.lines.length > 0 ? text`: ${orderWords(event.lines, manner)}` : []}.` }];
  return [
    ...form,
    {
      block: 'assumed',
      line: plainLine('Others read this channel too, so I show only what a client may see. Ask me in your own channel for the rest.'),
    },
  ];
};
