// "so sorry, three of the lapels are broken": a loss one is sorry for, and no new number.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { goneWrong, moreGoneWrong } from '../progress/losses.ts';
import type { Part } from '../text/message.ts';

// "2 crowns off the order" tells of no loss: "off" is one behind a verb alone.
const told = '(have|has|are|is|were|was|all|just|got|gone|went|been|completely|totally|now|both|come|came)';
const lost = pattern(
  `<n:count> (of)? (the|our|my|those|these|them|your)? (<owner>)? (<material>)? (<piece>) (${told}{0,4} (${goneWrong})|${told}{1,4} (${moreGoneWrong}))`,
);

/** Whether the only number of the part counts what is lost. */
export const onlyLoss = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = lost.in(tokens, start, end);
  return match !== undefined && tokens.slice(start, end).every((token) => token.number === undefined || token === match.kept['n']);
};
