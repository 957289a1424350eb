// "Made 12" of mixed pieces: dried bases while no fresh part can be made, finished pieces where that is plain, and a question where it could be either.
// Counting a base as finished would take the fresh work off the bench and nobody would notice before the wedding.

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { type BenchTalk, benchTalk, channel, workspace } from '../support/bench-talk.ts';

let talk: BenchTalk;
const order = '30 buttonholes, mixed, event 13 March at 3pm'; // fresh part on Friday 12 March

beforeEach(() => {
  talk = benchTalk({ now: '2027-02-01T09:00:00Z' });
  talk.say('t1', order);
});
afterEach(() => talk.close());

const progress = () => talk.stateOf('t1').progress.buttonhole;

describe('weeks before the event', () => {
  it('counts bases, keeps the fresh work on its day, and says so', () => {
    const said = talk.say('t1', 'made 12');
    expect(progress()).toMatchObject({ made: 0, bases: 12 });
    expect(said).toMatch(/^12 of 30 dried bases for buttonholes made, none finished/);
    // 18 bases at 10 min and 30 fresh parts at 5 min: the base is two thirds of 15 min (common practice, no source).
    expect(said).toContain('5 h 30 min of work left');
  });

  it.each([
    ['all done', 30],
    ['12 of the 30 done', 12],
    ['10 left', 20],
    ['half of them done', 15],
  ])('“%s” is about bases too', (words, bases) => {
    talk.say('t1', words);
    expect(progress()).toMatchObject({ made: 0, bases });
  });

  it('takes a broken base off', () => {
    talk.say('t1', 'made 12');
    talk.say('t1', '2 broke');
    expect(progress()).toMatchObject({ made: 0, bases: 10, broke: 2 });
  });
});

describe('on the day of the fresh part', () => {
  beforeEach(() => {
    talk.say('t1', 'made 20');
    talk.setClock('2027-03-12T10:00:00Z');
  });

  it('counts finished pieces as far as there are bases', () => {
    expect(talk.say('t1', 'made 15')).toMatch(/^20 of 30 dried bases for buttonholes made, 15 finished/);
    expect(progress()).toMatchObject({ made: 15, bases: 20 });
  });

  it('asks where there are not enough bases for so many', () => {
    expect(talk.say('t1', 'made 25')).toContain('finished, or only begun?');
    expect(progress()).toMatchObject({ made: 0, bases: 20 });
    talk.say('t1', 'finished');
    expect(progress()).toMatchObject({ made: 25, bases: 20 });
  });

  it('takes “all done” as finished', () => {
    expect(talk.say('t1', 'all done')).toContain('All 30 buttonholes made');
  });
});

it('asks while nobody has said when the event is', () => {
  talk.say('t2', '30 buttonholes, mixed');
  expect(talk.say('t2', 'made 12')).toContain('only begun?');
  talk.say('t2', 'dried bases');
  expect(talk.stateOf('t2').progress.buttonhole).toMatchObject({ made: 0, bases: 12 });
});

describe('nothing today', () => {
  it('keeps the day free in the plan and says whether that is still on time', () => {
    talk.say('t3', '40 buttonholes, dried, event 14 March');
    talk.setClock('2027-03-09T09:00:00Z');
    const said = talk.say('t3', 'nothing today');
    expect(said).toMatch(/^Nothing today\. 0 of 40 buttonholes made, 40 left\.\nOn time: 10 h of work left\. Next: Wed 10 March/);
    talk.setClock('2027-03-10T09:00:00Z');
    expect(talk.say('t3', 'nothing today')).toContain('Not on time, 2 h short');
    expect(talk.say('t3', 'made 8')).toContain('On time'); // a word of progress ends the pause
  });

  it('keeps the log and the snapshot the same', () => {
    talk.say('t3', '40 buttonholes, dried, event 14 March');
    talk.say('t3', 'nothing today');
    expect(talk.store.entries({ workspace, channel, thread: 't3' }).at(-1)?.facts).toEqual([
      expect.objectContaining({ fact: 'made', count: 0, resumes: '2027-02-02' }),
    ]);
  });
});
