// Joins hours said in shares: "half an hour", "quarter of an hour", "three quarters of an hour", "an hour and a half". They become minutes or hours once,
// so that no phrase reads the hour alone.

import { none, type Token } from './token.ts';

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

/** The tokens with shares of an hour joined. */
export const joinHourWords = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some((token) => hours.has(token.text))) return tokens;
  const joined: Token[] = [];
  const put = (from: number, next: number, amount: string, unit: 'min' | 'hour'): void => {
    const [first, last] = [tokens[from] as Token, tokens[next - 1] as Token];
    const text = tokens
      .slice(from, next)
      .map((token) => token.text)
      .join(' ');
    joined.push({
      kind: 'number',
      text,
      start: first.start,
      end: last.end,
      glued: first.glued,
      means: none,
      number: { form: 'duration', amount, unit },
    });
  };
  for (let index = 0; index < tokens.length; ) {
    const share = shareOfHour(tokens, index);
    const half = share === undefined ? hourAndHalf(tokens, index) : undefined;
    if (share !== undefined) put(index, share.next, share.minutes, 'min');
    else if (half !== undefined) put(index, half, '1.5', 'hour');
    else joined.push(tokens[index] as Token);
    index = share?.next ?? half ?? index + 1;
  }
  return joined;
};
