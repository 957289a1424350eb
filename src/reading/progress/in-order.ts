// The order in which what is said of the work counts, which is not always the order of the words.

import type { Fact } from '../fact.ts';
import type { Finding } from '../phrase.ts';

// "bouts not started, 5 corsages ready": what is made comes first.
const isNone = (finding: Finding): boolean => finding.facts?.some((fact) => fact.fact === 'made' && fact.count === 0) === true;
const isMade = (finding: Finding): boolean =>
  finding.facts?.some((fact) => fact.fact === 'made' && fact.count !== 0 && fact.stage === undefined) === true;
const noneLast = (findings: Finding[]): Finding[] =>
  findings.some(isMade) ? [...findings.filter((finding) => !isNone(finding)), ...findings.filter(isNone)] : findings;

// "dropped one, so 19 good": the nineteen are what is left of the loss, so it goes before them.
const lossFirst = (findings: Finding[]): Finding[] => {
  const whole = findings.find((finding) => finding.facts?.some((fact) => fact.fact === 'made' && fact.total === true));
  const lost = (finding: Finding): boolean =>
    whole !== undefined && finding.start < whole.start && finding.facts?.some((fact) => fact.fact === 'broke') === true;
  return whole === undefined ? findings : [...findings.filter(lost), ...findings.filter((finding) => !lost(finding))];
};

type Made = Extract<Fact, { fact: 'made' }>;
const madeIn = ({ facts = [] }: Finding): readonly Made[] => facts.filter((fact): fact is Made => fact.fact === 'made');
const isAll = (finding: Finding): boolean => {
  const [fact, another] = finding.facts ?? [];
  return another === undefined && fact?.fact === 'made' && fact.all === true && fact.count === undefined && fact.stage === undefined;
};
const ofWholeOrder = /\b(everything|(whole|full|entire) (order|thing|lot))\b/i;

// "24 bouts done thats all of them", "all done, 24 bouts made": all of the one kind that is counted, and no 24 beside them.
const allOfCounted = (findings: Finding[]): Finding[] => {
  const counted = findings.filter((finding) => !isAll(finding) && madeIn(finding).some(({ count = 0 }) => count > 0));
  const [kind, another] = new Set(counted.flatMap((finding) => madeIn(finding).map(({ piece }) => piece)));
  const whole = (finding: Finding): boolean =>
    isAll(finding) && madeIn(finding).every(({ piece }) => piece === undefined || piece === kind);
  if (counted.length === 0 || !findings.some(whole)) return findings;
  const [only, second] = counted;
  const [fact, other] = only?.facts ?? [];
  // "12 done thats all of them": of which kind is asked, and it is all of that one.
  if (only !== undefined && second === undefined && other === undefined && fact?.fact === 'made' && kind === undefined)
    if (!findings.some((finding) => whole(finding) && madeIn(finding).some(({ words }) => ofWholeOrder.test(words))))
      return findings.map((finding) =>
        finding === only
          ? { ...finding, facts: [{ ...fact, all: true }] }
          : whole(finding)
            ? { start: finding.start, end: finding.end }
            : finding,
      );
  const ofKind = (finding: Finding): Finding => {
    const [fact] = madeIn(finding);
    if (fact === undefined || kind === undefined || another !== undefined || ofWholeOrder.test(fact.words)) return finding;
    return { ...finding, facts: [{ ...fact, piece: kind }] };
  };
  return [...findings.filter((finding) => !whole(finding)), ...findings.filter(whole).map(ofKind)];
};

// "all done bar 2, 22 bouts made": what is left says the whole, so it goes behind what was made.
const isLeft = ({ facts }: Finding): boolean => facts?.some(({ fact }) => fact === 'left') === true;
const leftLast = (findings: Finding[]): Finding[] =>
  findings.some(isLeft) ? [...findings.filter((finding) => !isLeft(finding)), ...findings.filter(isLeft)] : findings;

export const inOrder = (findings: Finding[]): Finding[] => lossFirst(leftLast(noneLast(allOfCounted(findings))));
