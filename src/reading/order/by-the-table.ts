// Pieces for people counted by the table: "2 tables of 8, a buttonhole each" is sixteen. Where the tables are not all told alike, nothing is counted.

import type { PieceKind } from '../../handbook/pieces.ts';
import { beginsAt, beginsIn, firstIn, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { isSingle, type Token } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';
import { amountSaid } from './price-each.ts';

const group =
  '(tables|table|rows|row|teams|team|groups|group|pews|squads|families|classes|choirs|benches|coaches|minibuses) (of|x|seating|with|at) (about|around)?';
const groups = `<m:count> (round|long|full|big|small|top)? ${group} <n:count> ((,|and|&|\\+|plus|n){1,2} (another)? (<m2:count>|one|a) (table|tables|row|rows|team|teams|group|groups)? (of|x) <n2:count>)? (people|guests|ppl|pax|players|kids|seats|heads)?`;
const kinds = '(<material>)? (<p:piece>) ((,|and|&|\\+|n|plus|with){1,2} (a|an|one|1)? (<material>)? <q:piece>)?';
const forAll =
  '(<each>|per person|per guest|per head|a head|per player|each guest|each person|for each|for each guest|for everyone|for everybody|for each of them|for all|for all of them|for the lot|all round|everyone)';
const gets =
  '(each|every|everyone|everybody|all|they) (guest|person|player|one|of them|all|each)? (gets|get|getting|has|have|having|wears|wear|wearing|needs|need|wants|want|to have|to get|to wear|will have|will wear|with|in)';
const link = '(,|-|:|;|.|with|and|so|needs|need|want|wanting){0,2}';
const some = '(<k:count>|a|an|one|1)?';
const forms = [
  pattern(`${groups} ${link} ${some} ${kinds} ${forAll}`),
  pattern(`${groups} ${link} ${gets} ${some} ${kinds}`),
  pattern(`${some} ${kinds} ${forAll} (for|to|at) (the|our|all)? ${groups}`),
];
const perTable = pattern(
  `${groups} ${link} ${some} ${kinds} (per|a|at each|on each|for each|each|at every|on every|for every) (table|row|team|group)`,
);

// "3 groups of 4 making a crown each": a workshop, or work that is done.
const making = pattern(
  `${groups} ${link} (each|everyone|all|they|who)? (guest|person|one|of them|all|each)? (makes|making|make|made|to make|will make) ${some} <word>{0,1} <piece> (${forAll})?`,
);

// "each makes a corsage, $65 pp", "2 groups of 7 making crowns, 50 pp": what those pay who come to make one, and no price of a piece.
const workshop = [
  pattern(
    '(each|everyone|everybody|they|all) (guest|person|one|girl|lady|student|of them|all|each)? (makes|making|make|to make|will make) (a|an|one|1|their|their own) <word>{0,1} <piece> (each)? (,|-|:|;|at|@|for){0,2} <amount> <each>',
  ),
  pattern(
    '(<role>|<bench>|people|ppl|guests|girls|ladies|students|<n:count>) (each|all|who)? (making|make|to make|will make) (a|an|one|1|their|their own)? <word>{0,1} <piece> (each)? (,|-|:|;|at|@|for){0,2} <amount> <each>',
  ),
];
const payingToMake = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  if (!beginsIn(workshop, tokens, 0, tokens.length)) return undefined;
  const match = firstIn(workshop, tokens, 0, tokens.length);
  return match === undefined || !reader.free(match.end - 1) ? undefined : { start: match.start, end: match.end, held: true };
};

// "10 tables of 2 bouts": two at each of them, or two in all? "2 bouts per table, 10 tables" tells it.
const ofPieces = pattern(
  `<m:count> (round|long|full|big|small|top)? ${group} <n:count> (<material>)? <p:piece> ((,|-)? (at|@) <v:amount>|(,|-|at|@|for){0,2} <v:amount> <each>)?`,
);
const tableFirst = pattern(
  `<m:count> (tables|rows|teams|families) (,|-|:|with|at|and){0,2} <n:count> (<material>)? <p:piece> (per|a|at each|on each|for each|each) (table|row|team|family)`,
);
const tableLast = pattern(
  `<n:count> (<material>)? <p:piece> (per|a|at each|on each|for each|each|every) (table|row|team|family) (,|-|for|at|on|with|x|\\(|and|we have|there are|there's){0,2} <m:count> (tables|rows|teams|families)`,
);
const goesOn = /^(,|;|-|\.|!|\(|\)|at|@|for|please|pls|thanks|ta|so|and|all|in|we|they)$/;
const endsThere = (token: Token | undefined): boolean =>
  token === undefined || token.kind === 'line' || token.number?.form === 'money' || goesOn.test(token.text);

const leads = /^(need|needs|want|wants|we|so|for|and|,|:|-|order|they|ok|hi|have|got|its|it's|quote|client|bride|plus|\+)$/;
const isOrdered = (tokens: readonly Token[], { start, end }: Match): boolean =>
  endsThere(tokens[end]) && (start === 0 || tokens[start - 1]?.kind === 'line' || leads.test(tokens[start - 1]?.text ?? ''));

const asked = (reader: Reader, { start, end, kept }: Match): Finding => {
  const words = reader.words(start, end);
  const piece = kept['p']?.means['piece'] as PieceKind;
  const said = kept['v']?.number;
  const price: Unworded[] = said === undefined ? [] : [{ fact: 'price', ...amountSaid(said), per: 'each' }];
  const choices = [countOf(kept), number(kept['n'])].map((count) => ({
    words: soMany(count),
    facts: found(reader, start, end, [{ fact: 'pieces', piece, count }, ...price]).facts ?? [],
  }));
  return { start, end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};

const all = [...forms, perTable, making, tableFirst, tableLast, ofPieces];

// "2 tables of 8, a buttonhole per table"; in "10 tables with 2 bouts at each table" the two are the buttonholes.
const isSeated = (tokens: readonly Token[], { start, end }: Match): boolean =>
  perTable.at(tokens, start, tokens.length) !== undefined && tableFirst.at(tokens, start, tokens.length)?.end !== end;

const number = (token: Token | undefined): number => Number(token?.number?.amount);
const isRough = (match: Match): boolean =>
  Object.values(match.kept).some(
    (token) => token?.number !== undefined && (token.number.max !== undefined || token.number.or !== undefined),
  );

const countOf = ({ m, n, m2, n2, k }: Match['kept']): number => {
  const heads = number(m) * number(n) + (n2 === undefined ? 0 : (m2 === undefined ? 1 : number(m2)) * number(n2));
  return heads * (k === undefined ? 1 : number(k));
};

/** As many of each kind as there are people at all the tables. */
export const byTheTable = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  const paying = payingToMake(reader);
  if (paying !== undefined) return paying;
  if (!all.some((form) => form.might(tokens))) return undefined;
  for (let index = 0; index < tokens.length; index++) {
    if (!beginsAt(all, tokens, index)) continue;
    const match = all.map((form) => form.at(tokens, index, tokens.length)).find((each) => each !== undefined);
    if (match === undefined) continue;
    const { start, end, kept } = match;
    if (!allFree(reader, start, end)) return undefined;
    const [piece, other] = [kept['p'], kept['q']].map((token) => token?.means['piece'] as PieceKind | undefined);
    if (piece === undefined) return undefined;
    const bare = ofPieces.at(tokens, start, tokens.length);
    if (bare?.end === end && isSingle(kept['m']?.number) && isSingle(kept['n']?.number) && number(kept['m']) > 1)
      return isOrdered(tokens, match) ? asked(reader, match) : { start, end, held: true };
    const unsure = isRough(match) || isSeated(tokens, match) || (other !== undefined && kept['k'] !== undefined);
    if (unsure || piece === other) return { start, end, held: true };
    const facts = [piece, ...(other === undefined ? [] : [other])].map(
      (kind): Unworded => ({ fact: 'pieces', piece: kind, count: countOf(kept) }),
    );
    const takes = placesIn({ start, end }).filter((at) => tokens[at]?.means['material'] === undefined);
    return found(reader, start, end, facts, takes);
  }
  return undefined;
};
