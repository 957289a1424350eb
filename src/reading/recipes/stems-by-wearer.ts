// One flower and how many of it each wearer gets: "2 thistles groom, 1 for the rest", "groom has 3 ranunculus, groomsmen just 1".

import type { RecipeLineFact } from '../fact.ts';
import { quantity } from '../goods/quantity.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { who } from './recipe-headings.ts';

const joint = pattern('(,|and|&|\\+|n|;|-|but|then|with){1,2}');
const few = pattern('(just|only|has|have|gets|get|is|are|on|takes|take|:|-|=|with|the|a){0,3}');
const behind = pattern(
  '(for|on|each for|to|<each>)? (the|our|all the|both|each|every|each of the)? <r:role> (each|only|please|pls|though)?',
);
const before = pattern('(the|our|all the|both)? <r:role>');

interface Share {
  readonly line: RecipeLineFact;
  readonly role: string;
  readonly loose: boolean; // nothing but its place says that the number is of stems
  readonly plain: boolean; // "3 roses for each mum": said in full
  readonly next: number;
}

// A number, the flower unless it is the one before, and whose it is, in either order.
const shareAt = (reader: Reader, start: number, end: number, flower: string | undefined): Share | undefined => {
  const { tokens } = reader;
  const named = before.at(tokens, start, end);
  const from = named === undefined ? start : (few.at(tokens, named.end, end)?.end ?? named.end);
  const amount = quantity(tokens, from);
  if (amount?.stems === undefined || amount.makes !== undefined) return undefined;
  const said = amount.next < end ? tokens[amount.next]?.means['ingredient'] : undefined;
  const ingredient = said ?? flower;
  const to = said === undefined ? amount.next : amount.next + 1;
  const whose = named ?? behind.at(tokens, to, end);
  const wearer = who(whose?.kept['r']);
  if (ingredient === undefined || whose === undefined || wearer === undefined) return undefined;
  const each = named !== undefined && tokens[to]?.means['each'] !== undefined ? 1 : 0;
  const loose = said === undefined && (named === undefined ? tokens[to]?.text !== 'for' : from === named.end);
  const plain = said !== undefined && named === undefined && /^for( each)?$/.test(tokens[to]?.text ?? '');
  return {
    line: { ingredient, stems: amount.stems, wearer },
    role: wearer,
    loose,
    plain,
    next: named === undefined ? whose.end : to + each,
  };
};

/** Read only when the whole part is made of such shares; the first names the flower. */
export const stemsByWearer = (reader: Reader, part: Part): Finding | undefined => {
  const lines: RecipeLineFact[] = [];
  const wearers = new Set<string>();
  let flower: string | undefined;
  let full = false;
  let index = part.start;
  while (index < part.end) {
    const share = shareAt(reader, index, part.end, flower);
    // "2 thistles groom, 4 ushers": four of them, as likely as four thistles.
    const most = lines[0]?.stems;
    if (share === undefined || wearers.has(share.role) || (share.loose && (share.line.stems ?? 0) > (most ?? 0))) return undefined;
    full ||= share.plain;
    wearers.add(share.role);
    lines.push(share.line);
    flower = share.line.ingredient;
    index = share.next;
    if (index < part.end) index = joint.at(reader.tokens, index, part.end)?.end ?? index;
  }
  return lines.length < 2 && !full ? undefined : found(reader, part.start, part.end, [{ fact: 'recipe', lines }]);
};
