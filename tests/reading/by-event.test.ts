// A weekday said in a thread whose day is known: the event's own week may be meant, so the coming one is never taken in silence.

import { describe, expect, test } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import type { Day } from '../../src/values/day.ts';
import { context } from './support/context.ts';

// Saturday 20 March 2027; today is Wednesday 20 January.
const known = { ...context, eventDate: '2027-03-20' as Day };
const days = (says: string): readonly unknown[] => {
  const { facts, asks } = readMessage(says, known);
  const of = (fact: object): string => `${'of' in fact ? fact.of : 'event'} ${'date' in fact ? fact.date : 'to' in fact ? fact.to : ''}`;
  return [...facts.map(of), ...asks.map((ask) => ask.choices.map((choice) => of(choice.facts[0] ?? {})))];
};

describe('with the event on a saturday in march', () => {
  test.each([
    ["wedding's sunday not saturday", ['event 2027-03-21']],
    ['its friday not saturday', ['event 2027-03-19']],
    ["date's changed to the saturday before", ['event 2027-03-13']],
    ['moved to the sunday', [['event 2027-01-24', 'event 2027-03-21']]],
    ["it's friday", [['event 2027-01-22', 'event 2027-03-19']]],
    ['pickup friday 9am', [['hand over 2027-01-22', 'hand over 2027-03-19']]],
    ['pickup moved to thursday', [['hand over 2027-01-21', 'hand over 2027-03-18']]],
    ['delivery moved to 19 march', ['hand over 2027-03-19']],
    ['pickup the day before', ['hand over 2027-03-19']],
    ['collecting the day before at 4pm', ['hand over 2027-03-19']],
    ['now the following saturday', [['event 2027-01-23', 'event 2027-03-27']]],
    ['pickup moved a day earlier', []],
    ['10 days to go', []],
    ['make them the day before', []],
  ])('%s', (says, said) => expect(days(says)).toEqual(said));
});

test('with no day known the coming one is meant, as before', () => {
  expect(readMessage("it's friday", context).facts).toMatchObject([{ date: '2027-01-22' }]);
  expect(readMessage('pickup the day before', context).facts).toEqual([]);
});
