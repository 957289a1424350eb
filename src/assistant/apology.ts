// The one answer to our own failure: nothing stored, an id to quote, and no detail of what went wrong.

import { plainLine } from '../reply/span.ts';
import { apologyWords } from '../reply/words/apology.ts';
import type { Answered } from './answer-message.ts';
import type { Standpoint } from './log-entries.ts';

export const apology = (at: Standpoint, id: string): Answered => ({
  logged: { entries: [], event: at.thread.state, studio: at.studio.state },
  reply: { blocks: [{ block: 'problem', line: plainLine(apologyWords(id)) }] },
  as: 'failed',
  reading: undefined,
  figures: () => ({}),
});
