// Posts replies, and says honestly what became of each: a post whose answer was lost may have arrived, and is looked for before it is made again.
// A reply carries its id as message metadata, which members of the channel can read: never anything else.

import type { webApi } from '@slack/bolt';
import type { FileMaker, Posted, Poster, QueuedReply } from '../../assistant/ports.ts';
import type { FileWanted } from '../../reply/reply.ts';
import { findReply, replyMark } from './find-reply.ts';
import { errorName, type Log } from './logger.ts';
import { isAnswered, isTooMuch, isUpdateGone, outcomeOf } from './post-outcome.ts';
import { replyToBlocks, type SlackMessageParts } from './reply-to-blocks.ts';
import { sendBytes, showFiles, type UploadedFile } from './upload-file.ts';
import type { Workspaces } from './workspaces.ts';

export interface PosterParts {
  readonly workspaces: Workspaces;
  readonly files: FileMaker;
  readonly log: Log;
}

const fileMissing = 'The file could not be attached just now. Ask for it again in a minute.';

/** With the client of the reply's own workspace. */
interface Posting extends PosterParts {
  readonly client: webApi.WebClient;
  readonly teamUrl: string;
}

/** A workspace that removed the app may install it again, and its replies keep for a day. */
const notInstalled = { outcome: 'later', afterMilliseconds: 10 * 60_000, reason: 'the app is not installed in that workspace' } as const;

export const createPoster = (parts: PosterParts): Poster => ({
  post: async (reply) => {
    const progress = { sending: false };
    try {
      const here = await parts.workspaces.of(reply.to.workspace);
      if (here) return await attempt({ ...parts, client: here.client, teamUrl: here.us.teamUrl }, reply, progress);
      parts.log.warn({ from: 'slack', reply: reply.id, ...notInstalled }, 'A reply was not posted.');
      return notInstalled;
    } catch (error) {
      const outcome = outcomeOf(error, reply.attempts, progress.sending);
      parts.log.warn({ from: 'slack', reply: reply.id, ...outcome }, 'A reply was not posted.');
      return outcome;
    }
  },
  find: async (reply) => {
    const here = await parts.workspaces.of(reply.to.workspace);
    return here && findReply(here.client, reply);
  },
});

const attempt = async (posting: Posting, reply: QueuedReply, progress: { sending: boolean }): Promise<Posted> => {
  const parts = replyToBlocks(reply.reply, reply.id, posting.teamUrl);
  const uploads = await upload(posting, reply, parts);
  progress.sending = true;
  const { ts, channel } = await send(posting.client, reply, parts);
  await show(posting, reply, uploads, channel);
  return { outcome: 'posted', hostId: ts };
};

interface Place {
  readonly ts: string;
  readonly channel: string; // a message to a person lands in a channel with an id of its own
}

/** Sends in the best form Slack will take, and answers with where it is. */
const send = async (client: webApi.WebClient, reply: QueuedReply, parts: SlackMessageParts): Promise<Place> => {
  const { channel, thread } = reply.to;
  const { text } = parts;
  const metadata = replyMark(reply.id);
  const look = (withBlocks: boolean) => (withBlocks && parts.blocks.length > 0 ? { text, blocks: [...parts.blocks] } : { text });

  const postNew = async (withBlocks: boolean): Promise<Sent> => {
    const common = { channel, metadata, unfurl_links: false, unfurl_media: false, mrkdwn: false, parse: 'none' as const };
    const message = { ...common, ...look(withBlocks) };
    return client.chat.postMessage(thread === '' ? message : { ...message, thread_ts: thread });
  };
  const change = (ts: string, withBlocks: boolean): Promise<Sent> =>
    client.chat.update({ channel, ts, metadata, parse: 'none', ...look(withBlocks) });

  const inSomeForm = (way: (withBlocks: boolean) => Promise<Sent>): Promise<Sent> =>
    way(true).catch((error: unknown) => {
      if (isTooMuch(error)) return way(false);
      throw error;
    });

  const { replaces } = reply;
  const sent =
    replaces === undefined
      ? await inSomeForm(postNew)
      : await inSomeForm((withBlocks) => change(replaces, withBlocks)).catch((error: unknown) => {
          if (isUpdateGone(error)) return inSomeForm(postNew);
          throw error;
        });
  if (sent.ts === undefined) throw new Error('no ts');
  return { ts: sent.ts, channel: sent.channel ?? channel };
};

interface Sent {
  readonly ts?: string | undefined;
  readonly channel?: string | undefined;
}

interface Uploads {
  readonly files: readonly UploadedFile[];
  readonly missing: boolean;
}

/** The bytes of all files, before the message. Slack's refusal of a file must not keep the words back; a lost network may. */
const upload = async (posting: Posting, reply: QueuedReply, parts: SlackMessageParts): Promise<Uploads> => {
  const files: UploadedFile[] = [];
  let missing = false;
  const wanted = parts.files.map((file) => ({ name: file.name, alt: file.alt, make: () => posting.files.make(file, file.of ?? reply.to) }));
  const rest = parts.overflow;
  if (rest !== undefined) {
    const make = () => ({ bytes: new TextEncoder().encode(rest), type: 'text/plain; charset=utf-8' });
    wanted.push({ name: 'reply.txt', alt: 'The whole reply as text', make });
  }
  for (const { name, alt, make } of wanted) {
    const made = tryToMake(posting, name, make);
    if (made === undefined || made.bytes.length === 0) {
      missing = true;
      continue;
    }
    try {
      files.push(await sendBytes(posting.client, { name, alt, ...made }));
    } catch (error) {
      if (!isAnswered(error)) throw error;
      posting.log.warn({ from: 'slack', reply: reply.id, error: errorName(error) }, 'A file was refused.');
      missing = true;
    }
  }
  return { files, missing };
};

const tryToMake = (posting: Posting, name: FileWanted['name'], make: () => ReturnType<FileMaker['make']>) => {
  try {
    return make();
  } catch (error) {
    posting.log.error({ from: 'slack', file: name, error: errorName(error) }, 'A file could not be made.');
    return undefined;
  }
};

/** The words are posted by now, so nothing here may fail the reply. */
const show = async ({ client, log }: Posting, reply: QueuedReply, { files, missing }: Uploads, channel: string): Promise<void> => {
  const { thread } = reply.to;
  try {
    if (files.length > 0) await showFiles(client, files, channel, thread);
    if (!missing) return;
  } catch (error) {
    log.warn({ from: 'slack', reply: reply.id, error: errorName(error) }, 'Files were uploaded but not shown.');
  }
  const place = thread === '' ? { channel } : { channel, thread_ts: thread };
  await client.chat.postMessage({ ...place, text: fileMissing }).catch(() => undefined);
};
