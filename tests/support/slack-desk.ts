// A desk that answers with set data and keeps what it is told.

import type { Desk, HomeData } from '../../src/hosts/slack/desk.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import type { Day } from '../../src/values/day.ts';

const day = (text: string): Day => text as Day;

export const yard: StudioSettings = { name: 'The Net Loft', region: 'GB', timeZone: 'Europe/London', currency: 'GBP' };

export const emptyHome: HomeData = { isSetUp: false, dayFirst: true, bench: [], due: [], events: [] };

export const weekOf = (events: number): HomeData => ({
  isSetUp: true,
  dayFirst: true,
  bench: [
    { day: day('2027-03-08'), planned: 240, room: 360 },
    { day: day('2027-03-09'), planned: 510, room: 360 },
    { day: day('2027-03-10'), planned: 0, room: 360 },
    { day: day('2027-03-11'), planned: 360, room: 360 },
    { day: day('2027-03-12'), planned: 15, room: 360 },
    { day: day('2027-03-13'), planned: 60, room: 0 },
    { day: day('2027-03-14'), planned: 0, room: 0 },
  ],
  due: Array.from({ length: Math.min(events, 40) }, (_each, place) => ({
    event: `Wedding ${place}`,
    what: '12 buttonholes',
    tick: {
      label: 'Made all 12',
      in: { workspace: 'T1', channel: 'C1', thread: `18000000${place + 10}.000100` },
      value: `2027-03-08 ${place}`,
    },
  })),
  events: Array.from({ length: events }, (_each, place) => ({
    in: { workspace: 'T1', channel: 'C1', thread: `18000000${place + 10}.000100` },
    title: `Wedding ${place}`,
    pieces: '40 buttonholes, 2 corsages',
    ...(place % 10 === 9 ? {} : { date: day(`2027-04-${String((place % 28) + 1).padStart(2, '0')}`) }),
    ...(place === 57 ? { late: 'order by Fri 5 March' } : {}),
  })),
});

export const memoryDesk = (home: HomeData = weekOf(3)) => {
  const saved: StudioSettings[] = [];
  const checked: string[] = [];
  const desk: Desk = {
    home: () => home,
    check: (_workspace, _person, words) => {
      checked.push(words);
      return {
        blocks: [
          { block: 'answer', line: [{ text: 'The price leaves £4.01 each.', meaning: 'plain' }] },
          { block: 'actions', actions: [{ label: 'Undo', action: 'undo', value: 'm1' }] },
        ],
      };
    },
    settings: () => ({ settings: saved.at(-1) ?? yard, isSetUp: saved.length > 0 }),
    changeSettings: (_workspace, _person, settings) => {
      saved.push(settings);
    },
  };
  return { desk, saved, checked };
};
