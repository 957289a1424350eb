// "finished bouts", "done bouts and corsages, crowns tomorrow": whole kinds, named without an article, that nothing but a stop or a time follows.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const opening = pattern(
  "(ok|so|just|all|finally|now|right|yay|,){0,2} (i|we|i've|we've|ive|weve|have)? (just|all|finally|now)? (finished|completed|done|boxed|wrapped up|polished off|finished off|done with|finished with|through with)",
);
const kind = pattern('(the|all the|our)? <p:piece>');
const joint = pattern('(and|&|\\+|n|plus)');
const closes = /^(,|;|-|:|!|\)|now|today|already|so|then|but|last|yesterday|this|just|before|and)$/;

/** The kinds that are finished; none where what follows may be what is done with finished pieces. */
export const kindsFinished = (reader: Reader, part: Part, open: (index: number) => boolean): Finding[] => {
  const { tokens } = reader;
  const head = opening.at(tokens, part.start, part.end);
  if (head === undefined) return [];
  const kinds: PieceKind[] = [];
  let at = head.end;
  for (;;) {
    const match = kind.at(tokens, at, part.end);
    const piece = match?.kept['p'];
    // "finished bout" is one of them; "bouts" are all there are.
    if (match === undefined || piece === undefined || piece.means['piece'] === 'unspecified' || !/s$/.test(piece.text)) break;
    kinds.push(piece.means['piece'] as PieceKind);
    at = match.end;
    const next = joint.at(tokens, at, part.end);
    if (next === undefined || kind.at(tokens, next.end, part.end) === undefined) break;
    at = next.end;
  }
  const behind = at < part.end ? tokens[at] : undefined;
  if (kinds.length === 0 || (behind !== undefined && !closes.test(behind.text))) return [];
  for (let index = part.start; index < at; index++) if (!open(index)) return [];
  return [
    found(
      reader,
      part.start,
      at,
      kinds.map((piece) => ({ fact: 'made', all: true, piece })),
    ),
  ];
};
