// "bouts done - 5 to go": with some of the kind left, not all of it is done. In "12 bouts done, 3 to go, corsages all done" the three are bouts.

import type { FactOf } from '../fact.ts';
import type { Finding } from '../phrase.ts';

type Made = FactOf<'made'>;
type Left = FactOf<'left'>;

const madeBy = ({ facts }: Finding): Made | undefined => facts?.find((fact): fact is Made => fact.fact === 'made');
const leftBy = ({ facts }: Finding): Left | undefined => facts?.find((fact): fact is Left => fact.fact === 'left' && fact.count > 0);
const isWhole = (fact: Made | undefined): boolean => fact?.all === true && fact.count === undefined && fact.stage === undefined;

/** What is left without a kind, right behind so many that are done of one: it is of that one where all of another are done. */
const ofCounted = (findings: readonly Finding[]): Finding[] => {
  const wholes = findings.filter((finding) => isWhole(madeBy(finding)));
  return findings.map((finding) => {
    const left = leftBy(finding);
    if (left === undefined || left.piece !== undefined || finding.facts?.length !== 1) return finding;
    const before = findings.filter((other) => other.start < finding.start && madeBy(other) !== undefined);
    const nearest = before.toSorted((one, other) => one.start - other.start).at(-1);
    const made = nearest === undefined ? undefined : madeBy(nearest);
    if (made?.piece === undefined || made.count === undefined || made.all === true || made.stage !== undefined) return finding;
    const others = wholes.length > 0 && wholes.every((whole) => madeBy(whole)?.piece !== made.piece && madeBy(whole)?.piece !== undefined);
    return others ? { ...finding, facts: [{ ...left, piece: made.piece }] } : finding;
  });
};

/** The findings without those that tell of the whole of a kind some of which is left; named as unread where it may be another kind's. */
export const withoutRest = (told: readonly Finding[]): Finding[] => {
  const findings = ofCounted(told);
  const left = findings.flatMap((finding) => leftBy(finding) ?? []);
  if (left.length === 0) return findings;
  const several = new Set(findings.flatMap((finding) => madeBy(finding)?.piece ?? [])).size > 1;
  return findings.map((finding) => {
    const made = madeBy(finding);
    const rest = left.some(({ piece }) => piece === undefined || (made?.piece !== undefined && piece === made.piece));
    return isWhole(made) && rest ? { start: finding.start, end: finding.end, ...(several ? { held: true, whole: true } : {}) } : finding;
  });
};
