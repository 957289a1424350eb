// A list of wearers whose names stand in sentences or lines of their own: "Groom. Best man. 3 ushers", "corsages for bride's mum / groom's mum / 2 nans".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { readWearers } from './read-wearers.ts';
import { saysForAll, suits, surely } from './share-pieces.ts';
import { forHead } from './wearer-words.ts';
import type { Entry } from './wearers-read.ts';

/** What a line says of pieces: nothing, each name its own, or one kind before names that may go on. */
type Line = 'bare' | 'worn' | 'headed';

const asWell = /^(too|also|as well|aswell|likewise|ditto)$/; // "MOB and MOG get corsages / 2 grannies too"
const ofAll = /^(all|each)$/;
const ofSeveral = /^(get|have|need|want|wear|wearing|having|getting|with|in)$/;

const says = (reader: Reader, { start, end }: Part, words: RegExp): boolean =>
  reader.tokens.slice(start, end).some((token) => words.test(token.text));

// "MOB / MOG and 2 grandmas get corsages": what the last line says is for those before it too, when they are the same sort of people.
const forThose = (reader: Reader, part: Part, before: readonly Entry[], entries: readonly Entry[]): boolean =>
  says(reader, part, ofAll) ||
  ((entries.length > 1 || (entries[0]?.count ?? 0) > 1) &&
    says(reader, part, ofSeveral) &&
    before.every((each) => surely(each.wearer, entries.at(-1)?.piece)));

export const together = (reader: Reader, parts: readonly Part[]): Part[] => {
  if (parts.length < 2) return [...parts];
  const lists: Part[] = [];
  let open: Line | undefined;
  let piece: PieceKind | undefined; // said before the first name
  let listed: Entry[] = [];
  let places = 0; // how many names it may still go on to
  for (const part of parts) {
    const before = lists.at(-1);
    const near = before !== undefined && part.start - before.end <= 2;
    if (near && open === 'bare' && saysForAll(reader, part)) {
      lists[lists.length - 1] = { ...before, end: part.end };
      open = undefined;
      continue;
    }
    const names = part.end - part.start <= 12 ? readWearers(reader, part) : undefined;
    const entries = names?.entries ?? [];
    const all = entries.reduce((sum, each) => sum + each.count, 0);
    const head = forHead.at(reader.tokens, part.start, part.end + 1)?.kept;
    const headAlone = entries.length === 0 && head !== undefined && names?.clean === true;
    // "total 6 persons", behind those it adds up
    if (near && open === 'bare' && entries.length === 0 && names?.clean === true && names.total !== undefined) {
      lists[lists.length - 1] = { ...before, end: part.end };
      open = undefined;
      continue;
    }
    const plain = names?.clean === true && entries.length > 0 && names.total === undefined;
    const worn = entries.every((each) => each.piece !== undefined);
    const now: Line | undefined = headAlone
      ? 'headed'
      : !plain
        ? undefined
        : names.pieceless
          ? 'bare'
          : !worn
            ? undefined
            : head === undefined
              ? 'worn'
              : 'headed';
    const kind = piece;
    const goesOn =
      now !== undefined &&
      (open === 'headed'
        ? now === 'bare' && kind !== undefined && all <= places && entries.every((each) => suits(each.wearer, kind))
        : !headAlone &&
          now !== 'headed' &&
          (now === open ||
            (open === 'bare' && now === 'worn' && forThose(reader, part, listed, entries)) ||
            (open === 'worn' && now === 'bare' && says(reader, part, asWell))));
    if (goesOn && near) {
      lists[lists.length - 1] = { ...before, end: part.end };
      if (open === 'bare') open = now;
      listed.push(...entries);
      places -= all;
      continue;
    }
    lists.push(part);
    open = now;
    listed = [...entries];
    piece = head?.['p']?.means['piece'] as PieceKind | undefined;
    places = head?.['n'] === undefined ? Number.POSITIVE_INFINITY : Number(head['n'].number?.amount) - all;
  }
  return lists;
};
