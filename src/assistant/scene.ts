// One message where it was met, and the answer to be composed of what came of it.

import { studioPrices } from '../buying/buy-for-events.ts';
import type { Fact } from '../reading/fact.ts';
import type { Ask, Reading } from '../reading/reading.ts';
import type { Answer } from '../reply/answer.ts';
import type { Place } from '../reply/reply.ts';
import type { Day } from '../values/day.ts';
import { consider } from './consider.ts';
import { hazardsOf } from './hazards-said.ts';
import { isPriceList } from './import-prices.ts';
import type { Logged, Standpoint } from './log-entries.ts';
import type { IncomingMessage, Store } from './ports.ts';

/** One message where it was met: everything an outcome is made from. */
export interface Scene {
  readonly store: Store;
  readonly at: Standpoint;
  readonly message: IncomingMessage;
  readonly today: Day;
  readonly reading: Reading | undefined;
  readonly waiting?: Ask; // a question of ours that this message does not answer
}

interface Told {
  readonly how: Answer['how'];
  readonly stated?: readonly Fact[];
  readonly takenBack?: readonly Fact[];
  readonly questions?: Answer['questions'];
  readonly ask?: Answer['ask'];
  readonly unasked?: readonly string[];
}

const summaryPlace = ({ store, at }: Scene): Place | undefined => {
  const message = store.summaryOf(at.thread.key);
  return message === undefined ? undefined : { ...at.thread.key, message };
};

/** What the reply is composed of, once all is logged. */
export const answerOf = (
  scene: Scene,
  logged: Logged,
  { how, stated = [], takenBack = [], questions = [], ask, unasked = [] }: Told,
): Answer => ({
  ...consider(scene.store, scene.at.thread.key, logged.event, logged.studio, scene.today),
  how,
  message: scene.message.id,
  summaryAt: () => summaryPlace(scene),
  before: scene.at.thread.state,
  planBefore: () => consider(scene.store, scene.at.thread.key, scene.at.thread.state, scene.at.studio.state, scene.today).plan(),
  stated,
  takenBack,
  questions,
  unread: [...(scene.reading?.unread ?? []), ...unasked],
  hazards: hazardsOf(scene.message),
  ask,
  ...(scene.waiting ? { waiting: scene.waiting } : {}),
  shared: scene.message.shared,
  pricesBefore: () => studioPrices(scene.at.studio.state),
  ...(isPriceList(scene.message) && how !== 'undone' && how !== 'withdrawn' ? { listRead: scene.reading?.facts.length ?? 0 } : {}),
});
