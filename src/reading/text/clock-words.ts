// A time of day written with its half: "4.30pm", "430pm", "4 pm", "2 o'clock".

import type { NumberRead, Token } from './token.ts';

export const clockTime = (tokens: readonly Token[], index: number): { readonly number: NumberRead; readonly next: number } | undefined => {
  const token = tokens[index];
  const number = token?.number;
  if (token === undefined || number === undefined || (number.form !== 'plain' && number.form !== 'time')) return undefined;
  const shape = /^(\d{1,2})(?:[:.]?(\d{2}))?$/.exec(token.text);
  if (shape === null && number.worded !== true) return undefined;
  const hour = Number(shape?.[1] ?? number.amount);
  const minute = Number(shape?.[2] ?? 0);
  if (hour > 12 || hour === 0 || minute > 59) return undefined;
  let next = index + 1;
  if (tokens[next]?.text === "o'clock" || tokens[next]?.text === 'oclock') {
    next += 1;
    if (!/^(am|pm)$/.test(tokens[next]?.text ?? ''))
      return { number: { form: 'time', amount: '', parts: [hour, minute], vague: 'time of day' }, next };
  }
  const half = tokens[next]?.text ?? '';
  const dotted = (half === 'a' || half === 'p') && tokens[next + 1]?.text === '.' && tokens[next + 2]?.text === 'm';
  if (!/^(am|pm)$/.test(half) && !dotted) return undefined;
  const afternoon = half.startsWith('p');
  const of24 = (hour % 12) + (afternoon ? 12 : 0);
  return { number: { form: 'time', amount: '', parts: [of24, minute] }, next: next + (dotted ? 3 : 1) };
};
