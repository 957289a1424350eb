// A price list named at the prompt (":file prices.csv"), read whole. The same limit as for a list dropped into Slack.

import { readFileSync, statSync } from 'node:fs';

const longest = 1_000_000; // bytes: a price list of 20,000 rows

export type ListFileRead = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly trouble: string };

/** Bytes that are not UTF-8 become the replacement character, which the list's reader refuses by name. */
export const readListFile = (path: string): ListFileRead => {
  const file = path.trim().replace(/^(["'])(.*)\1$/, '$2');
  try {
    const { size } = statSync(file);
    if (size > longest) return { ok: false, trouble: `${file} is larger than a price list can be (1 MB). Nothing was imported.` };
    return { ok: true, text: readFileSync(file, 'utf8') };
  } catch {
    return { ok: false, trouble: `I can't read ${file}. Is the path right? Nothing was imported.` };
  }
};
