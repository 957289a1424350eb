// All of a number but some: "all 10 at the head table wear one, except the 2 kids", "8 ushers but 2 are away so 6". Read where the
// difference is plain, or told behind.

import type { PieceKind } from '../../handbook/pieces.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isCount } from '../text/token.ts';
import { countFor, nameOf } from './role-counts.ts';

const opens = "(so|ok|we have|we've|there's|theres|got){0,2}";
const folk =
  '(people|persons|ppl|pax|folk|folks|guests|adults|family members|family|relatives|of them|of us|men|women|lads|guys|ladies|<role>)?';
const place =
  "((,|-)? (at|on|in|from) (the|our|his|her|their)? (head|top|main|family|bridal|bride's|groom's|brides|grooms|wedding|whole|full)? (table|party|line up|lineup|squad|family|<other>))?";
const wear =
  '(,)? (are|is|will|to|all|each){0,2} (wear|wears|wearing|get|gets|getting|have|has|having|need|needs|want|wants) (a <piece>|a flower|one each|one|them|flowers|it)?';
const except = '(,|-|\\(|;)? (all)? (except|except for|bar|apart from|excluding|but not|not|minus|other than|without) (for)?';
const them = `(the|his|her|our)? (<l:count>|one)? (of the)? (little|small|wee)? <r:role> ((and|&|n) (the)? <q:role>)? (\\))?`;
const so = "(,|-|so|=|that's|thats|makes|making|makes it|leaves|leaving){1,3} (it's|its)? (only|just)? <s:count>";
const behind = '(wearing|to wear|in all|in total|total|flowers|<all>|of them)? (them|one|flowers)?';

const allOf = pattern(`${opens} (all|all of the|all the) <n:count> ${folk} ${place} ${wear} ${except} ${them} (${so} ${behind})?`);
const everyone = pattern(`${opens} (everyone|everybody) ${place} ${wear} ${except} ${them} ${so} ${behind}`);
// "10 groomsmen but 1 is allergic so 9": whatever is said of the one, the sum says that he wears none.
const someSo = pattern(
  `${opens} (the)? <m:count> <g:role> (in all|in total|total)? (,|-|\\(|but|and|though|only|;){1,3} (<k:count>|one) (of them|of those|of whom)? (<any>){1,6} ${so} ${behind}`,
);

// "12 of the 15 are wearing", "out of 15 only 9 want one", "9 wearing, 3 not"
const wears =
  '(wear|wears|wearing|want|wants|get|gets|getting|have|having|need|needs) (one|them|any|a flower|flowers|(a|an|the|their)? (<material>)? <p:piece>)? (each|on|only|please|pls){0,2}';
const someOf = [
  `${opens} (only|just)? <s:count> (people|ppl|of them)? (out)? of (the|those|them|our|their|her|his)? <n:count> (wedding|day|evening|invited|adult|dinner|ceremony)? (<g:role>|people|ppl|pax|heads|staff|seated|attendees|of them)? (are|is|will|be|actually|only){0,2} ${wears}`,
  `${opens} (out)? of (the|those)? <n:count> (<g:role>|people|ppl|guests)? (,)? (only|just)? <s:count> (are|is|will|be|actually){0,2} ${wears}`,
  `${opens} (only|just)? <s:count> (people|ppl|of them)? ${wears} (,)? (out)? of (the)? <n:count> (people|ppl|guests|in the party|in all)?`,
].map((source) => pattern(source));
// "all bar 2 of the 14 are wearing one"
const allBarOf = pattern(
  `${opens} (all|everyone|everybody) (except|bar|but|apart from|minus|other than) <k:count> (out)? of (the|those)? <n:count> (<g:role>|people|ppl|guests)? (are|is|will|be){0,2} ${wears}`,
);
const someNot = pattern(
  `${opens} <s:count> (people|ppl|of them)? (wearing|to wear|will wear) (one|them)? (,|and|but|-){1,2} <k:count> (of them)? (not|aren't|arent|won't|wont|not wearing)`,
);

const amount = (match: Match, name: string): number | undefined => {
  const token = match.kept[name];
  return token === undefined ? undefined : isCount(token) ? Number(token.number?.amount) : Number.NaN;
};

const someLess = (reader: Reader, match: Match): Finding | undefined => {
  const { g, k } = match.kept;
  const [all, gone, left] = [amount(match, 'm') ?? 0, amount(match, 'k') ?? 1, amount(match, 's')];
  const words = reader.tokens.slice(match.start, match.end);
  const between = words.slice(k === undefined ? words.findIndex(({ text }) => text === 'one') + 1 : words.indexOf(k) + 1);
  // "6 bridesmaids, 2 flower girls, so 4 combs" are others, and what they wear.
  if (between.some(({ means }) => means['role'] !== undefined || (means['piece'] ?? 'unspecified') !== 'unspecified')) return undefined;
  const role = g?.means['role'];
  if (role === undefined || !(left !== undefined && left > 0 && all - gone === left)) return undefined;
  const wearers = [{ wearer: nameOf(role, left), count: left }];
  return found(reader, match.start, match.end, [{ fact: 'wearers', wearers, total: left }]);
};

const some = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = [...someOf, someNot, allBarOf].map((form) => form.at(reader.tokens, start, end)).find((each) => each?.end === end);
  const [all, but] = match === undefined ? [] : [amount(match, 'n'), amount(match, 'k')];
  const total = match === undefined ? undefined : (amount(match, 's') ?? (all ?? Number.NaN) - (but ?? Number.NaN));
  if (match === undefined || total === undefined || !(total > 0) || (all !== undefined && !(all > total))) return undefined;
  const role = match.kept['g']?.means['role'];
  // "8 of the 120 guests get lapels": so many of them, and of these.
  const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
  const wearers = role === undefined ? [] : [{ wearer: nameOf(role, total), count: total, ...ofKind(piece) }];
  const worn = piece === undefined || match.kept['k'] !== undefined ? [] : [{ fact: 'pieces' as const, piece, count: total }];
  return found(reader, start, end, [{ fact: 'wearers', wearers, total }, ...worn]);
};

/** How many of all of them wear one; held where the numbers disagree. */
export const allButSome = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const { tokens } = reader;
  const less = someSo.might(tokens) ? someSo.at(tokens, start, end) : undefined;
  if (less?.end === end) return someLess(reader, less);
  const told = some(reader, { start, end, asked: false });
  if (told !== undefined) return told;
  const match = [allOf, everyone].map((form) => form.at(tokens, start, end)).find((each) => each?.end === end);
  if (match === undefined) return undefined;
  const { r, q } = match.kept;
  const said = amount(match, 'l');
  const [one, other] = [countFor(r?.text ?? '', said, false), q === undefined ? 0 : countFor(q.text, undefined, false)];
  const gone = one === undefined || other === undefined ? undefined : one + other;
  const [all, left] = [amount(match, 'n'), amount(match, 's')];
  const total = all === undefined ? left : gone === undefined ? undefined : all - gone;
  if (total === undefined || !(total > 0) || (left !== undefined && left !== total)) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'wearers', wearers: [], total }]);
};
