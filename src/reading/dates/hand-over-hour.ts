// The hour that flowers are fetched or brought beside the day of an event: "prom 28 may, collect at 3". The prom has its own.

import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import { withoutOwner } from '../text/owners.ts';
import { isOccasion } from '../words/occasion-words.ts';
import type { TimeRead } from './clock-time.ts';

const handing =
  /^(handover|pickup|pick-up|pickups|collection|collect|collects|collecting|collected|delivery|deliver|delivers|delivering|delivered|door)$/;
const particles: Readonly<Record<string, RegExp>> = {
  up: /^(pick|picks|picking)$/,
  off: /^(drop|drops|dropping)$/,
  over: /^(hand|hands|handing)$/,
};
const between = /^(is|at|by|for|from|before|around|about|approx|the|will|be|them|it|these|everything|flowers|@|:|-|from|@)$/;

/** Whether a word here tells of handing over: "pickup", "drop off". */
export const handsAt = ({ tokens }: Reader, index: number): boolean => {
  const text = withoutOwner(tokens[index]?.text ?? '');
  return handing.test(text) || (Object.hasOwn(particles, text) && particles[text]?.test(tokens[index - 1]?.text ?? '') === true);
};

const wordAhead = ({ tokens }: Reader, start: number): number => {
  let index = start - 1;
  while (index >= 0 && start - index < 4 && between.test(tokens[index]?.text ?? '')) index -= 1;
  return index;
};

const ofOthers = /^(dress|dresses|suit|suits|cake|wholesale|wholesaler|stock|ribbon|van|chairs|hire|rose|roses|hair|makeup)$/;
/** "wedding 13 feb, rose delivery 7am": what comes in is neither the event's hour nor what goes out. */
export const isOthersDelivery = (reader: Reader, { start }: TimeRead): boolean =>
  [start, wordAhead(reader, start)].some((at) => handsAt(reader, at) && ofOthers.test(reader.tokens[at - 1]?.text ?? ''));

/** Whether an hour is that of handing over. */
export const isHandOverHour = (reader: Reader, { start, end }: TimeRead): boolean => {
  const index = wordAhead(reader, start);
  if (handsAt(reader, start) || handsAt(reader, index)) return true;
  // "3pm pickup", "3pm pick up"; the hour of "ceremony 2pm pickup 9am" is the ceremony's.
  const behind = handing.test(reader.tokens[end]?.text ?? '') ? end + 1 : handsAt(reader, end + 1) ? end + 2 : undefined;
  const next = behind === undefined ? undefined : reader.tokens[behind];
  return behind !== undefined && next?.number === undefined && !between.test(next?.text ?? '');
};

/** Whether the message names what the day is of, so that an hour of handing over is not the event's own. */
export const namesOccasion = ({ tokens }: Reader): boolean => tokens.some(({ text }) => isOccasion(text));

/** The day told or asked about, with the hour it is handed over. */
export const handedOverAt = (finding: Finding, hour: TimeRead | undefined): Finding => {
  if (hour === undefined) return finding;
  const withHour = (facts: readonly Fact[]): readonly Fact[] =>
    facts.flatMap((fact) =>
      fact.fact === 'date' && fact.of === undefined ? [fact, { ...fact, time: hour.time, of: 'hand over' as const }] : [fact],
    );
  return {
    ...finding,
    ...(finding.facts === undefined ? {} : { facts: withHour(finding.facts) }),
    ...(finding.asks === undefined
      ? {}
      : { asks: finding.asks.map((ask) => ({ ...ask, choices: ask.choices.map((each) => ({ ...each, facts: withHour(each.facts) })) })) }),
  };
};
