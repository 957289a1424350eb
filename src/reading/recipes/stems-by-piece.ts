// One flower and how many of it go into each kind: "corsages need 3 roses, combs 2", "crown 12 roses, corsage 4".

import type { PieceKind } from '../../handbook/pieces.ts';
import { quantity } from '../goods/quantity.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const joint = pattern('(,|and|&|\\+|n|;|but|then){1,2}');
const kind = pattern('(the|our|a|each|every)? <p:piece> (just|only|has|have|gets|get|need|needs|takes|take|uses|use|:|-|=|with){0,2}');

/** Read only when the whole part is made of such shares; the first names the flower. */
export const stemsByPiece = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const facts: Unworded[] = [];
  const kinds = new Set<PieceKind>();
  let flower: string | undefined;
  let told = false; // "need", "takes": what goes in, not how many are ordered
  let index = part.start;
  while (index < part.end) {
    const head = kind.at(tokens, index, part.end);
    const piece = head?.kept['p']?.means['piece'] as PieceKind | undefined;
    const amount = head === undefined ? undefined : quantity(tokens, head.end);
    if (head === undefined || piece === undefined || piece === 'unspecified' || kinds.has(piece) || amount?.stems === undefined)
      return undefined;
    told ||= tokens.slice(head.start, head.end).some((token) => /^(has|have|gets?|needs?|takes?|uses?)$/.test(token.text));
    const said = amount.next < part.end ? tokens[amount.next]?.means['ingredient'] : undefined;
    if (said === undefined && !told && /s$/.test(head.kept['p']?.text ?? '')) return undefined;
    flower = said ?? flower;
    if (flower === undefined || amount.makes !== undefined) return undefined;
    kinds.add(piece);
    facts.push({ fact: 'recipe', lines: [{ ingredient: flower, stems: amount.stems }], piece });
    index = said === undefined ? amount.next : amount.next + 1;
    if (tokens[index]?.text === 'each' && index < part.end) index += 1;
    if (index < part.end) {
      const next = joint.at(tokens, index, part.end);
      if (next === undefined) return undefined;
      index = next.end;
    }
  }
  return facts.length < 2 ? undefined : found(reader, part.start, part.end, facts);
};
