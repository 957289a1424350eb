// The counts at which packs come out even: up to 44 pieces use the same packs as 40, and each further stretch is worth most at its own end.

import type { Decimal } from '../values/decimal.ts';
import type { BuyingList } from './buying-list.ts';

export interface EvenCount {
  readonly count: number; // the last one these packs are enough for
  readonly spend: Decimal;
  readonly each: Decimal; // true wholesale at that count
  readonly leftValue: Decimal;
}

export interface EvenCounts {
  readonly samePacks: EvenCount; // the ordered count itself when one piece more opens another pack
  readonly next: readonly EvenCount[];
}

const packsOf = (list: BuyingList): string => list.rows.map((row) => `${row.item.name} ${row.packs}`).join('\n');

/** `listAt`: the whole buying list were this many pieces made. Looks at most as far ahead as the count itself, and at least 24 pieces. */
export const evenCounts = (count: number, listAt: (count: number) => BuyingList, wanted = 2): EvenCounts | undefined => {
  const ends: EvenCount[] = [];
  const limit = count + Math.max(count, 24);
  let list = listAt(count);
  for (let at = count; at < limit && ends.length <= wanted; at += 1) {
    const more = listAt(at + 1);
    if (packsOf(more) !== packsOf(list)) ends.push({ count: at, spend: list.spend, each: list.spend.div(at), leftValue: list.leftValue });
    list = more;
  }
  const [samePacks, ...next] = ends;
  return samePacks === undefined ? undefined : { samePacks, next };
};
