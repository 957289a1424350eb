// Several counts of work in one message: what adds up, and what is the whole already.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { FactOf } from '../fact.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import type { Token } from '../text/token.ts';
import type { DoneList } from './lists.ts';
import { amountOf, pieceIn } from './made-facts.ts';
import { askWhichWhole, wholeAhead, wholeBehind } from './whole-ahead.ts';
import { wholeAfter, wholeBeside } from './whole-told.ts';

// "10 bouts this morning and 5 this arvo": bouts still.
export const sameKind = (fact: Unworded, before: Finding): Unworded => {
  const piece = before.facts?.flatMap((each) => (each.fact === 'made' ? (each.piece ?? []) : []))[0];
  return fact.fact === 'made' && fact.piece === undefined && piece !== undefined ? { ...fact, piece } : fact;
};

// "made 9 bouts, price is now 14", "made 9 bouts, corsages are now 12": no whole of what was made.
const priced = /^(price|prices|cost|costs|rate|charge|charging|quote|each|they're|theyre|ordered|order|need|needs|want|wants)$/;
const ofOthers = (between: readonly Token[], piece: PieceKind | undefined): boolean =>
  between.some(({ means, text }) => priced.test(text) || (means['piece'] !== undefined && piece !== undefined && means['piece'] !== piece));

const numberWord = /^(no|number|num|nr|#)$/;
// "completed 15 today total 45": the whole is what counts; adding the 15 as well would count them twice.
export const wholeSoFar = (
  reader: Reader,
  part: Part,
  findings: readonly Finding[],
  open: (index: number) => boolean,
): Finding[] | undefined => {
  const [latest, second] = findings.flatMap((finding) => finding.facts ?? []);
  if (
    latest?.fact !== 'made' ||
    latest.count === undefined ||
    latest.stage !== undefined ||
    latest.of !== undefined ||
    second !== undefined
  )
    return undefined;
  for (let index = part.start; index < part.end; index++) {
    const match = wholeBeside.at(reader.tokens, index, part.end) ?? wholeAfter.at(reader.tokens, index, part.end);
    const number = match?.kept['n'];
    const ahead = wholeAhead(reader.tokens, index, part.end);
    // "50 in total, 42 done so far": so many there are to be.
    if (ahead !== undefined && latest.count <= Number(ahead.kept['m']?.number?.amount)) {
      const of = amountOf(ahead.kept['m'] as Token);
      return [found(reader, index, Math.max(ahead.end, findings[0]?.end ?? 0), [{ ...pieceIn(ahead), ...latest, of, total: true }])];
    }
    if (match === undefined || number === undefined || !open(reader.tokens.indexOf(number, index)) || latest.count === 0) continue;
    // "busy with no 13 now, first 12 are made"
    if (numberWord.test(reader.tokens[reader.tokens.indexOf(number, index) - 1]?.text ?? '')) continue;
    if (/^(for|all$|every|both)/.test(match.kept['w']?.text ?? '')) continue; // "cut for all 40"
    if (/^(left|to|more|broke|broken|each|at|@)$/.test(reader.tokens[match.end]?.text ?? '') || amountOf(number) < latest.count) continue;
    if (ofOthers(reader.tokens.slice(Math.min(findings[0]?.end ?? part.start, match.start), match.start), latest.piece)) continue;
    const start = Math.min(match.start, findings[0]?.start ?? match.start);
    const piece = latest.piece ?? pieceIn(match).piece;
    // "42 done, total 50": what there is to be as well as what there is by now.
    const either = wholeBehind(reader.tokens, part.start, part.end);
    if (either !== undefined) return [askWhichWhole(reader, either)];
    return [
      found(reader, start, Math.max(match.end, findings[0]?.end ?? 0), [
        { fact: 'made', count: amountOf(number), total: true, ...(piece === undefined ? {} : { piece }) },
      ]),
    ];
  }
  return undefined;
};

/** "halfway through 12 crowns, 14 bouts done": the share of one kind says nothing of another. */
export const ofOtherKind = ({ facts }: Finding, share: Unworded): boolean => {
  const piece = 'piece' in share ? share.piece : undefined;
  return piece !== undefined && facts?.every((fact) => 'piece' in fact && fact.piece !== undefined && fact.piece !== piece) === true;
};

// "Mags did 8, I did 7": one more handful of the same kind, so one sum.
export const plainCount = (finding: Finding): FactOf<'made'> | undefined => {
  const [fact, second] = finding.facts ?? [];
  return fact?.fact === 'made' &&
    second === undefined &&
    fact.count !== undefined &&
    Object.keys(fact).every((key) => /^(fact|count|piece|words)$/.test(key))
    ? fact
    : undefined;
};

/** "did 14, all lapels": what the fourteen are, and not all the lapels. */
export const ofTheKind = (reader: Reader, last: Finding, { match, facts: [fact] }: DoneList): DoneList | undefined => {
  const count = plainCount(last);
  const [comma, all, kind] = reader.tokens.slice(match.start, match.end);
  const behind = comma?.text === ',' && all?.text === 'all' && kind === match.kept['p'] && match.start === last.end;
  if (!behind || count === undefined || count.piece !== undefined || fact?.fact !== 'made' || fact.piece === undefined) return undefined;
  const { words: _, ...made } = count;
  return { match: { start: last.start, end: match.end, kept: {} }, facts: [{ ...made, piece: fact.piece }] };
};
export const totalOnly = (finding: Finding): boolean =>
  finding.facts?.every((fact) => fact.fact === 'made' && fact.total === true && fact.of === undefined && fact.stage === undefined) === true;
export const summed = (reader: Reader, findings: readonly Finding[]): Finding[] => {
  const plain = findings.filter((finding) => plainCount(finding) !== undefined).sort((a, b) => a.start - b.start);
  const facts = plain.flatMap((finding) => plainCount(finding) ?? []);
  const [first, second] = facts;
  if (first === undefined || second === undefined || facts.some((fact) => fact.piece !== first.piece)) return [...findings];
  const start = plain[0]?.start ?? 0;
  const end = plain.at(-1)?.end ?? start;
  const takes = plain.flatMap(placesIn);
  const count = facts.reduce((sum, fact) => sum + (fact.count ?? 0), 0);
  const { words: _, ...fact } = first;
  return [...findings.filter((finding) => !plain.includes(finding)), found(reader, start, end, [{ ...fact, count }], takes)];
};
