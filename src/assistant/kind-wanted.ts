// "Need some bouts", "quote for buttonholes pls": a kind is wanted, and nobody said how many or at what price. That is asked.

import type { OpenQuestion } from '../reading/reading.ts';
import { mannerOf } from '../reply/answer.ts';
import { howManyOf } from '../reply/compose/next-step.ts';
import { kindNamed } from '../reply/compose/uncounted-kind.ts';
import type { Reply } from '../reply/reply.ts';
import { text } from '../reply/span.ts';
import type { Scene } from './scene.ts';

/** What to ask where a message names one kind and nothing else, in a thread without an order. */
export const kindWanted = ({ at, reading }: Scene): { readonly reply: Reply; readonly open: OpenQuestion } | undefined => {
  const kind = at.thread.state.lines.length > 0 ? undefined : kindNamed(reading?.unread ?? []);
  if (kind === undefined) return undefined;
  const { words, open } = howManyOf(kind, mannerOf(at.studio.state).says);
  return { reply: { blocks: [{ block: 'next', line: text`${words}` }] }, open };
};
