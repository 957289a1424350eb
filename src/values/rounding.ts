// Every way this project rounds, by name. An amount is rounded once, here, at the end of its chain.
// Chains of divisions leave noise past the thirtieth digit; it is dropped first, or 49.5 would round "up" to 50.

import { Decimal } from './decimal.ts';

export type RoundingRule =
  | 'half up' // half a coin counts as one
  | 'half down' // half a coin is dropped (New Zealand's GST)
  | 'down'
  | 'up'
  | 'third decimal then half up'; // US states: carry to the third decimal, up when it is above 4

const modes = {
  'half up': Decimal.ROUND_HALF_UP,
  'half down': Decimal.ROUND_HALF_DOWN,
  down: Decimal.ROUND_DOWN,
  up: Decimal.ROUND_UP,
} as const;

const withoutNoise = (amount: Decimal): Decimal => amount.toDecimalPlaces(20, Decimal.ROUND_HALF_EVEN);

/** Rounds to this many decimals. "Up" and "half" look at the size, so a refund rounds as the sale it undoes. */
export const roundTo = (amount: Decimal, places: number, rule: RoundingRule): Decimal => {
  const exact = withoutNoise(amount);
  if (rule !== 'third decimal then half up') return exact.toDecimalPlaces(places, modes[rule]);
  // Cut at the next decimal, never rounded there: tax of 1.0049 is 1.00; rounding twice would make it 1.01.
  return exact.toDecimalPlaces(places + 1, Decimal.ROUND_DOWN).toDecimalPlaces(places, Decimal.ROUND_HALF_UP);
};

/** Rounds to a whole number of steps: 35.525 to the nearest 0.05 is 35.55. The step must be above zero. */
export const toStep = (amount: Decimal, step: Decimal, rule: RoundingRule): Decimal => {
  if (step.lessThanOrEqualTo(0)) throw new Error(`a rounding step of ${step.toString()}`);
  return roundTo(amount.dividedBy(step), 0, rule).times(step);
};

/** The smallest whole number of steps that is not below the amount. */
export const upToStep = (amount: Decimal, step: Decimal): Decimal => {
  const near = toStep(amount, step, 'down');
  return near.lessThan(withoutNoise(amount)) ? near.plus(step) : near;
};

/** What is paid in coins when the smallest coin is `step`. New Zealand's shops drop a half (12.35 is 12.30), others count it. */
export const cashRounded = (total: Decimal, step: Decimal, half: 'up' | 'down'): Decimal =>
  toStep(total, step, half === 'up' ? 'half up' : 'half down');
