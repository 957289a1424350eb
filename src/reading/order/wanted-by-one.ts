// Who is to have the one piece named: "the flower girl needs a little crown, 40".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Token } from '../text/token.ts';
import { nameOf } from '../wearers/role-counts.ts';
import { suits } from '../wearers/share-pieces.ts';

const wants = /^(needs|wants|gets|has|having|wearing|wears|after|want|need|getting|asked for|likes)$/;
const filler = /^(is|would|'d|just|now|also|to|have|be|like|still|only|really|'s)$/;

/** "mums both wrist": the two who have the pieces that "both" at `start` counts. */
export const wantedByBoth = (tokens: readonly Token[], start: number): string | undefined => {
  const role = tokens[start - 1];
  const one = tokens[start]?.text === 'both' && /[^s]s$/.test(role?.text ?? '') ? role?.means['role'] : undefined;
  return one === undefined || one === 'rest' ? undefined : nameOf(one, 2);
};

/** The wearer told before the piece that begins at `start`, where one person is meant. */
export const wantedByOne = (tokens: readonly Token[], start: number, piece: PieceKind): string | undefined => {
  let at = start - 1;
  let said = false;
  while (at >= 0 && at > start - 5 && (wants.test(tokens[at]?.text ?? '') || filler.test(tokens[at]?.text ?? ''))) {
    said ||= wants.test(tokens[at]?.text ?? '') || tokens[at]?.text === 'like' || tokens[at]?.text === 'have';
    at -= 1;
  }
  const role = tokens[at];
  const wearer = role?.means['role'];
  // "bride wants a buttonhole, 18": for somebody else.
  if (!said || role === undefined || wearer === undefined || wearer === 'rest' || !suits(wearer, piece) || /(s|men|folk)$/.test(role.text))
    return undefined;
  return /^(and|&|n|\+|,)$/.test(tokens[at - 1]?.text ?? '') ? undefined : wearer;
};
