// Wearers said against the list: "one usher less" of four are three, "another bridesmaid" one more, "no dads" none of them.

import type { FactOf } from '../reading/fact.ts';
import { nameOf } from '../reading/wearers/role-counts.ts';
import { problem } from '../values/result.ts';
import { roleOf } from './apply-wearers.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';
import { wearersKnown } from './wearers-known.ts';

export const settleWearers = (state: EventState, { by, ...fact }: FactOf<'wearers'>): Settled => {
  if (by === undefined) return settled(fact);
  const wearers = wearersKnown(state);
  const missing = fact.wearers.find(({ wearer, count }) => by !== 'more' && listed(wearers, wearer) < (by === 'none' ? 1 : count));
  if (missing !== undefined)
    return {
      kind: 'problem',
      problem: problem('no-such-wearer', {
        wearer: listed(wearers, missing.wearer) > 0 ? `${missing.count} ${missing.wearer}` : missing.wearer, // "5 ushers" of four
        known: wearers.flatMap(({ wearer, count }) => (count > 0 ? [`${count} ${wearer}`] : [])),
      }),
    };
  const now = fact.wearers.map((said) => {
    const before = listed(wearers, said.wearer);
    const name = wearers.find(({ wearer }) => roleOf(wearer) === roleOf(said.wearer))?.wearer ?? said.wearer;
    const count = by === 'none' ? 0 : by === 'more' ? before + said.count : before - said.count;
    return { ...said, wearer: nameOf(name, count), count };
  });
  return settled({ ...fact, wearers: now });
};

const listed = (wearers: EventState['wearers'], role: string): number =>
  wearers.reduce((sum, { wearer, count }) => (roleOf(wearer) === roleOf(role) ? sum + count : sum), 0);
