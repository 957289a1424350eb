// Every reply of the demo conversations, and of some very large events, is a message Slack would take.

import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { createAssistant } from '../../../src/assistant/assistant.ts';
import { replyToBlocks } from '../../../src/hosts/slack/reply-to-blocks.ts';
import type { Reply } from '../../../src/reply/reply.ts';
import { openStore } from '../../../src/store/sqlite-store.ts';
import { messageFaults } from '../../support/block-kit-limits.ts';
import { demoStudio } from '../../support/converse.ts';

/** What is replied to these lines, all in one thread. */
const repliesTo = (lines: readonly string[], now: number): Reply[] => {
  const clock = { now: () => now };
  const store = openStore({ path: ':memory:', clock });
  const assistant = createAssistant({ store, clock, settings: demoStudio, onFailure: (_id, error) => expect(error).toBeUndefined() });
  const replies: Reply[] = [];
  for (const [place, text] of lines.entries()) {
    const said = { workspace: 'T1', channel: 'C1', thread: 'm0', id: `m${place}`, revision: '1', author: 'u1', kind: 'new' } as const;
    store.receive({ ...said, text, addressed: true, shared: false, sentAt: now }, `d${place}`);
    assistant.work(({ reply }) => {
      if (reply) replies.push(reply);
    });
  }
  store.close();
  return replies;
};

const folder = 'demo-data/conversations/';
const conversation = (name: string) => {
  const lines = readFileSync(folder + name, 'utf8').split('\n');
  const now = /^now: (.*)$/.exec(lines[0] ?? '')?.[1] ?? '2027-01-20T09:00:00Z';
  return { now: Date.parse(now), said: lines.filter((line) => line.startsWith('> ')).map((line) => line.slice(2)) };
};

test.each(readdirSync(folder).filter((name) => name.endsWith('.txt')))('%s', (name) => {
  const { now, said } = conversation(name);
  const replies = repliesTo(said, now);
  expect(replies.length).toBeGreaterThan(2);
  for (const reply of replies) expect(messageFaults(replyToBlocks(reply, 'r1'))).toEqual([]);
});

const kinds = ['buttonholes at 18', 'wrist corsages at 35', 'pin corsages at 32', 'flower crowns at 65', 'hair flowers at 28'];
const large: readonly (readonly [string, readonly string[]])[] = [
  [
    'sixty lines of an order',
    [Array.from({ length: 60 }, (_each, place) => `${place + 2} ${kinds[place % kinds.length]}`).join('\n'), 'dried, event 14 March'],
  ],
  [
    'eighty wearers',
    [
      `80 buttonholes at 20 inc tax, dried, event 14 March`,
      `for: ${Array.from({ length: 80 }, (_each, place) => `Guest number ${place}`).join(', ')}`,
    ],
  ],
  ['nine thousand pieces', ['9000 buttonholes at 25 inc tax', 'dried, event 14 August', 'show working']],
  ['40 kB of words', ['40 buttonholes '.repeat(2_700)]],
  ['help', ['help', 'what can you do?', 'open events', 'buying list', 'calendar', 'picture', 'summary']],
];

test.each(large)('%s', (_what, lines) => {
  const replies = repliesTo(lines, Date.parse('2027-01-20T09:00:00Z'));
  expect(replies.length).toBeGreaterThan(0);
  for (const reply of replies) expect(messageFaults(replyToBlocks(reply, 'r1'))).toEqual([]);
});
