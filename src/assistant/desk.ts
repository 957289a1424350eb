// What a host asks beyond messages: the week at a glance, a private check that keeps nothing, the studio's settings, a dropped file.

import { dayNumber } from '../planning/day-number.ts';
import { type Due, dueOn } from '../planning/due-on.ts';
import { workingDays } from '../planning/working-days.ts';
import type { Manner } from '../reply/answer.ts';
import { notUnderstoodBlocks } from '../reply/compose/help.ts';
import type { Reply } from '../reply/reply.ts';
import { lineToText } from '../reply/reply-to-text.ts';
import { shortDate } from '../reply/words/dates.ts';
import { counted } from '../reply/words/names.ts';
import { orderWords } from '../reply/words/order.ts';
import { stepName } from '../reply/words/steps.ts';
import { dayFirst } from '../studio/defaults.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { newEvent } from '../thread/event.ts';
import { addDays, type Day, dayAt } from '../values/day.ts';
import { answerMessage } from './answer-message.ts';
import { benchKey, type Considered, consider } from './consider.ts';
import type { Clock, IncomingMessage, Store, StoredThread, ThreadKey } from './ports.ts';

export interface DeskParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly settings: StudioSettings; // for a workspace that has not chosen its own
}

export interface WeekAtTheBench {
  readonly day: Day;
  readonly planned: number; // minutes, everyone together
  readonly room: number; // 0 is a closed day
}

export interface DueHere {
  readonly in: ThreadKey;
  readonly event: string;
  readonly what: string;
  readonly pieces: boolean; // work to tick off, not a step
}

export interface EventHere {
  readonly in: ThreadKey;
  readonly title: string;
  readonly pieces: string;
  readonly date?: Day;
  readonly late?: string;
}

export interface AtAGlance {
  readonly isSetUp: boolean;
  readonly dayFirst: boolean;
  readonly today: Day;
  readonly bench: readonly WeekAtTheBench[];
  readonly due: readonly DueHere[];
  readonly events: readonly EventHere[];
}

const daysShown = 7;

/** This week's bench, what is due today, and the open events of one workspace. */
export const atAGlance = (parts: DeskParts, workspace: string): AtAGlance => {
  const { considered, today } = look(parts, { workspace, channel: '', thread: '' });
  const plan = considered.bench();
  const working = workingDays(plan.rules);
  const plans = new Map(plan.events.map((event) => [event.key, event]));
  const week = Array.from({ length: daysShown }, (_, index) => addDays(today, index));
  const keys = new Map(parts.store.openEvents(workspace, today).map((open) => [benchKey(open.key), open.key]));
  return {
    isSetUp: parts.store.hasChosenSettings(workspace),
    dayFirst: dayFirst(considered.studio.settings),
    today,
    bench: week.map((day) => ({
      day,
      planned: Math.round(plan.days.find((one) => one.date === day)?.minutes ?? 0),
      room: working.on(dayNumber(day)).minutes,
    })),
    due: dueOn(plan, today).flatMap((due) => {
      const key = keys.get(due.key);
      return key
        ? [{ in: key, event: considered.titleOf(due.key), what: dueWords(due, considered.manner), pieces: due.due === 'pieces' }]
        : [];
    }),
    events: considered.openEvents().flatMap(({ key, title, state }) => {
      const place = keys.get(key);
      if (!place) return [];
      const late = plans.get(key)?.calendar.findLast((step) => step.late && !step.waitsFor);
      return [
        {
          in: place,
          title,
          pieces: lineToText(orderWords(state.lines, considered.manner)),
          ...(state.date ? { date: state.date } : {}),
          ...(late ? { late: `${stepName(late.step).toLowerCase()}, ${shortDate(late.date, considered.manner)}` } : {}),
        },
      ];
    }),
  };
};

const dueWords = (due: Due, manner: Manner): string =>
  due.due === 'pieces'
    ? counted(due.pieces, due.piece, manner.says)
    : `${stepName(due.step).toLowerCase()}${due.overdue ? ' (overdue)' : ''}`;

/** Works a message out as if it opened a new thread, and keeps nothing of it. */
export const checkPrivately = ({ store, clock, settings }: DeskParts, workspace: string, person: string, words: string): Reply => {
  const now = clock.now();
  const message: IncomingMessage = {
    workspace,
    channel: '',
    thread: '',
    id: '',
    revision: '',
    author: person,
    kind: 'new',
    text: words,
    addressed: true,
    shared: false,
    sentAt: now,
  };
  const thread: StoredThread = { key: message, version: 0, state: newEvent };
  return answerMessage(store, { thread, studio: store.studio(workspace, settings) }, message, now).reply ?? { blocks: notUnderstoodBlocks };
};

const look = ({ store, clock, settings }: DeskParts, at: ThreadKey): { readonly considered: Considered; readonly today: Day } => {
  const studio = store.studio(at.workspace, settings).state;
  const today = dayAt(clock.now(), studio.settings.timeZone);
  return { considered: consider(store, at, newEvent, studio, today), today };
};
