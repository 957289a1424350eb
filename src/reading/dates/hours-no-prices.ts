// Numbers behind "at" that are the hour of a day or of an occasion, and no price.

import type { Token } from '../text/token.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { hourOf, ofADay } from './clock-time.ts';

/** "on thursday at 11": the number here is the hour of a day, and no price. */
export const isHourOfDay = (tokens: readonly Token[], index: number): boolean => {
  const day = tokens[index - 2];
  return (
    (ofADay(day) || /^(today|tomorrow)$/.test(day?.text ?? '')) &&
    /^(at|@)$/.test(tokens[index - 1]?.text ?? '') &&
    tokens[index]?.number?.form === 'plain' &&
    hourOf(tokens[index]) !== undefined
  );
};

/** "at 4 today", "by 10 tomorrow": the number before the day is its hour. */
export const isHourBeforeDay = (tokens: readonly Token[], index: number): boolean =>
  /^(at|@|by|before)$/.test(tokens[index - 1]?.text ?? '') &&
  /^(today|tomorrow|tonight|tmrw|tmr|tomoz|this)$/.test(tokens[index + 1]?.text ?? '') &&
  (tokens[index + 1]?.text !== 'this' || /^(arvo|afternoon|evening|morning)$/.test(tokens[index + 2]?.text ?? '')) &&
  tokens[index]?.number?.form === 'plain' &&
  hourOf(tokens[index]) !== undefined;

/** "wedding at 4, 20 bouts": the hour of an occasion, and no price. */
export const isHourOfOccasion = (tokens: readonly Token[], index: number): boolean =>
  /^(at|@)$/.test(tokens[index - 1]?.text ?? '') &&
  (isOccasion(tokens[index - 2]?.text ?? '') || /^(service|vows|mass)$/.test(tokens[index - 2]?.text ?? '')) &&
  tokens[index]?.number?.form === 'plain' &&
  hourOf(tokens[index]) !== undefined &&
  tokens[index + 1]?.means['each'] === undefined;
