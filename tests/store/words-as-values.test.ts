// Words that would be SQL if they were ever built into a statement: wherever a person or Slack may put them, they come back as they were said, and
// nothing else is touched. The examples are those OWASP's page on SQL injection warns of: a closed quote, a stacked statement, a comment, a union.

import { describe, expect, it } from 'vitest';
import { checkStore } from '../../src/store/check-store.ts';
import { exportThread } from '../../src/store/export.ts';
import { forget } from '../../src/store/forget.ts';
import { buttonholes, message, outcome, reply } from './builders.ts';
import { newPath, open } from './in-folder.ts';

const words = [
  "'; DROP TABLE entries; --",
  "' OR '1'='1",
  '" OR ""="',
  "x' UNION SELECT holder FROM lease --",
  'm1; DELETE FROM inbox',
  "') ON CONFLICT DO UPDATE SET text = 'gone' --",
  '/* */ %_?1 :name @name $name',
] as const;

describe.each(words)('%s', (said) => {
  it('is kept, found and forgotten as a name like any other, beside a thread that stays', () => {
    const store = open(newPath());
    const bystander = message('m1');
    store.receive(bystander, 'd1');
    store.commit(outcome(store, bystander, [buttonholes(40)]));

    const where = { workspace: bystander.workspace, channel: said, thread: said };
    const about = message(said, { ...where, author: said, text: said, revision: said, addressed: true });
    expect(store.receive(about, said)).toBe('new');
    expect(store.receive(about, said)).toBe('repeat');
    expect(store.waiting()).toEqual([about]);
    const facts = [{ ...buttonholes(12), words: said }];
    expect(store.commit(outcome(store, about, facts, [reply(said, said)]))).toBe('stored');

    expect(store.entries(where)).toMatchObject([{ message: said, author: said, facts: [{ count: 12, words: said }] }]);
    expect(JSON.parse(JSON.stringify(exportThread(store, where))).entries).toHaveLength(1);
    expect(store.knows(where)).toBe(true);
    expect(store.entries(bystander)).toHaveLength(1);
    expect(checkStore(store.database, store.folds).faults).toEqual([]);

    expect(forget(store, where)).toMatchObject({ entries: 1 });
    expect(store.entries(where)).toEqual([]);
    expect(store.thread(bystander).state.lines).toMatchObject([{ count: 40 }]);
    expect(checkStore(store.database, store.folds).faults).toEqual([]);
  });
});
