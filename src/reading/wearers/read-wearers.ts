// The wearers of one sentence, each with a count and what they wear.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isCount, roughly } from '../text/token.ts';
import { ageEnd } from './ages.ts';
import { asideOf, countInside, remarkAt } from './asides.ts';
import { declinedAt } from './declined.ts';
import { onEachSide } from './each-side.ts';
import { namesNobody } from './heads-named.ts';
import { listEndsAt } from './list-ends.ts';
import { menBehind } from './men-behind.ts';
import { behind, behindPause, countsBehind, upToSum } from './numbers-behind.ts';
import { countedWithin, oneOfThose } from './one-of-those.ts';
import { parentOf } from './parents.ts';
import { bornTogether, countFor, inSets, nameOf, openEnded, parentsOf } from './role-counts.ts';
import { anotherKind, kindsAhead, pieceForAll, piecePaused, shareBehind, shareByGroup, stillFor } from './share-pieces.ts';
import { tellsWho, whoTheyAre } from './told-first.ts';
import { shareWithBefore } from './too.ts';
import { totalAt, totalSaid } from './totals.ts';
import { leftWaiting, type Waiting, waitsForCount } from './waiting.ts';
import { afterAll, countedBefore, entry, fillers, forHead, notThese, oneEach, partyOf, speaker } from './wearer-words.ts';
import type { Entry, WearersRead } from './wearers-read.ts';

export const readWearers = (reader: Reader, part: Part): WearersRead => {
  const entries: Entry[] = [];
  let clean = true;
  const waiting: Waiting[] = [];
  let [heads, leftOut] = [0, 0];
  let [excluded, counted, unsaid] = [false, false, false]; // unsaid: how many men are behind him
  let negated = false; // "no best man"
  let loose = -1; // "groom, bm, 4 and fob": four of whom?
  const head = forHead.at(reader.tokens, part.start, part.end);
  let common = head?.kept['p']?.means['piece'] as PieceKind | undefined;
  const numbersLast = countsBehind(reader, part);
  const ahead = head === undefined ? kindsAhead(reader, part) : [];
  const told = head === undefined ? speaker.at(reader.tokens, part.start, part.end) : undefined;
  const other = reader.tokens.slice(told?.end ?? part.end, part.end).some((token) => token.means['role'] !== undefined);
  let index = head?.end ?? (told !== undefined && other ? told.end : part.start);
  while (index < part.end) {
    const token = reader.tokens[index];
    if (token === undefined) break;
    const ended = listEndsAt(reader, index, part.end, entries.length);
    if (ended !== undefined) {
      index = ended;
      continue;
    }
    // "groom side 6 men 2 ladies": the groom is not named.
    const side = firstAt(namesNobody, reader.tokens, index, part.end);
    if (side !== undefined) {
      index = side.end;
      continue;
    }
    const notThem = notThese.at(reader.tokens, index, part.end) !== undefined;
    if (!notThem && /^(bar|except|excluding|without|minus|not|apart|excl|leave|leaving|less)$/.test(token.text)) excluded = true;
    if (notThem || /^(no|nothing|none)$/.test(token.text)) negated = true;
    // "6 ushers including the best man, groom": he is one of the six.
    if (countedWithin(reader.tokens, index)) counted = true;
    else if (/^(,|plus|\+|;)$/.test(token.text)) counted = false;
    const listed = entries.length;
    const within = oneOfThose(reader, index, part.end, entries);
    if (within !== undefined) {
      if (entries.length > listed) heads += 1;
      index = within;
      continue;
    }
    const paused = common === undefined ? piecePaused(reader, index, part.end, entries) : undefined;
    if (paused !== undefined) {
      index = paused;
      continue;
    }
    // "corsages 2 mums 1 gran, bouts 2 dads": a kind and then those who have it.
    if (ahead.includes(index)) {
      common = token.means['piece'] as PieceKind;
      index += 1;
      continue;
    }
    // "buttonholes on 5 groomsmen, corsages on 2 mums"
    const further = head === undefined || index === head.end ? undefined : forHead.at(reader.tokens, index, part.end);
    if (further !== undefined && further.kept['n'] === undefined) {
      common = further.kept['p']?.means['piece'] as PieceKind | undefined;
      index = further.end;
      continue;
    }
    const stop = upToSum(reader.tokens, index, part.end);
    const match =
      (tellsWho(entries) ? countedBefore.at(reader.tokens, index, part.end) : undefined) ??
      behind(reader, index, stop, numbersLast) ??
      behindPause(reader, index, stop) ??
      entry.at(reader.tokens, index, stop);
    if (match?.kept['r'] !== undefined) {
      const role = match.kept['r'];
      const sets = inSets(reader.tokens.slice(match.start, match.end), role);
      if (sets === undefined || anotherKind(reader, match, part.end)) loose = match.start;
      const number = sets === undefined ? undefined : (match.kept['n'] ?? match.kept['m'] ?? countInside(reader, match));
      const most = number?.number?.max ?? number?.number?.or?.at(-1);
      const near = reader.tokens.slice(Math.max(0, match.start - 1), match.end);
      const both = near.some((each) => /^(for )?both$/.test(each.text));
      const born = bornTogether(near, role) ?? parentsOf(near, role);
      const count = countFor(role.text, number === undefined ? born : Number(number.number?.amount), both);
      if (!negated) heads += 1;
      if (excluded) leftOut += count ?? 0;
      if (!excluded && !negated && !counted) {
        if (count === undefined)
          waiting.push({
            role: role.means['role'] ?? role.text,
            piece: match.kept['p']?.means['piece'] as PieceKind | undefined,
            end: match.end,
          });
        else {
          // "two grooms, 4 ushers each"
          const couple = entries.find((each) => /^(grooms|brides)$/.test(each.wearer));
          const times =
            couple !== undefined && reader.tokens[match.end - 1]?.text === 'each' && match.kept['p'] === undefined ? couple.count : 1;
          const sides = (onEachSide(reader, match.end, part.end) === undefined ? times : 2) * (sets ?? 1);
          const aside = asideOf(reader, match.start, match.end);
          const wearer = nameOf(parentOf(reader, match, entries, part) ?? role.means['role'] ?? role.text, count * sides);
          common = stillFor(wearer, common, entries);
          const piece = (match.kept['p']?.means['piece'] as PieceKind | undefined) ?? aside.piece ?? common;
          entries.push({
            at: match.start,
            wearer,
            count: count * sides,
            ...(most === undefined ? {} : { most: Number(most) * sides }),
            ...roughly(number),
            ...ofKind(piece),
            ...(aside.note === undefined ? {} : { note: aside.note }),
          });
        }
      }
      index = (negated ? afterAll.at(reader.tokens, match.end, part.end)?.end : onEachSide(reader, match.end, part.end)) ?? match.end;
      // "no mums or nans": neither of them.
      negated &&= /^(or|nor)$/.test(reader.tokens[index]?.text ?? '');
      const declined = declinedAt(reader, index, part.end, match.start, entries);
      if (declined !== undefined) {
        entries.length -= declined.gone;
        heads -= declined.gone;
        index = declined.end;
        continue;
      }
      if (listEndsAt(reader, index, part.end, entries.length) !== undefined) continue;
      const aged = ageEnd(reader, index, part.end, entries.at(-1)?.count);
      if (aged !== undefined) {
        index = aged;
        continue;
      }
      const remark = remarkAt(reader, index, part.end);
      const noted = entries.at(-1);
      if (remark !== undefined && noted !== undefined) {
        noted.note = remark.words;
        index = remark.end;
        continue;
      }
      const men = menBehind(reader, { start: match.start, end: index }, part.end, role.means['role'] ?? '', entries.at(-1)?.piece);
      if (men === 'unsure') unsaid = true;
      else if (men !== undefined) {
        entries.push(men.entry);
        index = men.end;
      }
      continue;
    }
    const one = entries.length === 0 ? undefined : oneEach.at(reader.tokens, index, part.end);
    if (
      one !== undefined &&
      (one.end - index > 1 ||
        /^(need|needs|get|gets|want|wants|wear|wears|wearing|having|have|getting)$/.test(reader.tokens[index - 1]?.text ?? '')) &&
      (one.end === part.end || /^(,|for|on|please|pls)$/.test(reader.tokens[one.end]?.text ?? ''))
    ) {
      index = one.end;
      continue;
    }
    const total = totalAt(reader, index, part.end) ?? partyOf.at(reader.tokens, index, part.end);
    if (total !== undefined) {
      index = total.end;
      continue;
    }
    if (
      token.kind === 'word' &&
      token.number === undefined &&
      !(negated && /^(or|nor)$/.test(token.text)) &&
      !fillers.test(token.text) &&
      token.means['all'] === undefined &&
      token.means['material'] === undefined &&
      token.means['piece'] === undefined
    )
      clean = false;
    // "groom or best man": only one of them; "no mums or nans" names neither.
    if (token.text === 'or' && !negated && reader.tokens[index - 1]?.means['role'] !== undefined) loose = index;
    if (token.number !== undefined) {
      clean = false;
      if (isCount(token) && openEnded(reader.tokens[index + 1])) loose = index;
    }
    index += 1;
  }
  const first = whoTheyAre(reader, entries);
  const given = pieceForAll(reader, part, entries);
  shareWithBefore(reader, part, entries);
  if (given === undefined) shareByGroup(reader, entries);
  else for (const each of entries) each.piece ??= given;
  shareBehind(reader, entries);
  const said = totalSaid(reader, part, Math.max(0, ...entries.map((each) => each.count)), leftOut);
  const total = said === undefined ? first : said.total;
  return {
    entries,
    clean,
    unknown: unsaid || leftWaiting(waiting, entries) > 0,
    unsaid,
    kindWaits: waiting.some((each) => waitsForCount(reader.tokens, each)),
    heads,
    loose: loose >= 0 && !(said !== undefined && loose >= said.match.start && loose < said.match.end),
    pieceless: entries.every((each) => each.piece === undefined),
    ...(total === undefined || Number.isNaN(total) ? {} : { total }),
  };
};
