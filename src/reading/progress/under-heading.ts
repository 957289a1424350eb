// A line opened by a kind: "crowns: not started, waiting on wire", "wrist corsages: 4 done, 1 still to do". What it tells without a kind is of that one.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Finding, type Reader, takenBy, type Unworded } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import { placesIn } from '../text/places-in.ts';
import { isEnd } from '../text/sentence-end.ts';
import type { Token } from '../text/token.ts';

interface Heading {
  readonly at: number;
  readonly piece: PieceKind;
}

const mark = /^[:,-]$/; // a dash between spaces is a comma by now
const beforeKind = /^(the|our|my|and)$/;
const opensLine = (tokens: readonly Token[], index: number): boolean => {
  let at = index - 1;
  while (at >= 0 && (beforeKind.test(tokens[at]?.text ?? '') || tokens[at]?.means['material'] !== undefined)) at -= 1;
  return at < 0 || isEnd(tokens, at);
};

const farthest = 40;
/** The kind that opens the line a token stands in, where no other is named between them. */
const headingOf = (tokens: readonly Token[], index: number): Heading | undefined => {
  for (let at = index - 1; at >= 0 && at > index - farthest && tokens[at]?.kind !== 'line'; at--) {
    if (tokens[at]?.means['piece'] === undefined) continue;
    const piece = kindNamed(tokens[at]);
    const opens = piece !== undefined && mark.test(tokens[at + 1]?.text ?? '') && opensLine(tokens, at);
    return opens ? { at, piece } : undefined;
  }
  return undefined;
};

const ofNoKind = (fact: Unworded): boolean =>
  (fact.fact === 'made' || fact.fact === 'broke' || fact.fact === 'left') && fact.piece === undefined;

const numberBetween = ({ tokens, free }: Reader, start: number, end: number, taken: ReadonlySet<number>): boolean =>
  tokens.slice(start, end).some(({ number }, offset) => number !== undefined && free(start + offset) && !taken.has(start + offset));

/** The findings of work, those under a heading with its kind. */
export const underHeadings = (reader: Reader, findings: readonly Finding[]): Finding[] => {
  const { tokens } = reader;
  const several = new Set(tokens.flatMap((token) => kindNamed(token) ?? [])).size > 1;
  const taken = new Set(findings.flatMap(takenBy));
  return findings.map((finding) => {
    if (finding.takes !== undefined || !finding.facts?.some(ofNoKind)) return finding;
    const heading = headingOf(tokens, finding.start);
    if (heading === undefined) return finding;
    const open = reader.free(heading.at) && !taken.has(heading.at);
    // "crowns - made 6, 2 remaining": the kind is told already, and the thread knows which are left.
    if (!open && !several) return finding;
    const facts = finding.facts.map((fact) => (ofNoKind(fact) ? { ...fact, piece: heading.piece } : fact));
    // "crowns: 6 wanted, 2 done": the six are still to be read.
    if (!open || numberBetween(reader, heading.at, finding.start, taken)) return { ...finding, facts };
    taken.add(heading.at);
    const own = placesIn(finding);
    return { ...finding, facts, takes: [heading.at, ...own] };
  });
};
