// Whether an event's own rules can all be used.

import type { EventRule } from '../thread/rule-for.ts';
import { decimal } from '../values/decimal.ts';
import type { Problem } from '../values/problem.ts';
import { problem } from '../values/result.ts';
import { type LabourRule, labourRules } from './labour-share.ts';

export const isLabourRule = (name: string): name is LabourRule => labourRules.some((rule) => rule === name);

const mostSpare = 200; // home-dried stems are hung twice over; more is a slip
const isPlainNumber = (text: string): boolean => /^-?\d{1,12}(\.\d{1,12})?$/.test(text);

const outOfRange = (rule: EventRule): Problem | undefined => {
  const to = decimal(rule.to);
  switch (rule.what) {
    case 'spare':
      return to.isNegative() || to.greaterThan(mostSpare) ? problem('rate-out-of-range', { what: 'spare', rate: rule.to }) : undefined;
    case 'labour share':
      return to.isNegative() ? problem('rate-out-of-range', { what: 'labour', rate: rule.to }) : undefined;
    case 'tax rate':
      return to.isNegative() || to.greaterThanOrEqualTo(100) ? problem('rate-out-of-range', { what: 'tax', rate: rule.to }) : undefined;
    case 'multiple':
    case 'stems multiple':
      return to.greaterThan(0) ? undefined : problem('multiple-not-positive', { what: 'stems', multiple: rule.to });
    case 'sundries multiple':
      return to.greaterThan(0) ? undefined : problem('multiple-not-positive', { what: 'sundries', multiple: rule.to });
    case 'price step':
    case 'minutes':
      return to.greaterThan(0) ? undefined : problem('rule-not-understood', { what: rule.what, to: rule.to });
    case 'sundries':
    case 'minimum price':
      return to.isNegative() ? problem('price-not-positive', { amount: rule.to }) : undefined;
    case 'labour rule':
      return undefined;
  }
};

/** The first rule that cannot be used, as the problem to show. */
export const rulesProblem = (rules: readonly EventRule[]): Problem | undefined => {
  for (const rule of rules) {
    const readable = rule.what === 'labour rule' ? isLabourRule(rule.to) : isPlainNumber(rule.to);
    if (!readable) return problem('rule-not-understood', { what: rule.what, to: rule.to });
    const wrong = rule.what === 'labour rule' ? undefined : outOfRange(rule);
    if (wrong) return wrong;
  }
  return undefined;
};
