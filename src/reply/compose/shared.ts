// In a channel shared with another organisation only the client's form is shown, and why.

import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { plainLine, text } from '../span.ts';
import { clientBlocks } from './client-form.ts';

export const sharedBlocks = (answer: Answer): readonly Block[] => [
  ...(answer.event.lines.length > 0 ? clientBlocks(answer) : [{ block: 'answer' as const, line: text`Noted.` }]),
  {
    block: 'assumed',
    line: plainLine('Others read this channel too, so I show only what a client may see. Ask me in your own channel for the rest.'),
  },
];
