// Hours written with nothing between: "at 1400", "1215 arrival", "at 0930", and in words: "ceremony two thirty".

import type { Token } from '../text/token.ts';

const ahead = /^(at|@|from|ceremony|service|vows|start|starts|starting|begins|arrival|arrive|arriving|kickoff|doors|time|by|around|about)$/;
const behind = /^(start|arrival|arrive|onwards|sharp|ceremony|kickoff|finish|hrs|hours|kick|for|service)$/;
const inWords = ['5', '10', '15', '20', '25', '30', '35', '40', '45', '50', '55'];

/** The hour and the minute that begin at this token, and where they end. Pieces and prices in the message are the caller's matter. */
export const hourRunTogether = (
  tokens: readonly Token[],
  index: number,
): { readonly hour: number; readonly minute: number; readonly end: number } | undefined => {
  const [before, token, next] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  const number = token?.number;
  if (token === undefined || number === undefined || number.max !== undefined) return undefined;
  const led = ahead.test(before?.text ?? '');
  if (number.worded === true && number.form === 'plain') {
    const hour = Number(number.amount);
    const minute = next?.number?.worded === true && next.number.form === 'plain' ? next.number.amount : '';
    return hour >= 1 && hour <= 12 && inWords.includes(minute) && (led || before?.means['month'] !== undefined)
      ? { hour, minute: Number(minute), end: index + 2 }
      : undefined;
  }
  if (number.form !== 'plain' && number.form !== 'code') return undefined;
  const parts = /^(\d{1,2})([0-5][05])$/.exec(token.text);
  if (parts === null || !(led || behind.test(next?.text ?? ''))) return undefined;
  const hour = Number(parts[1]);
  // "in 2030" is a year.
  return hour < 24 && (!/^20[0-3]\d$/.test(token.text) || behind.test(next?.text ?? ''))
    ? { hour, minute: Number(parts[2]), end: index + 1 }
    : undefined;
};
