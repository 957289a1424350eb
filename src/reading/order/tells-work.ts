// Messages that open with work done: "finished the last 6 crowns". Their bare numbers order nothing.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

const workTold = pattern(
  "(we|i|just|ok|we've|i've|ive|weve|have|and|all|so|finally){0,3} (finished|did|done|completed|boxed|knocked|wired|taped|packed|broke|lost|binned|dropped|remade|redid)",
);

const didSome = pattern(
  '((need|needs|want|have) <count> more (<material>)? <piece> (made|done|finished|boxed|ready)|(made|did|finished|completed|boxed) (about|around|only|just)? <count>|got <count> (done|made|finished|boxed))',
);
/** Whether the message tells of work, not of an order. */
export const tellsWork = (reader: Reader): boolean =>
  workTold.at(reader.tokens, 0, reader.tokens.length) !== undefined || didSome.in(reader.tokens, 0, reader.tokens.length) !== undefined;
