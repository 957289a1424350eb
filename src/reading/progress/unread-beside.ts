// A number that nobody read in the clause that tells of the work: "2 tiny corsages done" is not all of them, and orders none.

import type { Fact } from '../fact.ts';
import type { Match } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import { isCount, type Token } from '../text/token.ts';

const clauseEnds = /^(,|;|-|:|but|so|\(|\)|then|though|because|cos|coz|need|needs|want|wants|order|add)$/;
// "bouts done by 3", "crowns done for table 6": a time or a name, and no count.
const notCounted =
  /^(by|at|before|since|after|around|about|til|till|until|from|in|on|@|#|no|number|table|box|bay|van|order|job|day|week|batch|round|tray)$/;
const ends = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || clauseEnds.test(token.text);
const counts = (tokens: readonly Token[], index: number): boolean =>
  isCount(tokens[index]) &&
  tokens[index + 1]?.means['month'] === undefined &&
  tokens[index - 1]?.means['month'] === undefined &&
  !notCounted.test(tokens[index - 1]?.text ?? '');
// "a spare each of bout and corsage made"
const spare = /^spares?$/;

const stretch = (start: number, end: number, takes: (index: number) => boolean): Finding => ({
  start,
  end,
  takes: placesIn({ start, end }).filter(takes),
  held: true,
});

// Where the kind of an unread count stands: "5 little bouts".
const kindBehind = (tokens: readonly Token[], index: number, end: number): number => {
  for (let at = index + 1; at < Math.min(end, index + 4); at++) if (tokens[at]?.means['piece'] !== undefined) return at;
  return index;
};

const isWhole = ({ facts }: Finding): boolean =>
  facts?.some((fact) => fact.fact === 'made' && fact.all === true && fact.count === undefined && fact.fraction === undefined) === true;

const sameKind = (fact: Fact, token: Token | undefined): boolean =>
  !('piece' in fact) || fact.piece === undefined || fact.piece === token?.means['piece'] || token?.means['piece'] === 'unspecified';
const furthest = 20; // tokens
/** The findings, without what an unread number beside them makes doubtful; that number is kept from the order. */
export const withUnreadBeside = (reader: Reader, part: Part, findings: readonly Finding[], open: (index: number) => boolean): Finding[] => {
  const { tokens } = reader;
  return findings.flatMap((finding) => {
    if (finding.facts?.some(({ fact }) => fact === 'made') !== true) return [finding];
    const { start, end } = finding;
    const [kept, whole] = [[finding], isWhole(finding)];
    let [from, to] = [start, end];
    for (const step of [-1, 1])
      for (let index = step < 0 ? start - 1 : end, seen = 0; index >= part.start && index < part.end; index += step, seen++) {
        if (ends(tokens[index]) || seen === furthest) break;
        // "3 hotel trays corsages done": held back by another, and right before the kind.
        const heldBack = whole && !reader.free(index) && step < 0 && start - index <= 3;
        const ofSpares = whole && step < 0 && spare.test(tokens[index]?.text ?? '');
        if (!(open(index) || heldBack) || !(ofSpares || counts(tokens, index))) continue;
        const kind = kindBehind(tokens, index, part.end);
        // "bouts done and 2 of the corsages"
        const another = step > 0 && kind > index && finding.facts.every((fact) => !sameKind(fact, tokens[kind]));
        if (!whole || another) {
          if (kind > index) kept.push(stretch(index, kind + 1, open));
        } else [from, to] = [Math.min(index, from), Math.max(kind + 1, to)];
      }
    return whole && (from < start || to > end) ? [stretch(from, to, (at) => open(at) || (start <= at && at < end))] : kept;
  });
};

/** "3 hotel trays corsages done": what may not be all of them, with the number before it that nobody read, orders none. */
export const countDoubted = ({ tokens }: Reader, part: Part, doubted: readonly Match[], open: (index: number) => boolean): Finding[] =>
  doubted.flatMap(({ start, end }) => {
    const from = [start - 1, start - 2, start - 3].find((index) => index >= part.start && open(index) && counts(tokens, index));
    if (from === undefined) return [];
    for (let index = from; index < end; index++) if (!open(index) || ends(tokens[index])) return [];
    return [{ start: from, end, held: true }];
  });
