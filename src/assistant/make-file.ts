// Makes the file a reply promised, from the thread as it is when the file is sent.

import { calendarFile } from '../attachments/calendar-file.ts';
import { calendarPicture } from '../attachments/calendar-picture.ts';
import { writeBuyingList } from '../buying/write-buying-list.ts';
import { seasonFor } from '../reply/compose/season.ts';
import type { FileWanted } from '../reply/reply.ts';
import { eventTitle } from '../reply/words/title.ts';
import { writeSeason } from '../review/write-season.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { minorUnits } from '../values/currency.ts';
import { dayAt } from '../values/day.ts';
import { type CalendarOf, calendarFileInput, pictureInput } from './calendar-inputs.ts';
import { benchKey, type Considered, consider } from './consider.ts';
import type { Clock, FileMaker, Store, ThreadKey } from './ports.ts';
import { sheetsFile } from './sheets-file.ts';

export interface FileParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly settings: StudioSettings;
  /** Everything kept of a thread, for people to take away. */
  readonly exported?: (key: ThreadKey) => object;
}

/** Throws where the thread no longer has what the file shows: the host then says that it could not be made. */
export const createFileMaker = (parts: FileParts): FileMaker => ({
  make: (file, key) => {
    switch (file.kind) {
      case 'calendar':
        return { bytes: icsOf(parts, key), type: 'text/calendar; charset=utf-8' };
      case 'picture':
        return { bytes: calendarPicture(pictureInput(calendarOf(parts, key))), type: 'image/png' };
      case 'buying list':
        return { bytes: buyingListOf(parts, file, key), type: 'text/csv; charset=utf-8' };
      case 'sheets':
        return { bytes: sheetsFile(lookAt(parts, key), parts.clock.now()), type: 'application/pdf' };
      case 'season':
        return { bytes: seasonOf(parts, key), type: 'text/csv; charset=utf-8' };
      case 'export':
        return { bytes: exportOf(parts, key), type: 'application/json' };
    }
  },
});

const exportOf = ({ exported }: FileParts, key: ThreadKey): Uint8Array => {
  if (!exported) throw new Error('nothing is handed out here');
  return new TextEncoder().encode(`${JSON.stringify(exported(key), null, 2)}\n`);
};

const icsOf = (parts: FileParts, key: ThreadKey): Uint8Array => {
  const { version, state } = parts.store.thread(key);
  const { plan, studio, manner, today } = lookAt(parts, key);
  const held = state.calendarGiven?.held ?? [];
  const planned = plan();
  if (!planned && !(state.cancelled && held.length > 0)) throw new Error('the event is not on the bench plan');
  const of = { studio: studio.settings.name, title: eventTitle(state, manner), uidBase: `${key.workspace}/${benchKey(key)}` };
  return calendarFile(calendarFileInput({ ...of, stamp: parts.clock.now(), sequence: version, today, manner, held }, planned));
};

const lookAt = ({ store, clock, settings }: FileParts, key: ThreadKey): Considered => {
  const { state } = store.studio(key.workspace, settings);
  return consider(store, key, store.thread(key).state, state, dayAt(clock.now(), state.settings.timeZone));
};

const calendarOf = (parts: FileParts, key: ThreadKey): CalendarOf => {
  const considered = lookAt(parts, key);
  const plan = considered.plan();
  if (!plan) throw new Error('the event is not on the bench plan');
  const { name } = considered.studio.settings;
  return { studio: name, title: considered.titleOf(plan.key), plan, bench: considered.bench(), manner: considered.manner };
};

const buyingListOf = (parts: FileParts, file: FileWanted, key: ThreadKey): Uint8Array => {
  const { buying, studio, titleOf } = lookAt(parts, key);
  const list = file.all ? buying.all() : buying.own();
  if (list.rows.length === 0) throw new Error('there is nothing to buy any more');
  return new TextEncoder().encode(writeBuyingList(list, minorUnits(studio.settings.currency) ?? 2, titleOf));
};

const seasonOf = (parts: FileParts, key: ThreadKey): Uint8Array => {
  const considered = lookAt(parts, key);
  return new TextEncoder().encode(writeSeason(seasonFor(considered), considered.studio.settings.currency));
};
