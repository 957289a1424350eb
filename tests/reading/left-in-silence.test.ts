import { describe, expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';

const unread = (text: string): readonly string[] => readMessage(text, context).unread;

describe('two things told in one sentence', () => {
  it.each([
    ['crown count up to 65, 3 of us sat 9 to 1', '65'],
    ['wedding moved to 20 march, make it 21', '21'],
    ['moved to 20 march, sorry 21', '21'],
    ['20 march is off, new date 27 march, remade 2', '2'],
    ['bouts up from 12 to 15 each, count stays at 20', '20'],
    ['make it 40, 2 of us in on the 5th or 6th of march, 5 hrs each', '40'],
  ])('names what is in none of the facts: %s', (text, number) => {
    expect(unread(text).join(' ')).toContain(number);
  });

  it.each([
    ['event moved from 14 to 21 march, actually 45', 45],
    ['wedding 13 feb at 1400, put it up to 36', 36],
  ])('reads a number that can be no day: %s', (text, to) => {
    expect(readMessage(text, context).facts).toContainEqual(expect.objectContaining({ fact: 'change', what: 'number', to }));
  });

  it.each([
    'me 9-5 fri, casual 9-1',
    'four of us friday, 9 to 1',
    'did 9 this morning, 11 after lunch',
    '30 buttonholes, £240 plus VAT, so £288 all in',
    'oops only 14 crowns done, counted 3 twice',
    '11 buttonholes, groom’s one at €14, other ten at €9 each, inc vat',
    'another batch of 6 done, 18 now',
    'the bride said 2pm, now says 1.30',
    'crowns were 80-90, now 85',
  ])('names no number that the facts come from: %s', (text) => {
    expect(unread(text)).toEqual([]);
  });
});
