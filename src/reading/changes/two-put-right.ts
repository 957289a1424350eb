// Two things put right in one sentence, each with what was said before: "8 crowns not 6, and they're to be 60 each rather than 55".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import { leftOut } from '../facts/left-out.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isNumber } from '../text/token.ts';

const before = pattern('(not|rather than|instead of|in place of|up from|down from|from|as opposed to|no longer)');
const comparable = ['material', 'weekday', 'month', 'included', 'onTop'];
const joint = /^(,|-|;|and|&|n|plus|but|at|@|also|with)$/;
const stripped = /^(,|-|;|and|&|n|plus|but|also)$/;
const most = 4;

// Where the first joint stands behind what each of them takes back.
const splits = ({ tokens }: Reader, { start, end }: Part): readonly number[] => {
  const at: number[] = [];
  for (let index = before.next(tokens, start, end); index < end && at.length < most; ) {
    let value = index + 1;
    const saysSo = (): boolean => tokens[value]?.number !== undefined || comparable.some((tag) => tokens[value]?.means[tag] !== undefined);
    while (value < end && !saysSo()) value += 1;
    let split = value + 1;
    while (split < end && !joint.test(tokens[split]?.text ?? '')) split += 1;
    at.push(split);
    index = split < end ? before.next(tokens, split, end) : end;
  }
  return at;
};

// "20 bouts instead of 18, at 14 rather than 12", "…, and they're to be 60 each": a price of those just named.
const ofThem = /^(they|they're|theyre|they'll|theyll|them|those|these)$/;
const told = (reader: Reader, own: Part, facts: readonly Fact[], named: ReadonlySet<PieceKind>): readonly Fact[] | undefined => {
  const [opening, next] = reader.tokens.slice(own.start, own.start + 2);
  const [kind, another] = named;
  const read = facts.map((fact): Fact | undefined => {
    if (fact.fact !== 'change') return undefined;
    if (fact.what === 'number') {
      if (!/^(at|@)$/.test(opening?.text ?? '')) return undefined;
      const { to, from, words } = fact;
      return { fact: 'change', what: 'price', to: String(to), ...(from === undefined ? {} : { from: String(from) }), per: 'each', words };
    }
    const theirs = [opening, next].some((token) => ofThem.test(token?.text ?? '')) && fact.what === 'price' && fact.piece === undefined;
    return theirs && kind !== undefined && another === undefined ? { ...fact, piece: kind } : fact;
  });
  return read.some((fact) => fact === undefined) ? undefined : (read as Fact[]);
};

// "corsages 35 not 30, bouts 15 not 12": how many, or at what price?
const kindAhead = ({ tokens }: Reader, { start, end }: Part, facts: readonly Fact[]): boolean => {
  const kind = firstWhere(tokens, start, end, ({ means }) => means['piece'] !== undefined);
  const number = firstWhere(tokens, start, end, (token) => isNumber(token, 'plain'));
  return kind >= 0 && number === kind + 1 && facts.some((fact) => fact.fact === 'change' && fact.what === 'count');
};

/** Each of the two read by itself; nothing unless both are read whole. */
export const twoPutRight = (reader: Reader, part: Part, read: (own: Part) => readonly Finding[]): readonly Finding[] | undefined => {
  const { tokens } = reader;
  const first = before.next(tokens, part.start, part.end);
  if (first >= part.end || before.next(tokens, first + 2, part.end) >= part.end) return undefined;
  const ends = splits(reader, part);
  if (ends.length < 2 || ends.length > most) return undefined;
  const findings: Finding[] = [];
  const named = new Set<PieceKind>();
  let start = part.start;
  let bare = 0;
  for (const [place, split] of ends.entries()) {
    while (start < split && stripped.test(tokens[start]?.text ?? '')) start += 1;
    const own = { ...part, start, end: place === ends.length - 1 ? part.end : split };
    const each = read(own);
    const facts = each.flatMap((finding) => finding.facts ?? []);
    const whole = each.every(
      ({ held, asks, facts: of }) => held !== true && (asks !== undefined || of?.every(({ fact }) => fact === 'change')),
    );
    if (each.length === 0 || !whole || (facts.length > 0 && leftOut(tokens, own, facts).length > 0)) return undefined;
    if (kindAhead(reader, own, facts) && ++bare > 1) return [{ start: part.start, end: part.end, held: true }];
    for (const finding of each) {
      const settled = place === 0 || finding.facts === undefined ? finding.facts : told(reader, own, finding.facts, named);
      // "20 bouts not 18, 14 not 12": of what the second is, is not said.
      if (settled === undefined && finding.facts !== undefined) return [{ start: part.start, end: part.end, held: true }];
      findings.push(settled === undefined ? finding : { ...finding, facts: settled });
    }
    for (const fact of facts) if (fact.fact === 'change' && 'piece' in fact && fact.piece !== undefined) named.add(fact.piece);
    start = split;
  }
  return findings;
};
