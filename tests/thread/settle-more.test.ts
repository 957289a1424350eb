// More of an order in a material of their own: those go to what is in it already, and nothing becomes of the others.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const shared = ['12 bouts at 15 inc, fresh, sat 13 march', '5 of those dried'];

describe('of an order of 5 dried and 7 fresh', () => {
  it.each([
    ['3 more fresh', '5 buttonholes (dried), 10 buttonholes, fresh'],
    ['another 3 fresh bouts', '5 buttonholes (dried), 10 buttonholes, fresh'],
    ['3 more dried', '8 buttonholes (dried), 7 buttonholes, fresh'],
  ])('%s', async (said, now) => expect(await replyTo([...shared, said, 'summary'])).toContain(now));
});

it('makes a line of its own where none are in it', async () =>
  expect(await replyTo(['12 bouts at 15 inc, fresh', 'and 3 more dried'])).toContain(
    '12 buttonholes (fresh) at £15.00, 3 buttonholes (dried) at £15.00',
  ));

it('asks of which kind, and whether they are made', async () => {
  expect(await replyTo(['12 bouts at 15 inc, 2 corsages at 30, fresh', '3 more dried'])).toContain(
    'Say: 3 more dried buttonholes ordered / 3 more dried corsages ordered',
  );
  expect(await replyTo(['12 bouts at 15 inc, fresh', 'made 4', '3 more fresh'])).toContain(
    'Say: 3 more fresh buttonholes ordered / 3 more buttonholes made',
  );
});
