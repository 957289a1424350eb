// "Who's on Thursday?" The demo yard: two people, four hours Tuesday to Thursday, five on Friday, closed from Saturday to Monday.

import { describe, expect, it } from 'vitest';
import { plainStudio, replyTo } from '../../support/plain-studio.ts';

const first = async (...said: string[]): Promise<string> => (await replyTo(said)).split('\n')[0] ?? '';
const studioOf = (set: object) => plainStudio('GB', set);
const shift = '3 of us thurs 11 march, 4 hrs each';

describe('who is at the bench', () => {
  it('by the usual hours', async () => {
    expect(await first('whos in friday')).toBe('2 at the bench on Fri 22 January, 10 h in all (the usual hours).');
  });
  it('on a closed day', async () => {
    expect(await first('whos on sat')).toBe('Nobody at the bench on Sat 23 January (closed).');
  });
  it('as it was said of the day', async () => {
    expect(await first(shift, "who's on thurs 11 march")).toBe('3 at the bench on Thu 11 March, 12 h in all (as you said).');
  });
  it('less those who are away', async () => {
    expect(await first(shift, 'jo out thurs 11 march', 'how many of us are on thurs 11 march')).toBe(
      '2 at the bench on Thu 11 March, 8 h in all (as you said).',
    );
  });
  it('a week of it, a line a day', async () => {
    const reply = await replyTo(["who's on this week"]);
    expect(reply.match(/at the bench on/g)).toHaveLength(7);
  });
  it.each([
    ['whos in friday', {}, '1 at the bench on Fri 22 January, 6 h (assumed: nobody has said your usual hours).'],
    ['whos on sat', {}, 'Nobody at the bench on Sat 23 January (assumed: nobody has said your usual hours).'],
    ['whos in friday', { bench: { hours: { friday: 5 } } }, '1 at the bench on Fri 22 January, 5 h (the usual hours, one person assumed).'],
    ['whos in friday', { bench: { closed: ['2027-01-22'] } }, 'Nobody at the bench on Fri 22 January (closed).'],
  ])('%s, of a studio that has set %j: what is assumed says so', async (asked, set, told) => {
    expect((await replyTo([asked], studioOf(set))).split('\n')[0]).toBe(told);
  });
  it('with what is planned for them', async () => {
    // 20 buttonholes at 15 minutes
    expect(await replyTo(['20 buttonholes at 16 inc for 13 march, dried', shift, "who's on thurs 11 march"])).toContain(
      'Planned then: 20 pieces to make, 5 h.',
    );
  });
});

describe('what was spent, and what is left of it', () => {
  const order = '40 buttonholes at 25 inc';
  it.each(['how much have we spent', "what's left of the budget"])('%s: nothing told yet', async (asked) => {
    expect(await first(order, asked)).toBe('Nobody has said what was spent yet: say “spent 182.40 at the market”.');
  });
  it('what was told, beside what was planned', async () => {
    expect(await first(order, 'spent 82 at the market', 'how much have we spent')).toMatch(
      /^Spent: £82\.00; £\d+\.\d\d planned for stems: /,
    );
  });
});

it('says so where no time of the event is known', async () => {
  expect(await first('event 13 march', 'what time is the wedding')).toBe(
    'The event is on Sat 13 March 2027. Nobody has said at what time.',
  );
});
