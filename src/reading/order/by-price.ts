// "28 buttonholes by €14.50": at so much, as some say it. "put the bouts up by $2" tells by how much.

import { pattern } from '../pattern.ts';
import { askedOnce } from '../text/asked-once.ts';
import type { Token } from '../text/token.ts';

const counted = pattern('<count> (<material>)? (<word>)? <piece> by (<money>|<plain> <each>)');
const changes =
  /^(up|down|raise|raised|raising|increase|increased|put|bump|bumped|bumping|drop|dropped|cut|reduce|reduced|lower|lowered|knock|take|off|cheaper|dearer|more|less|fewer|move|moved|change|changed|over|under|short|out|went|gone|go|beat|lift|lifted|adjust)$/;

const tellsOfChange = askedOnce((tokens): boolean => tokens.some(({ text }) => changes.test(text)));

/** Whether the number here stands behind "by" as the price of what was counted before it. */
export const isByPrice = (tokens: readonly Token[], index: number): boolean => {
  if (tokens[index - 1]?.text !== 'by' || tellsOfChange(tokens)) return false;
  for (let start = index - 2; start >= Math.max(0, index - 5); start--) {
    const match = counted.at(tokens, start, tokens.length);
    if (match !== undefined && match.start + 1 < index && match.end >= index + 1 && match.end <= index + 2) return true;
  }
  return false;
};
