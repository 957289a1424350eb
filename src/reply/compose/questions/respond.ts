// What every answer to a question is: blocks from the question and what is known. It stores nothing.

import type { FactOf } from '../../../reading/fact.ts';
import type { Answer } from '../../answer.ts';
import type { Block, Line } from '../../reply.ts';
import { plainLine } from '../../span.ts';

export type Question = FactOf<'question'>;
export type Respond = (question: Question, answer: Answer) => readonly Block[];

/** Blocks that stand below the answer to something else. */
export const below = (blocks: readonly Block[]): readonly Block[] =>
  blocks.map((block): Block => (block.block === 'answer' ? { ...block, block: 'line' } : block));

/** Stands below whatever was only tried. */
export const storedNothing: Block = { block: 'assumed', line: plainLine('Only worked out: nothing in this thread has changed.') };

/** An answer of one line. */
export const answerLine = (line: Line): readonly Block[] => [{ block: 'answer', line }];
