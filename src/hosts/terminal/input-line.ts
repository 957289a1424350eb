// One line typed or piped in: plain text, or a JSON object that names its thread, id and author, or what it edits or deletes.

import { z } from 'zod';
import type { IncomingMessage } from '../../assistant/ports.ts';

const line = z.strictObject({
  thread: z.string().min(1).max(200).default('t1'),
  id: z.string().min(1).max(200).optional(),
  author: z.string().min(1).max(200).default('you'),
  text: z.string().optional(),
  file: z.string().optional(), // the text of a price list, as a dropped file would bring it
  edits: z.string().min(1).optional(),
  deletes: z.string().min(1).optional(),
  tap: z.strictObject({ action: z.string(), value: z.string() }).optional(), // a button, as a person would press it
  addressed: z.boolean().optional(),
  shared: z.boolean().optional(),
});

export interface InputLine {
  readonly message: IncomingMessage;
  readonly shownId: string; // the line's own id, which an edit does not share with its message
}

export type InputRead = { readonly ok: true; readonly line: InputLine } | { readonly ok: false; readonly trouble: string };

export interface InputContext {
  readonly thread: string; // where plain text goes
  readonly nextId: string; // for a line without an id
  readonly now: number;
  readonly addressed: boolean; // plain text at a prompt is said to the bot; a piped script may hold small talk
  readonly json: boolean;
}

const workspace = 'terminal';

/** Reads one line. With `json`, a line that begins with { must be a JSON object of the known fields. */
export const readInputLine = (text: string, context: InputContext): InputRead => {
  if (!context.json || !text.trimStart().startsWith('{')) {
    return {
      ok: true,
      line: { message: newMessage(context, { thread: context.thread, author: 'you', id: context.nextId, text }), shownId: context.nextId },
    };
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { ok: false, trouble: 'That line begins like JSON but is not JSON.' };
  }
  const read = line.safeParse(parsed);
  if (!read.success) {
    const issue = read.error.issues[0];
    return { ok: false, trouble: `That line is not understood: ${issue?.path.join('.') || 'line'}: ${issue?.message ?? 'unknown'}.` };
  }
  const { thread, author, text: words = '', file, edits, deletes, tap, addressed, shared } = read.data;
  const shownId = read.data.id ?? context.nextId;
  const base = { ...newMessage(context, { thread, author, id: shownId, text: words }), shared: shared ?? false };
  const message = { ...base, addressed: addressed ?? base.addressed };
  if (edits) return { ok: true, line: { message: { ...message, kind: 'edit', id: edits, revision: shownId }, shownId } };
  if (deletes) return { ok: true, line: { message: { ...message, kind: 'delete', id: deletes, revision: shownId, text: '' }, shownId } };
  if (file !== undefined) return { ok: true, line: fileLine({ ...message, text: file }, shownId) };
  if (tap) return { ok: true, line: { message: { ...message, kind: 'tap', tap, text: '' }, shownId } };
  return { ok: true, line: { message, shownId } };
};

const fileLine = (message: IncomingMessage, shownId: string): InputLine => ({ message: { ...message, kind: 'file' }, shownId });

/** A file's text as a message of its own. */
export const readFileLine = (text: string, context: InputContext): InputLine =>
  fileLine(newMessage(context, { thread: context.thread, author: 'you', id: context.nextId, text }), context.nextId);

const newMessage = (
  context: InputContext,
  { thread, author, id, text }: { thread: string; author: string; id: string; text: string },
): IncomingMessage => ({
  workspace,
  channel: 'terminal',
  thread,
  id,
  revision: '0',
  author,
  kind: 'new',
  text,
  addressed: context.addressed,
  shared: false,
  sentAt: context.now,
});
