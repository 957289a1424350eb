// Who wears them: "groom, 5 groomsmen, 2 dads, stepdad", "6 bridesmaids hair flowers", "groom + 4, plus FOB FOG".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { isRangeOrChoice, isSingle, type Token } from '../text/token.ts';
import { together } from '../wearers/across-lines.ts';
import { askHowMany } from '../wearers/ask-how-many.ts';
import { beforePrice } from '../wearers/before-price.ts';
import { behindGuests } from '../wearers/behind-guests.ts';
import { countedAgain } from '../wearers/counted-again.ts';
import { headsAlone } from '../wearers/head-counts.ts';
import { tellsWhoHasNone } from '../wearers/heads-named.ts';
import { tellsLess } from '../wearers/heads-told.ts';
import { kindsShared } from '../wearers/kinds-shared.ts';
import { listPutRight } from '../wearers/list-put-right.ts';
import { countsThemOrAll } from '../wearers/numbers-behind.ts';
import { oneLess } from '../wearers/one-less.ts';
import { piecesOf, withoutLost } from '../wearers/pieces-worn.ts';
import { pricedPerPiece } from '../wearers/priced-per-piece.ts';
import { readWearers } from '../wearers/read-wearers.ts';
import { withRoughTotal } from '../wearers/rough-total.ts';
import { severalEach } from '../wearers/several-each.ts';
import { listsStranger } from '../wearers/strange-wearers.ts';
import { disagrees, sumOfAll } from '../wearers/totals.ts';
import { forHead, party, tailPieces } from '../wearers/wearer-words.ts';
import type { Entry } from '../wearers/wearers-read.ts';
import { withoutWhole } from '../wearers/whole-then-parts.ts';
import { withoutDay } from '../wearers/without-day.ts';
import { wornBy } from '../wearers/worn-by.ts';

const joins = /^(plus|and|&|\+|n)$/;

const wearersFact = (entries: readonly Entry[], total?: number): Unworded => ({
  fact: 'wearers',
  wearers: entries.map(({ at: _, most: __, ...entry }) => entry),
  ...(total === undefined ? {} : { total }),
});

const countsFlowers = (token: Token | undefined): boolean =>
  token?.means['ingredient'] !== undefined && token.means['piece'] === undefined && token.means['role'] === undefined;

const twoNumbers = pattern('<plain> (and|&|\\+|plus) <plain>');
const whoseOwn = pattern('<plain> (grooms|brides) <role>');
const likeAnother = pattern('(same as (the)?|also (a|an)|doubles as|doubling as) (a|an|the)? <role>');

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  let list: { readonly at: number; readonly entries: readonly Entry[] } | undefined;
  for (const whole of together(reader, reader.untouched().slice(0, 40))) {
    const part = withoutDay(reader, whole);
    if (part.end - part.start > 80 || part.start < (findings.at(-1)?.end ?? 0)) continue;
    const others =
      pricedPerPiece(reader, part) ??
      headsAlone(reader, part) ??
      countedAgain(reader, part) ??
      listPutRight(reader, part) ??
      oneLess(reader, part) ??
      severalEach(reader, part) ??
      kindsShared(reader, part);
    if (others !== undefined) {
      findings.push(others);
      continue;
    }
    // "best man same as groom" lists no one.
    if (likeAnother.in(reader.tokens, part.start, part.end) !== undefined) continue;
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
    const given = list === undefined ? undefined : findings[list.at];
    if (later !== undefined && list !== undefined && given !== undefined) {
      // The list already given is told what they wear.
      const told = found(reader, given.start, given.end, [wearersFact(list.entries)]);
      findings[list.at] = { ...given, facts: [...(told.facts ?? []), ...(given.facts ?? []).slice(1)] };
      findings.push(later);
      continue;
    }
    const before = beforePrice(reader, part);
    if (before === undefined) continue;
    const own = behindGuests(reader, before);
    const tokens = reader.tokens.slice(own.start, own.end);
    const bridal =
      party.in(reader.tokens, own.start, own.end) !== undefined ||
      tokens.some((token) => /^(everyone|everybody|wearers)$/.test(token.text));
    if (!bridal && !tokens.some(({ means }) => means['role'] !== undefined)) continue;
    const read = withoutWhole(reader.tokens, readWearers(reader, own));
    if (read.loose && read.entries.length >= 2) continue;
    // "groom, best man, 3 ushers, one piker with his dog": a list without him would count too few; "groom (+2-3)" does not say how many.
    if (read.unsaid || countsThemOrAll(reader, own) || (read.entries.length >= 2 && listsStranger(reader.tokens, own.start, own.end))) {
      findings.push({ start: own.start, end: own.end, held: true });
      continue;
    }
    // "bridal party of 10-12", "3 or 4 corsages for the mums"
    const opens = [forHead, tailPieces].map((form) => form.in(reader.tokens, own.start, own.end)?.kept['n']?.number);
    const open = ({ number }: Token): boolean => Number(number?.amount) === read.total && !isSingle(number);
    if (tokens.some(open) || opens.some((number) => isRangeOrChoice(number))) {
      findings.push({ start: own.start, end: own.end, held: true });
      continue;
    }
    // "11 in the party plus the celebrant": whether she is one of them is not said.
    if (bridal && read.total !== undefined && read.heads === 1 && tokens.some((token) => joins.test(token.text))) continue;
    // "12 in the bridal party, 2 not wearing, so 11": it does not add up.
    if (bridal && tellsLess(reader, own)) {
      findings.push({ start: own.start, end: own.end, held: true });
      continue;
    }
    // "bridal party is 5 and 5": neither is the total.
    if (bridal && twoNumbers.in(reader.tokens, own.start, own.end) !== undefined) continue;
    if (bridal && read.total !== undefined && (read.entries.length === 0 || read.heads === 1)) {
      if (tellsWhoHasNone(reader, own)) continue;
      findings.push(found(reader, own.start, own.end, [{ fact: 'wearers', wearers: [], total: read.total }]));
      continue;
    }
    const counted = tokens.some((token) => token.number?.form === 'plain');
    const listed = read.entries.length >= 2 || (read.entries.length === 1 && counted && read.clean && read.heads === 1);
    const [only] = read.entries;
    // "2 roses groom, 4 ushers": the number before a flower counts no one.
    if (tokens.some((token, at) => token.number?.form === 'plain' && countsFlowers(tokens[at + 1]))) continue;
    // "mums and nans - corsages (4 all up)": how many of each is not said, and four is no price.
    if (read.unknown && read.total !== undefined && read.heads > 1 && read.clean && !listed) {
      const summed = sumOfAll(reader, own, read);
      findings.push(
        summed
          ? found(reader, own.start, own.end, [wearersFact(read.entries, read.total)])
          : { start: own.start, end: own.end, held: true },
      );
      continue;
    }
    // "6 ushers counting the best man, plus groom, so 8": he is one of the six, or he is not.
    if (read.total !== undefined && !read.unknown && read.entries.length > 1 && disagrees(reader, own, read)) {
      findings.push({ start: own.start, end: own.end, held: true });
      continue;
    }
    // "2 mums corsages, nans pin-ons": how many nans is not said, and the two are no pin-ons.
    if (read.unknown && read.kindWaits && !listed && read.heads > 1 && !read.pieceless) {
      findings.push({ start: own.start, end: own.end, held: true });
      continue;
    }
    // "10 people wearing flowers + the celebrant": whether she is one of them is not said.
    if (read.entries.length === 1 && read.heads === 1 && read.total !== undefined && read.total > (only?.count ?? 0))
      if (own.start < (only?.at ?? 0) && joins.test(reader.tokens[(only?.at ?? 0) - 1]?.text ?? joins.source)) continue;
    // "bride wants 560 altogether" counts no wearers.
    const folk = tokens.some((token) => /^(side|people|ppl|men|guys|party|wearing|wearers|family)$/.test(token.text));
    if (read.entries.length === 1 && read.total !== undefined && read.total !== only?.count && !folk) continue;
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
        !tokens.slice(Math.max(0, at - 5), at).some((each) => /^(aged|ages?)$/.test(each.text)) &&
        tokens[at - 2]?.means['role'] === undefined,
    ).length;
    const tail = tailPieces.in(reader.tokens, own.start, own.end);
    if (lineCounts > 1 || (lineCounts === 1 && tail === undefined && forHead.at(reader.tokens, own.start, own.end) === undefined)) continue;
    const many = Number(forHead.at(reader.tokens, own.start, own.end)?.kept['n']?.number?.amount ?? 0);
    const said =
      tail?.kept['p'] === undefined
        ? undefined
        : { piece: tail.kept['p'].means['piece'] as PieceKind, count: Number(tail.kept['n']?.number?.amount) };
    // "2 mums wearing corsages so 10 bouts": ten are not all of them.
    const ofSome =
      said !== undefined && said.count === read.total && read.entries.some(({ piece }) => (piece ?? said.piece) !== said.piece);
    const facts = (entries: readonly Entry[]): Unworded[] => [
      wearersFact(entries, ofSome ? undefined : read.total),
      ...(read.unknown ? [] : piecesOf(entries, said, many)),
    ];
    // "3 groomsmen, 2 grooms dads": his fathers, and no two grooms.
    if (whoseOwn.in(reader.tokens, own.start, own.end) !== undefined) {
      findings.push({ start: own.start, end: own.end, held: true });
      continue;
    }
    // "doors at 3:30. 165 guests": how many come, and nothing that they wear.
    if (read.entries.every(({ wearer, piece }) => wearer === 'guests' && piece === undefined) && said === undefined && !folk && many === 0)
      continue;
    // "groom 32, bride 30" tells how old they are, or what they pay.
    if (read.entries.some((each) => /^(grooms|brides)$/.test(each.wearer) && each.count > 4)) continue;
    const unsure = read.entries.filter((each) => each.most !== undefined);
    if (unsure.length > 0) {
      if (unsure.length === 1) findings.push(askHowMany(reader, own, read.entries, facts));
      continue;
    }
    list = { at: findings.length, entries: read.entries };
    findings.push(found(reader, own.start, own.end, facts(read.entries), withoutLost(reader, own, read.pieceless && said === undefined)));
  }
  return findings;
};

export const wearersList: Phrase = {
  name: 'wearers',
  examples: ['groom, 5 groomsmen, 2 dads, stepdad', '6 bridesmaids hair flowers, 2 flower girls crowns'],
  find: (reader) => find(reader).map((finding) => withRoughTotal(reader, finding)),
};
