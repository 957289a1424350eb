// Handles what is waiting in the inbox, one message at a time: load, answer, store with the reply in one transaction. Nothing a person sends can
// make it throw; a broken invariant becomes one apology and a logged id, and the next message is handled as usual.

import type { StudioSettings } from '../studio/settings.ts';
import { type Answered, answerMessage } from './answer-message.ts';
import { apology } from './apology.ts';
import type { Handled } from './handled.ts';
import type { Clock, IncomingMessage, OutgoingReply, Store } from './ports.ts';

export interface Assistant {
  /** Handles every waiting message, oldest first, and tells each one. */
  work(onHandled?: (handled: Handled) => void): readonly Handled[];
}

export interface AssistantParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly settings: StudioSettings; // for a workspace that has not set up its own
  /** Told the id under which a failure is shown to the person; never any of the person's words. */
  readonly onFailure: (id: string, error: unknown) => void;
}

/** A thread that keeps moving under us is answered again this often before we give up. */
const mostTries = 5;

export const createAssistant = ({ store, clock, settings, onFailure }: AssistantParts): Assistant => {
  const handle = (message: IncomingMessage): Handled => {
    for (let tries = 0; tries < mostTries; tries += 1) {
      const at = { thread: store.thread(message), studio: store.studio(message.workspace, settings) };
      const expected = { thread: at.thread.version, studio: at.studio.version };
      let answered: Answered;
      try {
        answered = answerMessage(store, at, message, clock.now());
      } catch (error) {
        const id = failureId(message);
        onFailure(id, error);
        answered = apology(at, id);
      }
      const { logged, reply, as, reading, figures } = answered;
      const stored = store.commit({
        message,
        entries: logged.entries,
        expected,
        event: logged.event,
        ...(logged.studio === at.studio.state ? {} : { studio: logged.studio }),
        replies: reply ? [answerTo(message, reply, as === 'failed')] : [],
      });
      if (stored === 'stored') return { message, as, reading, reply, figures };
    }
    throw new Error(`the thread kept moving: gave up after ${mostTries} tries`);
  };

  return {
    work: (onHandled) => {
      const all: Handled[] = [];
      for (let waiting = store.waiting(); waiting.length > 0; waiting = store.waiting()) {
        for (const message of waiting) {
          const handled = handle(message);
          all.push(handled);
          onHandled?.(handled);
        }
      }
      return all;
    },
  };
};

const answerTo = (message: IncomingMessage, reply: OutgoingReply['reply'], failed: boolean): OutgoingReply => ({
  id: [message.workspace, message.channel, message.id, message.revision].join('/'),
  to: { workspace: message.workspace, channel: message.channel, thread: message.thread },
  purpose: failed ? 'apology' : 'answer',
  about: message.id,
  reply,
});

/** Short enough to read out, made from the message's place so that the same failure has the same id. */
const failureId = ({ channel, id, revision }: IncomingMessage): string => {
  let hash = 0;
  for (const character of `${channel}/${id}/${revision}`) hash = (Math.imul(hash, 31) + (character.codePointAt(0) ?? 0)) >>> 0;
  return hash.toString(36).padStart(7, '0');
};
