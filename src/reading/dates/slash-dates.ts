// Dates in figures alone: "3/4", "14.3.27", "2027-03-14", "sat 6/3". The studio's order decides; what cannot be in it is read the other way round.

import type { Day } from '../../values/day.ts';
import { dayOf } from '../../values/day.ts';
import { pattern } from '../pattern.ts';
import type { ReadingContext } from '../reading.ts';
import type { Token } from '../text/token.ts';
import type { DateRead } from './date-read.ts';
import { build, insteadOf, withWeekday } from './day-parts.ts';

// "06/25 at the lake house": a place where things are held makes it a day, unless it may be a share of the work ("3/4 at the hotel").
const atVenue = pattern(
  "(,|-)? (at|@|in) ((the|a|an|our|their|her|his|bride's|client's)? (<word>){0,3} (house|barn|hotel|hall|church|winery|estate|vineyard|club|marquee|garden|gardens|farm|manor|castle|venue|lodge|homestead|chapel|cathedral|temple|gurdwara|mosque|mandir|synagogue|resort|ranch|loft|ballroom|racecourse|museum|gallery|restaurant|beach|park|woolshed|boathouse|mansion|villa|palace)|(st|saint) (.)? <word>)",
);
const isHeld = (tokens: readonly Token[], at: number, a: number, b: number): boolean => {
  const text = tokens[at]?.text ?? '';
  return (/(^|\/)0\d/.test(text) || a > b) && text !== '24/7' && atVenue.at(tokens, at + 1, tokens.length) !== undefined;
};

export const slashForms = (tokens: readonly Token[], index: number, context: ReadingContext): DateRead | undefined => {
  const weekday = tokens[index]?.means['weekday'] === undefined ? undefined : tokens[index];
  const at = weekday === undefined ? index : tokens[index + 1]?.text === ',' ? index + 2 : index + 1;
  const token = tokens[at];
  const parts = token?.number?.form === 'slashed' ? token.number.parts : undefined;
  if (token === undefined || parts === undefined) return undefined;
  const [a = 0, b = 0, c] = parts;
  // "3/4" without a year is a date only beside words that want one: "10/10 would recommend".
  const short = c === undefined && weekday === undefined && !isHeld(tokens, at, a, b) ? { relative: true as const } : {};
  const read = (days: readonly Day[], more: Partial<DateRead> = {}): DateRead =>
    withWeekday({ start: index, end: at + 1, days, ...short, ...more }, weekday, context);
  if (c !== undefined && a > 31) {
    const day = dayOf(a, b, c);
    return read(day === undefined ? [] : [day], day !== undefined && day < context.today ? { past: true } : {});
  }
  // "3/4 done" is a share of the work.
  if (c === undefined && /^(done|made|finished|complete|completed|ready|boxed|through|there|way|of)$/.test(tokens[at + 1]?.text ?? ''))
    return undefined;
  // "10/10 job everyone": marks out of ten.
  if (
    c === undefined &&
    (b === 10 || b === 5) &&
    /^(job|work|effort|everyone|team|service|stuff|for|from)$/.test(tokens[at + 1]?.text ?? '')
  )
    return undefined;
  if (a > 31 || b > 31 || a === 0 || b === 0 || (c === undefined && token.text.includes('-'))) return undefined;
  const year = c === undefined ? undefined : c < 100 ? 2000 + c : c;
  // "combs 24-6-31": three numbers of that piece rather than a day years away.
  const ofPiece = weekday === undefined && tokens[at - 1]?.means['piece'] !== undefined;
  if (ofPiece && c !== undefined && c < 100 && Math.abs(2000 + c - Number(context.today.slice(0, 4))) > 3) return undefined;
  const [day, month] = context.dayFirst ? [a, b] : [b, a];
  const assumed = {
    ...(a <= 12 && b <= 12 && a !== b ? { orderAssumed: true as const } : {}),
    ...(year === undefined ? { yearAssumed: true as const } : {}),
  };
  const said = month <= 12 ? build(context, month, day, year) : undefined;
  if (said !== undefined) return read([said], { ...assumed, ...(said < context.today ? { past: true } : {}) });
  const other = month > 12 && day <= 12 ? build(context, day, month, year) : undefined;
  if (other === undefined) return read([], { ...assumed, ...insteadOf(context, month, day, year) });
  return read([other], { ...assumed, orderAssumed: true });
};
