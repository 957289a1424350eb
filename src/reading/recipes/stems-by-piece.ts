// One flower and how many of it go into each kind: "corsages need 3 roses, combs 2", "12 roses per crown, 4 per corsage", "roses: crown 12, corsage 4".

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Quantity, quantity } from '../goods/quantity.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const joint = pattern('(,|and|&|\\+|n|;|but|then){1,2}');
const kind = pattern(
  '(for|in)? (the|our|a|an|each|every)? <p:piece> (just|only|has|have|gets|get|need|needs|takes|take|uses|use|is|are|:|-|=|with){0,2}',
);
const into = pattern('(per|in|into|for|on|to|each for|in to)? (a|an|the|our|each|every|one)? <p:piece> (each)?');
const opening = pattern('(the|our)? <f:ingredient> (:|-|,|=)');
const openingLong = pattern('(the|our)? <f:ingredient> (:|-|,|=)? <length>'); // "ribbon 30cm corsages, 10cm bouts"
const telling = /^(has|have|gets?|needs?|takes?|uses?|per|in|into|for|on|is|are)$/;

interface Share {
  readonly piece: PieceKind;
  readonly amount: Quantity;
  readonly flower: string | undefined; // where it is named here
  readonly told: boolean; // "need", "per": what goes in, not how many are ordered
  readonly many: boolean; // "corsages 4"
  readonly next: number;
}

const shareAt = (reader: Reader, start: number, end: number): Share | undefined => {
  const { tokens } = reader;
  const head = kind.at(tokens, start, end);
  const amount = quantity(tokens, head?.end ?? start);
  if (amount === undefined || (amount.stems ?? amount.length) === undefined || amount.makes !== undefined) return undefined;
  const said = amount.next < end ? tokens[amount.next] : undefined;
  const flower = /^stems?$/.test(said?.text ?? '') ? 'stem' : said?.means['ingredient'];
  const behind = flower === undefined ? amount.next : amount.next + 1;
  const match = head ?? into.at(tokens, behind, end);
  const piece = match?.kept['p'];
  const named = piece?.means['piece'] as PieceKind | undefined;
  if (match === undefined || named === undefined || named === 'unspecified') return undefined;
  const told = tokens.slice(match.start, match.end).some((token) => telling.test(token.text));
  if (head === undefined && !told && amount.length === undefined && !/^(a|an|each|every)$/.test(tokens[match.start]?.text ?? ''))
    return undefined;
  const each = head !== undefined && behind < end && tokens[behind]?.means['each'] !== undefined ? 1 : 0;
  return {
    piece: named,
    amount,
    flower,
    told,
    many: /s$/.test(piece?.text ?? ''),
    next: head === undefined ? match.end : behind + each,
  };
};

/** Read only when the whole part is made of such shares; the first names the flower. */
export const stemsByPiece = (reader: Reader, part: Part): Finding | undefined => {
  const facts: Unworded[] = [];
  const kinds = new Set<PieceKind>();
  const open = opening.at(reader.tokens, part.start, part.end);
  const long = openingLong.at(reader.tokens, part.start, part.end);
  let flower = (open ?? long)?.kept['f']?.means['ingredient'];
  let most: number | undefined;
  let told = false;
  let measured: boolean | undefined;
  let index = open?.end ?? (long === undefined ? part.start : long.end - 1);
  while (index < part.end) {
    const share = shareAt(reader, index, part.end);
    if (share === undefined || kinds.has(share.piece)) return undefined;
    told ||= share.told;
    // "crowns 12 roses, corsages 4" goes on with roses; "roses: crowns 12" may be an order.
    const { stems, length, unit } = share.amount;
    // "8 in of wire per bout, 2 per corsage": two of what is not said.
    if ((length === undefined) !== (measured ?? length === undefined)) return undefined;
    measured = length === undefined;
    const goesOn = open === undefined && most !== undefined && (stems ?? most + 1) <= most;
    if (share.flower === undefined && stems !== undefined && !told && share.many && !goesOn) return undefined;
    flower = share.flower ?? flower;
    if (flower === undefined) return undefined;
    most ??= stems;
    kinds.add(share.piece);
    facts.push({
      fact: 'recipe',
      lines: [{ ingredient: flower, ...(stems === undefined ? { length: length ?? 0, unit: unit ?? '' } : { stems }) }],
      piece: share.piece,
    });
    index = share.next;
    if (index < part.end) {
      const next = joint.at(reader.tokens, index, part.end);
      // "crown 12 roses corsage 4": the next kind alone sets it apart.
      if (next === undefined && kind.at(reader.tokens, index, part.end) === undefined) return undefined;
      index = next?.end ?? index;
    }
  }
  return facts.length < 2 ? undefined : found(reader, part.start, part.end, facts);
};
