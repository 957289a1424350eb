// A kind's new number and how many of it are made, in one sentence: "crowns going up to 6, 3 done", "bouts now 24, 10 made so far".

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { doneWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';
import { isRare } from './now-count-or-price.ts';

const moving = '(now|going|gone|go|goes|went|bumped|raised|moved|increased|dropped|cut|reduced|up|down)';
const form = pattern(
  `(ok|so|and|the|our|order|update|-|,|:){0,3} <p:piece> (count|order|number|numbers)? (are|is|have|has|been|just|all|${moving}){1,4} (to|at|<upTo>|down to)? (now)? <n:count> (now)? (,|-|;|:|and|with|&|n|\\(|.){1,2} <m:count> (of (them|those|these))? (are|is|already|all|now)? (${doneWord}) (so far|already|now|today|\\)){0,2}`,
);
const upTo = pattern(
  `(ok|so|and|the|our|-|,|:){0,3} <p:piece> (<upTo>|down to) <n:count> (now)? (,|-|;|:|and|with|&|n|\\(){1,2} <m:count> (of (them|those|these))? (are|is|already|all|now)? (${doneWord}) (so far|already|now|today|\\)){0,2}`,
);
const soFar = /^(so far|already|far)$/;

export const countAndDone = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const { tokens } = reader;
  const match = form.at(tokens, start, end) ?? upTo.at(tokens, start, end);
  const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  const [all, made] = [match?.kept['n']?.number, match?.kept['m']?.number];
  if (match?.end !== end || piece === undefined || piece === 'unspecified' || all === undefined || made === undefined) return undefined;
  const [to, count] = [Number(all.amount), Number(made.amount)];
  if ([all, made].some(({ max, or }) => max !== undefined || or !== undefined) || count > to || isRare(piece, to))
    return { start, end, held: true };
  const total = tokens.slice(start, end).some(({ text }) => soFar.test(text)) ? { total: true as const } : {};
  return found(reader, start, end, [
    { fact: 'change', what: 'count', to, piece },
    { fact: 'made', count, ...total, piece },
  ]);
};
