// The steps of the make-ahead calendar as a florist would read them out.

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import type { CalendarStep, StepName } from '../../planning/calendar-step.ts';
import type { Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { assumedSpan, countSpan, dateSpan, joined, text } from '../span.ts';
import { type DateStyle, duration, shortDate } from './dates.ts';
import { counted, type Says } from './names.ts';

const names: { readonly [step in StepName]: string } = {
  event: 'Event',
  'hand over': 'Hand over',
  boarded: 'Boarded',
  bench: 'Bench',
  'material ready': 'Material ready',
  'check the drying': 'Check drying',
  condition: 'Condition',
  'hang or treat': 'Hang to dry',
  'order by': 'Order by',
  'decide the material': 'Dried or fresh?',
  'decide recipe and ribbon': 'Recipe, ribbon',
};

export const stepName = (step: StepName): string => names[step];

/** A mixed piece has two orders and two days its material is ready: then the name says whose. */
export const stepTitle = ({ step, material }: CalendarStep, all: readonly CalendarStep[]): string => {
  const twice = step !== 'bench' && all.filter((other) => other.step === step).length > 1;
  return twice && material ? `${names[step]} (${material})` : names[step];
};

const lateNames: { readonly [step in StepName]?: string } = {
  'hand over': 'the hand-over',
  boarded: 'boarding',
  'material ready': 'the material',
  'check the drying': 'the drying check',
  condition: 'conditioning',
  'hang or treat': 'hanging to dry',
  'order by': 'the order',
  'decide the material': 'deciding dried or fresh',
  'decide recipe and ribbon': 'the recipe and ribbon',
};

const dueNames: { readonly [step in StepName]?: string } = {
  boarded: 'board',
  'check the drying': 'check the drying',
  condition: 'put in water',
  'order by': 'order',
  'decide the material': 'decide dried or fresh',
  'decide recipe and ribbon': 'decide recipe and ribbon',
};

/** What is to be done that day: "put in water". */
export const dueName = (step: StepName): string => dueNames[step] ?? names[step].toLowerCase();

/** What is late, as a thing: "the order". */
export const lateName = (step: StepName): string => lateNames[step] ?? names[step].toLowerCase();

type Counts = { readonly [piece in PieceKind]?: number };

export const countsWords = (counts: Counts, says: Says): Line =>
  joined(
    Object.entries(counts)
      .filter(([, count]) => count > 0)
      .map(([piece, count]) => text`${countSpan(counted(count, piece as PieceKind, says))}`),
    ', ',
  );

/** How boarded pieces wait, in the fewest words; the packing list says it in full with its sources. */
const kept: Readonly<Record<Material, string>> = {
  dried: 'cool, dark, dry',
  preserved: 'cool, dark, dry',
  artificial: 'clean, dry',
  fresh: 'boxed, chilled',
  mixed: 'cool, dry',
};

/** What the step's day holds or allows: pieces, drying days, conditioning hours, the hour of the event. */
export const stepDetail = (step: CalendarStep, manner: Manner): Line => {
  const { says } = manner;
  const parts: Line[] = [];
  if (step.pieces) parts.push(countsWords(step.pieces, says));
  if (step.bases && Object.values(step.bases).some((count) => count > 0)) parts.push(text`${countsWords(step.bases, says)} (dried base)`);
  if (step.minutes !== undefined) parts.push(text`${duration(step.minutes)}`);
  if (step.days) parts.push(dryingWords(step, manner));
  if (step.hours) parts.push(text`${step.hours.least} to ${step.hours.most} h in water`);
  if (step.plant) parts.push(text`${step.plant}`);
  if (step.time) parts.push(step.assumed ? text`${assumedSpan(`${step.time}, assumed`)}` : text`${step.time}`);
  if (step.step === 'decide the material') parts.push(text`last day to choose dried`);
  if (step.step === 'boarded') parts.push(text`${step.material === undefined ? 'cool' : kept[step.material]}`);
  return joined(
    parts.filter((part) => part.length > 0),
    ', ',
  );
};

/** Of the hanging how long it takes; of the check from when to when the stems may be dry. */
const dryingWords = ({ step, days, between }: CalendarStep, style: DateStyle): Line => {
  if (!days) return [];
  if (step !== 'check the drying' || !between) return text`takes ${daysRange(days.least, days.most)}`;
  return between.from === between.to ? text`should be dry` : text`dry by ${dateSpan(shortDate(between.to, style))} at the latest`;
};

export const daysRange = (least: number, most: number): string =>
  least === most ? `${least} ${least === 1 ? 'day' : 'days'}` : `${least} to ${most} days`;
