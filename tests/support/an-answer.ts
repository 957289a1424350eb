// The answer to a thread that stands as given, without a message having to be read: for what is shown of it.

import { consider } from '../../src/assistant/consider.ts';
import type { OpenEvent, Store } from '../../src/assistant/ports.ts';
import type { Fact, FactOf } from '../../src/reading/fact.ts';
import type { Answer } from '../../src/reply/answer.ts';
import { composeAnswer } from '../../src/reply/compose/compose.ts';
import { questionBlocks } from '../../src/reply/compose/questions/questions.ts';
import type { Reply } from '../../src/reply/reply.ts';
import { replyToText } from '../../src/reply/reply-to-text.ts';
import type { StudioState } from '../../src/studio/studio.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';
import type { Day } from '../../src/values/day.ts';

export interface Around {
  readonly studio: StudioState;
  readonly today?: Day;
  readonly others?: readonly { readonly thread: string; readonly state: EventState }[];
}

const key = { workspace: 'w', channel: 'c', thread: 't' };

/** Only what looking needs: the other events of the workspace, and no log. */
const storeOf = (others: NonNullable<Around['others']>): Store =>
  ({
    openEvents: (): readonly OpenEvent[] => others.map(({ thread, state }) => ({ key: { ...key, thread }, state })),
    entries: () => [],
  }) as unknown as Store;

export const anAnswer = (event: EventState, around: Around, more: Partial<Answer> = {}): Answer => ({
  ...consider(storeOf(around.others ?? []), key, event, around.studio, around.today ?? ('2027-01-20' as Day)),
  pricesBefore: () => ({ items: [], unsized: [], notes: [] }) as unknown as ReturnType<Answer['pricesBefore']>,
  how: 'stated',
  before: newEvent,
  stated: [],
  takenBack: [],
  questions: [],
  unread: [],
  ask: undefined,
  shared: false,
  ...more,
});

/** What a question shows, in words. */
export const asked = (
  asks: FactOf<'question'>['asks'],
  event: EventState,
  around: Around,
  more: Partial<FactOf<'question'>> = {},
): string => replyToText({ blocks: questionBlocks({ fact: 'question', asks, words: asks, ...more }, anAnswer(event, around)) });

/** The whole reply to a message that stated these facts and led to this event. */
export const stating = (stated: readonly Fact[], event: EventState, around: Around, more: Partial<Answer> = {}): Reply =>
  composeAnswer(anAnswer(event, around, { stated, ...more })).reply;
