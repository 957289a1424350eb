// The ordered list of phrases: the one place a phrase is registered. An earlier phrase takes its words first.

import type { Phrase } from './phrase.ts';
import { eventDate } from './phrases/event-date.ts';
import { materialSaid } from './phrases/material-said.ts';
import { order } from './phrases/order.ts';
import { otherWork } from './phrases/other-work.ts';
import { progress } from './phrases/progress.ts';
import { question } from './phrases/question.ts';
import { taxBasis } from './phrases/tax-basis.ts';
import { undo } from './phrases/undo.ts';

export const phrases: readonly Phrase[] = [undo, question, otherWork, progress, eventDate, order, taxBasis, materialSaid];
