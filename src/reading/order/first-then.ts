// An order whose first ones cost another price than those behind them: "5 crowns, $65 for the first and $55 each for the other 4", "30 bouts, 14 each for the first 20 then 12".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader } from '../phrase.ts';
import { isSingle, type NumberRead, type Token } from '../text/token.ts';
import { priceEach } from './price-each.ts';

const whole = pattern("<w:count> (<material>)? <k:piece> (,|:|;|-|\\(|of which|so|at|@|for|it's|its|they're|with|\\.){0,2}");
const is = '(is|are|at|@|=|:|-|for|to be|cost|costs|come to|will be|go at){0,2}';
const cost = '<p:amount> (<each>)?';
const some = '(<n:count> (of them|of those)?|one|ones)? (<k:piece>)?';
const opening = [
  pattern(`(at|@|for)? ${cost} ((for|on) (the|our)?|the)? first ${some}`),
  pattern(`(the|our|with the)? first ${some} ${is} ${cost}`),
];
const rest = '(<r:role>|remaining ones|balance|remaining)'; // "the rest", "others" are read as those left over
const next = '(other|next|remaining|last|following|second)';
const further = [
  pattern(`(at|@|for)? ${cost} ((for|on) (the|our|all the|all)?|the)? (${next} ${some}|${rest})`),
  pattern(`(the|all the|with the)? (${next} ${some}|${rest}) ${is} ${cost}`),
  pattern(`(at|@|for)? ${cost} (after that|after those|thereafter|afterwards|from then on|beyond that|over that|after)`),
  pattern(`(after that|thereafter|from then on|beyond that|over that) ${is} ${cost}`),
];
const bare = pattern(`(at|@|for|it's|its|they're)? ${cost}`); // only behind "then"
const between = /^([,;&+-]|and|n|but|with|\.)$/;

interface Step {
  readonly count?: number;
  readonly number: NumberRead;
  readonly piece: PieceKind | undefined;
  readonly end: number;
}

const stepOf = ({ tokens }: Reader, { kept, start, end }: Match): Step | undefined => {
  const { n, p, k, r } = kept;
  if (r !== undefined && r.means['role'] !== 'rest') return undefined;
  if (!isSingle(p?.number) || n?.number?.max !== undefined) return undefined;
  const after = tokens[end];
  if (after?.means['piece'] !== undefined || after?.means['all'] !== undefined || after?.number !== undefined) return undefined;
  const stretch = tokens.slice(start, end);
  // "the first", "the other one": one of them; "the others" may be any number.
  const one = stretch.some(
    ({ text }, at) => text === 'one' || (/^(first|second)$/.test(text) && !/^(ones|few)$/.test(stretch[at + 1]?.text ?? '')),
  );
  const piece = k?.means['piece'] as PieceKind | undefined;
  return { ...(n?.number === undefined ? (one ? { count: 1 } : {}) : { count: Number(n.number.amount) }), number: p.number, piece, end };
};

// What follows the first: up to three further prices.
const stepsFrom = (reader: Reader, start: number): { steps: Step[]; end: number } => {
  const { tokens } = reader;
  const steps: Step[] = [];
  let end = start;
  for (let at = start; steps.length < 4; ) {
    let then = false;
    while (at < end + 3 && steps.length > 0 && (between.test(tokens[at]?.text ?? '') || tokens[at]?.text === 'then')) {
      then ||= tokens[at]?.text === 'then';
      at += 1;
    }
    const forms = steps.length === 0 ? opening : further;
    const match = firstAt(forms, tokens, at, tokens.length) ?? (then ? bare.at(tokens, at, tokens.length) : undefined);
    const step = match === undefined ? undefined : stepOf(reader, match);
    if (step === undefined) break;
    steps.push(step);
    end = step.end;
    at = end;
  }
  return { steps, end: tokens[end]?.text === ')' ? end + 1 : end };
};

const plainCount = (token: Token | undefined): number | undefined =>
  token?.number === undefined || token.number.max !== undefined ? undefined : Number(token.number.amount);

const read = (reader: Reader, start: number, from: number, total: Token | undefined, kind: PieceKind | undefined): Finding | undefined => {
  const { steps, end } = stepsFrom(reader, from);
  const [first] = steps;
  if (first === undefined || steps.length < 2) return undefined;
  const piece = kind ?? steps.find((step) => step.piece !== undefined)?.piece;
  if (piece === undefined || steps.some((step) => step.piece !== undefined && step.piece !== piece)) return undefined;
  if (!allFree(reader, start, end)) return undefined;
  const open = steps.filter(({ count }) => count === undefined);
  const said = steps.reduce((sum, { count }) => sum + (count ?? 0), 0);
  const left = (plainCount(total) ?? 0) - said;
  // Steps that do not make the whole up, or leave two of them open, say nothing sure of any.
  const sure = total === undefined ? open.length === 0 : open.length === 0 ? left === 0 : open.length === 1 && left >= 1;
  if (!sure) return { start, end, held: true };
  return found(
    reader,
    start,
    end,
    steps.map(({ count, number }) => ({
      fact: 'pieces',
      piece,
      count: count ?? left,
      price: priceEach(number),
    })),
  );
};

/** One line for each step of the price. */
export const firstThen = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  if (!tokens.some(({ text }) => text === 'first')) return undefined;
  for (let at = whole.next(tokens, 0, tokens.length); at < tokens.length; at = whole.next(tokens, at + 1, tokens.length)) {
    // The joining words may belong to the price behind them.
    const match = whole.at(tokens, at, tokens.length);
    const kind = match?.kept['k']?.means['piece'] as PieceKind | undefined;
    for (let from = match?.end ?? 0; match !== undefined && from > match.end - 3; from--) {
      if (from <= at + 1) break;
      const finding = read(reader, at, from, match.kept['w'], kind);
      if (finding !== undefined) return finding;
    }
  }
  // "$65 for the first crown and $55 each for the other 4"
  for (let at = 0; at < tokens.length; at++) {
    const finding = firstAt(opening, tokens, at, tokens.length) === undefined ? undefined : read(reader, at, at, undefined, undefined);
    if (finding !== undefined) return finding;
  }
  return undefined;
};
