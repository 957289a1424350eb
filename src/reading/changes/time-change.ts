// A new hour for the event: "ceremony 3pm not 2pm", "4pm not 2", "start's at 3 now".

import { endOfHours, timeAt } from '../dates/clock-time.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { withoutOwner } from '../text/owners.ts';
import { firstWhere, isNumber, type Token } from '../text/token.ts';
import { anyOccasion, isOccasion } from '../words/occasion-words.ts';
import { bareWords } from './change-words.ts';
import { saysCountAt } from './count-at-price.ts';
import { inZones, type Zones } from './two-zones.ts';

// "4pm not 2": the old hour is of the same half of the day.
const oldHour = (reader: Reader, index: number, zones: Zones): { end: number; time: string } | undefined => {
  const hour = Number(reader.tokens[index]?.number?.amount);
  if (!isNumber(reader.tokens[index], 'plain') || !inZones(zones.old, index) || !Number.isInteger(hour) || hour < 1 || hour > 12)
    return undefined;
  return { end: index + 1, time: `${String(hour <= 7 ? hour + 12 : hour).padStart(2, '0')}:00` };
};

const timeWords = /^(service|vows|time|time's|times|start|starts|starting|handover|pickup|collection|its|it's|moved|now)$/;
// "actually 4pm not 2": nothing but times and words of correction.
const onlyTimes = (reader: Reader, part: Part): boolean =>
  reader.tokens
    .slice(part.start, part.end)
    .every(
      (token) =>
        token.kind !== 'word' ||
        bareWords.has(token.text) ||
        /^(pm|am|noon|midday|half|past|any|more|anymore|like|originally|before|earlier)$/.test(token.text),
    );
// "ceremony now 3 not 2", "start's been pushed to 4", "new time 4.30": an hour in figures alone, behind a word for the time.
const hourForm = pattern(
  `((${anyOccasion}) (time|is|has|been|now|moved|changed|pushed|brought|put|back|forward|earlier|later|starts|starting|will|be){1,5} (at|to) (<h:count>|<h:plain>)|(ceremony|service|vows|start|starts|starting|kickoff|kick off|ceremony's|start's|service's|start time|ceremony time|time) (time|is|has|been|now|at|to|moved|changed|pushed|brought|put|back|forward|out|up|earlier|later|starts|starting|will|be|:|-){1,6} (<h:count>|<h:plain>)|new (start|ceremony)? time (is|:|=|-)? (<h:count>|<h:plain>))`,
);
const saysNew = /^(now|new|moved|changed|pushed|brought|put|not)$/;
const hourTold = ({ tokens }: Reader, { start, end }: Part, zones: Zones): { end: number; time: string } | undefined => {
  const match = hourForm.in(tokens, start, end);
  const said = match?.kept['h'];
  if (match === undefined || said === undefined || !inZones(zones.fresh, match.end - 1)) return undefined;
  const parts = /^(\d{1,2})(?:[.]([0-5]\d))?$/.exec(said.text);
  const hour = Number(parts?.[1]);
  const next = tokens[match.end];
  if (parts === null || hour < 1 || hour > 12 || !tokens.slice(start, end).some(({ text }) => saysNew.test(text))) return undefined;
  if (
    next !== undefined &&
    match.end < end &&
    next.kind === 'word' &&
    !/^(not|now|instead|please|pls|sharp|sorry|thanks|ta|from|on)$/.test(next.text)
  )
    return undefined;
  return { end: match.end, time: `${String(hour <= 7 ? hour + 12 : hour).padStart(2, '0')}:${parts[2] ?? '00'}` };
};

// "photographer's now coming at 3pm", "hair trial moved to 3pm", "i start now at 9": somebody else's hour, or something else's.
const ofEvent = /^(service|vows|do|handover|pickup|collection|delivery|time|times|start|starts|starting)$/;
const besides =
  /^(rehearsal|trial|trials|meeting|fitting|makeup|hair|photographer|photos|drying|lead|order|prep|access|setup|bump|install|call|tasting|shift|lunch|venue|courier|cake|band|dj)$/;
// Who moves it, and how.
const mover =
  /^(they've|they|she|he|she's|he's|they'd|just|have|has|had|couple|church|registrar|celebrant|priest|vicar|minister|family|planner|back|forward|pushed|brought|out|earlier|later|gone|bit)$/;
const starter = pattern("(i|we|you|he|she|they|i'll|we'll|<bench>) (can|will|could|now|only|all)? (start|starting|starts|begin)");
// "they've moved the wedding to 3pm", "she's pushed the service back to half two"
const movesForm = pattern(
  `(moved|pushed|put|brought|shifted|changed|bumped|moving|pushing) (the|our|their|her|his)? (${anyOccasion}|service|vows|start|start time|it|everything) (time)? (back|forward|out|up|on)? (to|till|until) (<time>|<count>|half|quarter|noon|midday)`,
);
// "it's been brought forward an hour to 1pm"
const passive = pattern(
  "(been|is|was|got|being|it's|its|they've|they|we've|and|but|so|,) (moved|pushed|put|brought|shifted|bumped) (us|things)? (back|forward|out|up|on)? (by)? (an hour|half an hour|a bit|<duration>)? (to|till|until) (<time>|half|quarter|noon|midday)",
);
const ofOthers = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const words = tokens.slice(start, end).filter(({ kind, number }) => kind === 'word' && number === undefined);
  const plain = (token: Token): string => withoutOwner(token.text);
  const bumps = (token: Token, at: number): boolean =>
    token.text === 'bump' && /^(it|that|us|them|things)$/.test(words[at + 1]?.text ?? '');
  if (words.some((token, at) => besides.test(plain(token)) && !bumps(token, at)) || starter.in(tokens, start, end) !== undefined)
    return true;
  if (movesForm.in(tokens, start, end) !== undefined) return false;
  const first = firstWhere(tokens, start, end, (token) => token.number !== undefined);
  const subject = tokens.slice(start, first < 0 ? end : first).filter(({ kind }) => kind === 'word');
  if (subject.some((token) => ofEvent.test(plain(token)) || isOccasion(token.text))) return false;
  const known = (token: Token): boolean =>
    bareWords.has(plain(token)) ||
    timeWords.test(plain(token)) ||
    isOccasion(token.text) ||
    mover.test(plain(token)) ||
    /^(same|still|day|date|place)$/.test(plain(token));
  return subject.some((token) => !known(token) && token.means['weekday'] === undefined);
};

const handing = pattern(
  "(pickup|pick-up|pickup's|collection|collection's|collecting|collects|collect|collected|delivery|delivery's|deliver|delivers|delivering|handover|handover's|(pick|picks|picking) up|(drop|drops|dropping) off|(hand|hands|handing) over)",
);
const anHour = pattern('(<time>|at <count>|to <count>|noon|midday|now <count>)');
/** "pickup is 4pm not 3": when it is handed over, and the event's own hour stays. */
export const hourOfHandOver = ({ tokens }: Reader, { start, end }: Part): boolean =>
  handing.in(tokens, start, end) !== undefined &&
  anHour.in(tokens, start, end) !== undefined &&
  !tokens.slice(start, end).some(({ text, means, number }) => isOccasion(text) || means['piece'] !== undefined || number?.form === 'money');

export const movesHour = ({ tokens }: Reader, { start, end }: Part): boolean =>
  movesForm.in(tokens, start, end) !== undefined || passive.in(tokens, start, end) !== undefined;

const moving = /^(moved|moving|move|moves|pushed|changed|change|shifted|gone|goes|brought|bumped|put|switched|rescheduled)$/;
const saysMoved = new RegExp(`${moving.source.slice(0, -2)}|not|was|delayed|postponed|slipped|now|start|starts|starting|time|start time)$`);
// The stretch of hours that a time behind "from" opens.
const hoursFrom = (
  reader: Reader,
  index: number,
  { time, end }: { time: string; end: number },
): { time: string; end: number } | undefined => {
  if (reader.tokens[index - 1]?.text !== 'from' && reader.tokens[end - 2]?.text !== 'from') return undefined;
  const till = endOfHours(reader.tokens, end);
  const wider = till > end ? { time, end: till } : timeAt(reader, end - 1, false);
  return wider !== undefined && wider.end > end ? wider : undefined;
};
/** "moved from 6 to 7 pm": where the old hour ends that the two would make a span of. "Party from 6 to 7 pm" is one. */
export const oldOfSpan = (tokens: readonly Token[], index: number, end: number, zones: Zones): number | undefined =>
  tokens
    .slice(Math.max(0, index - 3), index)
    .some(({ text }, at) => moving.test(text) && tokens[Math.max(0, index - 3) + at + 1]?.text !== 'to')
    ? zones.old.find(([, to]) => index < to && end > to)?.[1]
    : undefined;

/** The new hour, if the part says one. */
export const timeChange = (reader: Reader, part: Part, zones: Zones): Finding | undefined => {
  const named =
    movesHour(reader, part) ||
    reader.tokens.slice(part.start, part.end).some(({ text }) => timeWords.test(withoutOwner(text)) || isOccasion(text));
  // "i start now at 9" is neither an hour of the event nor a price.
  const ours = reader.tokens.slice(part.start, part.end).some(({ means }) => means['piece'] !== undefined);
  if (!ours && starter.in(reader.tokens, part.start, part.end) !== undefined) return { start: part.start, end: part.end, held: true };
  if ((!named && (!onlyTimes(reader, part) || saysCountAt(reader, part))) || ofOthers(reader, part)) return undefined;
  let to: string | undefined;
  let from: string | undefined;
  const told = hourTold(reader, part, zones);
  if (told !== undefined) to = told.time;
  for (let index = told?.end ?? part.start; index < part.end; index++) {
    const time = timeAt(reader, index, zones.old.length > 0) ?? (to === undefined ? undefined : oldHour(reader, index, zones));
    if (time === undefined) continue;
    // "its 9.50 not 9" is money: nobody meets at ten to with a point.
    if (
      /^\d{1,2}[.]\d{2}$/.test(reader.tokens[index]?.text ?? '') &&
      !/[.](00|15|30|45)$/.test(reader.tokens[index]?.text ?? '') &&
      time.end === index + 1
    )
      return undefined;
    // "ceremony from 2 to 3pm": from when till when, where nothing says that it moved.
    const span =
      inZones(zones.old, time.end - 1) && !reader.tokens.slice(part.start, index + 1).some(({ text }) => saysMoved.test(text))
        ? hoursFrom(reader, index, time)
        : undefined;
    if (span !== undefined) {
      to ??= span.time;
      index = span.end - 1;
      continue;
    }
    const old = oldOfSpan(reader.tokens, index, time.end, zones);
    if (old !== undefined) {
      from ??= time.time;
      index = old;
      continue;
    }
    if (inZones(zones.old, time.end - 1)) from ??= time.time;
    else to ??= time.time;
    index = time.end - 1;
  }
  if (to === undefined || reader.tokens.slice(part.start, part.end).some((token) => token.means['bench'] !== undefined)) return undefined;
  const of = hourOfHandOver(reader, part) ? { of: 'hand over' as const } : {};
  return found(reader, part.start, part.end, [{ fact: 'change', what: 'time', to, ...(from === undefined ? {} : { from }), ...of }]);
};
