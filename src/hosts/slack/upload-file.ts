// Files into a thread in Slack's three steps, done here so that the words describing a picture go along (the SDK names that argument otherwise).
// The first two come before the message is posted, the last after it, so that a file never stands alone.

import type { webApi } from '@slack/bolt';
import { shortened } from './block-limits.ts';

export interface FileToSend {
  readonly name: string;
  readonly alt: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

export interface UploadedFile {
  readonly id: string;
  readonly title: string;
}

const longestAlt = 1_000;
const patience = 30_000; // milliseconds for the bytes

/** Sends the bytes; nobody sees the file yet. Throws Slack's error. */
export const sendBytes = async (client: webApi.WebClient, file: FileToSend): Promise<UploadedFile> => {
  const place = await client.apiCall('files.getUploadURLExternal', {
    filename: file.name,
    length: file.bytes.length,
    alt_txt: shortened(file.alt, longestAlt),
  });
  const { upload_url: url, file_id: id } = place as { upload_url?: unknown; file_id?: unknown };
  if (typeof url !== 'string' || typeof id !== 'string') throw new Error('no place to upload to');
  // The address itself is the permission: no token goes along.
  const answer = await fetch(url, {
    method: 'POST',
    headers: { 'content-type': file.type },
    body: new Uint8Array(file.bytes),
    redirect: 'error',
    signal: AbortSignal.timeout(patience),
  });
  if (!answer.ok) throw new Error('the upload was not taken');
  return { id, title: file.name };
};

/** Shows uploaded files in the thread, all at once. */
export const showFiles = async (
  client: webApi.WebClient,
  files: readonly UploadedFile[],
  channel: string,
  thread: string,
): Promise<void> => {
  await client.apiCall('files.completeUploadExternal', {
    files: JSON.stringify(files),
    channel_id: channel,
    ...(thread === '' ? {} : { thread_ts: thread }),
  });
};
