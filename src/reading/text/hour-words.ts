// Joins hours said in shares: "half an hour", "quarter of an hour", "three quarters of an hour", "an hour and a half". They become minutes or hours once,
// so that no phrase reads the hour alone.

import { slashedParts } from './fractions.ts';
import { asNumber, type Token } from './token.ts';

const shares: Readonly<Record<string, string>> = { half: '30', quarter: '15' };
const hours = new Set(['hour', 'hr']);

const textAt = (tokens: readonly Token[], index: number): string => tokens[index]?.text ?? '';

// Where "(of) an hour" ends, or "hour" right behind: "half hour".
const ofHour = (tokens: readonly Token[], index: number): number | undefined => {
  let at = index;
  if (textAt(tokens, at) === 'of') at += 1;
  if (/^(a|an|the)$/.test(textAt(tokens, at))) at += 1;
  return hours.has(textAt(tokens, at)) ? at + 1 : undefined;
};

const shareOfHour = (tokens: readonly Token[], index: number): { minutes: string; next: number } | undefined => {
  const many =
    tokens[index]?.number?.form === 'plain' && tokens[index]?.number?.amount === '3' && /^quarters?$/.test(textAt(tokens, index + 1));
  const minutes = many ? '45' : Object.hasOwn(shares, textAt(tokens, index)) ? shares[textAt(tokens, index)] : undefined;
  const next = minutes === undefined ? undefined : ofHour(tokens, index + (many ? 2 : 1));
  return minutes === undefined || next === undefined ? undefined : { minutes, next };
};

// "an hour and a half", "hour and a half": not "6 an hour and half a stem".
const hourAndHalf = (tokens: readonly Token[], index: number): number | undefined => {
  const at = /^(a|an)$/.test(textAt(tokens, index)) ? index + 1 : index;
  if (tokens[index - 1]?.number !== undefined) return undefined;
  const said =
    hours.has(textAt(tokens, at)) &&
    textAt(tokens, at + 1) === 'and' &&
    textAt(tokens, at + 2) === 'a' &&
    textAt(tokens, at + 3) === 'half';
  return said && !/^(a|an|of|stem|stems|dozen)$/.test(textAt(tokens, at + 4)) ? at + 4 : undefined;
};

// "3 1/2 hours", "1/2 hr", "3/4 of an hour": a fraction before hours is no day of the year.
const inHours = new Set(['hour', 'hours', 'hr', 'hrs', 'h']);
const fractionOfHours = (tokens: readonly Token[], index: number): { amount: string; next: number } | undefined => {
  const whole = tokens[index]?.number?.form === 'plain' && /^\d{1,2}$/.test(textAt(tokens, index)) ? Number(textAt(tokens, index)) : 0;
  const at = whole > 0 ? index + 1 : index;
  const share = tokens[at]?.number?.form === 'slashed' ? slashedParts[textAt(tokens, at)] : undefined;
  if (share === undefined) return undefined;
  const next = inHours.has(textAt(tokens, at + 1)) ? at + 2 : whole > 0 ? undefined : ofHour(tokens, at + 1);
  return next === undefined ? undefined : { amount: String(whole + Number(share)), next };
};

const opens = new Set(['a', 'an', ...hours, ...Object.keys(shares)]);
/** The tokens with shares of an hour joined. */
export const joinHourWords = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some((token) => inHours.has(token.text))) return tokens;
  const joined: Token[] = [];
  const put = (from: number, next: number, amount: string, unit: 'min' | 'hour'): void => {
    joined.push(asNumber(tokens, from, next, { form: 'duration', amount, unit }));
  };
  for (let index = 0; index < tokens.length; ) {
    const here = tokens[index] as Token;
    if (here.number === undefined && !opens.has(here.text)) {
      joined.push(here);
      index += 1;
      continue;
    }
    const share = shareOfHour(tokens, index);
    const half = share === undefined ? hourAndHalf(tokens, index) : undefined;
    const fraction = share === undefined && half === undefined ? fractionOfHours(tokens, index) : undefined;
    if (share !== undefined) put(index, share.next, share.minutes, 'min');
    else if (fraction !== undefined) put(index, fraction.next, fraction.amount, 'hour');
    else if (half !== undefined) put(index, half, '1.5', 'hour');
    else joined.push(here);
    index = share?.next ?? half ?? fraction?.next ?? index + 1;
  }
  return joined;
};
