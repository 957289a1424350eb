// What the Slack host asks of the assistant beyond messages: Home, a private check, the studio's settings.

import type { ThreadKey } from '../../assistant/ports.ts';
import type { Reply } from '../../reply/reply.ts';
import type { StudioSettings } from '../../studio/settings.ts';
import type { Day } from '../../values/day.ts';

/** Anything here may throw; the host then says once that something went wrong. All of it must come back well within Slack's three seconds. */
export interface Desk {
  /** What Home shows this person. What was received before is handled first, so that a tick shows at once. */
  home(workspace: string, person: string): HomeData;
  /** Works a message out and keeps nothing. */
  check(workspace: string, person: string, words: string): Reply;
  settings(workspace: string): { readonly settings: StudioSettings; readonly isSetUp: boolean };
  /** Keeps new settings; they are valid, and the person is a member of the studio. */
  changeSettings(workspace: string, person: string, settings: StudioSettings): void;
}

export interface HomeData {
  readonly isSetUp: boolean;
  readonly dayFirst: boolean;
  /** This week, in order. Minutes, pooled over everyone at the bench; room 0 is a closed day. */
  readonly bench: readonly { readonly day: Day; readonly planned: number; readonly room: number }[];
  readonly due: readonly DueToday[];
  /** In any order: the renderer puts late ones first, then by date. */
  readonly events: readonly EventOnHome[];
}

export interface DueToday {
  readonly event: string;
  readonly what: string; // "12 buttonholes"
  /** A tick button: a tap "made all" in that thread. `value` must differ from day to day, so that each day's tick counts. */
  readonly tick?: { readonly label: string; readonly in: ThreadKey; readonly value: string };
}

export interface EventOnHome {
  readonly in: ThreadKey;
  readonly title: string;
  readonly pieces: string; // "40 buttonholes, 2 corsages"
  readonly date?: Day;
  readonly late?: string; // the step that is late: "order by Tue 9 March"
}
