// Calendar files over the life of an event: UIDs that stay, dates that move, steps that vanish and are cancelled, a number that rises each time (RFC 5545,
// 3.8.4.7 UID and 3.8.7.4 SEQUENCE), and the one line that says a posted file no longer holds.

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { createFileMaker } from '../../src/assistant/make-file.ts';
import { foldEvent } from '../../src/thread/fold.ts';
import { actionNamed, type BenchTalk, benchTalk, channel, workspace } from '../support/bench-talk.ts';

const key = { workspace, channel, thread: 't1' };
const order = '40 buttonholes, dried, event 14 March';
const outOfDate = 'The calendar posted here is out of date';

interface Entry {
  readonly date: string;
  readonly status: string;
  readonly sequence: number;
}

let talk: BenchTalk;
const fileNow = (): ReadonlyMap<string, Entry> => {
  const { bytes } = createFileMaker({ store: talk.store, clock: talk.clock, settings: talk.studio }).make(
    { kind: 'calendar', name: '', alt: '' },
    key,
  );
  const unfolded = new TextDecoder().decode(bytes).replaceAll('\r\n ', '');
  const entries = unfolded
    .split('BEGIN:VEVENT')
    .slice(1)
    .map((text): [string, Entry] => {
      const field = (name: string): string => new RegExp(`^${name}[^:]*:(.*)$`, 'm').exec(text)?.[1]?.trim() ?? '';
      return [
        field('UID').split('/').at(-1) ?? '',
        { date: field('DTSTART'), status: field('STATUS'), sequence: Number(field('SEQUENCE')) },
      ];
    });
  return new Map(entries);
};

beforeEach(() => {
  talk = benchTalk({ now: '2027-01-20T09:00:00Z' });
  talk.say('t1', order);
});
afterEach(() => talk.close());

describe('a file after a move', () => {
  it('moves what moved, cancels what vanished and raises its number', () => {
    talk.say('t1', 'calendar');
    const before = fileNow();
    expect([...before.keys()]).toEqual(expect.arrayContaining(['order-by', 'bench-2027-03-10', 'bench-2027-03-11']));
    talk.say('t1', 'move it to 21 March');
    talk.say('t1', 'calendar');
    const after = fileNow();
    expect(after.get('event')).toMatchObject({ date: '20270321', status: 'CONFIRMED' });
    expect(after.get('bench-2027-03-10')).toMatchObject({ date: '20270310', status: 'CANCELLED' });
    expect(after.get('bench-2027-03-17')?.status).toBe('CONFIRMED');
    expect(after.get('event')?.sequence).toBeGreaterThan(before.get('event')?.sequence ?? 0);
  });

  it('still cancels what vanished two files ago, for whoever imports only the newest', () => {
    talk.say('t1', 'calendar');
    talk.say('t1', 'move it to 21 March');
    talk.say('t1', 'calendar');
    talk.say('t1', 'move it to 28 March');
    talk.say('t1', 'calendar');
    expect(fileNow().get('bench-2027-03-10')?.status).toBe('CANCELLED');
    expect(fileNow().get('bench-2027-03-17')?.status).toBe('CANCELLED');
  });

  it('leaves what is past as it was', () => {
    talk.say('t1', 'calendar');
    talk.setClock('2027-03-11T09:00:00Z');
    talk.say('t1', 'made 20');
    talk.say('t1', 'calendar');
    expect(fileNow().has('bench-2027-03-10')).toBe(false);
  });

  it('cancels every date when the event is off', () => {
    talk.say('t1', 'calendar');
    const held = [...fileNow().keys()];
    expect(talk.say('t1', 'cancelled')).toContain(`${outOfDate}: this event is off`);
    expect(talk.say('t1', 'calendar')).toContain('takes its dates out of your calendar');
    expect([...fileNow().keys()].sort()).toEqual(held.sort());
    expect([...fileNow().values()].every(({ status }) => status === 'CANCELLED')).toBe(true);
  });

  it('remembers over a restart', () => {
    const folder = mkdtempSync(join(tmpdir(), 'benchbell-'));
    const path = join(folder, 'store.db');
    talk.close();
    talk = benchTalk({ now: '2027-01-20T09:00:00Z', path });
    talk.say('t1', order);
    talk.say('t1', 'calendar');
    talk.close();
    talk = benchTalk({ now: '2027-01-21T09:00:00Z', path });
    expect(talk.say('t1', 'move it to 21 March')).toContain(outOfDate);
    expect(fileNow().get('bench-2027-03-10')?.status).toBe('CANCELLED');
    rmSync(folder, { recursive: true });
  });
});

describe('the line that a posted calendar is out of date', () => {
  it('comes with the next reply after the plan moved, once, and offers the file', () => {
    talk.say('t1', 'calendar');
    expect(talk.say('t1', 'made 5')).not.toContain(outOfDate); // the same days stand
    const moved = talk.hear({ thread: 't1', text: 'move it to 21 March' })?.reply;
    expect(actionNamed(moved, 'calendar file').label).toBe('Calendar file');
    expect(talk.say('t1', 'when do we start?')).not.toContain(outOfDate);
    talk.say('t1', 'picture');
    expect(talk.say('t1', 'move it to 28 March')).toContain(`${outOfDate}: event was Sun 21 March, now Sun 28 March.`);
  });

  it('also when another event moved the bench days', () => {
    talk.say('t1', 'calendar');
    talk.say('t2', '100 buttonholes, dried, event 16 March');
    expect(talk.say('t1', 'how many left?')).toContain(outOfDate);
  });

  it('never where no calendar was posted, and not for steps that are done', () => {
    expect(talk.say('t1', 'move it to 21 March')).not.toContain(outOfDate);
    talk.say('t1', 'calendar');
    expect(talk.say('t1', 'ordered the stems')).not.toContain(outOfDate);
  });

  it('is not what “undo” takes back', () => {
    talk.say('t1', 'made 5');
    talk.say('t1', 'calendar');
    talk.say('t1', 'undo');
    expect(talk.stateOf('t1').progress.buttonhole?.made ?? 0).toBe(0);
  });

  it('keeps the snapshot equal to the fold of the log, edits and undo included', () => {
    for (const words of ['calendar', 'move it to 21 March', 'undo', 'picture', 'made 4', 'move it to 28 March']) talk.say('t1', words);
    talk.hear({ thread: 't1', id: 'm9', text: 'made 5' });
    talk.hear({ thread: 't1', id: 'm9', revision: '2', kind: 'edit', text: 'made 6, and the calendar please' });
    expect(talk.stateOf('t1')).toEqual(foldEvent(talk.store.entries(key)));
  });
});
