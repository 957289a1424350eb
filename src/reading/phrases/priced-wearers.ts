// Wearers listed with what each one's piece costs: "groom £14, best man £12, 4 ushers £9 each", with the kind said for each, for all, or not at all.

import type { PieceKind } from '../../handbook/pieces.ts';
import { priceEach } from '../order/price-each.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { namesTax } from '../text/of-tax.ts';
import { type PricedEntry, pricedEntry } from '../wearers/priced-entries.ts';
import { suits } from '../wearers/share-pieces.ts';

const between = /^([,;.&+]|and|plus|n|then|with|-)$/;
const pastLinks = (reader: Reader, index: number): number => {
  let at = index;
  while (at < index + 3 && (between.test(reader.tokens[at]?.text ?? '') || reader.tokens[at]?.kind === 'line')) at += 1;
  return at;
};

const forAll = pattern('(,|-|:)? (all|all of them|they are all|all of it)? (<material>)? <p:piece> (all|for all|each|throughout)?');
const heading = pattern('<p:piece> (:|-|,|as follows){0,2}');

// "groom at 11, ushers at 9.30" may be when they come.
const ofTime =
  /^(arrive|arrives|arriving|ready|collect|collects|collecting|pickup|photos|from|till|until|start|starts|finish|am|pm|aged|age|ages|turns)$/;
const certain = (reader: Reader, entries: readonly PricedEntry[]): boolean => {
  if (reader.tokens.some((token) => ofTime.test(token.text) || token.number?.form === 'time' || token.number?.form === 'duration'))
    return false;
  if (entries.every((entry) => entry.bench && entry.piece === undefined)) return false;
  if (entries.some((entry) => entry.marked)) return true;
  if (reader.tokens.some((token) => namesTax(token) || token.means['included'] !== undefined)) return true;
  if (entries.some((entry) => entry.odd) && entries.some((entry) => entry.counted)) return true;
  return entries.some((entry) => entry.counted && entry.at) && entries.some((entry) => Number(entry.number.amount) > 12);
};

const kindsOf = (entries: readonly PricedEntry[], all: PieceKind | undefined): PieceKind[] => {
  let last: PieceKind | undefined;
  return entries.map((entry) => {
    last = entry.piece ?? last;
    const told = all ?? (last !== undefined && suits(entry.role, last) ? last : undefined);
    return entry.piece ?? told ?? 'unspecified';
  });
};

const listAt = (reader: Reader, start: number): { entries: PricedEntry[]; end: number } => {
  const entries: PricedEntry[] = [];
  let end = start;
  for (let at = start; at < reader.tokens.length; at = pastLinks(reader, end)) {
    const entry = pricedEntry(reader, at);
    if (entry === undefined) break;
    entries.push(entry);
    end = entry.end;
  }
  return { entries, end };
};

const joinsOthers = ({ tokens, free }: Reader, start: number): boolean => {
  const before = tokens[start - 2];
  // "4 ushers 2 dads 15 each"
  if (tokens[start]?.number !== undefined && tokens[start - 1]?.means['role'] !== undefined && free(start - 1)) return true;
  return /^([,&+]|and|plus|n)$/.test(tokens[start - 1]?.text ?? '') && before?.means['role'] !== undefined && free(start - 2);
};

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  for (let start = 0; start < tokens.length && start < 200; start++) {
    const { entries, end: last } = listAt(reader, start);
    const [first, second] = entries;
    if (first === undefined) continue;
    if (second === undefined && !(first.marked && (first.counted || (first.wearer === undefined && first.piece !== undefined)))) continue;
    // "groom, best man, 4 ushers - buttonholes £12 each": those named before them wear one too.
    if (second === undefined && joinsOthers(reader, start)) return [];
    if (!certain(reader, entries)) return [];
    // Pieces named one by one, or beside others that are counted, are an order's own lines.
    if (entries.every((entry) => entry.plain)) return [];
    const tail = forAll.at(tokens, last, tokens.length);
    const closing =
      tail !== undefined && !/^(for|at|@|x|:|=|-)$/.test(tokens[tail.end]?.text ?? '') && tokens[tail.end]?.number === undefined;
    const shared = closing && entries.every((entry) => entry.piece === undefined) && reader.free(last) ? tail : undefined;
    const ahead = heading.at(tokens, Math.max(0, start - 2), start) ?? heading.at(tokens, Math.max(0, start - 1), start);
    const head =
      ahead?.end === start && shared === undefined && reader.free(ahead.start) && tokens[ahead.start - 1]?.number === undefined
        ? ahead
        : undefined;
    const [from, to] = [head?.start ?? start, shared?.end ?? last];
    const counted = tokens.some((token, at) => (at < from || at >= to) && token.means['piece'] !== undefined && reader.free(at));
    if (counted && !entries.every((entry) => entry.piece !== undefined && entry.wearer === undefined)) return [];
    const kinds = kindsOf(entries, (shared ?? head)?.kept['p']?.means['piece'] as PieceKind | undefined);
    const facts = entries.map(({ count, number, wearer }, at) => ({
      fact: 'pieces' as const,
      piece: kinds[at] ?? ('unspecified' as const),
      count,
      price: priceEach(number),
      ...(wearer === undefined ? {} : { wearer }),
    }));
    return [found(reader, from, to, facts)];
  }
  return [];
};

export const pricedWearers: Phrase = {
  name: 'priced wearers',
  examples: ['groom £14, best man £12, 4 ushers £9 each', '10 lads at 12.50, groom 18'],
  find,
};
