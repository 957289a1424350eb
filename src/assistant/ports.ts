// What the assistant needs from outside, as small interfaces, and what hosts hand to it.
// Ids are text; times are epoch milliseconds passed in, never read here.

import type { FileWanted, Reply } from '../reply/reply.ts';
import type { StudioSettings } from '../studio/settings.ts';
import type { StudioState } from '../studio/studio.ts';
import type { Entry } from '../thread/entry.ts';
import type { EventState } from '../thread/event.ts';
import type { Day } from '../values/day.ts';

export type { Entry };

/** One thread = one event. */
export interface ThreadKey {
  readonly workspace: string;
  readonly channel: string;
  readonly thread: string;
}

/** A message, an edit, a deletion or a tapped button, as any host sees it. */
export interface IncomingMessage extends ThreadKey {
  readonly id: string; // the message's own id, kept through edits; unique within a channel
  readonly revision: string; // changes with each edit: the same id and revision twice is a repeat
  readonly author: string;
  readonly kind: 'new' | 'edit' | 'delete' | 'tap' | 'file';
  readonly text: string; // unescaped plain text; a file's content; '' for delete and tap
  readonly tap?: { readonly action: string; readonly value: string };
  readonly addressed: boolean; // mentioned, or in a direct message: always gets an answer
  readonly shared: boolean; // the channel is shared with another organisation: client form only
  readonly guest?: true; // not a full member of the studio: changes nothing that holds beyond this event
  readonly unreadable?: Unreadable; // a dropped file that could not be had
  readonly sentAt: number;
}

export type Unreadable = 'too large' | 'not a list' | 'unavailable';
export type FileContent = { readonly text: string } | { readonly unreadable: Unreadable };

/** A dropped file kept without its content yet. `file` is the host's own note of where it is. */
export interface FileToFetch {
  readonly key: ThreadKey;
  readonly message: string;
  readonly file: string;
}

export interface StoredThread {
  readonly key: ThreadKey;
  readonly version: number; // entries so far, studio-scoped ones included
  readonly state: EventState; // the snapshot: equals the fold of the entries
}

export interface StoredStudio {
  readonly workspace: string;
  readonly version: number;
  readonly state: StudioState;
}

export interface OpenEvent {
  readonly key: ThreadKey;
  readonly state: EventState;
}

export interface OutgoingReply {
  readonly id: string; // made from its cause, so that a repeated cause cannot post twice
  readonly to: ThreadKey;
  readonly purpose: 'answer' | 'reminder' | 'apology' | 'summary'; // a summary is one message a thread, always replaced
  readonly about: string; // id of the message answered (an edit's reply replaces the earlier one), or the reminder's day
  readonly reply: Reply;
}

/** What a summary says it is about: its thread, so that each takes the place of the one before. */
export const summaryAbout = (thread: string): string => `summary ${thread}`;

/** All that handling one message changes. Stored in one transaction, or not at all. */
export interface Outcome {
  readonly message: IncomingMessage;
  readonly thread?: ThreadKey; // where it belongs, when not where it came from: a tick on a list of the bench belongs to the event's own thread
  readonly entries: readonly Entry[];
  readonly expected: { readonly thread: number; readonly studio: number }; // versions read
  readonly event: EventState; // the new snapshot
  readonly studio?: StudioState; // only when it changed
  readonly replies: readonly OutgoingReply[];
}

/** How a studio's log names a message: its own id is unique within its channel only. */
export const studioMessage = (channel: string, message: string): string => `${channel}/${message}`;

/** A reply waiting to be posted. */
export interface QueuedReply extends OutgoingReply {
  readonly attempts: number; // begun so far
  readonly firstTriedAt?: number; // epoch milliseconds of the first attempt
  readonly interrupted: boolean; // an earlier post may have arrived: its end was never recorded, or its answer was lost. Look before posting again
  readonly replaces?: string; // the host's id of the earlier reply to update in place
}

export interface Store {
  /** Keeps a delivery before it is acknowledged. 'repeat' when its id, or its message and revision, are already here. */
  receive(message: IncomingMessage, delivery: string): 'new' | 'repeat';
  /** The same for a dropped file: it waits with the others once its content is here. */
  receiveFile(message: IncomingMessage, delivery: string, file: string): 'new' | 'repeat';
  filesToFetch(): readonly FileToFetch[];
  fill(file: FileToFetch, content: FileContent): void;
  /** Whether the channel was shared with another organisation when last heard of; undefined when it never was heard of. */
  isShared(workspace: string, channel: string): boolean | undefined;
  /** Whether any message of this workspace was ever handled. */
  hasHandled(workspace: string): boolean;
  /** Received but not yet handled, oldest first, at most this many. Empty after a clean stop. */
  waiting(atMost?: number): readonly IncomingMessage[];
  /** Whether the bot was ever addressed in this thread, or keeps anything of it: then its follow-ups need no mention. */
  knows(key: ThreadKey): boolean;
  /** A new thread has version 0 and the empty state. */
  thread(key: ThreadKey): StoredThread;
  /** The whole log, oldest first: read only to refold after an edit, a deletion or an undo, and for "why?". */
  entries(key: ThreadKey): readonly Entry[];
  /** All studio-scoped entries of the workspace, oldest first, their messages named by studioMessage. */
  studioEntries(workspace: string): readonly Entry[];
  studio(workspace: string, initial: StudioSettings): StoredStudio;
  /** Whether someone chose settings in chat; until then the settings file holds. */
  hasChosenSettings(workspace: string): boolean;
  /** Settings chosen in chat, checked before. They hold from now on, whatever the settings file says. */
  chooseSettings(workspace: string, initial: StudioSettings, chosen: StudioSettings): void;
  /** Events of this workspace dated on or after `from`, or undated, not cancelled; by date, then age. */
  openEvents(workspace: string, from: Day): readonly OpenEvent[];
  /**
   * 'moved' when another writer came first: load again and answer again. A message already handled changes nothing and is 'stored'.
   * A reply to a message that has one still waiting takes its place; one whose earlier reply was posted will replace it.
   * Throws when the message was never received.
   */
  commit(outcome: Outcome): 'stored' | 'moved';
  /**
   * Deletes all that is kept of the thread, and queues the replies that say so. Of the message that asked for it only its ids stay,
   * so that a repeat of it is known.
   */
  forget(key: ThreadKey, asking: IncomingMessage, replies: readonly OutgoingReply[]): void;
  /** The host's id of the thread's summary message, once posted. */
  summaryOf(key: ThreadKey): string | undefined;

  /**
   * Replies due to be posted, oldest first: of each thread the oldest not yet ended, and none while that one is being posted or must still wait.
   * At most three of one channel; the others follow as these are posted.
   */
  unsent(now: number): readonly QueuedReply[];
  /** Marks a post as begun, before the network is touched, and returns what to post: an edit may have changed it. undefined: nothing to post any more. */
  begin(id: string, now: number): QueuedReply | undefined;
  posted(id: string, hostId: string, now: number): void;
  /** `unsure`: this attempt may have arrived all the same. */
  postpone(id: string, until: number, reason: string, unsure?: boolean): void;
  giveUp(id: string, reason: string, now: number): void;

  /** Claims a reminder and queues its reply in one transaction; false when that day's is already claimed. */
  remind(workspace: string, channel: string, kind: string, day: Day, replies: readonly OutgoingReply[], now: number): boolean;
  lastReminder(workspace: string, channel: string, kind: string): Day | undefined;
}

/** What became of one attempt to post. `later` keeps the reply queued, `unsure` when it may have arrived (a lost answer); `refused` gives it up. */
export type Posted =
  | { readonly outcome: 'posted'; readonly hostId: string }
  | { readonly outcome: 'later'; readonly afterMilliseconds: number; readonly reason: string; readonly unsure?: true }
  | { readonly outcome: 'refused'; readonly reason: string };

/** A host's way to show a reply. */
export interface Poster {
  /** Never rejects. Replaces the earlier reply in place where `replaces` names one. */
  post(reply: QueuedReply): Promise<Posted>;
  /** The host's id of this reply if an interrupted post did arrive after all. Rejects when it could not look. */
  find(reply: QueuedReply): Promise<string | undefined>;
}

export interface Clock {
  now(): number; // epoch milliseconds
}

/** Makes the bytes of a wanted file from the thread as it now is. */
export interface FileMaker {
  make(file: FileWanted, thread: ThreadKey): { readonly bytes: Uint8Array; readonly type: string };
}
