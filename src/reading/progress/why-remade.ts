// "remade 2, one was wonky": what was wrong with those made again is why, and no new loss. "Remade 2, 1 broke again" is one.

import type { Finding, Reader } from '../phrase.ts';

const because = /^(because|cos|coz|cause|cuz|as|since|was|were|had|wasn't|wasnt|weren't|werent)$/;
const again = /^(again|since|another|more|new|already)$/;

export const withoutReasons = ({ tokens, message }: Reader, findings: readonly Finding[]): Finding[] => {
  const remade = findings.find(({ facts }) => facts?.some((fact) => fact.fact === 'made' && fact.remade === true));
  if (remade === undefined) return [...findings];
  const part = message.parts.find(({ start, end }) => start <= remade.start && remade.start < end);
  const most = Math.max(...(remade.facts ?? []).map((fact) => (fact.fact === 'made' ? (fact.count ?? 0) : 0)));
  return findings.map((finding) => {
    const [fact, second] = finding.facts ?? [];
    if (fact?.fact !== 'broke' || second !== undefined || finding.start < remade.start || finding.start >= (part?.end ?? 0)) return finding;
    const told = tokens.slice(remade.start + 1, finding.end);
    const reason =
      told.some(({ text }) => because.test(text)) && !tokens.slice(finding.start, finding.end + 1).some(({ text }) => again.test(text));
    return reason && fact.count <= most ? { start: finding.start, end: finding.end } : finding;
  });
};
