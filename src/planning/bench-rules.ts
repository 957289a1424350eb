// What the planner needs to know of a studio: who is at the bench when, and the studio's own windows where it has any. What nobody said is listed as assumed.

import { benchMinutes } from '../handbook/bench-minutes.ts';
import type { DaysRange } from '../handbook/days-range.ts';
import { ingredientKey } from '../handbook/ingredient-names.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import { plantNamed } from '../handbook/plants.ts';
import type { FactOf } from '../reading/fact.ts';
import type { StudioState } from '../studio/studio.ts';
import { type EventRule, ruleFor } from '../thread/rule-for.ts';
import { type Day, weekdays } from '../values/day.ts';
import { dayNumber } from './day-number.ts';

export interface BenchRules {
  readonly people: number;
  readonly minutesByWeekday: readonly number[]; // for one person, Monday first; 0 is closed
  readonly opensAt: number; // minutes after midnight
  readonly closed: ReadonlySet<number>; // day numbers
  readonly region: string;
  readonly subdivision?: string;
  readonly openOnHolidays: boolean;
  readonly crew: readonly FactOf<'crew'>[]; // one-off facts with a day, oldest first
  readonly minutes: { readonly [piece in PieceKind]?: number }; // the studio's own, for one piece
  readonly boardedDaysBefore?: number;
  readonly opensDaysBefore?: number;
  readonly leadDays?: number;
  readonly drying: { readonly [plant: string]: DaysRange };
  readonly assumed: readonly ('people' | 'hours')[];
}

// With no settings at all: one person, Monday to Friday, six hours from nine. Common practice, no source.
const assumedPeople = 1;
const assumedMinutes = [360, 360, 360, 360, 360, 0, 0];
const assumedOpening = 9 * 60;

export const benchRules = (studio: StudioState): BenchRules => {
  const { settings } = studio;
  const { bench } = settings;
  const hours = bench?.hours;
  return {
    people: bench?.people ?? assumedPeople,
    minutesByWeekday: hours ? weekdays.map((weekday) => (hours[weekday] ?? 0) * 60) : assumedMinutes,
    opensAt: assumedOpening,
    closed: new Set((bench?.closed ?? []).map((day) => dayNumber(day as Day))),
    region: settings.region,
    ...(settings.subdivision === undefined ? {} : { subdivision: settings.subdivision }),
    openOnHolidays: bench?.openOnHolidays ?? false,
    crew: studio.crew.filter((fact) => fact.date !== undefined && isAboutTheBench(fact)),
    minutes: ownMinutes(studio),
    ...(settings.boardedDaysBefore === undefined ? {} : { boardedDaysBefore: settings.boardedDaysBefore }),
    ...(settings.opensDaysBefore === undefined ? {} : { opensDaysBefore: settings.opensDaysBefore }),
    ...(settings.leadDays === undefined ? {} : { leadDays: settings.leadDays }),
    drying: ownDrying(studio),
    assumed: [...(bench?.people === undefined ? (['people'] as const) : []), ...(hours ? [] : (['hours'] as const))],
  };
};

const isAboutTheBench = (fact: FactOf<'crew'>): boolean =>
  fact.people !== undefined || fact.hours !== undefined || fact.totalHours !== undefined || fact.away === true;

// The settings, then what was said since ("takes me 7 mins per buttonhole"), newest last. A pace that names no piece is the buttonhole's.
const ownMinutes = (studio: StudioState): { readonly [piece in PieceKind]?: number } => {
  const own: { [piece in PieceKind]?: number } = { ...studio.settings.minutes };
  for (const fact of studio.crew) {
    const each = fact.minutesPerPiece ?? (fact.piecesPerHour ? 60 / fact.piecesPerHour : undefined);
    if (each !== undefined && each > 0) own[fact.piece ?? 'buttonhole'] = each;
  }
  return own;
};

// The settings, then what was said since ("we dry statice 10 days"). One plant under two names is one plant.
const ownDrying = (studio: StudioState): { readonly [plant: string]: DaysRange } => {
  const own: { [plant: string]: DaysRange } = {};
  for (const [name, days] of Object.entries(studio.settings.drying ?? {})) own[plantKey(name)] = days;
  for (const { item, days, daysMax } of studio.drying) own[plantKey(item)] = { least: days, most: Math.max(days, daysMax ?? days) };
  return own;
};

const plantKey = (name: string): string => plantNamed(name) ?? ingredientKey(name);

export interface MinutesEach {
  readonly minutes: number;
  readonly by: 'this event' | 'the studio' | 'the handbook';
  readonly own: boolean; // not the handbook's
}

/** Bench minutes for one piece: by the event's own rule, else the studio's figure, else the handbook's usual. */
export const minutesEach = (piece: PieceKind, rules: BenchRules, eventRules: readonly EventRule[] = []): MinutesEach => {
  const rule = Number(ruleFor(eventRules, 'minutes', piece)?.to ?? Number.NaN);
  if (rule > 0 && Number.isFinite(rule)) return { minutes: rule, by: 'this event', own: true };
  const own = rules.minutes[piece] ?? (piece === 'unspecified' ? rules.minutes.buttonhole : undefined) ?? corsageLike(piece, rules);
  if (own !== undefined) return { minutes: own, by: 'the studio', own: true };
  return { minutes: benchMinutes[piece].usual, by: 'the handbook', own: false };
};

// A studio that timed its corsages has timed the wrist and the pin ones too, unless it says otherwise.
const corsageLike = (piece: PieceKind, rules: BenchRules): number | undefined =>
  piece === 'wrist corsage' || piece === 'pin corsage' ? rules.minutes.corsage : undefined;
