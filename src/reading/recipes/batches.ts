// What goes into a whole batch: "10 lapels need 10 roses and 20 wheat", "for 20 bouts: 20 roses, 40 fern", "used 12 roses to make 10 lapels".

import type { PieceKind } from '../../handbook/pieces.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import { isSingle } from '../text/token.ts';

/** "This lot makes 20 buttonholes, write it up as the recipe:" over a line for each of the goods. "Make 20 buttonholes" orders them. */
export const batchTold = pattern(
  '((this|that|the|one|a|full|whole){0,2} (recipe|batch|mix|list|lot|card|amounts|quantities|quantity|this|it) (will|should)? (makes|make|does|do|yields|yield|covers|gives|is for|are for|is enough for)|makes|yields|enough for) (about)? <n:count> (<material>)? <p:piece> ((,|-|;) (<word>|,|-){1,16})? (:)?',
);
// "10 lapels need 10 roses and 20 leucadendron": the whole batch, not an order for ten.
const batchForms = [
  pattern(
    '(for)? (the|all|a|our)? <n:count> (<material>)? <p:piece> (need|needs|take|takes|use|uses|get|want|will need|will take|=|equals) (about)?',
  ),
  pattern(
    '(recipe)? for (every|the|all|a|our)? <n:count> (<material>)? <p:piece> (:|-|,|=|<line>|we need|i need|use|we use|you need){1,2}',
  ),
  pattern(
    '(to make|to do|for making) (the|all)? <n:count> (<material>)? <p:piece> (:|-|=|<line>|i used|we used|i use|we use|use|i need|we need|you need|need){1,2}',
  ),
  pattern('recipe (:|-|x|\\()? <n:count> (<material>)? <p:piece> (\\))? (:|-|,|=|<line>){1,2}'),
  // "recipe does 20 BHs: 20 roses, 40 fern", "this makes 12 bouts: 12 roses", "batch of 10 bouts = 10 thistles"
  pattern(
    '(this|that|the|it|my|our|one|a|full|whole){0,2} (recipe|batch|mix|list|lot|amounts|quantities|quantity|stems|this|that|it) (of|for|(will|should)? (be)? (does|do|makes|make|covers|cover|yields|yield|gives|give|is for|feeds|enough for|is enough for)) (me|us|you|about)? <n:count> (<material>)? <p:piece> (:|-|=|<line>){1,2}',
  ),
  batchTold,
  pattern(
    "(recipe|we use|we need|use)? (per|every|for each|in every|to every) <n:count> (<material>)? <p:piece> (recipe)? (:|-|,|=|<line>|we use|we need|i use|i need|we do|need|needs|take|takes|use|uses|get|gets|it's|its|you need|you want|allow){0,3}",
  ),
];
const batchSaid = (reader: Reader, start: number, end: number): Finding | undefined => {
  const match = firstAt(batchForms, reader.tokens, start, end);
  const pieces = Number(match?.kept['n']?.number?.amount);
  if (match === undefined || !(pieces > 1) || reader.tokens.slice(match.end, end).some((token) => token.means['each'] !== undefined))
    return undefined;
  const lines = linesIn(reader, match.end, end);
  if (lines === undefined || lines.length === 0 || lines.some((line) => !line.known && line.line.ingredient !== 'stem')) return undefined;
  if (lines.every(({ line }) => line.stems === undefined && line.length === undefined)) return undefined;
  if (!isSingle(match.kept['n']?.number)) return { start, end, held: true };
  // Fewer stems than pieces is what goes into each.
  const every = reader.tokens.slice(match.start, match.end).some((token) => /^(every|per|each)$/.test(token.text));
  if (!every && !lines.some(({ line }) => (line.stems ?? 0) >= pieces)) return undefined;
  return found(reader, start, end, [
    { fact: 'recipe', lines: lines.map(({ line }) => line), pieces, ...ofKind(match.kept['p']?.means['piece'] as PieceKind | undefined) },
  ]);
};

// "used 12 roses and 5 statice to make 10 lapels": several goods, and how many pieces they are for.
const madeWith = pattern("(we|i|ive|we've|just)? (used|took|needed)");
const batchBehind = pattern(
  '(to make|makes|make|made|for every|to every|gets you|gives you|gets|does|yields|will make|for each|per) (about|us)? <n:count> (<p:piece>)',
);
const batchAfter = (reader: Reader, start: number, end: number): Finding | undefined => {
  const match = batchBehind.in(reader.tokens, start, end);
  const pieces = Number(match?.kept['n']?.number?.amount);
  if (match === undefined || match.end < end || !(pieces > 1)) return undefined;
  const from = madeWith.at(reader.tokens, start, match.start)?.end ?? start;
  const lines = linesIn(reader, from, match.start);
  if (
    lines === undefined ||
    lines.length < 2 ||
    lines.some(({ known, line }) => !known || (line.stems === undefined && line.length === undefined))
  )
    return undefined;
  if (!isSingle(match.kept['n']?.number)) return { start, end, held: true };
  return found(reader, start, end, [
    { fact: 'recipe', lines: lines.map(({ line }) => line), pieces, ...ofKind(match.kept['p']?.means['piece'] as PieceKind | undefined) },
  ]);
};

/** The goods of a whole batch and how many pieces they are for. */
export const batch = (reader: Reader, start: number, end: number): Finding | undefined =>
  batchSaid(reader, start, end) ?? batchAfter(reader, start, end);
