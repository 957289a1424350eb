// A recipe typed in lines or sentences of its own: "bout:", "1 rose", "2 bits of gyp", "1 fern each" are one recipe.

import { quantity } from '../goods/quantity.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { endsWithPiece, forPiece, forSome, heading, perEach, perPiece, roleHeading } from './recipe-headings.ts';

const closing = [perPiece, perEach, forSome, forPiece];

// "corsage" or "recipe" on a line of its own
const bareHeading = pattern('(recipe for (the|our|each|all the)? <piece>|(<piece>|recipe|<role>) (recipe)?)');

interface Lines {
  readonly headed: boolean; // names a piece or a wearer before its lines
  readonly closed: boolean; // says what it is for: nothing more belongs to it
  readonly each: boolean; // closed by that word alone
  readonly lines: number;
}

/** What a part holds of a recipe; undefined when it holds anything else. */
const linesOf = (reader: Reader, part: Part): Lines | undefined => {
  const { tokens } = reader;
  const goods = ({ means, text }: Token): boolean => means['ingredient'] !== undefined || text === 'recipe';
  if (part.end - part.start > 3 && firstWhere(tokens, part.start, part.end, goods) < 0) return undefined;
  // "per buttonhole: 1 protea" heads what follows; "per buttonhole" on a line behind closes it.
  const opening = perPiece.at(tokens, part.start + (tokens[part.start]?.text === 'recipe' ? 1 : 0), part.end);
  const colon = opening !== undefined && /^[:=-]$/.test(tokens[opening.end - 1]?.text ?? '');
  if (opening?.end === part.end && !colon) return { headed: false, closed: true, each: false, lines: 0 };
  const head = opening ?? heading.at(tokens, part.start, part.end) ?? bareHeading.at(tokens, part.start, part.end);
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
    const own = part.end - part.start <= 20 ? linesOf(reader, part) : undefined;
    // "1 rose each", "2 gyp each" on lines of their own
    const goesOn =
      open !== undefined &&
      (!open.closed || (open.each && own?.each === true)) &&
      own !== undefined &&
      !own.headed &&
      (own.lines > 0 || (own.closed && (open?.lines ?? 0) > 0));
    if (goesOn && before !== undefined && part.start - before.end <= 2) joined[joined.length - 1] = { ...before, end: part.end };
    else joined.push(part);
    open = goesOn && open !== undefined && own !== undefined ? { ...own, lines: open.lines + own.lines } : own;
  }
  return joined;
};
