// Makes the file a reply promised, from the thread as it is when the file is sent.

import { calendarFile } from '../attachments/calendar-file.ts';
import { calendarPicture } from '../attachments/calendar-picture.ts';
import type { StudioSettings } from '../studio/settings.ts';
import { dayAt } from '../values/day.ts';
import { type CalendarOf, calendarFileInput, pictureInput } from './calendar-inputs.ts';
import { benchKey, consider } from './consider.ts';
import type { Clock, FileMaker, Store, ThreadKey } from './ports.ts';

export interface FileParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly settings: StudioSettings;
}

/** Throws where the thread no longer has what the file shows: the host then says that it could not be made. */
export const createFileMaker = (parts: FileParts): FileMaker => ({
  make: (file, key) => {
    switch (file.kind) {
      case 'calendar':
        return { bytes: icsOf(parts, key), type: 'text/calendar; charset=utf-8' };
      case 'picture':
        return { bytes: calendarPicture(pictureInput(calendarOf(parts, key))), type: 'image/png' };
      default:
        throw new Error(`no maker for ${file.kind}`);
    }
  },
});

const icsOf = (parts: FileParts, key: ThreadKey): Uint8Array => {
  const { version } = parts.store.thread(key);
  return calendarFile(calendarFileInput(calendarOf(parts, key), `${key.workspace}/${benchKey(key)}`, parts.clock.now(), version));
};

const calendarOf = ({ store, clock, settings }: FileParts, key: ThreadKey): CalendarOf => {
  const { state } = store.studio(key.workspace, settings);
  const today = dayAt(clock.now(), state.settings.timeZone);
  const considered = consider(store, key, store.thread(key).state, state, today);
  const plan = considered.plan();
  if (!plan) throw new Error('the event is not on the bench plan');
  return { studio: state.settings.name, title: considered.titleOf(plan.key), plan, bench: considered.bench(), manner: considered.manner };
};
