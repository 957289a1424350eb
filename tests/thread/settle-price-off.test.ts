// A sum off, with no word off what: each where it can be, the whole where it is more than one costs, asked where it is much of one.

import { expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

const two = '12 bouts at 15, 2 wrist corsages at 32';

test.each([
  [two, 'knock 20 quid off', 'Total: £244.00 → £224.00'],
  [two, 'drop it by £40', 'Total: £244.00 → £204.00'],
  [two, 'take 20 off the total', 'Total: £244.00 → £224.00'],
  ['12 bouts at 15', 'take 20 off the lot', 'Total: £180.00 → £160.00'],
  ['12 bouts at 15', 'knock £2 off', 'Buttonholes: £15.00 → £13.00 each'],
  ['12 bouts at 15', 'knock 10 quid off', 'Say: off each / off the total'],
  ['12 bouts at 15', '20 off each', "can't be right"],
])('%s, then “%s”', async (order, said, reply) => {
  expect(await talk([order, said])).toContain(reply);
});

test('the answer to off what is kept', async () => {
  expect(await talk(['12 bouts at 15', 'knock 10 quid off', 'off the total'])).toContain('Total: £180.00 → £170.00');
  expect(await talk(['12 bouts at 15', 'knock 10 quid off', 'off each'])).toContain('£15.00 → £5.00 each');
});
