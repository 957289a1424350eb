// Who wears them: "groom, 5 groomsmen, 2 dads, stepdad", "6 bridesmaids hair flowers", "groom + 4, plus FOB FOG".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { countFor, type Entry, nameOf, readWearers } from '../wearers/read-wearers.ts';
import { bothSides, forHead, party, tailPieces } from '../wearers/wearer-words.ts';

const wearersFact = (entries: readonly Entry[], total?: number): Unworded => ({
  fact: 'wearers',
  wearers: entries.map(({ at: _, ...entry }) => entry),
  ...(total === undefined ? {} : { total }),
});

// "14 wearing them all up": how many, not who.
const headCount = pattern(
  "(so|that's|thats|about|it's|its)? <n:count> (people|ppl|pax|folk|guests|men|of them|of us|in all|all)? (wearing|to wear|are wearing|will be wearing|wearers|will wear|need|needing|getting|having|want) (them|one|these|it|flowers|a flower|<piece>)? (<all>|all up|altogether|total|in all|in total|all told)?",
);
// "3 tables of 8, all wearing"
const atTables = pattern(
  '<m:count> (tables|rows|pews) of <n:count> (,|-)? (all|everyone|everybody|<all>|each)? (of them)? (wearing|to wear|wear) (them|one)?',
);
// "was 7 ushers, one's dropped out so 6"
const fewer = pattern(
  "(was|were|had|used to be) <m:count> <r:role> (,|-|but|now)? (<any>){0,6} (so|now|makes it|makes|down to|that's|leaves|is) <n:count> (now)?",
);
// "11 guys total counting the groom", "11 wearing, groom incl"; "6 ushers and the celebrant" are seven.
const withHim = pattern(
  "(so|that's|thats|about)? <n:count> (people|ppl|folk|guests|men|guys|lads|<role>|wearers|wearing|them|one|flowers|of them|of us|heads|in the party|in the bridal party|in the wedding party){0,3} (<all>|total|in all|all up|wearing|in total)? (,|-|\\()? (counting|including|incl|inc|<role> <included>|<role> included) (the)? (<role>)? (\\))?",
);
const totalWithHim = pattern(
  "(so|that's|thats|about)? <n:count> (people|men|guys|lads|wearing|of them)? (<all>|total|in all|all up) with (the)? <role>",
);
const joins = /^(plus|and|&|\+|n)$/;
const othersAlone = (reader: Reader, part: Part): Finding | undefined => {
  if (reader.tokens.slice(part.start, part.end).some((token) => token.number?.max !== undefined)) return undefined;
  const sides = bothSides.map((form) => form.at(reader.tokens, part.start, part.end)).find((match) => match?.end === part.end);
  if (sides !== undefined) {
    const total = Number(sides.kept['n']?.number?.amount) + Number(sides.kept['m']?.number?.amount);
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total }]);
  }
  const him = withHim.at(reader.tokens, part.start, part.end) ?? totalWithHim.at(reader.tokens, part.start, part.end);
  if (
    him?.end === part.end &&
    reader.tokens
      .slice(him.start, him.end)
      .some((token) =>
        /^(wearing|total|wearers|men|guys|lads|people|ppl|in all|groomsmen|ushers|bridesmaids|party|in the party|in the bridal party|in the wedding party)$/.test(
          token.text,
        ),
      )
  )
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total: Number(him.kept['n']?.number?.amount) }]);
  const count = headCount.at(reader.tokens, part.start, part.end);
  if (count?.end === part.end)
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total: Number(count.kept['n']?.number?.amount) }]);
  const tables = atTables.at(reader.tokens, part.start, part.end);
  if (tables?.end === part.end) {
    const total = Number(tables.kept['m']?.number?.amount) * Number(tables.kept['n']?.number?.amount);
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total }]);
  }
  const left = fewer.at(reader.tokens, part.start, part.end);
  const role = left?.kept['r']?.means['role'];
  const many = Number(left?.kept['n']?.number?.amount);
  if (left?.end !== part.end || role === undefined || !(many > 0)) return undefined;
  return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [{ wearer: nameOf(role, many), count: many }], total: many }]);
};

// "groom, 2 mums; mums have wrist corsages": what one kind of wearer on the list wears.
const worn = pattern(
  '(and|the|all|all the|both|,){0,2} <r:role> (have|get|gets|has|wear|want|are getting|are having|in|with|to have|on|:|-|=) (a|an|the)? (<material>)? <p:piece> (each|too|please|pls)?',
);
const wornBy = (reader: Reader, part: Part, entries: readonly Entry[]): Finding | undefined => {
  const match = worn.at(reader.tokens, part.start, part.end);
  const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  const role = match?.kept['r']?.means['role'];
  if (match?.end !== part.end || piece === undefined || piece === 'unspecified' || role === undefined) return undefined;
  const meant = entries.filter((each) => each.piece === undefined && (each.wearer === nameOf(role, 1) || each.wearer === nameOf(role, 2)));
  // "mums have wrist corsages": two of them, though no list names them; the order's own count is left as it is.
  const count = meant.length === 0 ? countFor(match.kept['r']?.text ?? '', undefined, false) : undefined;
  if (count !== undefined)
    return found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [{ wearer: nameOf(role, count), count, piece }] }]);
  if (meant.length === 0) return undefined;
  for (const each of meant) each.piece = piece;
  const all = meant.reduce((sum, each) => sum + each.count, 0);
  return found(reader, part.start, part.end, [{ fact: 'pieces', piece, count: all }]);
};

// "Groom. Best man. 3 ushers": a list whose names stand in sentences or lines of their own.
const together = (reader: Reader, parts: readonly Part[]): Part[] => {
  const lists: Part[] = [];
  let open: 'bare' | 'worn' | undefined; // without pieces, or each with its own
  for (const part of parts) {
    const before = lists.at(-1);
    const names = parts.length > 1 && part.end - part.start <= 12 ? readWearers(reader, part) : undefined;
    const plain = names?.clean === true && names.entries.length > 0 && names.total === undefined;
    const worn = names?.entries.every((each) => each.piece !== undefined) === true;
    const now = !plain ? undefined : names.pieceless ? 'bare' : worn ? 'worn' : undefined;
    if (now !== undefined && now === open && before !== undefined && part.start - before.end <= 2)
      lists[lists.length - 1] = { ...before, end: part.end };
    else lists.push(part);
    open = now;
  }
  return lists;
};

const speaksOfMoney = (token: Token, next: Token | undefined): boolean =>
  token.number?.form === 'money' ||
  (token.means['each'] !== undefined && token.text !== 'each' && token.text !== 'a piece') ||
  token.means['budget'] !== undefined ||
  token.means['other'] !== undefined ||
  (/^(at|@)$/.test(token.text) && next?.number?.form === 'plain') ||
  token.number?.form === 'duration';

/** The part without a price behind its list: "1 groom 9 groomsmen all lapels, 14 each"; undefined when money stands anywhere else. */
const beforePrice = (reader: Reader, part: Part): Part | undefined => {
  const { tokens } = reader;
  const comma = firstWhere(
    tokens,
    part.start,
    part.end,
    ({ text }, at) => text === ',' && tokens[at + 1]?.number !== undefined && priceTail.at(tokens, at, part.end) !== undefined,
  );
  const own = comma < 0 ? part : { ...part, end: comma };
  for (let index = own.start; index < own.end; index++) {
    const token = tokens[index];
    if (token !== undefined && speaksOfMoney(token, tokens[index + 1])) return undefined;
  }
  if (comma < 0) return own;
  const { entries, clean, unknown } = readWearers(reader, own);
  return clean && !unknown && entries.length >= 2 && entries.every((each) => each.piece !== undefined) ? own : undefined;
};
const priceTail = pattern(', (at|@)? (<money>|<plain> <each>)');

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  let list: { readonly at: number; readonly entries: readonly Entry[] } | undefined;
  for (const part of together(reader, reader.untouched().slice(0, 40))) {
    if (part.end - part.start > 80) continue;
    const others = othersAlone(reader, part);
    if (others !== undefined) {
      findings.push(others);
      continue;
    }
    const later = wornBy(reader, part, list?.entries ?? []);
    const more = later?.facts?.[0];
    if (later !== undefined && more?.fact === 'wearers') {
      const open = list === undefined ? undefined : findings[list.at];
      const held = open?.facts?.[0];
      if (list === undefined || open === undefined || held?.fact !== 'wearers') findings.push(later);
      else {
        findings[list.at] = { ...open, facts: [{ ...held, wearers: [...held.wearers, ...more.wearers] }, ...(open.facts ?? []).slice(1)] };
        findings.push({ start: later.start, end: later.end });
      }
      continue;
    }
    const before = list === undefined ? undefined : findings[list.at];
    if (later !== undefined && list !== undefined && before !== undefined) {
      // The list already given is told what they wear.
      const told = found(reader, before.start, before.end, [wearersFact(list.entries)]);
      findings[list.at] = { ...before, facts: [...(told.facts ?? []), ...(before.facts ?? []).slice(1)] };
      findings.push(later);
      continue;
    }
    const own = beforePrice(reader, part);
    if (own === undefined) continue;
    const tokens = reader.tokens.slice(own.start, own.end);
    const read = readWearers(reader, own);
    const bridal =
      party.in(reader.tokens, own.start, own.end) !== undefined ||
      tokens.some((token) => /^(everyone|everybody|wearers)$/.test(token.text));
    // "11 in the party plus the celebrant": whether she is one of them is not said.
    if (bridal && read.total !== undefined && read.heads === 1 && tokens.some((token) => joins.test(token.text))) continue;
    if (bridal && read.total !== undefined && (read.entries.length === 0 || read.heads === 1)) {
      findings.push(found(reader, own.start, own.end, [{ fact: 'wearers', wearers: [], total: read.total }]));
      continue;
    }
    const counted = tokens.some((token) => token.number?.form === 'plain');
    const listed = read.entries.length >= 2 || (read.entries.length === 1 && counted && read.clean && read.heads === 1);
    const [only] = read.entries;
    const leading = tokens[0]?.text ?? '';
    if (
      !listed ||
      only === undefined ||
      (!read.clean && read.entries.length < 3 && tailPieces.in(reader.tokens, own.start, own.end) === undefined) ||
      /^(and|plus|\+|add|another|minus|drop|remove|less)$/.test(leading) ||
      tokens.some((token) => /^(bench|hours|working|rostered|sick|broke|snapped|instead|done|made|actually|sorry)$/.test(token.text))
    )
      continue;
    const lineCounts = tokens.filter(
      (token, at) =>
        token.means['piece'] !== undefined &&
        tokens[at - 1]?.number?.form === 'plain' &&
        tokens[at - 2]?.text !== 'x' &&
        tokens[at - 2]?.means['role'] === undefined,
    ).length;
    const tail = tailPieces.in(reader.tokens, own.start, own.end);
    if (lineCounts > 1 || (lineCounts === 1 && tail === undefined && forHead.at(reader.tokens, own.start, own.end) === undefined)) continue;
    const facts: Unworded[] = [wearersFact(read.entries, read.total)];
    const pieces = new Map<PieceKind, number>();
    for (const each of read.entries) if (each.piece !== undefined) pieces.set(each.piece, (pieces.get(each.piece) ?? 0) + each.count);
    if (tail?.kept['p'] !== undefined && pieces.size === 0)
      pieces.set(tail.kept['p'].means['piece'] as PieceKind, Number(tail.kept['n']?.number?.amount));
    if (!read.unknown) for (const [piece, count] of pieces) facts.push({ fact: 'pieces', piece, count });
    list = { at: findings.length, entries: read.entries };
    findings.push(found(reader, own.start, own.end, facts));
  }
  return findings;
};

export const wearersList: Phrase = {
  name: 'wearers',
  examples: ['groom, 5 groomsmen, 2 dads, stepdad', '6 bridesmaids hair flowers, 2 flower girls crowns'],
  find,
};
