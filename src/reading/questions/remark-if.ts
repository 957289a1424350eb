// "ten bouts take twenty thistles, if you're working out what to cut": whom it may help is a remark behind what is told, and asks nothing.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const remark = pattern(
  "(,|-|\\() (in case|if) (you're|you are|youre|ur|you|u|anyone's|anyone is|anyone|anybody's|it|that|someone's|jo's|we're|i'm) (still|just|already|ever|about to|needing to|trying to|want to|wanting to|need to|going to){0,2} (working|work|adding|add|figuring|doing|planning|pricing|writing|wondering|wonder|costing|making|off|ordering|order|cutting|picking|checking|asking|counting|helps|is any help|matters|is useful|helpful) <any>{0,10}",
);

/** The part without such a remark at its end. */
export const withoutRemark = (reader: Reader, part: Part): Part => {
  const match = part.asked ? undefined : remark.in(reader.tokens, part.start + 1, part.end);
  return match?.end === part.end ? { ...part, end: match.start } : part;
};
