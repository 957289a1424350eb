// "all dried bar the crowns": what the crowns are is not said, and dried they are not.

import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';

const some = '(for)? (the|her|his|their)? (<piece>|<owner>|<role>)';
const allBut = pattern(
  `((all|everything|everyone|every one|the lot) (is|are|in|to be|be)? <material> (flowers|stuff)? but ${some}|<material> (bar|except|except for|apart from|other than|excluding|save) (${some}|<count> (of (them|those))?))`,
);
/** Where all but some are of a material, held. */
export const exceptSome = (reader: Reader): Finding[] => {
  const match = allBut.in(reader.tokens, 0, reader.tokens.length);
  return match === undefined ? [] : [{ start: match.start, end: match.end, held: true }];
};
