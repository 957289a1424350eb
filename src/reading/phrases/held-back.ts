// Numbers that are said and not meant for this order: another studio's, last year's, a wish, a case that may not come. Nobody reads them; they are named as unread.

import { spending } from '../afterwards/spending.ts';
import { isBeforeDay } from '../dates/hour-or-price.ts';
import { addressStretches } from '../held/addresses.ts';
import { calledOff } from '../held/called-off.ts';
import { clausesOf, reachOf } from '../held/clauses.ts';
import { codeStretches } from '../held/codes-told.ts';
import { everydayStretches } from '../held/everyday.ts';
import { goodsBroken } from '../held/goods-broken.ts';
import { lessonStretches } from '../held/lessons.ts';
import { madeByOthers } from '../held/made-by-others.ts';
import { memories } from '../held/memories.ts';
import { aside, boxedThings, costOfThings, handled, lesson, moreIf, otherThings, perhapsMore } from '../held/more-signs.ts';
import { notOurs } from '../held/not-ours.ts';
import {
  billDone,
  billed,
  butNot,
  elsewhere,
  gone,
  holder,
  likeness,
  onlyNot,
  politeIf,
  supposing,
  unreal,
  workDone,
} from '../held/signs.ts';
import { isStrangeTalk } from '../held/strange-talk.ts';
import { surelyTeeth, teethStretches } from '../held/teeth.ts';
import { namesPieces } from '../names-pieces.ts';
import { beginsIn, type Pattern, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import { mishap } from '../progress/losses.ts';
import { asksPeople } from '../questions/requested.ts';
import type { Part, Stretch } from '../text/message.ts';
import { otherMatterEnd } from '../text/other-matters.ts';

// "stick 40 combs on the order": written there.
const written = pattern(
  '(put|pop|stick|putting|sticking) <any>{1,4} (on|in|down on|down in) (the|our|my|this|that) (list|order|book|books|sheet|diary|job|quote|bill|event)',
);

const placeOf = ({ tokens }: Reader, { start, end }: Part, form: Pattern): number | undefined => {
  for (let index = form.next(tokens, start, end); index < end; index = form.next(tokens, index + 1, end)) {
    if (form.at(tokens, index, end) === undefined) continue;
    if (likeness.test(tokens[index - 1]?.text ?? '')) return undefined;
    if (written.at(tokens, index, end) !== undefined) continue;
    // "had to redo 2" is done.
    return tokens[index - 1]?.text === 'to' && tokens[index - 2]?.text === 'had' ? undefined : index;
  }
  return undefined;
};
const placesOf = (reader: Reader, part: Part, forms: readonly Pattern[]): number[] => {
  const places: number[] = [];
  if (!beginsIn(forms, reader.tokens, part.start, part.end)) return places;
  for (const form of forms) {
    const place = placeOf(reader, part, form);
    if (place !== undefined) places.push(place);
  }
  return places;
};
const asides: readonly Pattern[] = [...aside, moreIf];
const mayBe: readonly Pattern[] = [...unreal, ...handled];

const besidePieces = ({ tokens }: Reader, { start, end }: Part) => {
  const match = boxedThings.in(tokens, start, end);
  const bought = match !== undefined && tokens.slice(match.start, match.end).some(({ means }) => means['ingredient'] !== undefined);
  return match !== undefined && !bought && namesPieces(tokens) ? match : undefined;
};

// "20 candles for the tables, 4 each": other things, and what they cost. Beside pieces in the same clause only the things themselves.
const thingsOf = (reader: Reader, part: Part, clauses: readonly Stretch[]): Stretch[] => {
  const match = otherThings.in(reader.tokens, part.start, part.end) ?? besidePieces(reader, part);
  if (match === undefined) return [];
  const ours = ({ start, end }: Stretch): boolean => reader.tokens.slice(start, end).some((token) => token.means['piece'] !== undefined);
  const own = clauses.findIndex((clause) => clause.start <= match.start && match.start < clause.end);
  const clause = clauses[own];
  // "a corsage for each of the 12 dancers" counts those who wear them.
  const wear = /^(the|our|for|of|in|into)$/.test(reader.tokens[match.start - 1]?.text ?? '');
  if (clause !== undefined && wear && ours({ start: clause.start, end: match.start })) return [];
  if (clause === undefined || ours(clause)) {
    const cost = wear ? undefined : costOfThings.at(reader.tokens, match.end, part.end);
    return [{ start: match.start, end: cost?.end ?? match.end }];
  }
  let { end } = clause;
  for (const next of clauses.slice(own + 1)) {
    if (ours(next)) break;
    if (reader.tokens.slice(next.start, next.end).some((token) => token.number !== undefined)) end = next.end;
  }
  return [{ start: clause.start, end }];
};

const caseClosed = /^in case ?(,|-|so|that's|thats|which|and|now|total|making)/i;
const handing = /^(collected|collecting|collection|pickup|pick|picked|delivery|delivered|delivering)$/;
const stretchesOf = (reader: Reader, part: Part): Stretch[] => {
  const { tokens } = reader;
  const words = tokens.slice(part.start, part.end);
  if (asksPeople(reader, part)) return [part];
  if (!words.some((token) => token.number !== undefined)) return [];
  if (calledOff(reader, part)) return [part];
  if (billed.in(tokens, part.start, part.end) !== undefined && words.some((token) => billDone.test(token.text))) return [part];
  if (lesson.in(tokens, part.start, part.end) !== undefined && !words.some((token) => token.means['piece'] !== undefined)) return [part];
  const clauses = clausesOf(reader, part);
  const held = [
    ...placesOf(reader, part, elsewhere).map((at) => reachOf(reader, clauses, at, false)),
    ...placesOf(reader, part, mayBe).map((at) => reachOf(reader, clauses, at, true)),
  ].filter((stretch) => stretch !== undefined);
  held.push(...thingsOf(reader, part, clauses));
  const kept = holder.in(tokens, part.start, part.end);
  const holding = kept === undefined ? undefined : reachOf(reader, clauses, kept.start, true);
  if (holding !== undefined && !tokens.slice(holding.start, holding.end).some((token) => workDone.test(token.text))) held.push(holding);
  for (const form of asides) {
    const match = form.in(tokens, part.start, part.end);
    const from = match?.kept['from'];
    // "rehearsal 6 may" is a day, and no hour.
    const day = tokens[match?.end ?? part.end]?.means['month'] !== undefined && tokens[(match?.end ?? 0) - 1]?.number?.form === 'plain';
    // "pick up at 3 fri 12 feb": the hour of its day
    const hour =
      match !== undefined &&
      handing.test(tokens[match.start]?.text ?? '') &&
      !words.some(({ means }) => means['ingredient'] !== undefined) &&
      isBeforeDay(reader, match.end - 1);
    if (match !== undefined && !day && !hour)
      held.push({ start: from === undefined ? match.start : tokens.indexOf(from, match.start), end: match.end });
  }
  const more = perhapsMore.in(tokens, part.start, part.end);
  if (more?.kept['n']?.number?.approx === true && /^(maybe|say)/i.test(reader.words(more.start, more.end))) held.push(more);
  const away = gone.in(tokens, part.start, part.end);
  if (away !== undefined && !tokens.some((token) => mishap.test(token.text))) held.push({ start: away.start, end: away.end });
  const single = words.filter((token) => token.number !== undefined).length === 1;
  if (butNot.in(tokens, part.start, part.end) !== undefined) held.push(part);
  if (single && onlyNot.in(tokens, part.start, part.end) !== undefined) held.push(part);
  const supposed = supposing.in(tokens, part.start, part.end);
  // "did 5 extra in case, so 45 total": nothing is supposed.
  const closed = supposed !== undefined && caseClosed.test(reader.words(supposed.start, supposed.end));
  if (supposed !== undefined && !closed && politeIf.at(tokens, supposed.start, part.end) === undefined)
    held.push({ start: supposed.start, end: part.end });
  return held;
};

const merged = (stretches: readonly Stretch[]): Stretch[] => {
  const whole: Stretch[] = [];
  for (const { start, end } of [...stretches].sort((a, b) => a.start - b.start)) {
    const before = whole.at(-1);
    if (before !== undefined && start <= before.end) whole[whole.length - 1] = { start: before.start, end: Math.max(before.end, end) };
    else whole.push({ start, end });
  }
  return whole;
};

/** Talk of everyday things goes before all that reads goods, work and days. */
const findEveryday = (reader: Reader): Finding[] => {
  const parts = reader.untouched().slice(0, 40);
  const strange = parts.length > 0 && isStrangeTalk(reader);
  const apart = parts.filter((part) => !part.asked && otherMatterEnd(reader.tokens, part.start) === part.end);
  return [
    ...apart.map(({ start, end }) => ({ start, end, held: true, apart: true })),
    ...parts
      .filter((part) => !apart.includes(part))
      // "spent 120 at the market" is what the flowers cost.
      .filter((part) => spending(reader.tokens, part).length === 0)
      .flatMap((part) =>
        strange
          ? [part]
          : [
              ...notOurs(reader, part),
              ...lessonStretches(reader, part),
              ...madeByOthers(reader, part),
              ...goodsBroken(reader, part),
              ...surelyTeeth(reader, part),
              ...everydayStretches(reader, part),
              ...addressStretches(reader, part),
              ...codeStretches(reader, part),
              ...teethStretches(reader, part),
              ...memories(reader, part),
            ],
      )
      .map(({ start, end }) => ({ start, end, held: true })),
  ];
};

export const everydayTalk: Phrase = { name: 'everyday talk', examples: [], find: findEveryday };

const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, 40)
    .flatMap((part) => merged(stretchesOf(reader, part)))
    .map(({ start, end }) => ({ start, end, held: true }));

export const heldBack: Phrase = { name: 'held back', examples: [], find };
