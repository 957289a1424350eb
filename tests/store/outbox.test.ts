// How replies enter and leave the outbox: in order, once, and with the newest wording.

import { beforeEach, describe, expect, it } from 'vitest';
import type { IncomingMessage } from '../../src/assistant/ports.ts';
import type { OpenStore } from '../../src/store/sqlite-store.ts';
import { buttonholes, key, message, outcome, reply, says, tell, workspace } from './builders.ts';
import { newPath, open } from './in-folder.ts';

const now = Date.UTC(2027, 0, 20, 9);
const edit = (id: string, revision = '2'): IncomingMessage => message(id, { kind: 'edit', revision });

describe('the outbox', () => {
  let store: OpenStore;
  beforeEach(() => {
    store = open(':memory:');
  });
  const due = () => store.unsent(now).map((out) => out.reply);
  const post = (hostId: string): void => {
    const [next] = store.unsent(now);
    if (next && store.begin(next.id, now)) store.posted(next.id, hostId, now);
  };

  it('gives the oldest reply of each thread, and the next once it is posted', () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2'), [], [reply('m2')]);
    tell(store, message('m3', { thread: 't2' }), [], [reply('m3')]);
    expect(due()).toEqual([says('answer to m1'), says('answer to m3')]);
    post('h1');
    expect(due()).toEqual([says('answer to m2'), says('answer to m3')]);
  });

  it('holds a thread back while its reply is being posted, or waits for its time', () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2'), [], [reply('m2')]);
    const [first] = store.unsent(now);
    const begun = store.begin(first?.id ?? '', now);
    expect(begun).toMatchObject({ attempts: 1, firstTriedAt: now, interrupted: false });
    expect(store.begin(first?.id ?? '', now)).toBeUndefined();
    expect(due()).toEqual([]);
    store.postpone(first?.id ?? '', now + 1000, 'ratelimited');
    expect(due()).toEqual([]);
    expect(store.unsent(now + 1000)).toMatchObject([{ about: 'm1', attempts: 1, interrupted: false }]);
  });

  it('goes on to the next reply when one is given up', () => {
    tell(store, message('m1'), [], [reply('m1')]);
    tell(store, message('m2'), [], [reply('m2')]);
    store.giveUp(store.unsent(now)[0]?.id ?? '', 'channel_not_found', now);
    expect(due()).toEqual([says('answer to m2')]);
  });

  it('marks a reply whose post may have arrived', () => {
    tell(store, message('m1'), [], [reply('m1')]);
    const id = store.unsent(now)[0]?.id ?? '';
    store.begin(id, now);
    store.postpone(id, now, 'timeout', true);
    expect(store.unsent(now)).toMatchObject([{ interrupted: true }]);
  });

  it('queues a cause once', () => {
    tell(store, message('m1'), [], [reply('m1', 'once', { id: 'cause' })]);
    post('h1');
    tell(store, message('m2'), [], [reply('m1', 'twice', { id: 'cause' })]);
    expect(due()).toEqual([]);
  });

  it('refuses one id for replies to two threads', () => {
    store.remind(workspace, 'bench', 'morning', '2027-01-20' as never, [{ ...reply('a'), id: 'same', to: key('t1') }], now);
    const other = [{ ...reply('a'), id: 'same', to: key('t2') }];
    expect(() => store.remind(workspace, 'bench', 'evening', '2027-01-20' as never, other, now)).toThrow('same id');
    expect(store.lastReminder(workspace, 'bench', 'evening')).toBeUndefined();
  });

  it('forgets the words of a reply when it has been posted or given up', () => {
    tell(store, message('m1'), [], [reply('m1', 'for Catriona')]);
    post('h1');
    tell(store, message('m2'), [], [reply('m2', 'for Catriona')]);
    store.giveUp(store.unsent(now)[0]?.id ?? '', 'refused', now);
    expect(store.database.prepare('SELECT group_concat(reply) FROM outbox').pluck().get()).toBe(',');
  });

  describe('for an edited message', () => {
    it('puts the newer reply in the place of one still waiting', () => {
      tell(store, message('m1'), [buttonholes(40)], [reply('m1', '40')]);
      tell(store, message('m2'), [], [reply('m2')]);
      tell(store, edit('m1'), [buttonholes(45)], [reply('m1', '45')]);
      expect(due()).toEqual([says('45')]);
      post('h1');
      post('h2');
      expect(store.unsent(now)).toEqual([]);
    });

    it('gives the newer wording to whoever took the reply a moment before the edit', () => {
      tell(store, message('m1'), [], [reply('m1', '40')]);
      const [taken] = store.unsent(now);
      tell(store, edit('m1'), [], [reply('m1', '45')]);
      expect(store.begin(taken?.id ?? '', now)?.reply).toEqual(says('45'));
    });

    it('updates the reply already posted, through any number of edits', () => {
      tell(store, message('m1'), [], [reply('m1', '40')]);
      post('h1');
      tell(store, edit('m1', '2'), [], [reply('m1', '45')]);
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h1' }]);
      post('h1');
      tell(store, edit('m1', '3'), [], [reply('m1', '46')]);
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h1', reply: says('46') }]);
    });

    it('waits for a post under way, and then updates it', () => {
      tell(store, message('m1'), [], [reply('m1', '40')]);
      const id = store.unsent(now)[0]?.id ?? '';
      store.begin(id, now);
      tell(store, edit('m1'), [], [reply('m1', '45')]);
      expect(due()).toEqual([]);
      store.posted(id, 'h1', now);
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h1', reply: says('45') }]);
    });

    it('does not lose the edit behind a post that may have arrived', () => {
      tell(store, message('m1'), [], [reply('m1', '40')]);
      const id = store.unsent(now)[0]?.id ?? '';
      store.begin(id, now);
      store.postpone(id, now, 'timeout', true);
      tell(store, edit('m1'), [], [reply('m1', '45')]);
      expect(store.unsent(now)).toMatchObject([{ interrupted: true, reply: says('40') }]);
      post('h1');
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h1', reply: says('45') }]);
    });

    it('posts anew when the earlier reply was given up', () => {
      tell(store, message('m1'), [], [reply('m1', '40')]);
      store.giveUp(store.unsent(now)[0]?.id ?? '', 'invalid_blocks', now);
      tell(store, edit('m1'), [], [reply('m1', '45')]);
      expect(store.unsent(now)[0]).not.toHaveProperty('replaces');
    });

    it('keeps two replies to one message in their places', () => {
      tell(store, message('m1'), [], [reply('m1', 'budget 40'), reply('m1', 'caution')]);
      post('h1');
      post('h2');
      tell(store, edit('m1'), [], [reply('m1', 'budget 45'), reply('m1', 'caution again')]);
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h1' }]);
      post('h1');
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h2' }]);
    });

    it('never updates the reply to the same message id in another channel or workspace', () => {
      tell(store, message('m1', { channel: 'parties' }), [], [reply('m1')]);
      post('h1');
      tell(store, message('m1', { workspace: 'W-other' }), [], [reply('m1')]);
      post('h2');
      tell(store, message('m1'), [], [reply('m1')]);
      tell(store, edit('m1'), [], [reply('m1', 'edited')]);
      expect(store.unsent(now)[0]).not.toHaveProperty('replaces');
    });

    it('withdraws what still waits to be said when the new wording, or a deletion, needs no answer', () => {
      tell(store, message('m1'), [buttonholes(40)], [reply('m1', '40'), reply('m1', 'caution')]);
      tell(store, edit('m1'), [], [reply('m1', 'fine')]);
      expect(store.database.prepare("SELECT count(*) FROM outbox WHERE state = 'waiting'").pluck().get()).toBe(1);
      tell(store, message('m1', { kind: 'delete', revision: 'gone', text: '' }), [], []);
      expect(due()).toEqual([]);
    });

    it('replaces an apology by the answer', () => {
      tell(store, message('m1'), [], [reply('m1', 'sorry', { purpose: 'apology' })]);
      post('h1');
      tell(store, edit('m1'), [], [reply('m1', '45')]);
      expect(store.unsent(now)).toMatchObject([{ replaces: 'h1', purpose: 'answer' }]);
    });
  });

  it('marks what a dead run had begun, and only that', () => {
    const path = newPath();
    const first = open(path);
    tell(first, message('m1'), [], [reply('m1')]);
    tell(first, message('m2', { thread: 't2' }), [], [reply('m2')]);
    first.begin(first.unsent(now)[0]?.id ?? '', now);
    first.close();
    const second = open(path);
    expect(second.unsent(now)).toMatchObject([
      { about: 'm1', interrupted: true, attempts: 1, firstTriedAt: now },
      { about: 'm2', interrupted: false, attempts: 0 },
    ]);
  });

  it('gives three of a channel at a time, so that a long queue in one hides no other', () => {
    for (let n = 0; n < 30; n += 1) tell(store, message(`m${n}`, { thread: `t${n}` }), [], [reply(`m${n}`)]);
    tell(store, message('p1', { channel: 'parties' }), [], [reply('p1')]);
    expect(store.unsent(now).map((out) => out.about)).toEqual([...Array.from({ length: 3 }, (_, n) => `m${n}`), 'p1']);
    for (let n = 0; n < 3; n += 1) post(`h${n}`);
    expect(store.unsent(now).map((out) => out.about)).toEqual(['m3', 'm4', 'm5', 'p1']);
  });

  it('takes a thousand waiting replies of one thread without looking at each for each', () => {
    for (let n = 0; n < 1000; n += 1) {
      const about = message(`m${n}`);
      store.receive(about, `d${n}`);
      store.commit(outcome(store, about, []));
    }
    expect(store.unsent(now)).toHaveLength(1);
    const plan = store.database
      .prepare('EXPLAIN QUERY PLAN SELECT min(seq) FROM outbox WHERE ended_at IS NULL GROUP BY workspace, channel, thread')
      .all()
      .map((step) => (step as { detail: string }).detail);
    expect(plan).toEqual([expect.stringContaining('USING INDEX outbox_pending')]);
  });
});
