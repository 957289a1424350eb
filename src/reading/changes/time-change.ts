// A new hour for the event: "ceremony 3pm not 2pm", "4pm not 2", "start's at 3 now".

import { timeAt } from '../dates/clock-time.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isNumber } from '../text/token.ts';
import { bareWords } from './change-words.ts';
import { inZones, type Zones } from './zones.ts';

// "4pm not 2": the old hour is of the same half of the day.
const oldHour = (reader: Reader, index: number, zones: Zones): { end: number; time: string } | undefined => {
  const hour = Number(reader.tokens[index]?.number?.amount);
  if (!isNumber(reader.tokens[index], 'plain') || !inZones(zones.old, index) || !Number.isInteger(hour) || hour < 1 || hour > 12)
    return undefined;
  return { end: index + 1, time: `${String(hour <= 7 ? hour + 12 : hour).padStart(2, '0')}:00` };
};

const timeWords = /^(ceremony|event|wedding|time|time's|times|start|starts|starting|handover|pickup|collection|party|its|it's|moved|now)$/;
// "actually 4pm not 2": nothing but times and words of correction.
const onlyTimes = (reader: Reader, part: Part): boolean =>
  reader.tokens
    .slice(part.start, part.end)
    .every((token) => token.kind !== 'word' || bareWords.has(token.text) || /^(pm|am|noon|midday|half|past)$/.test(token.text));
/** The new hour, if the part says one. */
export const timeChange = (reader: Reader, part: Part, zones: Zones): Finding | undefined => {
  const named = reader.tokens.slice(part.start, part.end).some((token) => timeWords.test(token.text.replace(/'s$/, '')));
  if (!named && !onlyTimes(reader, part)) return undefined;
  let to: string | undefined;
  let from: string | undefined;
  for (let index = part.start; index < part.end; index++) {
    const time = timeAt(reader, index, zones.old.length > 0) ?? (to === undefined ? undefined : oldHour(reader, index, zones));
    if (time === undefined) continue;
    // "its 9.50 not 9" is money: nobody meets at ten to with a point.
    if (
      /^\d{1,2}[.]\d{2}$/.test(reader.tokens[index]?.text ?? '') &&
      !/[.](00|15|30|45)$/.test(reader.tokens[index]?.text ?? '') &&
      time.end === index + 1
    )
      return undefined;
    if (inZones(zones.old, time.end - 1)) from ??= time.time;
    else to ??= time.time;
    index = time.end - 1;
  }
  if (to === undefined || reader.tokens.slice(part.start, part.end).some((token) => token.means['bench'] !== undefined)) return undefined;
  return found(reader, part.start, part.end, [{ fact: 'change', what: 'time', to, ...(from === undefined ? {} : { from }) }]);
};
