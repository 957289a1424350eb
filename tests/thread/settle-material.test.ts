// Some of what is ordered in another material: "10 of the bouts fresh", "half of them dried, the rest fresh".

import { describe, expect, test } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const lapels = '20 bouts at 14 inc, sat 13 march';

describe('some of the only kind there is', () => {
  test.each([
    ['5 of the bouts preserved, the rest fresh', '5 buttonholes preserved, 15 buttonholes fresh'],
    ['can you do 5 of the bouts preserved rest fresh', '5 buttonholes preserved, 15 buttonholes fresh'],
    ['half of them dried, half fresh', '10 buttonholes dried, 10 buttonholes fresh'],
    ['make 8 of the 20 dried', '8 buttonholes dried'],
  ])('%s: %s', async (said, noted) => expect(await replyTo([lapels, said])).toContain(`Material: ${noted}`));

  test('said of an order that is all in that material, the rest are in the other', async () => {
    expect(await replyTo([lapels, 'all dried', '5 of the bouts dried, the rest fresh'])).toContain(
      '5 buttonholes dried, 15 buttonholes fresh',
    );
  });
  test('the price stays, and what is in one material again is one line', async () => {
    const reply = await replyTo([lapels, '5 of the bouts dried, the rest fresh', 'all the bouts fresh', 'summary']);
    expect(reply).toContain('20 buttonholes');
    expect(reply).not.toContain('15 buttonholes');
  });
  test.each(['all dried', 'make it all dried', 'actually dried'])('%s: all of them again', async (said) => {
    const reply = await replyTo([lapels, '5 of the bouts preserved, the rest fresh', said, 'summary']);
    expect(reply).toContain('20 buttonholes, dried');
  });
  test('taken back, they are as they were', async () => {
    expect(await replyTo([lapels, 'all dried', '5 of them fresh', 'undo', 'summary'])).not.toContain('5 buttonholes');
  });
});

describe('some moved to another material', () => {
  test.each([
    ['move 8 to dried', '8 buttonholes dried'],
    ['switch 8 bouts over to dried pls', '8 buttonholes dried'],
    ['make 8 dried', '8 buttonholes dried'],
    ['8 to dried', '8 buttonholes dried'],
    ['change half the bouts to dried', '10 buttonholes dried'],
  ])('%s', async (said, noted) => expect(await replyTo([lapels, 'all fresh', said])).toContain(`Material: ${noted}`));

  test('beside those that are in it already', async () =>
    expect(await replyTo([lapels, 'all fresh', 'move 8 to dried', 'move 5 to dried'])).toContain('13 buttonholes (dried)'));
  test('more than there are', async () =>
    expect(await replyTo([lapels, 'all fresh', 'move 25 to dried'])).toContain('There are 20 buttonholes, not 25.'));
  test('a number that nobody reads makes nothing of it all of them', async () => {
    const reply = await replyTo([lapels, 'all fresh', 'plus 3 dried', 'summary']);
    expect(reply).not.toContain('dried');
  });
  test('of two kinds each so many', async () => {
    const reply = await replyTo(['20 bouts at 14 inc, 4 corsages at 30, fresh', 'move 8 bouts and 2 corsages to dried', 'summary']);
    expect(reply).toContain('8 buttonholes (dried)');
    expect(reply).toContain('2 corsages (dried)');
  });
});

describe('what is asked or refused', () => {
  test('half of an odd number', async () => {
    const reply = await replyTo(['9 bouts at 14 inc, sat 13 march', 'half of them dried']);
    expect(reply).toContain('Say: 4 buttonholes / 5 buttonholes');
    expect(await replyTo(['9 bouts at 14 inc, sat 13 march', 'half of them dried', '5 buttonholes'])).toContain('5 buttonholes dried');
  });
  test('of pieces nobody has named', async () => {
    expect(await replyTo(['45 pieces at 20 inc', 'half of them dried'])).toContain('Say: 22 pieces / 23 pieces');
    expect(await replyTo(['45 pieces at 20 inc', '50 of them dried'])).toContain('There are 45 pieces, not 50.');
  });
  test('of which kind, and only of kinds that are so many', async () => {
    const order = '20 bouts at 14 inc, 4 corsages at 30 inc, sat 13 march';
    expect(await replyTo([order, 'make 2 of them dried'])).toContain('Say: 2 buttonholes / 2 corsages');
    expect(await replyTo([order, 'make 8 of them dried'])).not.toContain('8 corsages');
  });
  test('more than there are', async () => {
    expect(await replyTo([lapels, '25 of the bouts dried'])).toContain('There are 20 buttonholes, not 25.');
  });
  test('before anything is ordered', async () => {
    expect(await replyTo(['5 of the bouts dried'])).toContain('There are no pieces in this thread yet. Say how many first.');
  });
});
