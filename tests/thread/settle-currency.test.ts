// A sign of another country's money is asked about and never taken for the studio's own.

import { expect, it } from 'vitest';
import type { Fact } from '../../src/reading/fact.ts';
import { askCurrency } from '../../src/thread/settle-currency.ts';
import { plainStudio, replyTo } from '../support/plain-studio.ts';

const price = (words: string): Fact => ({ fact: 'price', amount: '25', symbol: '$', per: 'each', words });

it.each([
  ['GBP', '$25', true],
  ['EUR', '25 dollars each', true],
  ['ZAR', '25 bucks each', false], // anybody's money
  ['CAD', '$25', false],
  ['MXN', '$25', false], // the peso has the same sign
])('in %s, %s is asked about: %s', (studio, words, asked) => {
  const { kept, ask } = askCurrency([price(words)], studio);
  expect([kept.length, ask?.why]).toEqual(asked ? [0, 'other currency'] : [1, undefined]);
});

it('takes the figure once somebody says it is the studio’s own', async () => {
  expect(await replyTo(['40 buttonholes at $25 inc'])).toContain('Say: 25 in GBP');
  expect(await replyTo(['40 buttonholes at $25 inc', '25 in GBP'])).toContain('40 buttonholes at £25.00');
  expect(await replyTo(['40 boutonnieres at $25'], plainStudio('US'))).toContain('$25.00');
});
