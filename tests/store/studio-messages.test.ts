// Prices said in two channels under the same message id stay apart: an id is a message's own within its channel only.

import { expect, it } from 'vitest';
import { createAssistant } from '../../src/assistant/assistant.ts';
import { checkStore } from '../../src/store/check-store.ts';
import { message, workspace, yard } from './builders.ts';
import { newPath, open } from './in-folder.ts';

it('an edit in one channel leaves what the same id said in another', () => {
  const store = open(newPath());
  const clock = { now: () => Date.UTC(2027, 0, 20, 9) };
  const failed = (_id: string, error: unknown): never => {
    throw error;
  };
  const assistant = createAssistant({ store, clock, settings: yard, onFailure: failed });
  const say = (channel: string, text: string, revision = '1'): void => {
    const kind = revision === '1' ? 'new' : 'edit';
    store.receive(message('1800.0001', { channel, text, revision, kind, addressed: true }), `${channel} ${revision}`);
    assistant.work();
  };
  const prices = () => store.studio(workspace, yard).state.packs.map(({ item, price }) => `${item} ${price}`);

  say('weddings', 'spray roses 12.50 for 20 stems');
  say('parties', 'statice 6.50 for 25 stems');
  expect(prices()).toEqual(['spray rose 12.5', 'statice 6.5']);
  say('weddings', 'spray roses 13.50 for 20 stems', '2');
  expect(prices()).toEqual(['spray rose 13.5', 'statice 6.5']);
  say('parties', 'lovely weather', '2');
  expect(prices()).toEqual(['spray rose 13.5']);
  expect(checkStore(store.database, store.folds).faults).toEqual([]);
});
