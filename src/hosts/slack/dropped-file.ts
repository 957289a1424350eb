// Fetches a price list somebody dropped into a thread. The bot's token goes to Slack's file host and nowhere else; size and type are checked before and while reading.

import { z } from 'zod';
import type { FileContent } from '../../assistant/ports.ts';
import { parsedJson } from './parsed-json.ts';

const file = z.object({
  id: z.string(),
  name: z.string().nullish(),
  mimetype: z.string().optional(),
  filetype: z.string().optional(),
  size: z.number().optional(),
  mode: z.string().optional(),
  url_private_download: z.string().optional(),
});
export type SlackFile = z.infer<typeof file>;

/** The files of a message that have a name and an id. */
export const filesOf = (files: readonly unknown[] | undefined): readonly SlackFile[] =>
  (files ?? []).flatMap((one) => file.safeParse(one).data ?? []);

/** A file as it was noted when it was dropped. */
export const readFile = (noted: string): SlackFile | undefined => file.safeParse(parsedJson(noted)).data;

const longest = 1_000_000; // bytes: a price list of 20,000 rows
const patience = 20_000; // milliseconds

/** Whether it looks like a list at all. Pictures and the like are none of our business. */
export const looksLikeList = ({ name, filetype, mimetype }: SlackFile): boolean =>
  ['csv', 'tsv'].includes(filetype ?? '') || /\.(csv|tsv)$/i.test(name ?? '') || /^text\/(csv|tab-separated-values)/.test(mimetype ?? '');

/** Slack's own file host over TLS; for a stand-in, that stand-in. */
export const isSlacks = (url: string, apiUrl: string | undefined): boolean => {
  if (!URL.canParse(url)) return false;
  const { protocol, host } = new URL(url);
  if (apiUrl !== undefined) return new URL(apiUrl).host === host;
  return protocol === 'https:' && host === 'files.slack.com';
};

/** Its content, why there is none, or that it may be had another time. */
export type Fetched = FileContent | { readonly again: true };

export const fetchList = async (given: SlackFile, botToken: string, apiUrl: string | undefined, stop: AbortSignal): Promise<Fetched> => {
  const { url_private_download: url, size, mode } = given;
  if (url === undefined || (mode !== undefined && mode !== 'hosted' && mode !== 'snippet')) return { unreadable: 'unavailable' };
  if (!isSlacks(url, apiUrl)) return { unreadable: 'unavailable' };
  if (size !== undefined && size > longest) return { unreadable: 'too large' };
  try {
    // A redirect is refused, never followed: the token would go along.
    const answer = await fetch(url, {
      headers: { authorization: `Bearer ${botToken}` },
      redirect: 'error',
      signal: AbortSignal.any([stop, AbortSignal.timeout(patience)]),
    });
    if (answer.status >= 500 || answer.status === 429) return { again: true };
    if (!answer.ok || !answer.body) return { unreadable: 'unavailable' };
    // Without the right to read files Slack answers with its sign-in page, and says all is well.
    if (/html/i.test(answer.headers.get('content-type') ?? '')) return { unreadable: 'unavailable' };
    const parts: Uint8Array[] = [];
    let bytes = 0;
    for await (const part of answer.body) {
      bytes += part.length;
      if (bytes > longest) return { unreadable: 'too large' };
      parts.push(part);
    }
    const whole = Buffer.concat(parts);
    return whole.includes(0) ? { unreadable: 'not a list' } : { text: new TextDecoder('utf-8').decode(whole) };
  } catch (error) {
    // A refused redirect is an answer; a lost network is none.
    return isRedirect(error) ? { unreadable: 'unavailable' } : { again: true };
  }
};

const isRedirect = (error: unknown): boolean => error instanceof Error && /redirect/.test(String(error.cause));
