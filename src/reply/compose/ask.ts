// A question back: the sentence, then its choices to tap or to type.

import type { Ask } from '../../reading/reading.ts';
import type { Block } from '../reply.ts';
import { askLine } from '../words/asks.ts';

export const askBlocks = (ask: Ask): readonly Block[] => [
  { block: 'next', line: askLine(ask) },
  ...(ask.choices.length > 0
    ? [
        {
          block: 'actions' as const,
          actions: ask.choices.map((choice, index) => ({ label: choice.words, action: 'choose' as const, value: String(index) })),
        },
      ]
    : []),
];
