// "in one corsage 4 mogra, 1 rose" says what goes into each; "put a rose in one corsage" and "2 roses in one corsage, 3 in the rest" speak of one among several.

import type { Line } from '../goods/recipe-lines.ts';
import type { Match } from '../pattern.ts';
import type { Stretch } from '../text/message.ts';
import type { Token } from '../text/token.ts';

const others =
  /^(other|others|rest|another|next|remaining|second|only|by|instead|left|put|add|pop|stick|use|try|wants|want|forgot|missing)$/;

/** Whether the goods beside "in one corsage" may not be those of every corsage. */
export const isOneAmongSeveral = (
  tokens: readonly Token[],
  { start, end }: Stretch,
  per: Match | undefined,
  lines: readonly Line[],
): boolean => {
  const [first, second] = [tokens[per?.start ?? end], tokens[(per?.start ?? end) + 1]];
  if (per === undefined || first?.text !== 'in' || !/^(one|1)$/.test(second?.text ?? '')) return false;
  const names = new Set(lines.map(({ line }) => line.ingredient));
  const counted = lines.every(({ known, line }) => known && (line.stems ?? line.length) !== undefined);
  // "we put" tells how they are made; "put" alone is told to somebody.
  const led = (index: number): boolean => /^(we|i|you)$/.test(tokens[index - 1]?.text ?? '');
  const apart = tokens.slice(start, end).some(({ text }, at) => others.test(text) && !led(start + at));
  return apart || !counted || names.size < lines.length || (per.start > start && lines.length < 2);
};
