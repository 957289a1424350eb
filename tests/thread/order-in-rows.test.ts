// An order a client's mail lists by who wears what: all of it kept once the rest is taken, and nobody counted twice for an allergy.

import { expect, it } from 'vitest';
import { talkJson } from '../support/converse.ts';

const rows =
  'Bride - flower crown 75\nBridesmaids x 4 - wrist corsage 32 each\nGroom - buttonhole 18\nGroomsmen x 5 - buttonhole 14\nFathers x 2 - buttonhole 14\nMothers x 2 - pin corsage 28\nFlower girls x 2 - hair clip 15';
const mail = `Hi both, final list from Anna for the 20th March wedding (fresh please)\n\n${rows}\n\nCan we collect on the Friday at 4? We'd like no lilies as one bridesmaid is allergic. Thanks so much!`;

const talked = (...said: readonly string[]) => talkJson(said.map((text) => ({ thread: 't1', text })));

it('keeps every row, with its price', async () => {
  const [asked, taken] = await talked(mail, 'take the rest');
  expect(asked?.figures.price).toBeUndefined();
  expect(taken?.figures.price?.all['price']).toBe('405.00');
  expect(taken?.figures.price?.lines.reduce((sum, { count }) => sum + count, 0)).toBe(17);
});

it('counts the one who is allergic among the four', async () => {
  const lines = await talked(`${rows}\none bridesmaid is allergic to lilies`, 'wearers');
  expect(lines.at(-1)?.reply?.text).toContain('4 bridesmaids: wrist corsages (one of them: allergic to lilies');
  expect(lines.at(-1)?.reply?.text).toContain('17 wearers, 17 pieces: they agree.');
});

it('asks which of two events it is, and keeps nothing of either', async () => {
  const [line] = await talked('quote for 2 weddings: 13 march 10 bouts at 14 and 20 march 12 bouts at 15');
  expect(line?.figures.price).toBeUndefined();
  expect(line?.reply?.text).toMatch(/Which is the event\?/);
});
