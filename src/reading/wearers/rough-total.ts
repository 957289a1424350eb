// "about 14 wearing", "roughly 6 each side": how many wear them is told as rough.

import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';

/** The finding with its total marked as rough where the number it comes of is. */
export const withRoughTotal = ({ tokens }: Reader, finding: Finding): Finding => {
  const { start, end, facts = [] } = finding;
  if (!facts.some((fact) => fact.fact === 'wearers' && fact.total !== undefined)) return finding;
  const rough = tokens.slice(start, end).flatMap(({ number }) => (number?.approx === true ? [Number(number.amount)] : []));
  if (rough.length === 0) return finding;
  const told = (fact: Fact): Fact =>
    fact.fact === 'wearers' && fact.total !== undefined && (fact.wearers.length === 0 || rough.includes(fact.total))
      ? { ...fact, approx: true }
      : fact;
  return { ...finding, facts: facts.map(told) };
};
