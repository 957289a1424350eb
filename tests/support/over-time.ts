// A conversation over weeks: the same store, the clock moved on between one batch of messages and the next. Gives back the replies, and the store to look into.

import { createAssistant } from '../../src/assistant/assistant.ts';
import type { Figures } from '../../src/assistant/figures.ts';
import type { IncomingMessage } from '../../src/assistant/ports.ts';
import { replyToText } from '../../src/reply/reply-to-text.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import { demoStudio } from './converse.ts';

export const overTime = (settings: StudioSettings = demoStudio) => {
  let now = Date.parse('2027-01-20T09:00:00Z');
  const clock = { now: () => now };
  const store = openStore({ path: ':memory:', clock });
  const failures: unknown[] = [];
  const assistant = createAssistant({ store, clock, settings, onFailure: (_id, error) => void failures.push(error) });
  let count = 0;
  const key = (thread: string) => ({ workspace: 'w', channel: 'c', thread });

  const send = (message: Partial<IncomingMessage>): { readonly text: string; readonly figures: Figures; readonly id: string } => {
    count += 1;
    const id = message.id ?? `m${count}`;
    const whole: IncomingMessage = {
      ...key('t1'),
      id,
      revision: String(count),
      author: 'you',
      kind: 'new',
      text: '',
      addressed: true,
      shared: false,
      sentAt: now,
      ...message,
    };
    store.receive(whole, `d${count}`);
    const [handled] = assistant.work();
    if (failures.length > 0) throw failures[0];
    return { text: handled?.reply ? replyToText(handled.reply) : '', figures: handled?.figures() ?? {}, id };
  };

  return {
    store,
    settings,
    clock,
    key,
    send,
    say: (text: string, more: Partial<IncomingMessage> = {}) => send({ text, ...more }),
    /** Taps the choice at this place of the question last asked. */
    choose: (place: number) => send({ kind: 'tap', tap: { action: 'choose', value: String(place) } }),
    moveTo: (instant: string): void => {
      now = Date.parse(instant);
    },
  };
};
