// Said once in each thread whose people waited while the bot could not store anything.

import type { Block } from '../reply.ts';
import { plainLine } from '../span.ts';

export const afterAWait: Block = {
  block: 'assumed',
  line: plainLine('Sorry for the wait: I could not store anything for a while. Nothing you wrote was lost.'),
};
