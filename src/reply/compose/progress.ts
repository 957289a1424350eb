// After "made 12": how many are made and left, and in one line whether that is on time and which bench days come next. "Nothing today" is an answer too.

import { type PieceKind, pieceKinds } from '../../handbook/pieces.ts';
import type { EventDay, EventPlan } from '../../planning/bench-plan.ts';
import type { FactOf } from '../../reading/fact.ts';
import { basesOf, madeOf, ordered } from '../../thread/apply-progress.ts';
import { addDays, type Day } from '../../values/day.ts';
import type { Answer } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { countSpan, dateSpan, joined, strong, text } from '../span.ts';
import { countedAlready } from '../tick.ts';
import { grouped } from '../words/counts.ts';
import { duration, shortDate } from '../words/dates.ts';
import { counted, pieceName, plural } from '../words/names.ts';
import { countsWords } from '../words/steps.ts';
import { overloadBlocks } from './overload.ts';

export const progressBlocks = (answer: Answer): readonly Block[] => {
  const { event } = answer;
  const kinds = [...new Set(event.lines.map((line) => line.piece))];
  if (kinds.length === 0) {
    return [{ block: 'answer', line: text`Noted. I don't know yet how many are ordered, so I can't say what is left. How many pieces?` }];
  }
  const lines = [...kinds.map((kind, index) => kindLine(kind, answer, index === 0)), ...unordered(answer, kinds)];
  return [{ block: 'answer', line: text`${lead(answer)}${joined(lines, '; ')}.` }, ...nextBench(answer)];
};

/** What of the message the counts alone would not show. */
const lead = ({ stated, questions, manner, today, before }: Answer): Line => {
  if (questions.some(({ words }) => words === countedAlready)) return text`That was counted already. `;
  const pause = stated.find((fact): fact is FactOf<'made'> => fact.fact === 'made' && fact.resumes !== undefined);
  if (pause?.resumes === addDays(today, 1)) return text`Nothing today. `;
  if (pause?.resumes) return text`Nothing more before ${dateSpan(shortDate(pause.resumes as Day, manner))}. `;
  const stage = stated.find((fact): fact is FactOf<'made'> => fact.fact === 'made' && isBegun(fact.stage));
  // "two bouts look ropey, will redo" where none were counted as made
  const broke = stated.find(({ fact }) => fact === 'broke') as FactOf<'broke'> | undefined;
  if (broke?.piece && !stated.some(({ fact }) => fact === 'made') && madeOf(before, broke.piece) < broke.count)
    return text`${strong(counted(broke.count, broke.piece, manner.says))} to redo, noted; ${missing(madeOf(before, broke.piece))} counted as made before. `;
  return stage ? text`${stage.count ?? 'Some'} ${stage.stage ?? 'begun'}: begun, so not counted as made. ` : [];
};

const missing = (made: number): string => (made === 0 ? 'none were' : `only ${grouped(made)} ${made === 1 ? 'was' : 'were'}`);

const isBegun = (stage: string | undefined): boolean => stage !== undefined && stage !== 'base' && stage !== 'finished';

/** What was made of a kind nobody ordered is kept, and said, until it is. */
const unordered = ({ event, manner }: Answer, kinds: readonly PieceKind[]): readonly Line[] => {
  const made = pieceKinds.filter((kind) => kind !== 'unspecified' && !kinds.includes(kind) && madeOf(event, kind) > 0);
  return made.map((kind) => text`${strong(counted(madeOf(event, kind), kind, manner.says))} made and none ordered: add them or correct me`);
};

const kindLine = (piece: PieceKind, { event, manner }: Answer, opens: boolean): Line => {
  const of = ordered(event, piece);
  const made = madeOf(event, piece);
  if (made > of) {
    return text`${strong(`${grouped(made)} made`)} of ${countSpan(counted(of, piece, manner.says))}: ${grouped(made - of)} more than ordered. Spares? If not, correct me`;
  }
  const left = of - made;
  if (left === 0) {
    return of === 1
      ? text`${strong(`${opens ? 'The' : 'the'} ${pieceName(piece, manner.says)}`)} is made`
      : text`${strong(`${opens ? 'All' : 'all'} ${grouped(of)}`)} ${plural(piece, manner.says)} made`;
  }
  const bases = basesOf(event, piece);
  const isMixed = event.lines.some((line) => line.piece === piece && (line.material ?? event.material) === 'mixed');
  if (!isMixed || bases <= made)
    return text`${strong(`${grouped(made)} of ${grouped(of)}`)} ${of === 1 ? pieceName(piece, manner.says) : plural(piece, manner.says)} made, ${strong(`${grouped(left)} left`)}`;
  const waiting = text`${strong(`${grouped(Math.min(bases, of))} of ${grouped(of)}`)} dried bases for ${plural(piece, manner.says)} made`;
  return text`${waiting}, ${made === 0 ? 'none' : strong(made)} finished with ${made === 0 ? 'its' : 'their'} fresh part yet`;
};

/** On time or not, and the next bench days of this event, so that nobody has to look the calendar up. */
const nextBench = (answer: Answer): readonly Block[] => {
  const plan = answer.plan();
  if (!plan) return [];
  if (plan.minutesLeft === 0)
    return [{ block: 'line', line: text`Nothing left to make. Boards by ${dateSpan(shortDate(plan.boarded, answer.manner))}.` }];
  const next = plan.days.slice(0, 3).map((day) => dayWords(day, answer));
  const bench = next.length > 0 ? text` Next: ${joined(next, '; ')}.` : [];
  const line = text`${verdict(plan)}: ${duration(plan.minutesLeft)} of work left.${bench}`;
  return plan.fits ? [{ block: 'line', line }] : [{ block: 'problem', line }, ...overloadBlocks(answer.bench(), answer, plan.key)];
};

const verdict = (plan: EventPlan): Line => {
  if (!plan.fits) return text`${strong('Not on time')}, ${duration(plan.minutesShort)} short`;
  return plan.late ? text`${strong('Late')}, but it still fits before the event` : text`${strong('On time')}`;
};

const dayWords = (day: EventDay, { manner, today }: Answer): Line => {
  const date = dateSpan(day.date === today ? 'today' : shortDate(day.date, manner));
  const hasBases = Object.values(day.bases).some((count) => count > 0);
  const bases = hasBases ? text`${countsWords(day.bases, manner.says)} (dried base)` : [];
  const whole = countsWords(day.pieces, manner.says);
  const both = [whole, bases].filter((part) => part.length > 0);
  return both.length > 0 ? text`${date} ${joined(both, ', ')}` : text`${date} ${duration(day.minutes)}`;
};
