// One output line for scripts: what was read, the figures, and the reply's text. Amounts are text, so that no script reads them as floats.

import type { Handled } from '../../assistant/handled.ts';
import type { Reading } from '../../reading/reading.ts';
import { replyToText } from '../../reply/reply-to-text.ts';

/** `saved`: what became of the reply's files, where they are saved at all. */
export const handledToJson = (handled: Handled, shownId: string, saved: readonly { readonly path?: string }[] = []): string =>
  JSON.stringify({
    thread: handled.message.thread,
    id: shownId,
    ...(handled.reading ? { reading: readingToJson(handled.reading) } : {}),
    figures: handled.figures(),
    reply: handled.reply ? { text: replyToText(handled.reply) } : null,
    ...(saved.length > 0 ? { files: saved.flatMap(({ path }) => path ?? []) } : {}),
  });

const readingToJson = ({ facts, unread, asks, problems }: Reading) => ({
  facts,
  unread,
  asks: asks.map(({ about, why, words, choices }) => ({ about, why, words, choices: choices.map((choice) => choice.words) })),
  problems: problems.map((problem) => problem.code),
});

/** A delivery seen before: it had its effect and its reply then. */
export const repeatToJson = (thread: string, shownId: string): string =>
  JSON.stringify({ thread, id: shownId, repeat: true, figures: {}, reply: null });

export const troubleToJson = (trouble: string): string => JSON.stringify({ error: trouble, reply: { text: trouble } });
