// "Groom 18, best man 15, 4 ushers 12 each": who pays which price for a piece also wears one.

import type { FactOf } from '../reading/fact.ts';
import { applyWearers, roleOf } from './apply-wearers.ts';
import type { EventState } from './event.ts';

type Pieces = FactOf<'pieces'>;

const isSure = ({ wearer, adds, countMax, approx, count }: Pieces): boolean =>
  wearer !== undefined && !adds && countMax === undefined && !approx && count > 0;

/** Those named with every line of a message are on the list of wearers; one named beside pieces of nobody's is not all there are. */
export const withPricedWearers = (state: EventState, pieces: readonly Pieces[]): EventState => {
  const roles = new Set(pieces.map(({ wearer = '' }) => roleOf(wearer)));
  if (pieces.length < 2 || roles.size < pieces.length || !pieces.every(isSure)) return state;
  const wearers = pieces.flatMap(({ wearer, count, piece }) =>
    wearer === undefined ? [] : [{ wearer, count, ...(piece === 'unspecified' ? {} : { piece }) }],
  );
  return applyWearers(state, { fact: 'wearers', wearers, words: pieces[0]?.words ?? '' });
};
