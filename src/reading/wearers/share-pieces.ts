// A piece said once for several wearers: "2 mums, 2 nans all corsages", "best man, 4 ushers, 2 dads - BH each", "bride and 3 bridesmaids hair flowers".

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Entry } from './wearers-read.ts';

// "MOB and MOG corsages, FOB FOG bouts", "groom, best man, 4 lads bouts": a piece said after several wearers is for those before it
// whom it suits; back to the comma it is for each of them.
export const shareByGroup = (reader: Reader, entries: Entry[]): void => {
  for (let at = entries.length - 1; at > 0; at--) {
    const [mine, before] = [entries[at], entries[at - 1]];
    if (mine?.piece === undefined || before === undefined || before.piece !== undefined) continue;
    const apart = reader.tokens
      .slice(before.at, mine.at)
      .some((token) => token.text === ',' || token.text === '.' || token.kind === 'line');
    // "mums x2 dads x2 nans x3 corsages" gives the dads none.
    const meant = mine.piece === 'buttonhole' ? !apart : !apart && !men.test(before.wearer);
    if (meant || suits(before.wearer, mine.piece)) before.piece = mine.piece;
  }
};

const besides = pattern('(and|&|n|plus|\\+|\\/)? (a|an|one|1)? <q:piece> (,|-|please|pls|\\))?');

/** "his mum and dad get corsage and bout": whose is which is not said. */
export const anotherKind = ({ tokens }: Reader, { kept, end }: Match, last: number): boolean => {
  const behind = kept['p'] === undefined ? undefined : besides.at(tokens, end, last);
  if (behind === undefined || behind.kept['q']?.means['piece'] === kept['p']?.means['piece']) return false;
  return behind.end === last || /^[,)]$/.test(tokens[behind.end - 1]?.text ?? '');
};

const joined = pattern('(,)? (and|&|n|plus|\\+) (the|our|her|his|both|all){0,2} (<count>|one)? (<role>)');

/** "mums get the corsages, and the 2 nans": who is joined on behind has the same, where such a wearer usually does. */
export const shareBehind = (reader: Reader, entries: Entry[]): void => {
  for (let at = 1; at < entries.length; at++) {
    const [before, mine] = [entries[at - 1], entries[at]];
    if (before?.piece === undefined || mine === undefined || mine.piece !== undefined || !suits(mine.wearer, before.piece)) continue;
    for (let index = before.at + 1; index <= mine.at; index++)
      if (joined.at(reader.tokens, index, reader.tokens.length) !== undefined) mine.piece = before.piece;
  }
};

const polite = '(please|pls|ta|thanks|too|,){0,2}';
const forAll = [
  pattern(
    `(for|-|:|=|(they|and|they're|theyre){0,1} (all|<all>|both|each|every one|everyone|everybody) (are|of them|will be|will|to be)? (get|gets|getting|have|has|having|to have|with|in|wear|wearing|want|wants|wanting|need|needing|given|on)?) (a|an|the)? (<material>)? <p:piece> (each|all|apiece)? ${polite}`,
  ),
  pattern(
    `(<material>)? <p:piece> (all round|all around|all of them|all for them|for all of them|for each of them|for them all|for (the|that) (whole)? lot|across the board|for everyone|for everybody|for all|each|all|<all>) ${polite}`,
  ),
];

// "both mums and 3 nans, corsages"
const tail = pattern(`, (<material>)? <p:piece> (for (them|all of them|all|each|both))? ${polite}`);

const men =
  /^(groom|grooms|best m[ae]n|ushers?|groomsm[ae]n|step)?(fathers?|grandfathers?|brothers?|sons?|uncles?|page ?boys?|ring bearers?|nephews?|godfathers?|m[ae]n|boys?|pallbearers?|flower boys?)?( of the (bride|groom)|-in-law)?$/;
const elders = /^(step|grand|god)?mothers?|^aunts?$|^m[ou]m/;
const women = /^(bride|brides|sisters?|daughters?|.*bridesmaids?|m(aids?|atrons?) of hono(u)?r|flower girls?|nieces?|wom[ae]n|girls?)$/;

/** Whether a wearer usually has such a piece. */
export const suits = (wearer: string, piece: PieceKind): boolean => {
  if (piece === 'buttonhole') return !elders.test(wearer) && !women.test(wearer);
  if (men.test(wearer)) return false;
  return piece === 'hair flower' || piece === 'flower crown' ? !elders.test(wearer) : true;
};

/** Whether it is what such a wearer has, and nothing else. */
export const surely = (wearer: string, piece: PieceKind | undefined): boolean => {
  if (piece === undefined) return false;
  if (piece === 'buttonhole') return men.test(wearer);
  return piece === 'hair flower' || piece === 'flower crown' ? women.test(wearer) : elders.test(wearer);
};

/** "corsages for bride's mum, groom, 4 ushers": the corsages end where the men begin. */
export const stillFor = (wearer: string, piece: PieceKind | undefined, before: readonly Entry[]): PieceKind | undefined =>
  piece === undefined || piece === 'buttonhole' || suits(wearer, piece) || !before.some((each) => each.piece === piece) ? piece : undefined;

const kindAndWearer = pattern('<p:piece> (the|our|both|all)? (<count>)? <role>');

/** "corsages 2 mums 1 gran, bouts 2 dads 1 grandad": where each kind stands before those who have it; none unless all of the list goes so. */
export const kindsAhead = ({ tokens }: Reader, { start, end }: Part): number[] => {
  if (kindAndWearer.at(tokens, start, end) === undefined || tokens[end - 1]?.means['piece'] !== undefined) return [];
  const places: number[] = [];
  for (let index = start; index < end; index++) {
    if (tokens[index]?.means['piece'] === undefined) continue;
    const opens = index === start || /^(,|and|&|n|plus|\+)$/.test(tokens[index - 1]?.text ?? '') || tokens[index - 1]?.kind === 'line';
    if (!opens || kindAndWearer.at(tokens, index, end) === undefined || tokens[index]?.means['piece'] === 'unspecified') return [];
    places.push(index);
  }
  return places;
};

const behindPause = pattern('(,|:) (all|in|with)? (<material>)? <p:piece>');
const closesPause = /^(,|and|&|n|plus|\+|\.)$/;

/** "mums - corsages, dads - bouts": a piece behind a pause is for those named since the last one was said. Gives where it ends. */
export const piecePaused = (reader: Reader, index: number, end: number, entries: readonly Entry[]): number | undefined => {
  const match = behindPause.at(reader.tokens, index, end);
  const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  const bare = entries.slice(entries.findLastIndex((each) => each.piece !== undefined) + 1);
  if (match === undefined || piece === undefined || piece === 'unspecified' || bare.length === 0) return undefined;
  const next = match.end < end ? reader.tokens[match.end] : undefined;
  const more = reader.tokens[match.end + 1];
  const closes = next === undefined || next.kind === 'line' || (closesPause.test(next.text) && more?.means['piece'] === undefined);
  // At the end it may be for all of them.
  if (!closes || (match.end === end && bare.length === entries.length)) return undefined;
  if (bare.length > 1 && !bare.every((each) => suits(each.wearer, piece))) return undefined;
  for (const each of bare) each.piece = piece;
  return match.end;
};

/** A line that says only what all of those named before it wear: "BH each", "all bouts". */
export const saysForAll = (reader: Reader, part: Part): boolean =>
  forAll.some((form) => {
    const match = form.at(reader.tokens, part.start, part.end);
    return match?.end === part.end && match.kept['p']?.means['piece'] !== 'unspecified';
  });

/** The piece that is meant for everybody listed; undefined when some have their own. */
export const pieceForAll = (reader: Reader, part: Part, entries: readonly Entry[]): PieceKind | undefined => {
  const said = entries.filter((each) => each.piece !== undefined);
  const last = entries.at(-1);
  if (last === undefined || said.length > 1 || (said.length === 1 && last.piece === undefined)) return undefined;
  for (let index = last.at; index < part.end; index++) {
    for (const form of forAll) {
      const match = form.at(reader.tokens, index, part.end);
      const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
      if (match?.end === part.end && piece !== undefined && piece !== 'unspecified') return piece;
    }
  }
  const behind = tail.in(reader.tokens, last.at, part.end);
  const told = behind?.end === part.end ? (behind.kept['p']?.means['piece'] as PieceKind | undefined) : undefined;
  const { piece = told } = last;
  return piece !== undefined && entries.length > 1 && entries.every((each) => suits(each.wearer, piece)) ? piece : undefined;
};
