// The entries one message adds to the log, and the states that follow. A plain new message extends the snapshots; edits, deletions and undo refold.

import type { Fact } from '../reading/fact.ts';
import type { OpenQuestion } from '../reading/reading.ts';
import type { StudioState } from '../studio/studio.ts';
import { isSaid } from '../thread/apply-care.ts';
import { applyFacts } from '../thread/apply-facts.ts';
import { applyStudioFacts, asksOfStudio } from '../thread/apply-studio-facts.ts';
import type { Entry } from '../thread/entry.ts';
import type { EventState } from '../thread/event.ts';
import { foldEvent, foldStudio } from '../thread/fold.ts';
import { type IncomingMessage, type Store, type StoredStudio, type StoredThread, studioMessage } from './ports.ts';

export interface Standpoint {
  readonly thread: StoredThread;
  readonly studio: StoredStudio;
}

export interface Logged {
  readonly entries: readonly Entry[];
  readonly event: EventState;
  readonly studio: StudioState;
}

type Kind = Entry['kind'];

const entryFor = (message: IncomingMessage, scope: Entry['scope'], kind: Kind, facts: readonly Fact[], about = message.id): Entry => ({
  scope,
  message: about,
  revision: message.revision,
  kind,
  author: message.author,
  at: message.sentAt,
  facts,
});

/** A new message's facts, added to the snapshots without reading the log. */
export const logStated = (at: Standpoint, message: IncomingMessage, event: readonly Fact[], studio: readonly Fact[]): Logged => {
  const entries: Entry[] = [];
  if (event.length > 0) entries.push(entryFor(message, 'event', 'stated', event));
  if (studio.length > 0) entries.push(entryFor(message, 'studio', 'stated', studio));
  // Nothing is stored for the event, so that its question is answered has to be said by itself.
  const { open } = at.thread.state;
  const answered = studio.length > 0 && !event.some(isSaid) && open?.kind === 'choice' && asksOfStudio(open.ask);
  if (answered) entries.push(entryFor(message, 'event', 'asked', []));
  const state = answered || event.some(isSaid) ? withoutOpen(at.thread.state) : at.thread.state;
  return {
    entries,
    event: event.length > 0 ? applyFacts(state, event) : state,
    studio: applyStudioFacts(at.studio.state, studio),
  };
};

/** An edit's facts in place of the message's earlier ones; a deletion's are none. */
export const logRewritten = (
  store: Store,
  at: Standpoint,
  message: IncomingMessage,
  kind: 'edited' | 'deleted',
  event: readonly Fact[],
  studio: readonly Fact[],
): Logged => {
  const said = store.entries(at.thread.key).filter((entry) => entry.message === message.id);
  const entries: Entry[] = [];
  if (event.length > 0 || said.some((entry) => entry.scope === 'event')) entries.push(entryFor(message, 'event', kind, event));
  if (studio.length > 0 || said.some((entry) => entry.scope === 'studio')) entries.push(entryFor(message, 'studio', kind, studio));
  return refold(store, at, entries);
};

/** Takes back one earlier message's effect. */
export const logUndone = (store: Store, at: Standpoint, message: IncomingMessage, about: string): Logged => {
  const scopes = new Set(store.entries(at.thread.key).flatMap((entry) => (entry.message === about ? [entry.scope] : [])));
  return refold(
    store,
    at,
    [...scopes].map((scope) => entryFor(message, scope, 'undone', [], about)),
  );
};

/** Takes back a choice that still waits, when its message stored nothing else; otherwise there is none to take back alone. */
export const logDrop = (store: Store, at: Standpoint, message: IncomingMessage): Logged | undefined => {
  if (at.thread.state.open?.kind !== 'choice') return undefined;
  const entries = store.entries(at.thread.key);
  const asked = entries.findLast((entry) => entry.kind === 'asked')?.message;
  if (asked === undefined || entries.some((entry) => entry.message === asked && entry.facts.some(isSaid))) return undefined;
  return refold(store, at, [entryFor(message, 'event', 'undone', [], asked)]);
};

/** Keeps with the message which cautions its reply shows, so that an edit or a deletion takes that back too. */
export const withCautioned = (logged: Logged, message: IncomingMessage, shown: readonly string[]): Logged => {
  if (shown.length === 0) return logged;
  const fact: Fact = { fact: 'care', shown: [...shown], words: '' };
  const own = logged.entries.findLastIndex((entry) => entry.scope === 'event' && (entry.kind === 'stated' || entry.kind === 'edited'));
  const entry = logged.entries[own];
  const kind = message.kind === 'edit' ? 'edited' : 'stated';
  const entries = entry
    ? logged.entries.with(own, { ...entry, facts: [...entry.facts, fact] })
    : [...logged.entries, entryFor(message, 'event', kind, [fact])];
  return { ...logged, entries, event: applyFacts(logged.event, [fact]) };
};

export const withQuestion = (logged: Logged, message: IncomingMessage, open: OpenQuestion): Logged => ({
  ...logged,
  entries: [...logged.entries, { ...entryFor(message, 'event', 'asked', []), open }],
  event: { ...logged.event, open: { ...open, askedAt: message.sentAt } },
});

const refold = (store: Store, at: Standpoint, entries: readonly Entry[]): Logged => {
  const { channel } = at.thread.key;
  const forStudio = entries.flatMap((entry) =>
    entry.scope === 'studio' ? [{ ...entry, message: studioMessage(channel, entry.message) }] : [],
  );
  return {
    entries,
    event: foldEvent([...store.entries(at.thread.key), ...entries]),
    studio:
      forStudio.length > 0
        ? foldStudio(at.studio.state.settings, [...store.studioEntries(at.studio.workspace), ...forStudio])
        : at.studio.state,
  };
};

const withoutOpen = ({ open: _, ...state }: EventState): EventState => state;
