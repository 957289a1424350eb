// So many made that stood under the wrong kind go over to the other, and what else was made of each stays.

import { expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = ['12 flower crowns and 15 hair combs at 30 each inc', 'made 2 crowns', 'made 10 crowns'];

it('the ten go over, the two stay', async () => {
  const reply = await replyTo([...order, 'the 10 I logged were combs not crowns']);
  expect(reply).toMatch(/2 of 12 flower crowns/);
  expect(reply).toMatch(/10 of 15/);
});

it('“those 10” alone may be ordered or made, and nothing changes', async () => {
  const reply = await replyTo([...order, 'those 10 were combs not crowns', 'how many are done?']);
  expect(reply).toMatch(/All 12 flower crowns made/);
});
