// Cuts a sentence about the work into what it tells: counted pieces, what became of them, words that join. One word it does not know, and it is not cut at all.

import { beginsAt, firstAt, type Match } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount, type Token } from '../text/token.ts';
import type { Event } from './event.ts';
import { shareSaid } from './share-forms.ts';
import { asSpares, nobody, spares } from './spares-told.ts';
import { afterLoss, lossMore } from './told-of-losses.ts';
import { isNamed } from './what-follows.ts';
import {
  both,
  byDay,
  counted,
  couple,
  dayTold,
  fillers,
  joins,
  kindFirst,
  named,
  noName,
  noneForms,
  ofAll,
  outOf,
  quiet,
  reaching,
  reachingIf,
  share,
  single,
  somebody,
  stops,
  type Told,
  target,
  toldForms,
  whole,
  wholeWord,
} from './work-forms.ts';

export type { Event } from './event.ts';

const moreWord = /^(another|more|further)$/;
const hasNow = /^(have|has|i've|we've|ive|weve|she's|he's|they've)$/;
const freshWord = /^(new|fresh|replacement)$/;
const at = (match: Match, told: Told, more: Partial<Event> = {}): Event => ({ told, start: match.start, end: match.end, ...more });
const kindIn = (match: Match): { kind?: Token } => (match.kept['p'] === undefined ? {} : { kind: match.kept['p'] });
const amount = (token: Token | undefined): number => Number(token?.number?.amount);

const countAt = (tokens: readonly Token[], index: number, end: number, kindsFirst: boolean): Event | 'unsure' | undefined => {
  const first = kindsFirst ? kindFirst.at(tokens, index, end) : undefined;
  if (first !== undefined) return at(first, 'count', { count: amount(first.kept['n']), ...kindIn(first) });
  const part = share.at(tokens, index, end);
  if (part !== undefined) {
    const [count = 0, of = 0, third] = part.kept['s']?.number?.parts ?? [amount(part.kept['n']), amount(part.kept['m'])];
    // "2/3 done" may be two thirds.
    const mayBeShare = of <= 4 && part.kept['s'] !== undefined && part.kept['p'] === undefined;
    return third !== undefined || of < count || mayBeShare
      ? 'unsure'
      : at(part, 'count', { count, of, ...kindIn(part), ...(part.kept['s'] === undefined ? {} : { slashed: true }) });
  }
  if (isNamed(tokens, index)) return 'unsure';
  const many = counted.at(tokens, index, end);
  const number = many?.kept['n']?.number;
  if (many !== undefined && number !== undefined)
    return number.max !== undefined ||
      number.or !== undefined ||
      (/^(each|at|@)$/.test(tokens[many.end]?.text ?? '') && quiet.at(tokens, many.end, end) === undefined)
      ? 'unsure'
      : at(many, 'count', {
          count: Number(number.amount),
          ...kindIn(many),
          ...(tokens[many.start]?.text === 'all' ? { all: true } : {}),
          ...(tokens.slice(many.start, many.end).some((token) => freshWord.test(token.text)) ? { fresh: true } : {}),
          ...(tokens.slice(many.start, many.end).some((token) => moreWord.test(token.text)) ? { more: true } : {}),
        });
  const two = both.at(tokens, index, end) ?? couple.at(tokens, index, end);
  return two === undefined ? undefined : at(two, 'count', { count: 2, ...kindIn(two) });
};

// "20 bouts wanted, made 12"
const countsNext = (tokens: readonly Token[], index: number, end: number): boolean =>
  counted.at(tokens, index, end) !== undefined ||
  (/^(made|did|done|finished|completed)$/.test(tokens[index]?.text ?? '') && counted.at(tokens, index + 1, end) !== undefined);

const toldAlone = toldForms.map(([, form]) => form);
const eventAt = (tokens: readonly Token[], index: number, end: number, kindsFirst: boolean): Event | 'unsure' | undefined => {
  const none = firstAt(noneForms, tokens, index, end);
  if (none !== undefined) return at(none, 'none', kindIn(none));
  const part = shareSaid(tokens, index, end);
  if (part !== undefined) return at(part.match, 'share', { fraction: part.fraction, ...kindIn(part.match) });
  const aim = target.at(tokens, index, end);
  if (aim !== undefined && countsNext(tokens, aim.end, end)) return at(aim, 'target', { of: amount(aim.kept['m']), ...kindIn(aim) });
  const reach = reaching.at(tokens, index, end);
  if (reach !== undefined && counted.at(tokens, reach.end, end) !== undefined) return at(reach, 'reach');
  const reached = reachingIf.at(tokens, index, end);
  if (reached !== undefined && counted.at(tokens, reached.end, end) !== undefined) return at(reached, 'reach', { doubtful: true });
  const count = countAt(tokens, index, end, kindsFirst);
  if (count !== undefined) return count;
  for (const [told, form, behind] of beginsAt(toldAlone, tokens, index) ? toldForms : []) {
    const match = form.at(tokens, index, end);
    if (match === undefined || match.end === match.start) continue;
    // "12 off halos" are twelve of them; gone off they are or went.
    if (told === 'lost' && match.end === match.start + 1 && tokens[match.start]?.text === 'off') continue;
    if (told === 'toMake' && counted.at(tokens, match.end, end) === undefined) continue;
    // "cut 5 bouts" may take them off the order.
    if (told === 'stage' && tokens[match.start]?.text === 'cut' && counted.at(tokens, match.end, end)?.kept['p'] !== undefined)
      return 'unsure';
    const ofAllThese = told === 'done' && tokens.slice(match.start, match.end).some((token) => /^(all|both|everything)$/.test(token.text));
    return at(match, told, { ...(behind === true ? { behind } : {}), ...(ofAllThese ? { all: true } : {}) });
  }
  const one = single.at(tokens, index, end);
  if (one !== undefined) return at(one, 'count', { count: 1, ...kindIn(one) });
  const kind = named.at(tokens, index, end);
  if (kind !== undefined)
    return at(kind, 'kind', { ...kindIn(kind), ...(ofAll.test(tokens[kind.start]?.text ?? '') ? { all: true } : {}) });
  const all = whole.at(tokens, index, end);
  if (all !== undefined) return at(all, 'whole');
  if (wholeWord.test(tokens[index]?.text ?? '')) return { told: 'whole', start: index, end: index + 1 };
  const join = joins.at(tokens, index, end);
  return join === undefined ? undefined : at(join, 'join', tokens[index]?.text === ',' ? { comma: true } : {});
};

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

/** What the stretch tells, in order; nothing where a word stands in it that could change the sense. */
export const workEvents = (reader: Reader, start: number, end: number, kindsFirst: boolean): readonly Event[] | undefined => {
  const { tokens } = reader;
  const events: Event[] = [];
  const days = byDay.in(tokens, start, end) !== undefined;
  for (let index = start; index < end; ) {
    const token = tokens[index] as Token;
    if (!reader.free(index) || (token.text === 'smashed' && !/^(out|through|thru)$/.test(tokens[index + 1]?.text ?? ''))) return undefined;
    const dayAt = days ? dayTold.at(tokens, index, end) : undefined;
    const hush = dayAt ?? quiet.at(tokens, index, end) ?? (afterLoss(events) ? lossMore(tokens, index, end, events) : undefined);
    if (hush !== undefined) {
      index = hush.end;
      continue;
    }
    const last = events.at(-1);
    // "made 20, 2 of them spare"
    const spare = last === undefined ? undefined : spares.at(tokens, index, end);
    const made = events.findLastIndex((event) => event.told === 'count');
    if (spare !== undefined && made >= 0) {
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
    const event = eventAt(tokens, index, end, kindsFirst);
    if (event === 'unsure') return undefined;
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
  return events;
};
