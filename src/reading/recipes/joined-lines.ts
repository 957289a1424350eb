// A recipe typed in lines or sentences of its own: "bout:", "1 rose", "2 bits of gyp", "1 fern each" are one recipe.

import { quantity } from '../goods/quantity.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { batchTold } from './batches.ts';
import { endsWithPiece, forPiece, forSome, heading, perEach, perPiece, roleHeading, sizeAside } from './recipe-headings.ts';

const closing = [perPiece, perEach, forSome, forPiece];

// "corsage", "recipe", "recipe per bout", "crown, each" or "CROWN (child, 52 cm)" on a line of its own
const bareHeading = pattern(
  `(recipe (for|per|-|:)? (the|our|each|every|a|an|all the)? <piece> (:|-|=)?|(<piece>|<role>) (recipe)? (,|:|-|\\()? ((each|for|in|per) (one|piece) (of them)?|<each>) (\\))? (,|:|-|=)?|(<piece>|<role>) (recipe)? ${sizeAside} (:|-|=)?|(<piece>|recipe|<role>) (recipe|card)?)`,
);
// "for 10 bouts:" over lines of stems: what goes into the whole batch, or into each of it.
const batchHeading = pattern(
  '(recipe (for|:|-)?|for|per|every|for each|recipe per) (the|all|all the|our|every)? <count> (<material>)? <piece> (recipe)? (:|-|=)?',
);

// "for the bouts" on a line of its own heads what follows, or closes what stands before it
const forThem = pattern('for (the|our|all the)? <piece> (:|-|=)?');
// "takes 15 mins" on a line of its own
const timeAlone = pattern(
  '(takes|take|allow|about|approx|time|:|-){0,2} (me|us)? <duration> (each|<each>|per <piece>|a piece|to make|to make one){0,1}',
);

interface Lines {
  readonly headed: boolean; // names a piece or a wearer before its lines
  readonly closed: boolean; // says what it is for: nothing more belongs to it
  readonly each: boolean; // closed by that word alone
  readonly lines: number;
  readonly timed?: true; // tells nothing but how long one takes
}

const shortest = 6; // tokens: "crown (each):" names no goods
/** What a part holds of a recipe; undefined when it holds anything else. */
const linesOf = (reader: Reader, part: Part): Lines | undefined => {
  const { tokens } = reader;
  const goods = ({ means, text }: Token): boolean => means['ingredient'] !== undefined || text === 'recipe';
  const batch = batchHeading.at(tokens, part.start, part.end) ?? batchTold.at(tokens, part.start, part.end);
  if (batch?.end === part.end) return { headed: false, closed: true, each: false, lines: 0 };
  if (timeAlone.at(tokens, part.start, part.end)?.end === part.end)
    return { headed: false, closed: false, each: false, lines: 0, timed: true };
  const bare = bareHeading.at(tokens, part.start, part.end);
  if (bare?.end !== part.end && part.end - part.start > shortest && firstWhere(tokens, part.start, part.end, goods) < 0) return undefined;
  // "per buttonhole: 1 protea" heads what follows; "per buttonhole" on a line behind closes it.
  const opening = perPiece.at(tokens, part.start + (tokens[part.start]?.text === 'recipe' ? 1 : 0), part.end);
  const colon = opening !== undefined && /^[:=-]$/.test(tokens[opening.end - 1]?.text ?? '');
  if (forThem.at(tokens, part.start, part.end)?.end === part.end) return { headed: false, closed: true, each: false, lines: 0 };
  if (opening?.end === part.end && !colon && tokens[part.start]?.text !== 'recipe')
    return { headed: false, closed: true, each: false, lines: 0 };
  const head = opening ?? (bare?.end === part.end ? bare : (heading.at(tokens, part.start, part.end) ?? bare));
  const role = roleHeading.at(tokens, part.start, part.end);
  const alone = head?.end === part.end;
  const from =
    alone || opening !== undefined || heading.at(tokens, part.start, part.end) !== undefined ? (head?.end ?? part.start) : part.start;
  const close = firstIn(closing, tokens, from, part.end);
  const atEnd = close !== undefined && close.end >= part.end - 1;
  const to = atEnd ? close.start : part.end;
  const lines = from >= to ? [] : linesIn(reader, from, to);
  if (lines === undefined || lines.some(({ known, line }) => !known || (line.stems === undefined && line.length === undefined)))
    return undefined;
  if (lines.length === 0 && (head === undefined || from < part.end)) return undefined;
  return {
    headed: head !== undefined || role !== undefined,
    closed: atEnd,
    each: atEnd && close.end - close.start === 1,
    lines: lines.length,
  };
};

// "corsage: 3 roses; 2 wax; 1 fern": a semicolon between its lines ends no recipe.
const counts = (reader: Reader, { start, end }: Part): boolean =>
  quantity(reader.tokens, start) !== undefined && linesIn(reader, start, end)?.every(({ known }) => known) === true;
const overSemicolons = (reader: Reader, parts: readonly Part[]): Part[] => {
  const joined: Part[] = [];
  for (const part of parts) {
    const before = joined.at(-1);
    const { tokens } = reader;
    const beside = before !== undefined && tokens[before.end]?.text === ';' && part.start === before.end + 1;
    const goods = beside && tokens.slice(before.start, before.end).some(({ means }) => means['ingredient'] !== undefined);
    const closed =
      beside && tokens[before.end - 1]?.means['piece'] !== undefined && tokens[before.end - 1]?.means['ingredient'] === undefined;
    const close = firstIn(closing, tokens, part.start, part.end) ?? endsWithPiece.in(tokens, part.start, part.end);
    const own = close?.end === part.end ? { ...part, end: close.start } : part;
    if (before !== undefined && beside && goods && !closed && own.end - own.start <= 20 && counts(reader, own))
      joined[joined.length - 1] = { ...before, end: part.end };
    else joined.push(part);
  }
  return joined;
};

/** The parts, with those that go on with a recipe joined to where it began. */
export const joinedLines = (reader: Reader, parts: readonly Part[]): Part[] => {
  const joined: Part[] = [];
  let open: Lines | undefined;
  for (const part of overSemicolons(reader, parts)) {
    const before = joined.at(-1);
    const read = part.end - part.start <= 20 ? linesOf(reader, part) : undefined;
    // "per bout" with nothing before it that it could close heads what follows: "recipe", "per bout", "1 rose".
    const begun = (open?.lines ?? 0) > 0;
    const heads = read?.closed === true && read.lines === 0 && (!begun || open?.headed === true);
    const own = heads && read !== undefined ? { ...read, closed: false, headed: open === undefined || begun } : read;
    // "1 rose each", "2 gyp each" on lines of their own
    const goesOn =
      open !== undefined &&
      (!open.closed || (open.each && own?.each === true)) &&
      own !== undefined &&
      !own.headed &&
      (own.lines > 0 || heads || (begun && (own.closed || own.timed === true)));
    if (goesOn && before !== undefined && part.start - before.end <= 2) joined[joined.length - 1] = { ...before, end: part.end };
    else joined.push(part);
    open =
      goesOn && open !== undefined && own !== undefined
        ? { ...own, headed: open.headed || own.headed, lines: open.lines + own.lines }
        : own;
  }
  return joined;
};
