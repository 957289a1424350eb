// Figures beside pieces that are no price, or could as well be the count: said, or asked, and never guessed.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../../src/reading/read-message.ts';
import { replyTo } from '../../support/plain-studio.ts';
import { context } from '../support/context.ts';

const read = (text: string) => readMessage(text, context);

describe('a price that cannot be', () => {
  it.each([
    ['40 buttonholes at 1e30', 'price-too-large', 'That price is too large to be one. Please check the number.'],
    ['40 buttonholes at -5', 'price-not-positive', "A price of −£5.00 can't be right: it has to be above zero."],
  ])('%s', async (text, code, sentence) => {
    expect(read(text).problems.map((problem) => problem.code)).toEqual([code]);
    expect((await replyTo([text])).trim()).toBe(`${sentence}\nNothing of that message is kept; edit it or send it again.`);
  });
});

describe('a count and a price that could change places', () => {
  it('are asked about', () => {
    const { facts, asks } = read('40 at 25 bouts plus tax');
    expect(facts.map(({ fact }) => fact)).toEqual(['tax']);
    expect(asks[0]?.choices.map(({ words }) => words)).toEqual(['40 at 25 each', '25 at 40 each']);
  });

  it.each(['40 bouts at 25', '25 bouts at 40 each'])('are clear in “%s”', (text) => expect(read(text).asks).toEqual([]));
});

describe('an amount in a question', () => {
  it('is not the count as well', () => {
    expect(read('what should I charge for stems of 300 each').facts).toEqual([
      { fact: 'question', asks: 'priceFor', amount: '300', words: 'what should I charge for stems of 300 each' },
    ]);
  });
});

describe('rules of an event', () => {
  it.each([
    ['sundries 9 each', 'sundries', '9'],
    ['minimum 30', 'minimum price', '30'],
    ['our minimum is 30 each', 'minimum price', '30'],
    ['min price 12', 'minimum price', '12'],
    ['tax 8.25%', 'tax rate', '8.25'],
  ])('%s', (text, what, to) => expect(read(text).facts).toEqual([{ fact: 'rule', what, to, words: text }]));

  it('are not read from a smallest order', () => expect(read('minimum 30 buttonholes').facts[0]?.fact).toBe('pieces'));
  it('leave a rate to the words that say where the tax goes', () =>
    expect(read('25 each inc tax 8.25%').facts).toContainEqual({ fact: 'tax', basis: 'included', rate: '8.25', words: 'inc tax 8.25%' }));

  it('never touch the price', async () => {
    const reply = await replyTo(['40 buttonholes at 25 inc', 'sundries 1.20 each', 'minimum 30']);
    expect(reply).toMatch(/^40 buttonholes at £25\.00/);
    expect(reply).toContain('For this event only: sundries £1.20 instead of £0.75, minimum price £30.00.');
    expect(reply).toContain('£25.00 is below your minimum of £30.00 for a buttonhole, both with the tax in.');
  });
});

describe('a day gone by', () => {
  it('is named in the words it was said in and as a date', async () => {
    expect(await replyTo(['40 buttonholes at 25, 13 march 2026'])).toContain(
      '“13 march 2026” is Fri 13 March 2026, which is past. Which date is the event?',
    );
  });
});
