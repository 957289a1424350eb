// A share and the count that it is of: "halfway thru the lapels, 20 done out of 40". The count tells it more exactly, and is of the kind that is named.

import type { Finding, Unworded } from '../phrase.ts';
import type { Group } from './work-together.ts';

// "halfway" is said of 18 of 40 too.
const near = 0.15;

const shareOf = (fact: Unworded | undefined): { readonly fraction: number; readonly piece: string | undefined } | undefined =>
  fact?.fact === 'made' && fact.fraction !== undefined && fact.count === undefined
    ? { fraction: Number(fact.fraction), piece: fact.piece }
    : undefined;

/** Whether the count tells the share too. */
export const tellsShare = (counted: Unworded | undefined, share: Unworded | undefined): boolean => {
  const said = shareOf(share);
  if (said === undefined || counted?.fact !== 'made' || counted.count === undefined || counted.of === undefined) return false;
  const alike = said.piece === undefined || counted.piece === undefined || counted.piece === said.piece;
  return alike && counted.stage === undefined && Math.abs(counted.count / counted.of - said.fraction) <= near;
};

/** The groups without such a share; its words go with the count. */
export const withoutShare = (groups: readonly Group[]): readonly Group[] => {
  const [one, other, third] = groups;
  if (one === undefined || other === undefined || third !== undefined) return groups;
  if (one.facts.length !== 1 || other.facts.length !== 1) return groups;
  const [share, counted] = shareOf(one.facts[0]) === undefined ? [other, one] : [one, other];
  const [fact, said] = [counted.facts[0], share.facts[0]];
  if (fact?.fact !== 'made' || said?.fact !== 'made' || !tellsShare(fact, said)) return groups;
  const piece = fact.piece ?? said.piece;
  return [{ ...counted, start: one.start, end: other.end, facts: [{ ...fact, ...(piece === undefined ? {} : { piece }) }] }];
};

/** "half the corsages are done, 7 so far": the seven are corsages, and tell it more exactly. */
export const countOfShare = (findings: readonly Finding[]): readonly Finding[] => {
  const share = findings.find(({ facts }) => facts?.length === 1 && shareOf(facts[0]) !== undefined);
  const counted = findings.filter(({ facts }) => facts?.some((fact) => fact.fact === 'made' && fact.count !== undefined));
  const [said, fact] = [share?.facts?.[0], counted[0]?.facts?.[0]];
  if (counted.length !== 1 || said?.fact !== 'made' || fact?.fact !== 'made' || fact.total !== true || fact.of !== undefined)
    return findings;
  if (fact.stage !== undefined || said.piece === undefined || (fact.piece ?? said.piece) !== said.piece) return findings;
  return findings.map((finding) => {
    if (finding === counted[0])
      return { ...finding, facts: [{ ...fact, piece: said.piece }, ...(finding.facts ?? []).slice(1)] } as Finding;
    return finding === share ? { start: finding.start, end: finding.end } : finding;
  });
};
