// Saves the files a reply promises into a folder, under the names Slack would show. An earlier file is never overwritten.

import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join, parse } from 'node:path';
import type { FileMaker, ThreadKey } from '../../assistant/ports.ts';
import type { FileWanted } from '../../reply/reply.ts';

export type SaveFile = (file: FileWanted, thread: ThreadKey) => { readonly path?: string; readonly said: string };

export const saveInto =
  (folder: string, maker: FileMaker): SaveFile =>
  (file, thread) => {
    let bytes: Uint8Array;
    try {
      bytes = maker.make(file, thread).bytes;
    } catch {
      return { said: `${file.name} could not be made.` };
    }
    try {
      mkdirSync(folder, { recursive: true });
      const path = freePath(folder, file.name);
      writeFileSync(path, bytes);
      return { path, said: `Saved ${path}` };
    } catch {
      return { said: `${file.name} could not be saved in ${folder}.` };
    }
  };

/** "buying-list.csv", then "buying-list-2.csv". */
const freePath = (folder: string, wanted: string): string => {
  const { name, ext } = parse(wanted.replace(/[^\p{L}\p{N}._-]+/gu, '-'));
  let path = join(folder, `${name}${ext}`);
  for (let next = 2; existsSync(path); next += 1) path = join(folder, `${name}-${next}${ext}`);
  return path;
};
