// Nobody at the bench, or nobody but some: "no one in on sunday", "nobody in but me tmrw".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { nobody } from './crew-forms.ts';

const butSome = pattern(
  '(on|this|next|tomorrow|today|tmrw|<weekday>|at the bench|on the bench|,){0,3} (but|except|bar|apart from|besides|other than) (for)? (<m:any>)?',
);
// "no one but me in tmrw"
const butFirst = pattern(
  "(there's|theres|there is)? (no one|noone|nobody|no - one|none of us) (but|except|bar|apart from|besides|other than) <m:any> (is|are|will be|'s)? (in|on|working|here|at the bench|on the bench|making|<weekday>|tomorrow|tmrw|today)",
);
const me = /^(me|myself)$/;
const beside = /^(and|&|n|\+|plus)$/;

/** 0 where it says that nobody is there, 1 where it is oneself alone; `others` where it is somebody who is not counted. */
export const nobodyIn = ({ tokens }: Reader, { start, end }: Part): 0 | 1 | 'others' | undefined => {
  const few = butFirst.at(tokens, start, end);
  if (few !== undefined) return me.test(few.kept['m']?.text ?? '') ? 1 : 'others';
  const match = nobody.at(tokens, start, end);
  if (match === undefined) return undefined;
  const but = butSome.at(tokens, match.end, end);
  if (but === undefined) return butSome.in(tokens, match.end, end) === undefined ? 0 : 'others';
  if (!me.test(but.kept['m']?.text ?? '')) return 'others';
  // "nobody in but me and jo": they are counted elsewhere
  return beside.test(tokens[but.end]?.text ?? '') ? undefined : 1;
};
