// What the bot offers is taken with a yes and left with a no; plurals and thousands of what a message changed.

import { describe, expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

const last = async (...lines: string[]): Promise<string> => (await talk(lines)).slice((await talk(lines.slice(0, -1))).length);
const timed = ['24 buttonholes at 30 inc, preserved, sat 30 january', 'took 3 hours for 10'];

describe('an offer of one thing', () => {
  test.each(['yes', 'yes please', 'ok', 'yep do that'])('%s', async (said) => {
    expect(await last(...timed, said)).toContain('Bench time: 18 min a buttonhole from now on.');
  });
  test.each(['no', 'no thanks', 'nope leave it'])('%s', async (said) => {
    expect(await last(...timed, said)).toContain('15 min each');
    expect(await last(...timed, said, 'when do we start?')).toContain('6 h of work');
  });
  test('yes and no together, or with more behind, is neither', async () => {
    expect(await last(...timed, 'yes no')).not.toMatch(/Bench time|15 min each/);
    expect(await last(...timed, 'yes but the corsages took longer')).not.toContain('Bench time');
  });
});

test('one piece is one piece, and thousands are parted', async () => {
  expect(await last('1 buttonhole at 25 inc', 'made 1')).toContain('The buttonhole is made.');
  expect(await last('1 buttonhole at 25 inc', 'made 1', '1 broke')).toContain('0 of 1 buttonhole made');
  expect(await last('40 buttonholes at 25 inc', 'make that 1200 pieces')).toContain('Buttonholes: 40 → 1,200');
});

test('everything received leaves nothing to come, and an event called off by mistake comes back', async () => {
  const order = ['10 buttonholes at 25 inc, dried, sat 13 march', '2 bunny tails each', 'bunny tails 14.50 a bunch of 50'];
  expect(await last(...order, 'received everything')).toContain('All of it is in.');
  expect(await last(...order, 'cancel the event', 'undo')).toContain('The event is on again.');
});

describe('a second focal', () => {
  const order = ['12 buttonholes at 25 inc, fresh, sat 23 january, groom and 5 groomsmen', 'spray roses 11 a bunch of 10'];
  test('of a recipe of one flower is that flower', async () => {
    expect(await last(...order, '1 spray rose each', 'groom gets a second focal')).toContain('Recipe: 2 spray rose (groom).');
  });
  test('of several without roles is asked back, not bought as “focal”', async () => {
    const reply = await last(...order, '1 spray rose, 1 statice each', 'groom gets a second focal');
    expect(reply).toContain('Focal is not in the recipe. It has: spray rose, statice.');
  });
  test('is the one with the role, once the price list says so', async () => {
    const told = 'spray roses 11 a bunch of 10, focal';
    expect(await last(...order, '1 spray rose, 1 statice each', told, 'groom gets a second focal')).toContain(
      'Recipe: 2 spray rose (groom).',
    );
  });
});

test('a rule said as it stands overrides nothing, and a share is a percentage', async () => {
  expect(await last('12 buttonholes at 25 inc', 'labour 30%')).not.toContain('instead of');
  expect(await last('12 buttonholes at 25 inc', 'labour 25%')).toContain('labour share 25 % instead of 30 %');
});
