// How handling grows with the data: long threads, many open events, the reminder and Home over a large bench. In one process, in memory.

import { createAssistant } from '../../src/assistant/assistant.ts';
import { remind } from '../../src/assistant/remind.ts';
import { slackDesk } from '../../src/slack-desk.ts';
import { openStore } from '../../src/store/sqlite-store.ts';
import { dayAt } from '../../src/values/day.ts';
import { median, ms, type Row, timed, times } from './measure.ts';
import { fill, keyOf, message, studioOf, workspace } from './season.ts';

const now = Date.UTC(2027, 0, 20, 9);

const opened = (events: number, messagesEach: number) => {
  const store = openStore({ path: ':memory:' });
  fill(store, events, messagesEach, now);
  const settings = studioOf(events);
  const clock = { now: () => now };
  const fail = (_id: string, error: unknown): never => {
    throw error;
  };
  const assistant = createAssistant({ store, clock, settings, onFailure: fail });
  let count = 0;
  const say = (event: number, text: string): void => {
    count += 1;
    store.receive(message(keyOf(event), `later ${count}`, text, now), `later ${count}`);
    assistant.work();
  };
  /** Edits what the thread said first. */
  const edit = (event: number, text: string): void => {
    count += 1;
    const change = { kind: 'edit', id: `${event}.0`, revision: `edit ${count}` } as const;
    store.receive({ ...message(keyOf(event), '', text, now), ...change }, `edit ${count}`);
    assistant.work();
  };
  return { store, settings, clock, say, edit };
};

type Kind = readonly [name: string, text: (n: number) => string];
const kinds: readonly Kind[] = [
  ['order', (n) => `${20 + n} buttonholes at 22 inc tax`],
  ['date', (n) => `event ${14 + (n % 3)} March`],
  ['small talk', () => 'see you then'],
];

/** Milliseconds for one message of each kind, the median of many. */
const answered = (events: number, messagesEach: number, goes: number): Readonly<Record<string, number>> => {
  const { store, say, edit } = opened(events, messagesEach);
  const found = kinds.map(([kind, text]): [string, number] => {
    timed(20, (n) => say(n % events, text(n)));
    return [kind, median(timed(goes, (n) => say(n % events, text(n))).clock)];
  });
  timed(10, (n) => edit(n % events, `make it ${30 + n}`));
  const edited = median(timed(goes, (n) => edit(n % events, `make it ${30 + n}`)).clock);
  store.close();
  return { ...Object.fromEntries(found), edit: edited };
};

const longThread = (): readonly Row[] => {
  const short = answered(3, 5, 60);
  const long = answered(3, 500, 60);
  return Object.keys(short).map((kind) => ({
    what: `${kind} in a thread of 5 messages, of 500`,
    measured: `${ms(short[kind] ?? 0)}, ${ms(long[kind] ?? 0)}: ${times((long[kind] ?? 0) / (short[kind] ?? 1))}`,
    aim: 'at most 2×',
  }));
};

const manyEvents = (): readonly Row[] => {
  const sizes = [50, 500, 5_000];
  const found = sizes.map((events) => answered(events, 2, events > 1_000 ? 15 : 40));
  return Object.keys(found[0] ?? {}).map((kind) => ({
    what: `${kind} beside ${sizes.join(', ')} open events`,
    measured: found.map((one) => ms(one[kind] ?? 0)).join(', '),
  }));
};

const priceLists = (): Row => {
  const sizes = [50, 500, 5_000];
  const found = sizes.map((size) => {
    const { store, say } = opened(3, 2);
    const rows = Array.from({ length: size }, (_, n) => `flower ${n},${1 + (n % 90)}.50,${10 + (n % 5)},stem`);
    const list = message(keyOf(0), 'list', ['item,price,pack size,unit', ...rows].join('\n'), now);
    store.receive({ ...list, kind: 'file' }, 'list');
    const one = timed(40, (n) => say(1 + (n % 2), `${20 + n} buttonholes at 22 inc tax`));
    store.close();
    return ms(median(one.clock));
  });
  return { what: `order with ${sizes.join(', ')} items on the price list`, measured: found.join(', ') };
};

const bench = (): readonly Row[] => {
  const { store, settings, clock, say } = opened(2_000, 2);
  const day = dayAt(now, settings.timeZone);
  const desk = slackDesk({ store, clock, settings }, () => undefined);
  desk.home(workspace, 'UAILSA');
  const home = timed(5, () => void desk.home(workspace, 'UAILSA'));
  const reminder = timed(5, (n) => {
    const channels = [`bench ${n}`];
    remind(store, settings, { kind: 'morning', workspace, channels, day, late: false, missed: [] }, now);
  });
  const one = timed(15, (n) => say(n, `event ${14 + (n % 3)} March`));
  store.close();
  return [
    { what: 'Home over 2,000 open events', measured: ms(median(home.clock)), aim: 'Slack waits 3 s' },
    { what: 'morning reminder over 2,000 open events', measured: ms(median(reminder.clock)) },
    { what: 'a new date beside 2,000 open events', measured: ms(median(one.clock)) },
  ];
};

export const growth = (): readonly Row[] => [...longThread(), ...manyEvents(), priceLists(), ...bench()];
