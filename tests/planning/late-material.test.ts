// Steps behind a late one: none asks for stems that cannot be there yet, and none keeps a date that its remedy contradicts.

import { describe, expect, test } from 'vitest';
import { talkJson } from '../support/converse.ts';

interface Step {
  readonly step: string;
  readonly date: string;
  readonly late: boolean;
  readonly waitsFor?: string;
  readonly canStill?: readonly { readonly do: string; readonly hang?: string }[];
}

const calendarOn = async (now: string, order: string): Promise<readonly Step[]> => {
  const lines = await talkJson([order, 'calendar'], { now });
  return (lines.at(-1) as unknown as { figures: { calendar: readonly Step[] } }).figures.calendar;
};
const named = (steps: readonly Step[], name: string): Step | undefined => steps.find(({ step }) => step === name);

// The demo studio dries for 5 to 21 days by the handbook and is open Tuesday to Friday, deliveries take 3 of those days.
describe('dried stems ordered late', () => {
  test.each(['2027-01-15T09:00:00Z', '2027-01-18T09:00:00Z', '2027-01-20T09:00:00Z', '2027-01-22T09:00:00Z'])('%s', async (now) => {
    const steps = await calendarOn(now, '40 buttonholes at 25, dried, event 14 february');
    const order = named(steps, 'order by');
    expect(order?.late).toBe(true);
    const hang = order?.canStill?.find(({ do: what }) => what === 'hang on arrival')?.hang ?? '';
    for (const step of steps.filter(({ step }) => step === 'hang or treat' || step === 'check the drying')) {
      expect(step.late || step.waitsFor !== undefined || step.date >= hang, `${step.step} ${step.date} before ${hang}`).toBe(true);
    }
  });
});

test('where the bench cannot wait for them, the material has no date of its own', async () => {
  const steps = await calendarOn('2027-01-20T09:00:00Z', '40 buttonholes at 25, dried, event 30 january');
  expect(named(steps, 'material ready')?.waitsFor).toBe('order by');
});
