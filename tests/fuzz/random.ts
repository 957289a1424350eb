// Random choices that come out the same for the same seed, so that a finding can be made again (mulberry32, a well-known small generator).

export interface Random {
  below(end: number): number; // a whole number from 0
  chance(of: number): boolean;
  pick<T>(from: readonly T[]): T;
}

export const seeded = (seed: number): Random => {
  let state = seed >>> 0;
  const unit = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (end: number): number => Math.floor(unit() * end);
  return {
    below,
    chance: (of) => unit() < of,
    pick: (from) => {
      if (from.length === 0) throw new Error('nothing to pick from');
      return from[below(from.length)] as (typeof from)[number];
    },
  };
};
