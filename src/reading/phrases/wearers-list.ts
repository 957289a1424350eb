// Who wears them: "groom, 5 groomsmen, 2 dads, stepdad", "6 bridesmaids hair flowers", "groom + 4, plus FOB FOG".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { roles } from '../words/people-words.ts';

const entry = pattern(
  '(the|our|both|all|a|an|one|his|her|their|my)? (<n:count>)? (x|of|of the|little|small|wee|young|other|more|best)? <r:role> (x <m:count>)? (\\( <any>{1,4} \\))? (to have|in|wearing|get|gets|have|has|with|wear|need|needs|:|-|=|want|wants)? (a|an|the|each|matching)? (<material>)? (<p:piece>)? (each)?',
);
const andMore = pattern('(\\+|plus|and|&) (his|the|her)? <n:count> (\\) )? (men|lads|guys|boys|groomsmen)?');
const totalForms = [
  pattern(
    "(so|=|makes|that's|thats|total|total of|altogether|makes it|is|comes to|which is|->|all up|in all|in total|makes that) (is|of|:|=|that|about|it)? <n:count> (total|in all|all up|altogether|people|wearers|of them|in total|overall|all told|heads|pieces)?",
  ),
  pattern(
    '<n:count> (<all>|total|in all|altogether|all up|people|wearers|all told|of them|of us|in the party|in the bridal party|in bridal party)',
  ),
];
const party = pattern('(bridal|wedding|whole|full) (party|parties|crew)');
const partyOf = pattern('(party|crew) of <n:count>');
// "FOB, FOG, 2 grandads: 4 bouts"
const tailPieces = pattern('(:|-|=|so|need|total) (<n:count>) <p:piece>');
const forHead = pattern('(<n:count>)? (<material>)? <p:piece> (for|to|:|-|on) (the)?');
const fillers =
  /^(and|,|\+|&|plus|the|both|\/|-|:|with|n|then|also|so|is|are|for|need|needs|of|x|\(|\)|all|who|wearing|wearers|list|have|getting|pls|please|his|her|it's|its|=|we|got|"|ok|just|add|doing|on|as|well|too|that's|thats|total|altogether|party|bridal|wedding|bout|each|men|boys|whole|everyone|everybody|gets|get|one|a|an|their|will|be|people|there|wants|want|in|has|wear|wears|to|total|this|time|folks|side|same|guys|only|no|bar|minus|except|not|but|apart|from|excluding|without|excl|including|incl|plus)$/;

interface Entry {
  at: number;
  wearer: string;
  count: number;
  piece?: PieceKind;
}

const nameOf = (one: string, count: number): string => {
  const role = roles.find((each) => each.one === one);
  return role === undefined ? one : count > 1 ? role.many : role.one;
};

const pairs = new Set(['dads', 'fathers', 'mums', 'moms', 'mothers', 'mams', 'papas']);
const plural = /(men|s|children)$/;

const countFor = (text: string, said: number | undefined, both: boolean): number | undefined => {
  if (said !== undefined) return said;
  if (both || pairs.has(text)) return 2;
  const role = roles.find((each) => each.said.includes(text));
  if (role === undefined) return undefined;
  return text !== role.one &&
    plural.test(text) &&
    !/(ss|brides?)$/.test(text) &&
    role.many !== role.one &&
    role.said.includes(text) &&
    text !== 'boss' &&
    isPlural(text)
    ? undefined
    : 1;
};
const isPlural = (text: string): boolean =>
  /(men|s|children|parents|kids)$/.test(text) && !/(ss|bros|moms?)$/.test(text.slice(0, -1)) && !/^(sis|cors|poppy|pops|boss)$/.test(text);

// "MOB and MOG corsages, FOB FOG bouts": a piece said after several wearers is for each of them, back to the comma.
const shareByGroup = (reader: Reader, entries: Entry[]): void => {
  for (let at = entries.length - 1; at > 0; at--) {
    const [mine, before] = [entries[at], entries[at - 1]];
    if (mine?.piece === undefined || before === undefined || before.piece !== undefined) continue;
    const between = reader.tokens.slice(before.at, mine.at);
    if (!between.some((token) => token.text === ',' || token.text === '.')) before.piece = mine.piece;
  }
};

const readPart = (
  reader: Reader,
  part: Part,
): { entries: Entry[]; total?: number; clean: boolean; pieceless: boolean; unknown: boolean; heads: number } => {
  const entries: Entry[] = [];
  let clean = true;
  let unknown = false;
  let heads = 0;
  let excluded = false;
  const head = forHead.at(reader.tokens, part.start, part.end);
  const common = head?.kept['p']?.means['piece'] as PieceKind | undefined;
  let index = head?.end ?? part.start;
  while (index < part.end) {
    const token = reader.tokens[index];
    if (token === undefined) break;
    if (/^(bar|except|excluding|without|minus|not|apart|excl)$/.test(token.text)) excluded = true;
    const match = entry.at(reader.tokens, index, part.end);
    if (match?.kept['r'] !== undefined) {
      const role = match.kept['r'];
      const number = match.kept['n'] ?? match.kept['m'];
      const both = reader.tokens.slice(match.start, match.end).some((each) => each.text === 'both');
      const count = countFor(role.text, number === undefined ? undefined : Number(number.number?.amount), both);
      heads += 1;
      if (!excluded) {
        if (count === undefined) unknown = true;
        else {
          // "two grooms, 4 ushers each"
          const couple = entries.find((each) => /^(grooms|brides)$/.test(each.wearer));
          const times =
            couple !== undefined && reader.tokens[match.end - 1]?.text === 'each' && match.kept['p'] === undefined ? couple.count : 1;
          const piece = (match.kept['p']?.means['piece'] as PieceKind | undefined) ?? common;
          entries.push({
            at: match.start,
            wearer: nameOf(role.means['role'] ?? role.text, count * times),
            count: count * times,
            ...(piece === undefined || piece === 'unspecified' ? {} : { piece }),
          });
        }
      }
      index = match.end;
      const more = andMore.at(reader.tokens, index, part.end);
      const moreNext = reader.tokens[more?.end ?? 0];
      if (
        more?.kept['n'] !== undefined &&
        role.means['role'] === 'groom' &&
        moreNext?.means['role'] === undefined &&
        moreNext?.means['piece'] === undefined
      ) {
        const men = Number(more.kept['n'].number?.amount);
        entries.push({ at: index, wearer: nameOf('groomsman', men), count: men });
        index = more.end;
      }
      continue;
    }
    const total = totalForms.map((form) => form.at(reader.tokens, index, part.end)).find((each) => each !== undefined);
    if (total !== undefined) {
      index = total.end;
      continue;
    }
    if (
      token.kind === 'word' &&
      token.number === undefined &&
      !fillers.test(token.text) &&
      token.means['all'] === undefined &&
      token.means['material'] === undefined
    )
      clean = false;
    if (token.number !== undefined) clean = false;
    index += 1;
  }
  shareByGroup(reader, entries);
  const totals =
    partyOf.in(reader.tokens, part.start, part.end) ??
    totalForms.map((form) => form.in(reader.tokens, part.start, part.end)).find((match) => match !== undefined);
  const total = totals === undefined ? undefined : Number(totals.kept['n']?.number?.amount);
  return {
    entries,
    clean,
    unknown,
    heads,
    pieceless: entries.every((each) => each.piece === undefined),
    ...(total === undefined || Number.isNaN(total) ? {} : { total }),
  };
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (const part of reader.untouched().slice(0, 40)) {
    if (part.end - part.start > 80) continue;
    const tokens = reader.tokens.slice(part.start, part.end);
    if (
      tokens.some(
        (token) =>
          token.number?.form === 'money' ||
          (token.means['each'] !== undefined && token.text !== 'each' && token.text !== 'a piece') ||
          token.means['budget'] !== undefined ||
          token.means['other'] !== undefined ||
          token.number?.form === 'duration',
      )
    )
      continue;
    const read = readPart(reader, part);
    const bridal =
      party.in(reader.tokens, part.start, part.end) !== undefined ||
      tokens.some((token) => /^(everyone|everybody|wearers)$/.test(token.text));
    if (bridal && read.total !== undefined && (read.entries.length === 0 || read.heads === 1)) {
      findings.push(found(reader, part.start, part.end, [{ fact: 'wearers', wearers: [], total: read.total }]));
      continue;
    }
    const counted = tokens.some((token) => token.number?.form === 'plain');
    const listed = read.entries.length >= 2 || (read.entries.length === 1 && counted && read.clean && read.heads === 1);
    const [only] = read.entries;
    const leading = tokens[0]?.text ?? '';
    if (
      !listed ||
      only === undefined ||
      (!read.clean && read.entries.length < 3 && tailPieces.in(reader.tokens, part.start, part.end) === undefined) ||
      /^(and|plus|\+|add|another|minus|drop|remove|less)$/.test(leading) ||
      tokens.some((token) => /^(bench|hours|working|rostered|sick|broke|snapped|instead|done|made|actually|sorry)$/.test(token.text))
    )
      continue;
    const lineCounts = tokens.filter((token, at) => token.means['piece'] !== undefined && tokens[at - 1]?.number?.form === 'plain').length;
    const tail = tailPieces.in(reader.tokens, part.start, part.end);
    if (lineCounts > 1 || (lineCounts === 1 && tail === undefined && forHead.at(reader.tokens, part.start, part.end) === undefined))
      continue;
    const sum = read.entries.reduce((all, each) => all + each.count, 0);
    const facts: Unworded[] = [
      {
        fact: 'wearers',
        wearers: read.entries.map(({ at: _, ...entry }) => entry),
        ...(read.total !== undefined ? { total: read.total } : read.unknown ? {} : { total: sum }),
      },
    ];
    const pieces = new Map<PieceKind, number>();
    for (const each of read.entries) if (each.piece !== undefined) pieces.set(each.piece, (pieces.get(each.piece) ?? 0) + each.count);
    if (tail?.kept['p'] !== undefined && pieces.size === 0)
      pieces.set(tail.kept['p'].means['piece'] as PieceKind, Number(tail.kept['n']?.number?.amount));
    if (!read.unknown) for (const [piece, count] of pieces) facts.push({ fact: 'pieces', piece, count });
    findings.push(found(reader, part.start, part.end, facts));
  }
  return findings;
};

export const wearersList: Phrase = {
  name: 'wearers',
  examples: ['groom, 5 groomsmen, 2 dads, stepdad', '6 bridesmaids hair flowers, 2 flower girls crowns'],
  find,
};
