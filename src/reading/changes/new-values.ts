// The new values a correction names: counts, prices, tax, material, work done. Each becomes one change; nothing else is touched.

import { oneAfterOpens } from '../dates/one-after.ts';
import { clausesOf } from '../held/clauses.ts';
import { anyIn, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isCount, isSingle, type Token } from '../text/token.ts';
import { besideOrder, countForPrice } from './beside-order.ts';
import { dayNotDay, lossBeside, monthMeant } from './beside-values.ts';
import { boundedPrice, withBound } from './bounded-price.ts';
import { markers } from './change-words.ts';
import { countAndPrice } from './counts-and-prices.ts';
import { dateChange } from './date-change.ts';
import { datesIn, dayIn } from './dates-in.ts';
import { losesKind } from './kinds-lost.ts';
import { unsaid } from './old-numbers.ts';
import { onceFrom, saysTwice } from './once-from.ts';
import { materialChange, taxChange } from './tax-and-material.ts';
import { inZones, type Zones } from './two-zones.ts';
import { brokeChange, madeChange, notOfWork } from './work-counts.ts';
import { zonesOf } from './zones.ts';

const otherPrice = pattern('(price|cost|rate) of (the|a)? <filler>'); // "price of petrol"

/** A reader that sees one part alone, so that a correction never reaches into the next sentence. */
const narrowed = (reader: Reader, { start, end }: Part): Reader => ({
  ...reader,
  free: (index) => index >= start && index < end && reader.free(index),
});

const ofTaxOrMaterial = (fact: Unworded): boolean => fact.fact === 'change' && (fact.what === 'tax' || fact.what === 'material');
// Whole numbers meant now that are no day's.
const loneNumbers = (tokens: readonly Token[], { start, end }: Part, zones: Zones): readonly Token[] =>
  tokens.slice(start, end).filter((token, at) => {
    const [before, next] = [tokens[start + at - 1], tokens[start + at + 1]];
    const ofDay = (before?.means['month'] ?? next?.means['month'] ?? before?.means['weekday']) !== undefined;
    const ofHour = /^(at|@|by|from|to|til|till|until|before|after|around)$/.test(before?.text ?? '');
    return isCount(token) && inZones(zones.fresh, start + at) && !ofDay && !ofHour && next?.means['piece'] === undefined;
  });
// A number beside a tax word is a price.
const numberNow = ({ number }: Token, facts: readonly Unworded[]): Unworded =>
  facts.some((fact) => fact.fact === 'change' && fact.what === 'tax')
    ? { fact: 'change', what: 'price', to: number?.amount ?? '' }
    : { fact: 'change', what: 'number', to: Number(number?.amount) };

// "24 bouts now, scrap the 4 or 5 corsages": by how many is not said.
const openBy = (tokens: readonly Token[], facts: readonly Unworded[]): boolean =>
  facts.some((fact) => {
    if (fact.fact !== 'change' || fact.by === undefined) return false;
    const by = Math.abs(Number(fact.by));
    return tokens.some(({ number }) => number !== undefined && Number(number.amount) === by && !isSingle(number));
  });

// A day that is meant now, and that no fact here tells.
const leavesDay = (reader: Reader, { start, end }: Part, zones: Zones): boolean =>
  datesIn(reader, { start, end }).some(({ start: at, days }) => !inZones(zones.old, at) && !days.includes(reader.context.today)) ||
  anyIn(oneAfterOpens, reader.tokens, start, end);

export const newValues = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const zones = zonesOf(tokens, part.start, part.end);
  const saysChange = anyIn(markers, tokens, part.start, part.end);
  if ((zones.old.length === 0 && !saysChange) || otherPrice.in(tokens, part.start, part.end) !== undefined) return [];
  const work = notOfWork(reader, part, zones);
  if (work !== undefined) return work === 'unsure' ? [{ start: part.start, end: part.end, held: true }] : [];
  const own = narrowed(reader, part);
  if (zones.old.length === 0 && boundedPrice(own, part)) return [];
  const facts: Unworded[] = [...(brokeChange(reader, part, zones) ?? madeChange(reader, part, zones))];
  if (facts.length === 0) facts.push(...countAndPrice(own, part, zones));
  facts.push(...taxChange(reader, part, zones), ...materialChange(reader, part, zones));
  // "make it 14, dried", "make that 45 inc gst": the number changes as well.
  const alone = facts.length > 0 && facts.every(ofTaxOrMaterial) ? loneNumbers(tokens, part, zones) : [];
  const [lone, another] = alone;
  if (another !== undefined || (lone !== undefined && !saysChange)) return [{ start: part.start, end: part.end, held: true }];
  if (lone !== undefined) facts.unshift(numberNow(lone, facts));
  // "valentine's day, real flowers not silk": beside a day, what the flowers are is said for the first time.
  const onDay = facts.every((fact) => fact.fact === 'change' && fact.what === 'material') && dayIn(own, part);
  if (onDay && (!saysChange || monthMeant.in(tokens, part.start, part.end) !== undefined)) return [];
  if (facts.length === 0) return [];
  // "they've gone for faux, first of august": the day beside it is read as a day.
  const clause = onDay ? clausesOf(reader, part).find(({ start, end }) => !dayIn(own, { ...part, start, end })) : undefined;
  const day = dayNotDay.at(tokens, part.start, part.end);
  const { start, end } = clause ?? { ...part, start: day?.end ?? part.start };
  // "oops only 9 made, 2 broke": whether the nine are with or without them is not said.
  const lost = facts.some((fact) => fact.fact === 'change' && fact.what === 'made') && lossBeside.in(tokens, start, end) !== undefined;
  const doubtful =
    lost ||
    saysTwice(facts) ||
    countForPrice(tokens, zones, facts) ||
    losesKind(tokens, { ...part, start, end }, zones, facts) ||
    openBy(tokens.slice(start, end), facts);
  // "30 corsages not this sat, the one after": the day would be lost.
  const dayLost = !onDay && leavesDay(own, { ...part, start, end }, zones);
  if (doubtful || dayLost || unsaid(tokens, { ...part, start, end }, zones, facts)) return [{ start, end, held: true }];
  const moved = day === undefined ? undefined : dateChange(reader, { ...part, end: day.end - 1 });
  return [
    ...(moved === undefined ? [] : [moved]),
    found(
      reader,
      start,
      end,
      withBound(own, part, onceFrom(tokens.slice(part.start, part.end), facts)),
      besideOrder(tokens, { ...part, start, end }, zones, facts),
    ),
  ];
};
