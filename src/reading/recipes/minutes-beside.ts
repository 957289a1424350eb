// Minutes said with a recipe: "bout: 1 rose, 2 wax, 7 mins" tells how long one takes too.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const longest = 600;
// "dry 20 mins", "soak for 1 hour": no time at the bench.
const waits = /^(dry|drying|hang|hanging|soak|soaking|condition|conditioning|rest|set|cool|chill|stand)$/;

/** The pace for one piece; undefined when nothing or more than one thing is said of time. */
export const paceBeside = (tokens: readonly Token[], start: number, end: number, piece: PieceKind | undefined): Unworded | undefined => {
  let minutes: number | undefined;
  for (let index = start; index < end; index++) {
    const number = tokens[index]?.number;
    const anHour = /^(hour|hr)$/.test(tokens[index]?.text ?? '') && /^(a|an)$/.test(tokens[index - 1]?.text ?? '');
    if (anHour && minutes !== undefined) return undefined;
    if (anHour) minutes = 60;
    if (number?.form !== 'duration') continue;
    if (minutes !== undefined || number.max !== undefined || !/^(min|hour)$/.test(number.unit ?? '')) return undefined;
    if (tokens.slice(Math.max(start, index - 2), index + 3).some((token) => waits.test(token.text))) return undefined;
    minutes = Number(number.amount) * (number.unit === 'hour' ? 60 : 1);
  }
  if (minutes === undefined || !(minutes > 0) || minutes > longest) return undefined;
  return { fact: 'crew', minutesPerPiece: minutes, ...(piece === undefined ? {} : { piece }) };
};
