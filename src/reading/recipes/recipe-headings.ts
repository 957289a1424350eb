// What a recipe is headed or closed by: "per buttonhole", "corsage:", "each", "for the 40 bouts", "groom gets".

import { quantity } from '../goods/quantity.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { roles } from '../words/people-words.ts';

export const perPiece = pattern(
  '(<each>|per|for each|for every|in each|each|for a|for an|a|an|in a|in every|into each|every|for one|for 1|in one|in 1|to a|p /|/) <p:piece> (has|gets|have|needs|takes|uses|is|contains|:|=|-|,)? ',
);
export const perEach = pattern('(<each>|each one|for each)');
export const heading = pattern(
  '(<p:piece>|recipe|<r:role>) (recipe|each|for the <event>|for (each|any|one) of (the|my|our|her|their|his) <role>)? (<p:piece>|<r:role>)? ((\\()? (without|no|minus|with no|w / o) (the|any)? <ingredient> (\\))? (:|,)|:|=|-|is made up of|are made up of|is made of|are made of|is made from|are made from|is made with|are made with|consists of|consist of|gets|has|have|is|takes|take|needs|need|uses|use|get|contains|contain|wants|want|will have|to have|are|with|w /|w|recipe:)',
);
export const forPiece = pattern('for (the|our)? <p:piece>');
/** "no gyp in the bouts, just 1 rose 1 fern": names the kind of what is counted out beside it. */
export const inPiece = pattern('(in|into) (the|our|all the|all) <p:piece>');
/** "… for each groomsman" */
export const forWearer = pattern('(for|<each>) (each|every|the|all the|all|both)? <r:role>');
/** "… - that's the corsage", "… and that's yer lapel" */
export const thatsThe = pattern(
  "((and|so)? (that's|thats|that is|that'll be|thatll be|that will be|that makes|there's|theres|bob's|bobs)|makes|=) (the|a|an|one|1|our|my|your|yer|ur|yr|his|her|their|it for the|it for a) <p:piece> (recipe|then)?",
);
/** "2 roses, 1 fern - corsage", "3 roses 2 wax (corsage)", "1 protea 2 wax = bout": the piece behind a sign, at the very end. */
export const endsWithPiece = pattern('(-|=|:|,|\\(|\\>|- \\>) (a|an|the|each|per|for|one)? <p:piece> (each|recipe)? (\\))?');
/** "an extra rose", "1 more rose": beside what is in it, which only the thread knows. */
export const oneMore = pattern('(extra|more|less|fewer|another) (stem|stems|sprig|sprigs|bit|bits)? (of)? (<material>)? <ingredient>');
/** "take one rose out of each corsage": less of what is in it, which only the thread knows. */
export const takenOut = pattern(
  '(can|could|pls|please|lets|we|you|i|,|ok|and|will|should){0,3} (take|taking|pull|pulling|remove|removing|cut|drop|dropping|whip|lose|leave|knock|pick|pluck|steal) <any>{1,4} (out of|out|off of|off|from|in) (the|all|each|every|a|one|all the|both|my|our|some){0,2} (<piece>|<count>)',
);
export const forSome = pattern('for (the|all|all the|every)? <n:count> (<material>)? <p:piece>');
export const roleHeading = pattern(
  '(for)? (the)? (<r:role>|<r:owner>) (<piece>|\\( <piece> \\)|side|side people)? (:|=|-|gets|has|have|get|takes|take|needs|need|uses|use|is|are|with|,)? (<each> (:|-|=)? (<line>)?)? (:)? (just|only)?',
);
export const sameAs = pattern('(the)? <r:role> (is|gets|has)? (the)? same as (the)? <s:role>');
/** "FLOWER CROWN (child, 52 cm around)": whom it is for and how large it is, with nothing counted. */
export const sizeAside = '\\( (<word>|<length>|,|-|/){1,8} \\)';
// "buttonhole recipe 1 rose …", "wrist corsage 4 spray rose 2 stems …", "crown, each": the piece stands before its list without a colon.
const ofEach = '((each|for|in|per) (one|piece) (of them)?|<e:each>)?';
const pieceFirst = pattern(`(recipe (:|-|for|for the)?)? (<p:piece>) (recipe|card)? (,|:|-|\\()? ${ofEach} (\\))? (,|:|-|=)?`);
const pieceSized = pattern(`(recipe (:|-|for|for the)?)? (<p:piece>) (recipe|card)? ${sizeAside} (,|:|-|=)? ${ofEach} (,|:|-|=)?`);
const sizedHead = ({ tokens }: Reader, start: number, end: number): Match | undefined => {
  const sized = pieceSized.at(tokens, start, end);
  const goods = tokens.slice(start, sized?.end ?? start).some(({ means }) => means['ingredient'] !== undefined);
  return goods ? undefined : sized;
};
/** Where a heading with such an aside ends; the start where there is none. */
export const pastSizedHead = (reader: Reader, { start, end }: Stretch): number => sizedHead(reader, start, end)?.end ?? start;
const fewStems = 12;
const fewInLapel = 5; // "bout - rose 12, orchid 8" may be twenty of them
// "Buttonhole - rose 1, gypsophila sprig 2, fern 1": a sign or a line behind the piece, the number behind each name.
const isSetApart = ({ tokens }: Reader, signEnd: number, below: number): boolean =>
  below > signEnd || /^[,:=-]$/.test(tokens[signEnd - 1]?.text ?? '');
const saysRecipe = ({ tokens }: Reader): boolean => tokens.some(({ text }) => /^recipes?$/.test(text));
export const plainHeading = (reader: Reader, start: number, end: number): Match | undefined => {
  const match = sizedHead(reader, start, end) ?? pieceFirst.at(reader.tokens, start, end);
  if (match === undefined) return undefined;
  const below = reader.tokens[match.end]?.kind === 'line' || reader.tokens[match.end]?.text === '.' ? match.end + 1 : match.end;
  const lines = linesIn(reader, below, end) ?? [];
  // "bout recipe", then "rose x1", "fern x2": the numbers stand behind the names.
  const said = reader.tokens
    .slice(match.start, match.end)
    .some(({ text, means }) => /^(recipe|one|piece)$/.test(text) || means['each'] !== undefined);
  // "bouts", "rose x10", "gerbera x10" may as well be twenty of them.
  const single = !/s$/.test(match.kept['p']?.text ?? '');
  const times = single && reader.tokens[below + 1]?.text === 'x';
  const ofOne = times || (single && isSetApart(reader, match.end, below));
  const few = !times && match.kept['p']?.means['piece'] === 'buttonhole' ? fewInLapel : fewStems;
  const most = said || (ofOne && saysRecipe(reader)) ? 98 : few;
  const counted = (said || ofOne) && lines.every(({ known, line }) => known && (line.length !== undefined || (line.stems ?? 99) <= most));
  if (quantity(reader.tokens, below) === undefined && !counted) return undefined;
  return lines.filter((line) => line.known).length >= (said ? 1 : 2) ? { ...match, end: below } : undefined;
};
/** Whether goods are counted out behind a wearer: "groom 1 rose", and with the numbers behind them "Groom - garden rose 1, astrantia 2". */
export const countsGoods = (reader: Reader, at: number, end: number): boolean => {
  if (quantity(reader.tokens, at) !== undefined) return true;
  const lines = /^[,:=-]$/.test(reader.tokens[at - 1]?.text ?? '') ? (linesIn(reader, at, end) ?? []) : [];
  return lines.length > 0 && lines.every(({ known, line }) => known && (line.stems ?? line.length) !== undefined);
};
/** Wearers named before this one and sharing its recipe: "groom and best man 2 roses each". */
export const namedBefore = (tokens: readonly Token[], start: number, index: number): readonly Token[] => {
  const named: Token[] = [];
  for (let at = start; at < index; at++) {
    const token = tokens[at];
    if (token?.means['role'] !== undefined || token?.means['owner'] !== undefined) named.push(token);
    else if (!/^(,|and|&|\+|the|both|n|\/)$/.test(token?.text ?? '')) return [];
  }
  return named;
};
/** Where the last of several wearers who share a recipe is named. */
export const ownStart = ({ tokens }: Reader, { start, end }: Stretch): number => {
  for (let at = end - 1; at > start; at--)
    if (roleHeading.at(tokens, at, end) !== undefined && namedBefore(tokens, start, at).length > 0) return at;
  return start;
};
export const firstWord = (tokens: readonly Token[], start: number, end: number): number => {
  let first = start;
  while (
    first < end &&
    (/^(the|each|ok|so|for|my|our|this)$/.test(tokens[first]?.text ?? '') ||
      (tokens[first]?.text === 'of' && tokens[first - 1]?.text === 'each') ||
      (/^(a|an|one|1|every)$/.test(tokens[first]?.text ?? '') && tokens[first + 1]?.means['piece'] !== undefined) ||
      (tokens[first]?.means['piece'] !== undefined && tokens[first + 1]?.means['piece'] !== undefined))
  )
    first += 1;
  return first;
};

/** Those who wear pieces, by any of their names. */
export const people: ReadonlySet<string> = new Set(roles.flatMap(({ one, many }) => [one, many]));
const roleNamed = new Map(roles.map((role) => [role.one, role]));
// "dads" are the fathers, "the groom's" the groom, and "grooms is 2 thistles" is his.
const singular = /^(is|has|gets|needs|takes|wants|contains)$/;
export const who = (token: Token | undefined, after?: Token): string | undefined => {
  const one = token?.means['role'] ?? token?.means['owner'];
  // "bride side 2 roses each"
  if (after?.text === 'side' && (one === 'bride' || one === 'groom')) return `${one} side`;
  const role = one === undefined ? undefined : roleNamed.get(one);
  // "grooms buttonhole gets 2 roses"
  const his = singular.test(after?.text ?? '') || (after?.means['piece'] !== undefined && !/s$/.test(after.text));
  if (role !== undefined && /^(groom|bride|best man)$/.test(role.one) && his) return role.one;
  return role !== undefined && token?.means['owner'] === undefined && /(s|men)$/.test(token?.text ?? '') ? role.many : one;
};
/** Counts that are no recipe's: "per 20 chairs" is of other work, "4 heads per stem", "a stem has five usable heads" say how a plant grows. */
export const countsOfElse = [
  pattern('(per|every|each) <count> <things>'),
  pattern('(heads|head|blooms|buds|florets|flowers|tips) (per|on|to|in|off|from) (a|an|each|the|every|one)? (stem|stems|bunch)'),
  pattern(
    '(stem|stems|bunch|bunches) (of)? (<ingredient>)? (has|have|gives|got|with|is|comes with) (about|around)? <count> (<unlisted>)? (heads|blooms|buds|florets|flowers|tips)',
  ),
];
