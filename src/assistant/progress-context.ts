// What "made 12" is understood by: the event as it stands, and whether the fresh part of its mixed pieces can be made yet by the bench's own plan.

import { freshHoursAhead } from '../handbook/make-ahead.ts';
import { pieceKinds } from '../handbook/pieces.ts';
import { type Day, daysBetween } from '../values/day.ts';
import { benchKey, consider } from './consider.ts';
import type { Standpoint } from './log-entries.ts';
import type { Store } from './ports.ts';
import type { ProgressContext } from './stage-progress.ts';

/** No fresh part is made more days before its event than these, unless no bench day is nearer: the plan knows. */
const longestAhead = Math.ceil(Math.max(...pieceKinds.map((piece) => freshHoursAhead[piece].most)) / 24);

export const progressContext = (store: Store, { thread, studio }: Standpoint, today: Day): ProgressContext => ({
  state: thread.state,
  today,
  freshOpen: () => {
    const { date } = thread.state;
    if (date === undefined || daysBetween(today, date) <= longestAhead) return true;
    const { bench } = consider(store, thread.key, thread.state, studio.state, today);
    const own = benchKey(thread.key);
    return bench().days.some((day) => day.date <= today && day.tasks.some((task) => task.key === own && task.stage === 'finish'));
  },
});
