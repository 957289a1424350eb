// What is kept of an event, on request: handed out as a file to the one who asked, or deleted for good once they have said so twice.

import type { FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';
import type { Manner } from '../reply/answer.ts';
import { askBlocks } from '../reply/compose/ask.ts';
import type { Reply } from '../reply/reply.ts';
import { text } from '../reply/span.ts';
import type { ThreadKey } from './ports.ts';

export type KeepingAsked =
  | { readonly does: 'nothing'; readonly reply: Reply }
  | { readonly does: 'ask'; readonly reply: Reply; readonly ask: Ask }
  | { readonly does: 'forget'; readonly reply: Reply }
  | { readonly does: 'hand out'; readonly reply: Reply; readonly apart: Reply }; // apart: for the asker alone, where the host can

/** undefined where nobody asked for either. `isKept`: whether anything is kept of the thread. */
export const keepingAsked = (
  questions: readonly FactOf<'question'>[],
  key: ThreadKey,
  isKept: boolean,
  manner: Manner,
): KeepingAsked | undefined => {
  const question = questions.find(({ asks }) => asks === 'forget' || asks === 'export');
  if (!question) return undefined;
  if (!isKept) return { does: 'nothing', reply: { blocks: [{ block: 'answer', line: text`Nothing is kept of this thread.` }] } };
  if (question.asks === 'export') return { does: 'hand out', reply: sentApart, apart: exported(key) };
  if (question.all) return { does: 'forget', reply: forgotten };
  return { does: 'ask', reply: { blocks: [...reallyForget, ...askBlocks(ask, manner)] }, ask };
};

const ask: Ask = {
  about: 'event',
  why: 'really forget',
  words: 'this event',
  choices: [
    { words: 'forget it for good', facts: [{ fact: 'question', asks: 'forget', all: true, words: 'forget it for good' }] },
    { words: 'keep it', facts: [{ fact: 'question', asks: 'summary', words: 'keep it' }] },
  ],
};

const reallyForget: Reply['blocks'] = [
  { block: 'answer', line: text`That deletes everything I keep of this event: its order, prices, progress and dates.` },
  {
    block: 'line',
    line: text`Prices, crew and drying days said here stay with the studio. What stands in this thread stays until you delete it.`,
  },
];

const forgotten: Reply = {
  blocks: [
    { block: 'answer', line: text`Forgotten: nothing of this event is kept any more.` },
    { block: 'assumed', line: text`Backups made before still hold it until they are replaced.` },
  ],
};

const sentApart: Reply = { blocks: [{ block: 'answer', line: text`Everything kept of this event is on its way to you alone.` }] };

const exported = (key: ThreadKey): Reply => ({
  blocks: [
    { block: 'answer', line: text`Everything kept of the event, as a file.` },
    {
      block: 'file',
      file: { kind: 'export', name: 'event.json', alt: 'The event as data: every message’s facts and what they come to', of: key },
    },
  ],
});
