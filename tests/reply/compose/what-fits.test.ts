// "What fits?" in a thread: up to three recipes in whole packs for this count, honest where nothing fits, and taken with one tap.
import { describe, expect, it } from 'vitest';
import { talkJson } from '../../support/converse.ts';
import { inGoodTime } from '../../support/in-good-time.ts';
import { lastReply, replies } from '../../support/thread-talk.ts';

const order = '40 buttonholes at 25 inc, dried';
const choose = (value: string) => ({ tap: { action: 'choose', value } });

describe('what fits', () => {
  it('proposes up to three recipes, each with its whole packs and inside the stems money', async () => {
    const reply = await lastReply(order, 'what fits?');
    expect(reply).toMatch(/^Three recipes fit the £130\.26 of stems money for 40 buttonholes\./);
    const spends = [...reply.matchAll(/^- £([\d.]+) \(£[\d.]+ each\): (.*)\.$/gm)];
    expect(spends).toHaveLength(3);
    for (const [, spend, parts = ''] of spends) {
      expect(Number(spend)).toBeLessThanOrEqual(130.26);
      expect(parts.split('), ').length).toBeGreaterThanOrEqual(5);
      expect(parts).toMatch(/\(\d+ × \d+\)/);
    }
  });

  it('takes one of them as the recipe, and its packs are the ones it named', async () => {
    const [, , taken, list] = await replies(order, 'what fits?', choose('1'), 'buying list');
    expect(taken).toMatch(/^Recipe for each buttonhole: /);
    expect(taken).toMatch(/of stems: £\d\.\d\d under/);
    expect(list).toMatch(/^£129\.70 for whole packs/);
  });

  it('takes "the corsages" for the sort of corsage that is ordered', async () => {
    expect(await lastReply('40 buttonholes and 6 wrist corsages, 25 and 42 inc', 'what fits the corsages?')).toMatch(
      /for 6 wrist corsages\./,
    );
  });

  it('is honest when nothing fits', async () => {
    expect(await lastReply('2 buttonholes at 9 inc', 'what fits?')).toMatch(
      /^Nothing on the price list fits £0\.69 a piece\. The cheapest recipe needs £\d+\.\d\d\. A higher price, or more buttonholes/,
    );
  });

  it.each([
    ['no price', [], /What fits depends on the price/],
    ['no count', ['25 each inc'], /How many pieces\?/],
    ['a kind nobody ordered', [order], /no (corsages|wrist corsages) with a price/],
  ] as const)('asks for what it lacks: %s', async (_name, before, expected) => {
    expect(await lastReply(...before, 'what fits a corsage?')).toMatch(expected);
  });

  it('says so when the list is too short', async () => {
    const [, , last] = await talkJson([
      { file: 'Item,Price,Size,Role\nFern,3,10,foliage' },
      { text: order },
      { text: 'what fits?', addressed: true },
    ]);
    expect(last?.reply?.text).toBe(
      'The price list has only 1 sold by the stem with a role (focal, line, texture, foliage or filler); a recipe wants 5. Say the role behind the price: “bunny tails 14.50 a bunch of 50, focal”.',
    );
  });

  const rows = (count: number) =>
    Array.from({ length: count }, (_, at) => {
      const role = ['focal', 'line', 'texture', 'foliage', 'filler'][at % 5];
      return `Plant ${String.fromCharCode(65 + (at % 26))}${at},${((at * 37) % 90) / 10 + 3},${(at % 4) * 10 + 10},${role}`;
    });
  const listOf = (count: number) => ({ file: ['Item,Price,Size,Role', ...rows(count)].join('\n') });

  it('answers for sixty items in under 200 ms, the whole assistant through', async () => {
    const time = async (...more: object[]) => {
      const started = performance.now();
      await talkJson([listOf(60), { text: order }, ...more]);
      return performance.now() - started;
    };
    const ask = { text: 'what fits?', addressed: true };
    await time(ask);
    const [without, asked] = [
      [await time(), await time()],
      [await time(ask), await time(ask)],
    ];
    inGoodTime(Math.min(...asked) - Math.min(...without), 200);
  });

  it('looks at sixty plants of a longer list, and says so', async () => {
    const [, , last] = await talkJson([listOf(400), { text: order }, { text: 'what fits?', addressed: true }]);
    expect(last?.reply?.text).toContain('From the 60 of 400 plants whose packs come out best for 40.');
  });
});
