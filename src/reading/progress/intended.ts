// Work that is meant to be done, and is not: "will have 20 made by then".

import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere } from '../text/token.ts';
import { intent } from './done-words.ts';

const well = /^(ok|okay|well|fine|nicely|good|great|slow|slowly|alright|grand|steady|badly|smoothly|lovely)$/;
/** Whether a word of what somebody means to do stands before it; "crowns going ok, 3 bouts done", "just to let you know we finished 12" intend nothing. */
export const isIntended = (reader: Reader, part: Part, before: number): boolean =>
  firstWhere(
    reader.tokens,
    Math.max(part.start, before - 5),
    before,
    (token, at) =>
      intent.has(token.text) &&
      reader.free(at) &&
      !(token.text === 'going' && well.test(reader.tokens[at + 1]?.text ?? '')) &&
      !(token.text === 'let' && /^(know|knows)$/.test(reader.tokens[at + 2]?.text ?? '')),
  ) >= 0;
