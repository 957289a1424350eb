// The reminders on real parts: what they say, to whom, once, and what a tick on one does. The bench is the demo yard's: two people, Tuesday to Friday.

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { morningNow, type ReminderKind, remind } from '../../src/assistant/remind.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { type Day, dayAt } from '../../src/values/day.ts';
import { actionNamed, actionsOf, type BenchTalk, benchTalk, channel, textOf, workspace } from '../support/bench-talk.ts';
import { demoStudio } from '../support/converse.ts';

const withPerson: StudioSettings = { ...demoStudio, reminder: { ...demoStudio.reminder, channel: 'C-bench', person: 'D-isla' } };
const order = '40 buttonholes, dried, event 14 March'; // planned for Wed 10 (18 pieces) and Thu 11 March (22)

let talk: BenchTalk;
const due = (
  kind: ReminderKind,
  more: { readonly day?: string; readonly missed?: readonly Day[]; readonly late?: boolean } = {},
): boolean => {
  const day = (more.day ?? dayAt(talk.clock.now(), 'Europe/London')) as Day;
  const reminder = { kind, workspace, channels: ['C-bench', 'D-isla'], day, late: more.late ?? false, missed: more.missed ?? [] };
  return remind(talk.store, withPerson, reminder, talk.clock.now());
};

beforeEach(() => {
  talk = benchTalk({ now: '2027-02-01T09:00:00Z', studio: withPerson });
});
afterEach(() => talk.close());

describe('the morning list', () => {
  it('goes to the bench channel and to the person, once', () => {
    talk.say('t1', order);
    talk.setClock('2027-03-10T07:00:00Z');
    expect(due('morning')).toBe(true);
    const lists = talk.posted();
    expect(lists.map(({ to }) => [to.channel, to.thread])).toEqual([
      ['C-bench', ''],
      ['D-isla', ''],
    ]);
    expect(textOf(lists[0]?.reply)).toContain('Wed 10 March 2027: 18 pieces to make, 4 h 30 min.');
    expect(lists[0]?.reply).toEqual(lists[1]?.reply);
    expect(due('morning')).toBe(false);
    expect(talk.posted()).toEqual([]);
  });

  it('says what is overdue first, and says nothing on a day without anything due', () => {
    expect(due('morning')).toBe(true);
    expect(talk.posted()).toEqual([]);
    talk.say('t1', order);
    talk.setClock('2027-03-10T07:00:00Z');
    due('morning');
    const lines = textOf(talk.posted()[0]?.reply)
      .split('\n')
      .filter((line) => line !== '');
    expect(lines[1]).toMatch(/^- overdue since Tue 9 February, the order/);
    expect(lines.findIndex((line) => line.startsWith('make 18'))).toBeGreaterThan(1);
  });

  it('is one message after days of not running, and names them', () => {
    talk.say('t1', order);
    talk.setClock('2027-03-10T10:00:00Z');
    due('morning', { late: true, missed: ['2027-03-08', '2027-03-09'] as Day[] });
    const [list, ...others] = talk.posted().filter(({ to }) => to.channel === 'C-bench');
    expect(others).toEqual([]);
    expect(textOf(list?.reply)).toContain('I was not running on Mon 8 March, Tue 9 March');
  });

  it('shows in the terminal what would be said, and claims nothing', () => {
    talk.say('t1', order);
    talk.setClock('2027-03-10T07:00:00Z');
    expect(textOf(morningNow(talk.store, withPerson, workspace, talk.clock.now()))).toContain('make 18 buttonholes');
    expect(due('morning')).toBe(true);
  });
});

describe('a tick on the list', () => {
  const listOf = (): ReturnType<BenchTalk['posted']> => {
    due('morning');
    return talk.posted();
  };

  beforeEach(() => {
    talk.say('t1', order);
    talk.say('t1', 'made 3'); // before that morning: 37 left, 14 of them for Wednesday
    talk.say('t2', '10 flower crowns, dried, event 20 March');
    talk.setClock('2027-03-10T07:00:00Z');
  });

  it('counts in the event’s own thread and is answered there', () => {
    const [list] = listOf();
    expect(actionNamed(list?.reply, 'made all').label).toBe('Made all 15');
    const answer = talk.tap({ channel: 'C-bench' }, actionNamed(list?.reply, 'made all'));
    expect(answer?.to).toEqual({ workspace, channel, thread: 't1' });
    expect(textOf(answer?.reply)).toContain('18 of 40 buttonholes made, 22 left');
    expect(talk.stateOf('t1').progress.buttonhole?.made).toBe(18);
    expect(talk.stateOf('list', 'C-bench').lines).toEqual([]);
  });

  it('has no second effect, nor on the person’s copy', () => {
    const [list, copy] = listOf();
    talk.tap({ channel: 'C-bench' }, actionNamed(list?.reply, 'made all'));
    const again = talk.tap({ channel: 'D-isla' }, actionNamed(copy?.reply, 'made all'));
    expect(textOf(again?.reply)).toMatch(/^That was counted already\. 18 of 40/);
    expect(talk.stateOf('t1').progress.buttonhole?.made).toBe(18);
  });

  it('counts only what was not typed before, and holds though some broke meanwhile', () => {
    const [list] = listOf();
    talk.say('t1', 'made 5');
    talk.say('t1', '2 broke');
    talk.tap({ channel: 'C-bench' }, actionNamed(list?.reply, 'made all'));
    expect(talk.stateOf('t1').progress.buttonhole).toMatchObject({ made: 3 + 15 - 2, broke: 2 });
  });

  it('takes a number as how many of the list are made', () => {
    const [list] = listOf();
    const some = actionNamed(list?.reply, 'made some');
    talk.tap({ channel: 'C-bench' }, some, '6');
    talk.tap({ channel: 'C-bench' }, some, '9');
    expect(talk.stateOf('t1').progress.buttonhole?.made).toBe(3 + 9);
  });

  it('moves today’s pieces to another day, and the plan with them', () => {
    const [list] = listOf();
    const answer = talk.tap({ channel: 'C-bench' }, actionNamed(list?.reply, 'move date'), '2027-03-11');
    expect(textOf(answer?.reply)).toMatch(/^Nothing today\. 3 of 40 buttonholes made, 37 left/);
    expect(textOf(answer?.reply)).toContain('Not on time, 1 h 15 min short');
    talk.say('t1', 'undo');
    expect(talk.say('t1', 'what is left?')).toContain('On time');
  });

  it('refuses a day that is past, and a value that was tampered with changes nothing', () => {
    const [list] = listOf();
    const move = actionNamed(list?.reply, 'move date');
    expect(textOf(talk.tap({ channel: 'C-bench' }, move, '2027-03-01')?.reply)).toContain('is past');
    expect(
      talk.tap({ channel: 'C-bench' }, { ...move, action: 'made all', value: move.value.replace('"buttonhole"', '"nosegay"') })?.to.thread,
    ).not.toBe('t1');
    expect(talk.stateOf('t1').progress.buttonhole?.made).toBe(3);
  });

  it('stays quiet in a channel others read: only the client’s form', () => {
    talk.hear({ thread: 't1', text: 'lovely, thanks', shared: true });
    const [list] = listOf();
    const answer = talk.tap({ channel: 'C-bench' }, actionNamed(list?.reply, 'made all'));
    expect(textOf(answer?.reply)).toContain('Others read this channel too');
    expect(talk.stateOf('t1').progress.buttonhole?.made).toBe(18);
  });
});

describe('the afternoon nudge', () => {
  beforeEach(() => {
    talk.say('t1', order);
    talk.setClock('2027-03-10T15:00:00Z');
  });

  it('asks only where nobody has said how today went', () => {
    due('nudge');
    const [nudge] = talk.posted();
    expect(textOf(nudge?.reply)).toMatch(/^How far did you get\? 18 pieces of today not ticked yet\./);
    expect(actionsOf(nudge?.reply).map(({ action }) => action)).toEqual(['made all', 'made some', 'move date']);
  });

  it.each(['made 5', 'nothing today', '2 broke', '20 left'])('is not said after “%s”', (said) => {
    talk.say('t1', said);
    expect(due('nudge')).toBe(true);
    expect(talk.posted()).toEqual([]);
  });

  it('is said though pieces were made yesterday', () => {
    talk.setClock('2027-03-09T15:00:00Z');
    talk.say('t1', 'made 5');
    talk.setClock('2027-03-10T15:00:00Z');
    due('nudge');
    expect(textOf(talk.posted()[0]?.reply)).toContain('13 pieces of today');
  });

  it('is not said a day late', () => {
    talk.setClock('2027-03-11T06:00:00Z');
    due('nudge', { day: '2027-03-10', late: true });
    expect(talk.posted()).toEqual([]);
  });
});

describe('the week ahead', () => {
  it('names each day with something on it and what the bench has', () => {
    talk.say('t1', order);
    talk.setClock('2027-03-08T07:00:00Z');
    due('week ahead');
    const text = textOf(talk.posted()[0]?.reply);
    expect(text).toMatch(/^The week ahead, Mon 8 March to Sun 14 March: 40 pieces to make, 10 h of the bench's 34 h\./);
    expect(text).toContain('Thu 11 March\n- board: 40 buttonholes for Sun 14 March\n- make 22 buttonholes');
  });

  it('says what does not fit and what would be enough', () => {
    talk.say('t1', '150 buttonholes, dried, event 14 March');
    talk.setClock('2027-03-08T07:00:00Z');
    due('week ahead');
    const text = textOf(talk.posted()[0]?.reply);
    expect(text).toContain('13 h 30 min short');
    expect(text).toContain('would be enough');
  });

  it('is silent when nothing is on', () => {
    due('week ahead');
    expect(talk.posted()).toEqual([]);
  });
});
