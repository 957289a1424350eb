// The one summary message of a thread: posted once the event has pieces and a date, and changed in place whenever one of the figures in it does.

import { summaryReply } from '../reply/compose/summary.ts';
import type { EventState } from '../thread/event.ts';
import { type Day, dayAt } from '../values/day.ts';
import { consider } from './consider.ts';
import type { Logged, Standpoint } from './log-entries.ts';
import { type IncomingMessage, type OutgoingReply, type Store, summaryAbout } from './ports.ts';

const isWhole = (event: EventState): boolean => event.lines.length > 0 && event.date !== undefined;

/** What a summary shows of the state; the rest may change without it. */
const shown = ({ title, lines, price, tax, material, date, handOver, progress, rules, cancelled }: EventState): string =>
  JSON.stringify([title, lines, price, tax, material, date, handOver, progress, rules, cancelled]);

/** Nothing where people of another organisation read along, or nothing in it changed. */
export const summaryMessage = (
  store: Store,
  at: Standpoint,
  message: IncomingMessage,
  { event, studio, entries }: Logged,
  now: number,
): readonly OutgoingReply[] => {
  const before = at.thread.state;
  if (message.shared || entries.length === 0 || shown(before) === shown(event)) return [];
  if (!isWhole(before) && !isWhole(event)) return [];
  const { key, version } = at.thread;
  const today: Day = dayAt(now, studio.settings.timeZone);
  const about = summaryAbout(key.thread);
  const id = [key.workspace, key.channel, about, version + entries.length].join('/');
  return [{ id, to: key, purpose: 'summary', about, reply: summaryReply(consider(store, key, event, studio, today)) }];
};
