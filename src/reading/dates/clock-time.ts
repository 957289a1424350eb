// A time of day beside a date: "4:30 pm", "at 2", "noon". Times said without am or pm are taken as a florist's events run: 1 to 7 are afternoon.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

export interface TimeRead {
  readonly start: number;
  readonly end: number;
  readonly time: string; // HH:MM
}

const pad = (value: number): string => String(value).padStart(2, '0');
const forms = pattern('(at|from|@|,)? (<t:time>|noon|midday|midnight)');
const bareHour = pattern('(at|@) <h:count>');
const halfPast = pattern('(at|@|,)? (half|quarter) (past|to)? <h:count>');
const noonWords: Readonly<Record<string, string>> = { noon: '12:00', midday: '12:00', midnight: '00:00' };

const of24 = (hour: number): number => (hour >= 1 && hour <= 7 ? hour + 12 : hour);

/** The time that begins at this token. A bare "at 2" is a time only when `besideDate`. */
export const timeAt = (reader: Reader, index: number, besideDate: boolean): TimeRead | undefined => {
  const { tokens } = reader;
  const match = forms.at(tokens, index, tokens.length);
  if (match !== undefined) {
    const token = match.kept['t'];
    const word = noonWords[tokens[match.end - 1]?.text ?? ''];
    if (word !== undefined) return { start: index, end: match.end, time: word };
    const [hour = 0, minute = 0] = token?.number?.parts ?? [];
    const said = token?.number?.vague === undefined ? hour : of24(hour);
    return { start: index, end: match.end, time: `${pad(said % 24)}:${pad(minute)}` };
  }
  const half = halfPast.at(tokens, index, tokens.length);
  const hour = Number(half?.kept['h']?.number?.amount);
  if (
    half !== undefined &&
    hour >= 1 &&
    hour <= 12 &&
    (besideDate ||
      /past|to/.test(
        tokens
          .slice(index, half.end)
          .map((token) => token.text)
          .join(' '),
      ))
  ) {
    const words = tokens.slice(index, half.end).map((token) => token.text);
    if (words.includes('quarter')) {
      const to = words.includes('to');
      return { start: index, end: half.end, time: to ? `${pad(of24(hour) - 1)}:45` : `${pad(of24(hour))}:15` };
    }
    return { start: index, end: half.end, time: `${pad(of24(hour))}:30` };
  }
  if (!besideDate) return undefined;
  // "ceremony 1.30"
  const dotted = /^(\d{1,2})[.]([0-5]\d)$/.exec(tokens[index]?.text ?? '');
  if (
    dotted !== null &&
    tokens[index]?.number?.form === 'plain' &&
    /^(at|@|ceremony|from|starts|starting|start|kickoff|kick-off)$/.test(tokens[index - 1]?.text ?? '')
  ) {
    const hour = Number(dotted[1]);
    if (hour >= 1 && hour <= 12) return { start: index, end: index + 1, time: `${pad(of24(hour))}:${dotted[2] ?? '00'}` };
  }
  const bare = bareHour.at(tokens, index, tokens.length);
  const number = Number(bare?.kept['h']?.number?.amount);
  const priced = tokens[bare?.end ?? 0]?.means['each'] !== undefined;
  return bare !== undefined && number >= 1 && number <= 12 && !priced
    ? { start: index, end: bare.end, time: `${pad(of24(number))}:00` }
    : undefined;
};
