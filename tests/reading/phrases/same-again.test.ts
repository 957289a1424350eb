// The whole order again for another day is a second event: it moves nothing of this one.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import type { Day } from '../../../src/values/day.ts';
import { context } from '../support/context.ts';

const dated = { ...context, pieces: ['buttonhole' as const], eventDate: '2027-02-20' as Day };

describe('a second event', () => {
  it.each([
    'same again for 6 march but 15',
    'same again for 6 march',
    'the same order again for the 6th of march, 15 this time',
    'repeat of this for 6 march, 15 of them',
    'another order like this for 6/3',
  ])('%s', (text) => {
    const { facts, problems } = readMessage(text, dated);
    expect(facts.filter(({ fact }) => fact === 'date' || fact === 'change')).toEqual([]);
    expect(problems).toEqual([{ code: 'another-event', data: expect.objectContaining({ date: '2027-03-06' }) }]);
  });
});

describe('nothing of a second event', () => {
  it.each([
    'same again for 20 feb',
    'same again for friday',
    'moved to 6 march',
    'same again but fresh',
    'same again for the second flower girl',
  ])('%s', (text) => {
    expect(readMessage(text, dated).problems).toEqual([]);
  });
  it('where the event has no day yet', () => {
    expect(readMessage('same again for 6 march', context).facts).toEqual([expect.objectContaining({ fact: 'date', date: '2027-03-06' })]);
  });
});
