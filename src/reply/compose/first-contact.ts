// Said once in a workspace that has not been set up, under its first answer.

import type { Block } from '../reply.ts';
import { text } from '../span.ts';

export const firstContact: readonly Block[] = [
  { block: 'line', line: text`New here: prices and bench days follow usual figures until the studio is set up.` },
  { block: 'actions', actions: [{ label: 'Set up the studio', action: 'set up', value: '', style: 'main' }] },
];
