// Which reminders were said. The row is the claim: whoever adds it says the reminder, so a restart cannot say it again.

import type { Database } from 'better-sqlite3';
import type { Day } from '../values/day.ts';

export const reminders = (db: Database) => {
  const claim = db.prepare('INSERT INTO reminders VALUES (?, ?, ?, ?, ?) ON CONFLICT DO NOTHING');
  const last = db.prepare<string[], { day: Day | null }>(
    'SELECT max(day) AS day FROM reminders WHERE workspace = ? AND channel = ? AND kind = ?',
  );
  return {
    claim: (workspace: string, channel: string, kind: string, day: Day, now: number): boolean =>
      claim.run(workspace, channel, kind, day, now).changes === 1,
    last: (workspace: string, channel: string, kind: string): Day | undefined => last.get(workspace, channel, kind)?.day ?? undefined,
  };
};
