// Finds every wearable piece named in a message and how many of it: "40 lapel pieces", "4x BH", "corsages: 6", "a crown".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { everything, type Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { asMany } from './as-many.ts';
import { bySide } from './by-side.ts';
import { withCountedWearers } from './counted-wearers.ts';
import { oneForEach } from './each-wearer.ts';
import { peopleFor } from './for-people.ts';
import { likeLineBefore } from './like-line-before.ts';
import { forOne, oneInList } from './lone-pieces.ts';
import type { Mention } from './mention.ts';
import { countLeft, countRight } from './mention-count.ts';
import { goesOn, moreOfTheKind, otherMaterial } from './more-of-the-kind.ts';
import { nameFirstPairs, pairsArePrices, pricedInRow } from './name-first.ts';
import { isPiece, ofBatch } from './named-pieces.ts';
import { peopleBefore, peopleBehind } from './one-each.ts';
import { ownPiece } from './own-piece.ts';
import { withPinsMeant } from './pins-meant.ts';
import { sharesByMaterial } from './shares-by-material.ts';
import { wantedByBoth, wantedByOne } from './wanted-by-one.ts';

const inBrackets = pattern('\\( (the|for)? <role> \\)');
const forRole = pattern('for (the|our|my)? <role>');
const ofEach = pattern('<n:count> of (each|both|them each)');

// "corsages x4 at 35 bouts x12 at 18": the number before these is the price of those before.
const belongsBefore = (reader: Reader, before: Mention | undefined, number: number, last: number): boolean => {
  if (before === undefined) return false;
  if (/^(@|at)$/.test(reader.tokens[number - 1]?.text ?? '')) return true;
  if (before.countIndex === undefined || before.countIndex >= number) return false;
  return before.countIndex > before.index && countRight(reader, last + 1)?.marked === true;
};

/** Every piece mention in the message, in order. */
export const findMentions = (reader: Reader, within = everything(reader)): Mention[] => {
  const mentions: Mention[] = [];
  let usedTo = 0;
  const pairs = pricedInRow(reader) ? new Map<number, number>() : nameFirstPairs(reader);
  const priced = pairsArePrices(reader, pairs);
  const like = likeLineBefore(reader, pairs);
  const each = ofEach.in(reader.tokens, within.start, within.end);
  const eachCount = each?.kept['n'];
  for (let index = within.start; index < within.end; index++) {
    const before = mentions.at(-1);
    const more = before === undefined || index < usedTo ? undefined : moreOfTheKind(reader, index, before);
    if (
      more !== undefined &&
      before !== undefined &&
      reader.free(more.countIndex) &&
      (index === more.countIndex || goesOn(reader, before, index))
    ) {
      mentions.push({
        index: more.end - 1,
        last: more.end - 1,
        start: more.countIndex,
        end: more.end,
        kind: before.kind,
        count: more.count,
        countIndex: more.countIndex,
      });
      usedTo = more.end;
      index = more.end - 1;
      continue;
    }
    const own = index < usedTo ? undefined : ownPiece(reader, before, index);
    if (own !== undefined) {
      mentions.push(own.mention);
      usedTo = own.end + 1;
      index = own.end;
      continue;
    }
    const sides = index < usedTo ? undefined : bySide(reader, index);
    if (sides !== undefined) {
      mentions.push(...sides.lines);
      usedTo = sides.end;
      index = usedTo - 1;
      continue;
    }
    const alike = index < usedTo ? undefined : asMany(reader, before, index);
    if (alike !== undefined) {
      mentions.push(alike);
      usedTo = alike.end;
      index = usedTo - 1;
      continue;
    }
    const split = otherMaterial(reader, before, index);
    if (split !== undefined && before !== undefined && reader.free(split.countIndex)) {
      mentions[mentions.length - 1] = { ...before, end: index, material: split.first };
      mentions.push({
        index: split.countIndex,
        last: split.end - 1,
        start: split.countIndex,
        end: split.end,
        kind: before.kind,
        count: split.count,
        countIndex: split.countIndex,
        material: split.material,
      });
      usedTo = split.end;
      index = split.end - 1;
      continue;
    }
    if (!isPiece(reader, index)) continue;
    const token = reader.tokens[index] as Token;
    const after = reader.tokens[index + 1];
    const last = after?.means['piece'] === 'unspecified' && reader.free(index + 1) && after.number === undefined ? index + 1 : index;
    const worn = pairs.has(index) ? undefined : (peopleBefore(reader, index) ?? peopleBehind(reader, index));
    if (worn !== undefined && (!('start' in worn) || worn.countIndex >= usedTo)) {
      const end = worn.end ?? last + 1;
      const start = 'start' in worn ? worn.start : Math.max(usedTo, index - 1);
      mentions.push({ index, last, start, end, kind: token.means['piece'] as PieceKind, count: worn.count, countIndex: worn.countIndex });
      usedTo = end;
      index = last;
      continue;
    }
    const left = pairs.has(index) ? { start: index } : countLeft(reader, index);
    if (left.countIndex !== undefined && ofBatch(reader, left.countIndex)) continue;
    if (oneForEach(reader.tokens, left.start, last + 1)) continue;
    const leftUsed = left.countIndex !== undefined && (left.countIndex < usedTo || belongsBefore(reader, before, left.countIndex, last));
    const right = !pricedOne(reader, index) && (left.countIndex === undefined || leftUsed) ? countRight(reader, last + 1) : undefined;
    const base = leftUsed ? { start: index } : left;
    const bracket =
      inBrackets.at(reader.tokens, last + 1, reader.tokens.length) ?? forRole.at(reader.tokens, last + 1, reader.tokens.length);
    const role = bracket !== undefined && reader.free(bracket.end - 1) ? bracket : undefined; // "for mothers day" is a day
    const people = base.countIndex === undefined && right?.marked !== true ? peopleFor(reader.tokens, last + 1) : undefined;
    const wearers = people?.number;
    const end =
      (people === undefined ? undefined : people.at + 1) ??
      role?.end ??
      (right?.marked === true ? (right.end ?? right.countIndex + 1) : last + 1);
    mentions.push({
      ...base,
      ...(right?.marked === true ? { count: right.count, countIndex: right.countIndex } : {}),
      ...(people === undefined ? {} : { count: people.number, countIndex: people.at }),
      ...(base.countIndex === undefined &&
      right?.marked !== true &&
      wearers === undefined &&
      ((role !== undefined && forOne(reader, index, role.end)) || oneInList(reader, before, index, last))
        ? { exact: 1, countIndex: index }
        : {}),
      index,
      last,
      end,
      kind: token.means['piece'] as PieceKind,
      ...(role === undefined
        ? wornBy(base, reader.tokens, token.means['piece'] as PieceKind)
        : {
            wearer: reader
              .words(role.end - (reader.tokens[role.end - 1]?.text === ')' ? 2 : 1), role.end)
              .replace(/\)$/, '')
              .replace(/\s+/g, ' '),
          }),
    });
    const whole = mentions.at(-1);
    const shared = whole?.countIndex === undefined ? undefined : sharesByMaterial(reader, whole);
    if (shared !== undefined) {
      mentions.splice(-1, 1, ...shared.lines);
      usedTo = shared.end;
      index = usedTo - 1;
      continue;
    }
    const pair = pairs.get(index);
    if (pair !== undefined) {
      // A kind already counted is priced by its second number.
      const mine = mentions.at(-1);
      const named = token.means['piece'] ?? '';
      const counted = mentions.some(
        (mention) => mention !== mine && (mention.kind.includes(named) || named.includes(mention.kind)) && mention.countIndex !== undefined,
      );
      if (mine !== undefined)
        mentions[mentions.length - 1] =
          eachCount !== undefined
            ? { ...mine, priceIndex: pair, count: eachCount, countIndex: each?.start ?? pair, apart: true }
            : counted || priced || like === 'prices'
              ? { ...mine, priceIndex: pair }
              : like === 'open'
                ? mine
                : { ...mine, count: reader.tokens[pair] as Token, countIndex: pair, end: pair + 1 };
      usedTo = pair + 1;
      index = last;
      continue;
    }
    usedTo = Math.max(last + 1, right?.marked === true ? right.countIndex + 1 : 0);
    index = last;
  }
  return withCountedWearers(reader.tokens, withPinsMeant(reader.tokens, withBareCounts(reader, mentions)));
};

// "the flower girl needs a little crown, 40"
const wornBy = ({ exact, start }: { exact?: number; start: number }, tokens: readonly Token[], piece: PieceKind): { wearer?: string } => {
  const wearer = exact === 1 ? wantedByOne(tokens, start, piece) : exact === 2 ? wantedByBoth(tokens, start) : undefined;
  return wearer === undefined ? {} : { wearer };
};

// "each corsage 30, each bout 14": what stands behind is no count.
const pricedOne = ({ tokens }: Reader, index: number): boolean => /^(each|every|per)$/.test(tokens[index - 1]?.text ?? '');

// "BH 12, corsage 4, crown 1": a list with its numbers after the names, when no number stands before any name.
const withBareCounts = (reader: Reader, mentions: readonly Mention[]): Mention[] => {
  const goesOnWith = (mention: Mention): boolean => mention.count !== undefined && mention.countIndex === mention.index;
  const named = mentions.filter((mention) => !goesOnWith(mention));
  if (named.length < 2 || named.some((mention) => mention.countIndex !== undefined) || pricedInRow(reader)) return [...mentions];
  const counts = named.map((mention) => countRight(reader, mention.last + 1));
  // "crowns 12 roses, corsages 4" counts roses.
  const ofGoods = (count: (typeof counts)[number]): boolean =>
    reader.tokens[(count?.countIndex ?? 0) + 1]?.means['ingredient'] !== undefined;
  if (counts.some((count) => count === undefined || ofGoods(count)) || named.some(({ index }) => pricedOne(reader, index)))
    return [...mentions];
  return mentions.map((mention) => {
    const right = goesOnWith(mention) ? undefined : counts[named.indexOf(mention)];
    return right === undefined ? mention : { ...mention, count: right.count, countIndex: right.countIndex, end: right.countIndex + 1 };
  });
};
