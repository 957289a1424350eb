// A shift by its weekday in the thread of an event some weeks away: which week is asked, and the question is closed by its answer.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const event = '60 bouts at 14 inc, sat 13 feb, fresh';
const shift = '2 of us thurs and fri, 6 hrs each';

describe('which week a shift is in', () => {
  it('is asked', async () => {
    expect(await replyTo([event, shift])).toContain(
      'Thu 21 January 2027 and Fri 22 January 2027 / Thu 11 February 2027 and Fri 12 February 2027',
    );
  });
  it('and on its own weekday too: today, in a week, or in the event’s week', async () => {
    expect(await replyTo([event, '2 of us weds, 4 hrs each'])).toContain(
      'Wed 20 January 2027 / Wed 27 January 2027 / Wed 10 February 2027',
    );
  });
  it.each([
    ['fri 12 feb', 'At the bench on Thu 11 February: 2 for 6 h each.\nAt the bench on Fri 12 February: 2 for 6 h each.'],
    ['the first', 'At the bench on Thu 21 January: 2 for 6 h each.\nAt the bench on Fri 22 January: 2 for 6 h each.'],
  ])('is answered with “%s”', async (answer, noted) => expect(await replyTo([event, shift, answer])).toContain(noted));
  it.each([
    [[event, '2 of us fri 12 feb, 5 hrs each'], 'At the bench on Fri 12 February: 2 for 5 h each.'],
    [['60 bouts at 14 inc, fresh', '2 of us fri, 5 hrs each'], 'At the bench on Fri 22 January: 2 for 5 h each.'],
    [['60 bouts at 14 inc, sat 23 jan, fresh', '2 of us fri, 5 hrs each'], 'At the bench on Fri 22 January: 2 for 5 h each.'],
  ])('is not asked in %j', async (said, noted) => expect(await replyTo(said)).toContain(noted));
});

describe('a question of what the studio knows', () => {
  it('is closed by its answer', async () => {
    expect(await replyTo([event, shift, 'fri 12 feb', "who's on fri 12 feb"])).toMatch(/^2 at the bench on Fri 12 February, 12 h in all/);
    expect(await replyTo(['5 bunches gyp 30', 'each', 'each'])).toContain('I could not read that');
  });
  it('stays open for its answer when the event is told of meanwhile by nobody', async () => {
    expect(await replyTo(['5 bunches gyp 30', 'thanks', 'each'])).toContain('Gypsophila: £30.00 a bunch.');
  });
});

describe('a shift told beside a pace', () => {
  it.each([
    [
      '3 of us fri, 4 hrs each, 15 bouts an hour',
      'Bench time: 4 min a buttonhole from now on. At the bench on Fri 22 January: 3 for 4 h each.',
    ],
    ['3 of us, 12 hrs total, 15 bouts an hour', 'Bench time: 4 min a buttonhole from now on. At the bench: 3, 12 h in all.'],
    ['me sat for 5 hrs, 6 mins a bout', 'Bench time: 6 min a buttonhole from now on. At the bench on Sat 23 January: 1 for 5 h.'],
  ])('is noted with it: “%s”', async (said, noted) => expect(await replyTo([said])).toContain(noted));
  it('and hands counted behind their wage are noted with it', async () =>
    expect(await replyTo(['casuals on $31.50 an hr, 4 of em saturday'])).toContain('At the bench on Sat 23 January: 4, £31.50 an hour.'));
});
