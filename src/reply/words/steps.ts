// The steps of the make-ahead calendar as a florist would read them out.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { CalendarStep, StepGrade, StepName } from '../../planning/calendar-step.ts';
import type { Line } from '../reply.ts';
import { assumedSpan, countSpan, joined, text } from '../span.ts';
import { duration } from './dates.ts';
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

const grades: { readonly [grade in StepGrade]?: string } = {
  'common practice': 'common practice',
  derived: 'worked out',
};

export const gradeWords = (grade: StepGrade): string => grades[grade] ?? (grade === 'the studio' ? 'your own' : grade);

type Counts = { readonly [piece in PieceKind]?: number };

export const countsWords = (counts: Counts, says: Says): Line =>
  joined(
    Object.entries(counts)
      .filter(([, count]) => count > 0)
      .map(([piece, count]) => text`${countSpan(counted(count, piece as PieceKind, says))}`),
    ', ',
  );

/** What the step's day holds or allows: pieces, drying days, conditioning hours, the hour of the event. */
export const stepDetail = (step: CalendarStep, says: Says): Line => {
  const parts: Line[] = [];
  if (step.pieces) parts.push(countsWords(step.pieces, says));
  if (step.bases && Object.values(step.bases).some((count) => count > 0)) parts.push(text`${countsWords(step.bases, says)} (dried base)`);
  if (step.minutes !== undefined) parts.push(text`${duration(step.minutes)}`);
  if (step.days) parts.push(text`takes ${daysRange(step.days.least, step.days.most)}`);
  if (step.hours) parts.push(text`${step.hours.least} to ${step.hours.most} h in water`);
  if (step.plant) parts.push(text`${step.plant}`);
  if (step.time) parts.push(step.assumed ? text`${assumedSpan(`${step.time}, assumed`)}` : text`${step.time}`);
  if (step.step === 'boarded') parts.push(text`cool, dark, dry`);
  return joined(
    parts.filter((part) => part.length > 0),
    ', ',
  );
};

const daysRange = (least: number, most: number): string => (least === most ? `${least} days` : `${least} to ${most} days`);
