// What the client may see: ready to paste, with the price and its tax, and without a word of costs or of anybody's health.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newStudio } from '../../../src/studio/studio.ts';
import type { EventState } from '../../../src/thread/event.ts';
import type { Day } from '../../../src/values/day.ts';
import { anEvent, eventDay, line, wears } from '../../handover/an-event.ts';
import { randomOrder } from '../../handover/random-orders.ts';
import { anAnswer, asked } from '../../support/an-answer.ts';
import { demoStudio } from '../../support/converse.ts';

const around = { studio: newStudio(demoStudio) };
const each = (amount: string) => ({ price: { amount, per: 'each' as const } });

const dance: Partial<EventState> = {
  lines: [line(10, 'buttonhole', each('18')), line(2, 'wrist corsage', each('28'))],
  tax: { basis: 'included' },
  material: 'dried',
  date: eventDay,
  time: '14:00',
  handOver: { date: '2027-03-12' as Day, time: '16:00' },
  wearers: [wears('groom'), wears('groomsmen', 5, { note: 'one has a pacemaker' }), wears('mothers', 2)],
};
const form = (more: Partial<EventState> = {}): string => asked('client', anEvent({ ...dance, ...more }), around);

test('counts, wearers, date, price with its tax, when and where it is pinned on', () => {
  // VAT of 20 % in a price is one sixth: VAT guide (VAT Notice 700), HM Revenue and Customs, 2024; 236.00 / 6 = 39.33.
  expect(form()).toBe(
    [
      'harbour dance, Sat 13 March 2027 at 14:00:',
      '',
      '- 10 buttonholes at £18.00 each, dried: £180.00',
      '- 2 wrist corsages at £28.00 each, dried: £56.00',
      '',
      'Total £236.00, including £39.33 VAT.',
      'Buttonholes for: groom, 5 groomsmen.',
      'Wrist corsages for: 2 mothers.',
      'Please tell us: who wears the other 4 buttonholes?',
      'Ready Fri 12 March 2027 at 16:00; usually worn: buttonholes on the left lapel, wrist corsages on the left wrist.',
    ].join('\n'),
  );
});

test('tax on top is a line of its own', () => {
  const text = form({ tax: { basis: 'on top' } });
  expect(text).toContain('- VAT: £47.20');
  expect(text).toContain('Total £283.20, VAT included.');
});

describe('no costs, no health', () => {
  test('whatever the order', () => {
    fc.assert(
      fc.property(randomOrder, (order) => {
        const event = { ...order, price: { amount: '900', per: 'all' as const }, date: eventDay };
        const { price } = anAnswer(event, around);
        const text = asked('client', event, around).toLowerCase();
        for (const word of ['labour', 'wholesale', 'stems', 'sundries', 'margin', 'spend', 'pacemaker', 'allerg', 'aged', 'tweed'])
          expect(text).not.toContain(word);
        if (price?.ok && event.lines.length > 0) expect(text).toContain('£900.00');
      }),
      { numRuns: 60 },
    );
  });

  test('a role with a note of health in it keeps the role alone', () => {
    const text = form({ lines: [line(1, 'buttonhole', { ...each('18'), wearer: 'grandad (pacemaker)' })], wearers: [] });
    expect(text).toContain('1 buttonhole (grandad)');
    expect(text).not.toContain('pacemaker');
  });
});

describe('what the studio should know before sending', () => {
  test.each<[string, Partial<EventState>, string]>([
    ['tax was not said', { tax: {} }, ''],
    [
      'a kind without a price',
      { lines: [line(10, 'buttonhole', each('18')), line(2, 'flower crown')] },
      'no price yet for the flower crowns.',
    ],
    ['no date', { lines: dance.lines ?? [], date: undefined as never }, 'no date yet.'],
    ['a range', { lines: [line(10, 'buttonhole', { price: { amount: '18', amountMax: '22', per: 'each' } })] }, 'the price is a range'],
  ])('%s', (_name, more, words) => {
    if (words === '')
      expect(form(more)).not.toContain('Before you send it'); // the studio's usual basis is its own
    else expect(form(more)).toMatch(new RegExp(`Before you send it: .*${words}`));
  });

  test('a total that is not the whole says so', () =>
    expect(form({ lines: [line(10, 'buttonhole', each('18')), line(2, 'flower crown')] })).toContain('Total so far £180.00'));
});

test('nothing to send yet', () =>
  expect(asked('client', anEvent({}), around)).toBe(
    'There is nothing to send yet: say the pieces and the price, like “40 buttonholes at 25 inc”.',
  ));
