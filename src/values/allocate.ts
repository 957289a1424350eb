// Splits a printed total into printed parts that add up to it, as near to their exact shares as whole coins allow (largest remainder).
// Whole numbers throughout: a share is floored, and the spare coins go to the biggest remainders, the first listed winning a tie.

import { type Decimal, decimal } from './decimal.ts';

const scale = decimal('1e30'); // shares are compared to 30 decimals; beyond lies only the noise of divisions

const scaled = (weight: Decimal): bigint => BigInt(weight.times(scale).toFixed(0));

/** The total as a whole number of coins. */
const coinsIn = (total: Decimal, coin: Decimal): bigint => {
  const coins = total.dividedBy(coin);
  if (!coins.isInteger()) throw new Error(`${total.toString()} is not a whole number of ${coin.toString()}`);
  return BigInt(coins.toFixed(0));
};

interface Share {
  readonly index: number;
  readonly remainder: bigint;
  readonly most: bigint | undefined;
  coins: bigint;
}

const byRemainder = (a: Share, b: Share): number => {
  if (a.remainder === b.remainder) return a.index - b.index;
  return a.remainder > b.remainder ? -1 : 1;
};

/** One spare coin each to the biggest remainders with room, round after round. Returns what nobody had room for. */
const handOut = (spare: bigint, shares: readonly Share[]): bigint => {
  let left = spare;
  let before: bigint;
  do {
    before = left;
    for (const share of shares) {
      if (left > 0n && (share.most === undefined || share.coins < share.most)) {
        share.coins += 1n;
        left -= 1n;
      }
    }
  } while (left > 0n && left < before);
  return left;
};

/**
 * Shares of `total` in proportion to `weights`, each a whole number of `coin`, adding up to it exactly.
 * A weight of zero gets nothing. A negative total is shared as the positive one would be.
 * `caps`, when given, are the most each part may get; only when all others are full does a weight of zero take a coin.
 * Throws when there is something to share and the weights are negative or all zero, or the caps leave no room.
 */
export const allocate = (total: Decimal, weights: readonly Decimal[], coin: Decimal, caps?: readonly Decimal[]): readonly Decimal[] => {
  if (total.isZero()) return weights.map(() => decimal(0));
  if (total.isNegative()) return allocate(total.negated(), weights, coin, caps).map((share) => share.negated());
  const coins = coinsIn(total, coin);
  const parts = weights.map(scaled);
  const whole = parts.reduce((all, part) => all + part, 0n);
  if (parts.some((part) => part < 0n) || whole === 0n) throw new Error('nothing to share by: weights are negative or all zero');
  const shares = parts.map((part, index): Share => {
    const cap = caps?.[index];
    const most = cap === undefined ? undefined : coinsIn(cap, coin);
    const floor = (coins * part) / whole;
    return { index, remainder: (coins * part) % whole, most, coins: most !== undefined && floor > most ? most : floor };
  });
  const spare = coins - shares.reduce((all, share) => all + share.coins, 0n);
  const ranked = [...shares].sort(byRemainder);
  const weighted = ranked.filter((share) => (parts[share.index] ?? 0n) > 0n);
  const unweighted = ranked.filter((share) => parts[share.index] === 0n);
  if (handOut(handOut(spare, weighted), unweighted) > 0n) throw new Error('the parts have no room for the total');
  return shares.map((share) => decimal(share.coins.toString()).times(coin));
};
