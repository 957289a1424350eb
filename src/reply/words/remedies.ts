// What can still be done about a late step, in words: never only "too late".

import type { InTime, Remedy } from '../../planning/calendar-step.ts';
import type { Line } from '../reply.ts';
import { dateSpan, text } from '../span.ts';
import { type DateStyle, shortDate } from './dates.ts';

const inTimeWords: { readonly [in_time in InTime]: string } = {
  yes: 'in time',
  'only if it dries fast': 'in time only if it dries fast',
  no: 'too late for the bench',
};

export const remedyWords = (remedy: Remedy, style: DateStyle): Line => {
  const date = (day: Parameters<typeof shortDate>[0]) => dateSpan(shortDate(day, style));
  switch (remedy.do) {
    case 'do it today':
      return text`do it today`;
    case 'hang on arrival':
      return text`hang it on arrival ${date(remedy.hang)}: ready ${date(remedy.readyFrom)} to ${date(remedy.readyBy)} (${inTimeWords[remedy.inTime]})`;
    case 'silica gel':
      return text`dry it in silica gel: ready ${date(remedy.readyFrom)} to ${date(remedy.readyBy)} (${inTimeWords[remedy.inTime]})`;
    case 'buy it ready dried':
      return text`buy it ready dried: here ${date(remedy.arrives)} (${inTimeWords[remedy.inTime]})`;
    case 'order today':
      return text`order today: here ${date(remedy.arrives)} (${inTimeWords[remedy.inTime]})`;
    case 'fetch it from the market':
      return text`fetch it from the market by ${date(remedy.by)}`;
    case 'make them fresh':
      return text`make them fresh on ${date(remedy.on)}, if stems can be had${remedy.hoursAhead === undefined ? '' : ` and keep: that is ${remedy.hoursAhead} h ahead`}`;
    case 'board as they are finished':
      return text`board them as they are finished, by ${date(remedy.by)}`;
  }
};
