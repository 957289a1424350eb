// A kind counted by the one before it: "11 wrist corsages + a matching bout for each one", "10 corsages and the same number of bouts", "9 corsages with matching bouts".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { allFree, type Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';

const match = '(matching|coordinating|co-ordinating|matched)';
const kind = '(<material>)? <p:piece>';
const forms = [
  pattern(`(the|an)? (same|equal|matching) (number|amount|no|qty|quantity) of ${match}? ${kind}`),
  pattern(`as many ${match}? ${kind}`),
  pattern(
    `(a|one) ${match}? ${kind} (to match)? (for|with|to)? (for each|for each one|for every one|for each of them|for each of those|each one|every one)`,
  ),
  pattern(`(a|one) ${match} ${kind} (for|with|to)? (<each>|each)`),
  pattern(`(a|one) ${kind} to match (for|with)? (<each>|each)`),
  pattern(`(each|each one|all) (one)? (with|has|has got|having|gets|comes with|w|w/) (a|one|its own)? ${match}? ${kind}`),
];
// "9 corsages w matching bouts": as many, where nothing says whose they are; "with a matching bout" may be one alone.
const together = pattern(`(with|w) (/)? (a|one)? ${match} ${kind}`);
const many = /s$/;
const whose = /^(for|as|of|x|at the)$/;

/** The further line, if this place begins one; without a count where it is not said. */
export const asMany = (reader: Reader, before: Mention | undefined, index: number): Mention | undefined => {
  const { tokens } = reader;
  if (before?.countIndex === undefined || before.index >= index) return undefined;
  const sure = firstAt(forms, tokens, index, tokens.length);
  const found = sure ?? together.at(tokens, index, tokens.length);
  const piece = found?.kept['p'];
  if (found === undefined || piece === undefined || !allFree(reader, found.start, found.end)) return undefined;
  const at = tokens.indexOf(piece, index);
  const next = tokens[found.end];
  if (piece.means['piece'] === before.kind || isCountedOtherwise(next?.text, next?.number !== undefined && next.glued)) return undefined;
  if (next?.means['role'] !== undefined || next?.means['owner'] !== undefined || next?.means['piece'] !== undefined) return undefined;
  const mention: Mention = { index: at, last: at, start: index, end: found.end, kind: piece.means['piece'] as PieceKind };
  const known = before.count?.number?.max === undefined && before.count?.number?.approx === undefined;
  const count = before.exact ?? Number(before.count?.number?.amount);
  if (!known || (sure === undefined && !many.test(piece.text) && count > 1)) return mention;
  return { ...mention, exact: count, countIndex: index };
};

const isCountedOtherwise = (next: string | undefined, glued: boolean): boolean => glued || whose.test(next ?? '');
