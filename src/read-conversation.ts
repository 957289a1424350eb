// A conversation kept in a file: what was typed stands behind "> ", the rest are the replies it had. "now: …" at the top sets the clock.

import { readFileSync } from 'node:fs';

export type ConversationRead =
  | { readonly ok: true; readonly lines: readonly string[]; readonly now: number | undefined }
  | { readonly ok: false; readonly trouble: string };

export const readConversation = (file: string): ConversationRead => {
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    return { ok: false, trouble: `cannot read the conversation ${file}` };
  }
  const all = text.split(/\r?\n/);
  const stamp = /^now: (\S+)$/.exec(all[0] ?? '')?.[1];
  const now = stamp === undefined ? undefined : Date.parse(stamp);
  if (Number.isNaN(now)) return { ok: false, trouble: `the conversation ${file} begins with a time that is not one: ${stamp}` };
  return { ok: true, lines: all.filter((line) => line.startsWith('> ')).map((line) => line.slice(2)), now };
};
