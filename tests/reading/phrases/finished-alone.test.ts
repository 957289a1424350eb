// "finished!" in a thread that holds pieces.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import { context } from '../support/context.ts';

const some = { ...context, pieces: ['buttonhole', 'corsage'] as const };
const bare = (said: string, within: typeof context = some) => readMessage(said, within).facts.map(({ words: _, ...fact }) => fact);

it.each(['finished!', "they're done", 'phew, finished at last', 'all finished', 'finished them'])('%s: all are made', (said) =>
  expect(bare(said)).toEqual([{ fact: 'made', all: true }]),
);

describe('what may only end the day', () => {
  it.each(["we're done", 'done!', "ok that's me done", "it's done"])('%s is asked about', (said) => {
    const { facts, asks } = readMessage(said, some);
    expect(facts).toEqual([]);
    expect(asks.map(({ choices }) => choices.map(({ facts: [fact] }) => fact?.fact))).toEqual([['made', 'question']]);
  });
});

it.each(['done for today', "we're done with mia's crown", 'finished, off to the pub', 'finished?'])(
  '%s says nothing of all of them',
  (said) => expect(bare(said).filter(({ fact }) => fact === 'made')).toEqual([]),
);

it('says nothing where no pieces are known', () => expect(bare('finished!', context)).toEqual([]));
