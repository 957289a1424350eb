// "pick up at 8 sat week", "ceremony at 1.30 on 6th march": an hour right before its day. Behind a piece it would be a price.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { isHourOfDay, type TimeRead, timeAt } from './clock-time.ts';
import type { DateRead } from './date-read.ts';
import { hourBeforeDay } from './hour-or-price.ts';
import { hourRunTogether } from './run-together.ts';

const led =
  /^(up|off|over|on|vows|mass|lunch|dinner|doors|pickup|collection|starts|start|starting|party|is|it's|its|now|delivery|handover|collect|collecting|collects|deliver|delivering|delivered|it|them|service|do|there|ready|needed|wanted|required|due)$/;
const at = /^(at|by|before|@)$/;
const between = /^(on|this|the|,|hrs|hours)$/;

// "arvo wedding 5.30 on sat", "ceremony 2.15 sat 20 feb": hours and minutes right behind the occasion.
const clock = /^\d{1,2}(\.|:)(00|15|30|45)$/; // "8.50" is sooner a price
// "drop off at the hall 8.30 sat 13 march", "pickup 0900hrs fri 12 feb": behind what is handed over, where nothing has a price.
const handing = pattern(
  '(pickup|pick-up|collection|collecting|collect|handover|delivery|delivering|deliver|pick up|picking up|drop off|dropping off|hand over|be there|drop)',
);
const priced = pattern('(<money>|<piece>|<each>|<ingredient>|<pack>)');
const handsOver = ({ tokens }: Reader, index: number): boolean => handing.in(tokens, 0, index) !== undefined && !priced.might(tokens);
// The hour here, where a day stands right behind it.
const beforeDay = (reader: Reader, index: number, reads: readonly DateRead[]): TimeRead | undefined => {
  const time = timeAt(reader, index, true);
  const next = time === undefined ? undefined : reads.find((read) => read.start >= time.end && read.start - time.end <= 2);
  if (time === undefined || next === undefined) return undefined;
  return reader.tokens.slice(time.end, next.start).every(({ text }) => between.test(text)) ? time : undefined;
};
const dottedBehind = (reader: Reader, index: number, reads: readonly DateRead[]): TimeRead | undefined => {
  const { tokens } = reader;
  const before = tokens[index - 1]?.text ?? '';
  const token = tokens[index];
  const own = isOccasion(before) || /^(do|service|vows|mass|ball|dinner|lunch)$/.test(before);
  if (
    token === undefined ||
    !(
      (own && clock.test(token.text)) ||
      ((isHourOfDay(token) || clock.test(token.text) || hourRunTogether(tokens, index) !== undefined) && handsOver(reader, index))
    )
  )
    return undefined;
  return beforeDay(reader, index, reads);
};

/** The hour that begins here, where a day follows at once. */
export const timeAhead = (reader: Reader, index: number, reads: readonly DateRead[]): TimeRead | undefined => {
  const { tokens } = reader;
  const own = at.test(tokens[index]?.text ?? '') ? hourBeforeDay(reader, index + 1) : undefined;
  const goods = tokens[index - 1]?.text === ',' ? tokens[index - 2] : tokens[index - 1];
  if (own !== undefined && (goods?.number ?? goods?.means['piece'] ?? goods?.means['each']) !== undefined)
    return { start: index, end: index + 2, time: own };
  const dotted = dottedBehind(reader, index, reads);
  if (dotted !== undefined) return dotted;
  const lead = at.test(tokens[index]?.text ?? '') ? index : index - 1;
  if (!at.test(tokens[lead]?.text ?? '') || !(led.test(tokens[lead - 1]?.text ?? '') || isOccasion(tokens[lead - 1]?.text ?? '')))
    return undefined;
  return beforeDay(reader, index, reads);
};
