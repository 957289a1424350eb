// "Knock 20 quid off" of pieces at 15 and 32: more than one of them costs goes off the whole; much of what one costs is asked about.

import type { FactOf } from '../reading/fact.ts';
import { decimal } from '../values/decimal.ts';
import type { EventState } from './event.ts';
import { type Settled, settled } from './settled.ts';
import { totalNow } from './total-now.ts';

// Of what a piece costs hardly more than this comes off at once. Common practice, no source.
const most = '0.4';

/** Where nobody said off what; undefined where that is no question. */
export const settlePriceOff = (state: EventState, change: FactOf<'change'>): Settled | undefined => {
  const { what, by, per, piece, to } = change;
  if (what !== 'price' || by === undefined || to !== undefined || per !== undefined || piece !== undefined) return undefined;
  const off = decimal(String(by)).negated();
  if (!off.isPositive() || off.isZero() || state.price?.per === 'all') return undefined;
  const prices = state.lines.flatMap(({ price }) => (price?.per === 'each' ? [decimal(price.amount)] : []));
  const total = totalNow(state);
  if (prices.length === 0 || total === undefined || off.gte(total)) return undefined;
  if (prices.every((price) => off.lt(price.times(most)))) return undefined;
  const ofAll = { ...change, per: 'all' as const };
  if (prices.some((price) => off.gte(price))) return settled(ofAll);
  return {
    kind: 'ask',
    ask: {
      about: 'price',
      why: 'which number',
      words: change.words,
      choices: [
        { words: 'off each', facts: [{ ...change, per: 'each' }] },
        { words: 'off the total', facts: [ofAll] },
      ],
    },
  };
};
