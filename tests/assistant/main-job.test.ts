// The main job through the JSON lines, as scripts and other hosts see it: a message in, a budget and a calendar out, a thread kept.
// The figures are design check values: 25 including 20 %, 30 % on product, ×4 leaves 4.0064 wholesale (derived from the rule, by hand).

import { describe, expect, it } from 'vitest';
import { demoStudio, talkJson } from '../support/converse.ts';

const order = { thread: 't1', id: 'm1', author: 'u1', text: '40 lapel pieces at 25 inc tax' };
const date = { thread: 't1', id: 'm2', author: 'u1', text: 'dried, event 14 March' };

describe('the main job', () => {
  it('leaves the stems money of the check values and a dated calendar', async () => {
    const [first, second] = await talkJson([order, date]);
    expect(first?.figures.price?.lines[0]?.each).toEqual({
      price: '25.00',
      tax: '4.17',
      exTax: '20.83',
      labour: '4.81',
      product: '16.02',
      wholesale: '4.01',
      sundries: '0.75',
      stems: '3.26',
    });
    expect(first?.figures.price?.all).toMatchObject({ price: '1000.00', wholesale: '160.26' });
    expect(first?.figures.bench).toMatchObject({ minutesPlanned: 600, minutesPaid: 810 });
    expect(second?.figures.calendar?.map((step) => [step.step, step.date])).toEqual(
      expect.arrayContaining([
        ['event', '2027-03-14'],
        ['boarded', '2027-03-11'],
        ['order by', '2027-02-09'],
      ]),
    );
    expect(second?.figures.bench).toMatchObject({ fits: true, minutesPlanned: 600 });
  });

  it('keeps threads apart', async () => {
    const [, , other] = await talkJson([order, date, { thread: 't2', id: 'm3', text: 'summary' }]);
    expect(other?.reply?.text).toContain('nothing in this thread yet');
  });

  it('plans all threads on one bench, the same from whichever thread one looks', async () => {
    const ask = (thread: string, id: string) => ({ thread, id, text: 'when do we start?' });
    const big = { thread: 't2', id: 'm3', text: '150 buttonholes at 20 inc, dried, event 14 March' };
    const lines = await talkJson([order, date, big, ask('t1', 'm4'), ask('t2', 'm5')]);
    const minutes = (index: number) => lines[index]?.figures.bench?.['days'] as readonly { date: string; minutes: number }[];
    expect(minutes(4)).toEqual(minutes(2));
    expect(minutes(3)).toEqual(minutes(1)); // the older event keeps its days
    for (const { date: day, minutes: older } of minutes(3)) {
      const newer = minutes(4).find((one) => one.date === day)?.minutes ?? 0;
      expect(older + newer, day).toBeLessThanOrEqual(2 * 4 * 60); // two people, four hours
    }
  });
});

describe('a message again, edited, deleted, taken back', () => {
  it('has no second effect', async () => {
    const lines = await talkJson([order, order, { thread: 't1', id: 'm3', text: 'how many pieces?' }]);
    expect(lines[1]).toMatchObject({ repeat: true, reply: null });
    expect(lines[2]?.reply?.text).toMatch(/^40 in all/);
  });

  it('takes an edit instead of the earlier words', async () => {
    const lines = await talkJson([order, date, { thread: 't1', id: 'm3', edits: 'm1', text: '45 lapel pieces at 22 inc tax' }]);
    expect(lines[2]?.figures.price?.lines[0]).toMatchObject({ count: 45, each: { price: '22.00' } });
    expect(lines[2]?.reply?.text).toContain('40 → 45');
  });

  it('forgets a deleted message and keeps the rest', async () => {
    const lines = await talkJson([
      order,
      date,
      { thread: 't1', id: 'm3', deletes: 'm1' },
      { thread: 't1', id: 'm4', text: 'when is the event?' },
    ]);
    expect(lines[2]?.figures.price).toBeUndefined();
    expect(lines[3]?.reply?.text).toContain('Sun 14 March 2027');
  });

  it('undoes the last message only', async () => {
    const lines = await talkJson([
      order,
      { thread: 't1', id: 'm2', text: 'make that 45 pieces' },
      { thread: 't1', id: 'm3', text: 'undo' },
    ]);
    expect(lines[1]?.figures.price?.lines[0]?.count).toBe(45);
    expect(lines[2]?.figures.price?.lines[0]?.count).toBe(40);
  });

  it('has nothing to undo in a new thread', async () => {
    const [line] = await talkJson([{ thread: 't1', id: 'm1', text: 'undo' }]);
    expect(line?.reply?.text).toBe('There is nothing to take back in this thread.');
  });
});

describe('what stores nothing', () => {
  const unchanged = async (text: string) => {
    const lines = await talkJson([order, { thread: 't1', id: 'm2', text }, { thread: 't1', id: 'm3', text: 'total?' }]);
    return { reply: lines[1]?.reply?.text, total: lines[2]?.figures.price?.all['price'], asks: lines[1]?.reading?.asks.length };
  };

  it.each([['can we do 22?'], ['try 20 to 30'], ['how many at 25 for 600'], ['what must I charge to keep 3.20 for stems']])(
    'a what-if: %s',
    async (text) => {
      const { reply, total } = await unchanged(text);
      expect(reply).toContain('Only worked out');
      expect(total).toBe('1000.00');
    },
  );

  it.each([
    ['a price of 0', '40 buttonholes at 0 inc', /above zero/],
    ['−5 pieces', '-5 corsages at 20', /1 or more/],
    ['31 February', '20 corsages at 30, event 31 February', /no “31 February”/],
    ['an enormous price', '40 buttonholes at 1e30', undefined],
    ['sundries above the price', '40 buttonholes at 1.20 inc', /[Ss]undries alone use up/],
  ])('bad input: %s', async (_what, text, sentence) => {
    const { reply, total } = await unchanged(text);
    expect(total).toBe('1000.00');
    if (sentence) expect(reply).toMatch(sentence);
  });

  it('a price in another currency, which is asked about', async () => {
    const { reply, total } = await unchanged('make it €30 each');
    expect(reply).toMatch(/not the studio's currency/);
    expect(total).toBe('1000.00');
  });
});

describe('silence', () => {
  it.each(['vans in bay 9 today', 'door code is 4412#', '', '   ', '😀'])('is kept over %j', async (text) => {
    const [line] = await talkJson([{ thread: 't1', id: 'm1', text }]);
    expect(line?.reply).toBeNull();
  });

  it('is broken when the bot was spoken to', async () => {
    const [line] = await talkJson([{ thread: 't1', id: 'm1', text: 'vans in bay 9 today', addressed: true }]);
    expect(line?.reply?.text).toMatch(/^I could not read that/);
  });

  it('does not hide 40 kB of text from its writer', async () => {
    const [line] = await talkJson([{ thread: 't1', id: 'm1', text: '40 buttonholes '.repeat(2700) }]);
    expect(line?.reply?.text).toMatch(/^That message is 40500 characters long/);
    expect(line?.figures.price).toBeUndefined();
  });
});

describe('asking', () => {
  it('each or all, answered in words', async () => {
    const lines = await talkJson([
      { thread: 't1', id: 'm1', text: '12 bouts 12 bucks' },
      { thread: 't1', id: 'm2', text: 'each' },
    ]);
    expect(lines[0]?.reply?.text).toMatch(/for each piece or for all/);
    expect(lines[0]?.figures.price).toBeUndefined();
    expect(lines[1]?.figures.price?.all['price']).toBe('144.00');
  });

  it('each or all, answered by a button', async () => {
    const lines = await talkJson([
      { thread: 't1', id: 'm1', text: '12 bouts 240 bucks' },
      { thread: 't1', id: 'm2', tap: { action: 'choose', value: '1' } },
    ]);
    expect(lines[1]?.figures.price?.all['price']).toBe('240.00');
  });

  it('which pieces were made, where there are two kinds', async () => {
    const lines = await talkJson([
      { thread: 't1', id: 'm1', text: '40 buttonholes at 25, 6 wrist corsages at 42, inc' },
      { thread: 't1', id: 'm2', text: 'made 4' },
      { thread: 't1', id: 'm3', tap: { action: 'choose', value: '1' } },
    ]);
    expect(lines[1]?.reply?.text).toMatch(/Which pieces/);
    expect(lines[2]?.reply?.text).toMatch(/4 of 6 wrist corsages made/);
  });

  it('whether a bare number is pieces or money', async () => {
    const lines = await talkJson([
      order,
      { thread: 't1', id: 'm2', text: 'make that 45' },
      { thread: 't1', id: 'm3', tap: { action: 'choose', value: '0' } },
    ]);
    expect(lines[1]?.figures.price?.lines[0]?.count).toBe(40);
    expect(lines[2]?.figures.price?.lines[0]?.count).toBe(45);
  });

  it('the material, where the tax rate depends on it (Ireland: 13.5 % fresh cut, 23 % dried; hortitrends.com reprint of Revenue)', async () => {
    const { tax: _, subdivision: _s, ...rest } = demoStudio;
    const irish = { ...rest, region: 'IE', currency: 'EUR', timeZone: 'Europe/Dublin' };
    const lines = await talkJson(
      [
        { thread: 't1', id: 'm1', text: '40 buttonholes at 25 inc' },
        { thread: 't1', id: 'm2', text: 'dried' },
      ],
      { studio: irish },
    );
    expect(lines[0]?.figures.price).toBeUndefined();
    expect(lines[0]?.reply?.text).toMatch(/material/);
    expect(lines[1]?.figures.price).toMatchObject({ taxRate: '23' });
  });
});

describe('a channel shared with another organisation', () => {
  it('gets the client form and never a cost', async () => {
    const [line] = await talkJson([{ ...order, shared: true }]);
    expect(line?.reply?.text).toContain('£1,000.00');
    expect(line?.reply?.text).not.toMatch(/3\.26|4\.01|160\.26|stems|labour|wholesale/i);
  });
});
