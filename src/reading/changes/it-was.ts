// "hang on it was 8", "no that was 8 bouts": a number put right in the past tense, so most likely of what was made. The thread asks which.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isSingle } from '../text/token.ts';

const turn =
  '(hang on|hold on|hang|hold|on|wait|no|nope|nah|actually|sorry|soz|oops|whoops|ooops|my bad|tell a lie|correction|oh|ah|er|um|argh|ugh|scratch that|,|-|\\.)';
const was = '(it was|that was|it were|that were|there was|there were|was)';
const form = pattern(
  `${turn}{1,4} ${was} (only|just|really|actually|more like)? <n:count> (<p:piece>)? (,|-)? (not <m:count> (<piece>)?)? (i|we)? (did|made|done|actually|sorry|soz|lol|oops|x|,){0,3}`,
);

export const itWas = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const match = form.at(reader.tokens, start, end);
  const { n, m, p } = match?.kept ?? {};
  if (match?.end !== end || !isSingle(n?.number)) return undefined;
  const kind = p?.means['piece'] as PieceKind | undefined;
  return found(reader, start, end, [
    {
      fact: 'change',
      what: 'number',
      to: Number(n.number.amount),
      ...(m?.number === undefined ? {} : { from: Number(m.number.amount) }),
      ...ofKind(kind),
    },
  ]);
};
