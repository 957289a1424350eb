// An inbox in memory, as the assistant's door should behave: repeats told apart by delivery, and by message and revision.

import type { FileContent, FileToFetch, IncomingMessage, ThreadKey } from '../../src/assistant/ports.ts';
import type { Inbox } from '../../src/hosts/slack/keep-deliveries.ts';
import type { Log } from '../../src/hosts/slack/logger.ts';

export const memoryInbox = () => {
  const kept: IncomingMessage[] = [];
  const files: IncomingMessage[] = [];
  const toFetch: FileToFetch[] = [];
  const filled: { readonly message: string; readonly content: FileContent }[] = [];
  const seen = new Set<string>();
  let works = 0;
  let busyUntil = 0;
  const isNew = (message: IncomingMessage, delivery: string): boolean => {
    if (Date.now() < busyUntil) throw new Error('the store is busy');
    const keys = [`d ${delivery}`, `m ${message.workspace} ${message.channel} ${message.id} ${message.revision}`];
    if (keys.some((key) => seen.has(key))) return false;
    for (const key of keys) seen.add(key);
    return true;
  };
  const inbox: Inbox = {
    receive: (message, delivery) => {
      if (!isNew(message, delivery)) return 'repeat';
      kept.push(message);
      return 'new';
    },
    receiveFile: (message, delivery, file) => {
      if (!isNew(message, delivery)) return 'repeat';
      files.push(message);
      toFetch.push({ key: message, message: message.id, file });
      return 'new';
    },
    filesToFetch: () => [...toFetch],
    fill: (file, content) => {
      toFetch.splice(toFetch.indexOf(file), 1);
      filled.push({ message: file.message, content });
    },
    work: () => {
      works += 1;
    },
  };
  const knowsThread = (key: ThreadKey): boolean => kept.some((one) => one.channel === key.channel && one.thread === key.thread);
  return {
    inbox,
    threads: { knowsThread },
    kept,
    /** Dropped files: as they were kept, those still to be fetched, and what was fetched. */
    files,
    toFetch,
    filled,
    works: () => works,
    busyFor: (milliseconds: number) => {
      busyUntil = Date.now() + milliseconds;
    },
  };
};

/** A log that keeps its lines, to look for what must not be in them. */
export const memoryLog = () => {
  const lines: string[] = [];
  const keep = (fields: object, text: string): void => {
    lines.push(`${JSON.stringify(fields)} ${text}`);
  };
  const log: Log = { info: keep, warn: keep, error: keep };
  return { log, lines };
};
