// Greetings and thanks said to the bot.

import { expect, it } from 'vitest';
import { courtesyBlocks } from '../../../src/reply/compose/courtesy.ts';
import { replyTo } from '../../support/plain-studio.ts';

it.each(['thanks!', 'cheers mate', 'thank you so much x', 'Ta'])('“%s” is answered', async (said) => {
  expect(await replyTo(['40 buttonholes at 25 inc', said])).toMatch(/^You're welcome\./);
});
it.each(['hi', 'Hello there', 'good morning team', "G'day"])('“%s” is greeted', async (said) => {
  expect(await replyTo([said])).toMatch(/^Hello\. Say an order/);
});
it.each(['thanks 40', 'thanks but no', 'hi can you ring her', 'ok', 'great'])('“%s” is no courtesy', (said) => {
  expect(courtesyBlocks(said)).toBeUndefined();
});
it.each(['no', 'no thanks', 'nah leave it', 'leave it as is'])('“%s” changes nothing, and is told so', async (said) => {
  expect(await replyTo(['40 buttonholes at 25 inc', said])).toMatch(/^Left as it was\./);
});
it.each(['no bouts', 'no, 14 each', 'leave the gyp out'])('“%s” is more than a no', (said) => {
  expect(courtesyBlocks(said)).toBeUndefined();
});
