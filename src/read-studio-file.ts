// Reads and checks a studio file. A trouble names the file, the field, what is wrong with it and what would be right.

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type StudioSettings, studioSettings } from './studio/settings.ts';

export type StudioFileRead = { readonly ok: true; readonly settings: StudioSettings } | { readonly ok: false; readonly trouble: string };

export const readStudioFile = (file: string | URL): StudioFileRead => {
  const name = typeof file === 'string' ? file : fileURLToPath(file);
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    return { ok: false, trouble: `cannot read the studio file ${name}` };
  }
  let parsed: unknown;
  try {
    parsed = JSON.parse(text);
  } catch {
    return { ok: false, trouble: `the studio file ${name} is not JSON` };
  }
  const read = studioSettings.safeParse(parsed);
  if (read.success) return { ok: true, settings: read.data };
  const issue = read.error.issues[0];
  return { ok: false, trouble: `the studio file ${name}: ${issue?.path.join('.') || 'file'}: ${issue?.message ?? 'not understood'}` };
};
