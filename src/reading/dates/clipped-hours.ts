// An hour whose half is one letter, right behind its day: "wedding 4/17/27 5p", "sat feb 20 11a", "gala 3/12 at 7:30p". Anywhere else 5p are pence.

import type { Token } from '../text/token.ts';

const isDay = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  if (token?.number?.form === 'slashed' || token?.number?.form === 'ordinal' || token?.means['weekday'] !== undefined) return true;
  // "feb 20", "20 feb", "feb 20 2027"
  return [index, index - 1, index - 2].some((at) => tokens[at]?.means['month'] !== undefined) && token?.text !== ',';
};

/** The hour and the minute that begin here, and where they end. */
export const clippedHour = (
  tokens: readonly Token[],
  index: number,
): { readonly hour: number; readonly minute: number; readonly end: number } | undefined => {
  const [token, next] = [tokens[index], tokens[index + 1]];
  const before = /^(at|@|,)$/.test(tokens[index - 1]?.text ?? '') ? index - 2 : index - 1;
  if (token?.number === undefined || before < 0 || !isDay(tokens, before)) return undefined;
  const pence = /^(\d{1,2})() ?p$/.exec(token.text);
  const apart = next?.glued === true && /^[ap]$/.test(next.text) ? /^(\d{1,2})(?:[:.]([0-5]\d))?$/.exec(token.text) : null;
  const shape = pence ?? apart;
  const hour = Number(shape?.[1]);
  if (shape === null || hour < 1 || hour > 12) return undefined;
  const afternoon = pence !== null || next?.text === 'p';
  return { hour: (hour % 12) + (afternoon ? 12 : 0), minute: Number(shape[2] ?? 0), end: index + (pence === null ? 2 : 1) };
};
