// Said to the bot and not understood: what it was waiting for is put again, so that a slip in an answer costs no more than the answer.

import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { text } from '../span.ts';
import { askBlocks } from './ask.ts';
import { notUnderstoodBlocks } from './help.ts';
import { nextStep } from './next-step.ts';

export const notUnderstood = (answer: Answer): readonly Block[] => {
  const [nothingRead] = notUnderstoodBlocks;
  if (answer.waiting && nothingRead) return [nothingRead, ...askBlocks(answer.waiting, answer.manner)];
  const next = answer.event.open?.kind === 'missing' ? nextStep(answer)?.words : undefined;
  return next && nothingRead ? [nothingRead, { block: 'next', line: text`${next}` }] : notUnderstoodBlocks;
};
