// What an hour at the bench costs the studio: the wage and what comes on top of it (holiday pay, employer's contributions).
// Minimum and award wages differ by place and year: replies say "check your local rate" and never advise one.

import type { StudioSettings } from '../studio/settings.ts';
import { type Decimal, decimal, hundred } from '../values/decimal.ts';

export interface WageCost {
  readonly hourly: Decimal;
  readonly onCosts: Decimal; // percent on top of the wage
  readonly cost: Decimal; // per hour, unrounded
}

/** Wage cost per hour: wage × (100 + on-costs) / 100. 12.71 with 12.07 % is 14.244097. */
export const wageCost = (hourly: Decimal, onCosts: Decimal): WageCost => ({
  hourly,
  onCosts,
  cost: hourly.times(onCosts.plus(hundred)).dividedBy(hundred),
});

/** The studio's wage cost; undefined when no wage, or a wage of nothing, is set: then only money is shown, no minutes. */
export const wageCostOf = (labour: StudioSettings['labour']): WageCost | undefined => {
  if (labour?.wage === undefined || decimal(labour.wage).isZero()) return undefined;
  return wageCost(decimal(labour.wage), decimal(labour.onCosts ?? '0'));
};
