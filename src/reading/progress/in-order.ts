// The order in which what is said of the work counts, which is not always the order of the words.

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

export const inOrder = (findings: Finding[]): Finding[] => lossFirst(noneLast(findings));
