// The hour of an event, or of its hand-over, said alone in a thread whose day is known.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import type { Day } from '../../../src/values/day.ts';
import { context } from '../support/context.ts';

const known = { ...context, eventDate: '2027-03-13' as Day };
const hours = (said: string, within = known) =>
  readMessage(said, within).facts.flatMap((fact) =>
    fact.fact === 'change' && fact.what === 'time' ? [`${fact.of ?? 'event'} ${fact.to}`] : [],
  );

it.each([
  ['ceremony 3pm', ['event 15:00']],
  ['ceremony at 3', ['event 15:00']],
  ['the service is 1.30pm', ['event 13:30']],
  ['it starts at 2pm', ['event 14:00']],
  ['ceremony half past two', ['event 14:30']],
  ['pick up at 11', ['hand over 11:00']],
  ['she collects at 10', ['hand over 10:00']],
  ['delivery by noon', ['hand over 12:00']],
  ['ceremony 3pm, pick up at 11', ['event 15:00', 'hand over 11:00']],
])('%s', (said, expected) => expect(hours(said)).toEqual(expected));

describe('an hour of something else', () => {
  it.each([
    'reception 5pm',
    'we start at 9',
    'from 9',
    'meeting at 3pm',
    'hair at 9, ceremony 2pm',
    'pick up the roses at 9',
    'starts 3pm, 20 bouts',
  ])('%s', (said) => expect(hours(said)).toEqual([]));
});

it('says nothing while no day is known', () => expect(hours('ceremony 3pm', { ...known, eventDate: undefined as never })).toEqual([]));
