// Cuts a sentence about the work into what it tells: counted pieces, what became of them, words that join. One word it does not know, and it is not cut at all.

import type { Reader } from '../phrase.ts';
import { isCount, isSingle, type Token } from '../text/token.ts';
import type { Event } from './event.ts';
import { amount, at, eventAt } from './event-at.ts';
import { countsSpareGoods } from './spare-goods.ts';
import { asSpares, nobody, spares } from './spares-told.ts';
import { afterLoss, downTo, fellWith, leavesSo, lossMore, stillSo } from './told-of-losses.ts';
import { byDay, dayTold, fillers, noName, noneForms, outOf, quiet, somebody, stops } from './work-forms.ts';

export type { Event } from './event.ts';

const hasNow = /^(have|has|i've|we've|ive|weve|she's|he's|they've)$/;
const finished = ({ told }: Event): boolean => told === 'did' || told === 'done';
// "Jo did 15, Ana ten": written as a name, or beside one.
const isName = (reader: Reader, start: number, index: number): boolean => {
  const written = reader.words(index, index + 1);
  const whole = reader.words(start, index);
  if (/^[A-Z][a-z]+$/.test(written)) return whole !== whole.toUpperCase();
  const first = somebody.at(reader.tokens, start, index);
  return (
    first !== undefined &&
    first.end > start &&
    isFinishing.test(reader.tokens[first.end]?.text ?? '') &&
    !noName.test(written.toLowerCase())
  );
};
const isFinishing = /^(made|did|finished|has|done|got|completed|boxed)$/;

const wholeAfterLoss = (tokens: readonly Token[], index: number, end: number, events: readonly Event[]): Event | undefined => {
  if (!events.some(({ told }) => told === 'lost')) return undefined;
  const [made, gone, third] = events.filter(({ told }) => told === 'count');
  const so = third === undefined ? leavesSo.at(tokens, index, end) : undefined;
  const rest = (made?.count ?? 0) - (gone?.count ?? 0);
  const kinds = [made?.kind ?? gone?.kind, so?.kept['p']].flatMap((kind) => kind?.means['piece'] ?? []);
  const alike = gone !== undefined && made?.of === undefined && kinds[0] === (kinds[1] ?? kinds[0]);
  if (so?.end === end && amount(so.kept['n']) === rest && rest > 0 && alike)
    return { told: 'reach', start: index, end: tokens.indexOf(so.kept['n'] as Token, index) };
  const down = downTo.at(tokens, index, end);
  if (down !== undefined && isCount(tokens[down.end])) return at(down, 'reach');
  const still = events.some(({ told }) => told === 'again') ? stillSo.at(tokens, index, end) : undefined;
  if (still?.end !== end) return undefined;
  const count = tokens.findIndex((token, place) => place >= index && isCount(token));
  return { told: 'reach', start: index, end: count };
};

/** What the stretch tells, in order; nothing where a word stands in it that could change the sense. */
export const workEvents = (reader: Reader, start: number, end: number, kindsFirst: boolean): readonly Event[] | undefined => {
  const { tokens } = reader;
  const events: Event[] = [];
  let fell = false;
  const days = byDay.in(tokens, start, end) !== undefined;
  for (let index = start; index < end; ) {
    const token = tokens[index] as Token;
    if (!reader.free(index) || (token.text === 'smashed' && !/^(out|through|thru)$/.test(tokens[index + 1]?.text ?? ''))) return undefined;
    const dayAt = days ? dayTold.at(tokens, index, end) : undefined;
    const fall = fellWith(tokens, index, end);
    fell ||= fall !== undefined;
    const hush = dayAt ?? fall ?? quiet.at(tokens, index, end) ?? (afterLoss(events) ? lossMore(tokens, index, end, events) : undefined);
    if (hush !== undefined) {
      index = hush.end;
      continue;
    }
    const last = events.at(-1);
    // "made 20, 2 of them spare"
    const extra = last === undefined ? undefined : spares.at(tokens, index, end);
    const spare = extra !== undefined && countsSpareGoods(tokens, extra.end) ? undefined : extra;
    const made = events.findLastIndex((event) => event.told === 'count');
    if (spare !== undefined && made >= 0) {
      if (!isSingle(spare.kept['n']?.number)) return undefined; // "2 or 3 of them spare"
      events[made] = { ...(events[made] as Event), spares: amount(spare.kept['n']) };
      index = spare.end;
      continue;
    }
    const all = last === undefined || nobody.test(token.text) ? undefined : asSpares.at(tokens, index, end);
    if (nobody.test(token.text) && noneForms.every((form) => form.at(tokens, index, end) === undefined)) return undefined;
    if (all !== undefined && made >= 0 && events[made]?.of === undefined) {
      if (events.findIndex((event) => event.told === 'count') !== made) return undefined;
      events[made] = { ...(events[made] as Event), spares: events[made]?.count ?? 0 };
      index = all.end;
      continue;
    }
    // "12 made out of the 20 bouts"
    const rest = last?.told === 'done' || last?.told === 'did' ? outOf.at(tokens, index, end) : undefined;
    const before = events.at(-2);
    if (rest !== undefined && before?.told === 'count' && before.of === undefined) {
      const of = amount(rest.kept['m']);
      const kind = before.kind ?? rest.kept['p'];
      if (of < (before.count ?? 0)) return undefined;
      events[events.length - 2] = { ...before, of, ...(kind === undefined ? {} : { kind }) };
      events[events.length - 1] = { ...(last as Event), end: rest.end };
      index = rest.end;
      continue;
    }
    // "i have now completed 31": as many as there are.
    if (token.text === 'now' && hasNow.test(tokens[index - 1]?.text ?? '') && isFinishing.test(tokens[index + 1]?.text ?? '')) {
      events.push({ told: 'whole', start: index, end: index + 1 });
      index += 1;
      continue;
    }
    const reached = wholeAfterLoss(tokens, index, end, events);
    const event = reached ?? eventAt(tokens, index, end, kindsFirst);
    if (event === 'unsure') return undefined;
    // "knocked a tray and broke four": nothing stands before it that could have broken.
    if (event?.behind === true && !events.some(({ told }) => told === 'count')) {
      const { behind: _, ...first } = event;
      events.push(first);
      index = event.end;
      continue;
    }
    if (event !== undefined) {
      const another = days && event.told === 'count' && (last?.told === 'count' || (last?.told === 'done' && before?.told === 'count'));
      if (another) events.push({ told: 'join', start: index, end: index });
      events.push(another && event.kind === undefined && last.kind !== undefined ? { ...event, kind: last.kind } : event);
      index = event.end;
    } else if (token.kind === 'line' || stops.test(token.text)) {
      events.push({ told: 'stop', start: index, end: index + 1 });
      index += 1;
    } else if (fillers.test(token.text)) {
      // "10 more since lunch, 26 now"
      const ends = tokens[index + 1] === undefined || index + 1 === end;
      if (token.text === 'now' && last?.told === 'count' && ends) events.push({ told: 'whole', start: index, end: index + 1, soft: true });
      index += 1;
    } else {
      const opens = index === start || last?.told === 'join' || last?.told === 'stop';
      const who = opens ? somebody.at(tokens, index, end) : undefined;
      if (who === undefined) return undefined;
      const does = isFinishing.test(tokens[who.end]?.text ?? '');
      // "Jo did 15; Ana ten"
      const more =
        last !== undefined && isCount(tokens[who.end]) && who.end === index + 1 && isName(reader, start, index) && events.some(finished);
      if (!does && !more) return undefined;
      if (more && last !== undefined) events[events.length - 1] = { told: 'join', start: last.start, end: last.end };
      index = who.end;
    }
  }
  // "dropped a tray, 12 done": how many fell is not said.
  return fell && !events.some((event) => event.told === 'lost') ? undefined : events;
};
