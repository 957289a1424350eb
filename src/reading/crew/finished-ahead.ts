// "crowns finished, 45 mins each": a kind is finished, and how long each took stands behind it.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const finished = '(done|finished|complete|completed|boxed|made|done and dusted|off the bench)';
const behind = "(,|-|:|at|in|took|taking|it|they|only|just|about|me|us|around|that's|thats|and|roughly){0,4} <duration>";
const forms = [
  `(so|ok|all|right|the|my|our|yay|finally|,){0,3} <p:piece> (are|is|all|now|been|have been|finally|'s){0,3} ${finished} (now|today)? ${behind}`,
  `(so|ok|right|i|we|i've|we've|just|finally|have){0,3} ${finished} (all|the|with|off|my|our){0,3} <p:piece> (now|today)? ${behind}`,
].map((source) => pattern(source));

/** What is finished by the words before the pace. */
export const finishedAhead = ({ tokens }: Reader, { start, end, asked }: Part): readonly Unworded[] => {
  const match = asked ? undefined : firstAt(forms, tokens, start, end);
  const token = match?.kept['p'];
  const piece = token?.means['piece'] as PieceKind | undefined;
  // "crown done, 45 mins": one of them.
  if (token === undefined || piece === undefined || piece === 'unspecified' || !/s$/.test(token.text)) return [];
  return [{ fact: 'made', all: true, piece }];
};
