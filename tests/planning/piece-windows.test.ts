// When pieces may be made. Fresh: the day before, or that morning for an evening event (working florists' panels 6 and 50, botanicalbrouhaha.com, 2014); a corsage
// not more than a day before (gardenguides.com 12002269). Dried: eight weeks, derived from "a year or more" (The art of dried flowers, Victoria County Master
// Gardeners, 2008). Boarding two working days or two hours ahead: common practice, no source.

import { describe, expect, test } from 'vitest';
import { dayNumber, dayNumbered } from '../../src/planning/day-number.ts';
import { pieceWindows } from '../../src/planning/piece-windows.ts';
import { workingDays } from '../../src/planning/working-days.ts';
import type { StudioSettings } from '../../src/studio/settings.ts';
import type { EventState } from '../../src/thread/event.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const windowsOf = (
  material: 'dried' | 'fresh' | 'mixed' | 'preserved' | 'artificial',
  event: Partial<EventState>,
  settings: Partial<StudioSettings> = {},
  today = '2027-01-20',
) => {
  const rules = rulesOf(aStudio(settings));
  return pieceWindows(anEvent(event), 'buttonhole', material, rules, workingDays(rules), dayNumber(day(today)));
};
const first = (windows: ReturnType<typeof windowsOf>, stage = 0) => {
  const window = windows.stages[stage]?.window;
  if (!window) throw new Error('no such stage');
  return { ...window, opens: dayNumbered(window.opens), closes: dayNumbered(window.closes) };
};

describe('fresh', () => {
  test.each([
    ['no time said: the day before', {}, '2027-03-11', '2027-03-11', undefined],
    ['10 in the morning: the day before', { time: '10:00' }, '2027-03-11', '2027-03-11', undefined],
    ['noon: handed over at ten, boarded at eight, so the day before', { time: '12:00' }, '2027-03-11', '2027-03-11', undefined],
    ['14:00: one hour of the morning, two people', { time: '14:00' }, '2027-03-11', '2027-03-12', 120],
    ['18:00: until 14:00, the whole of a five-hour bench', { time: '18:00' }, '2027-03-11', '2027-03-12', 600],
    ['hand over said at 15:00: until 13:00', { time: '20:00', handOver: { time: '15:00' } }, '2027-03-11', '2027-03-12', 480],
    [
      'hand over the day before: all of that day',
      { time: '14:00', handOver: { date: day('2027-03-11') } },
      '2027-03-11',
      '2027-03-11',
      undefined,
    ],
  ])('a Friday event, %s', (_, event, opens, closes, after) => {
    const window = first(windowsOf('fresh', { date: day('2027-03-12'), ...event }));
    expect(window).toMatchObject({ opens, closes });
    expect(window.closesAfter).toBe(after);
  });

  test('a Saturday event with the studio closed: the whole of Friday, handed over that day', () => {
    const windows = windowsOf('fresh', { date: day('2027-03-13'), time: '14:00' });
    expect(first(windows)).toMatchObject({ opens: '2027-03-12', closes: '2027-03-12', late: false });
    expect(dayNumbered(windows.handOver.day)).toBe('2027-03-12');
    expect(dayNumbered(windows.handOver.movedFrom ?? 0)).toBe('2027-03-13');
  });

  test('an hour that was said is of its own day, though the studio is closed: made and boarded the day before', () => {
    const windows = windowsOf('fresh', { date: day('2027-03-13'), time: '13:00', handOver: { time: '11:00' } });
    expect(windows.handOver).toMatchObject({ clock: 660, assumed: false });
    expect(dayNumbered(windows.handOver.day)).toBe('2027-03-13');
    expect(dayNumbered(windows.boarded)).toBe('2027-03-12');
    expect(first(windows)).toMatchObject({ opens: '2027-03-12', closes: '2027-03-12', late: false });
  });

  test('a Monday event after a closed weekend is made on Friday, and says it must keep 72 hours', () => {
    expect(first(windowsOf('fresh', { date: day('2027-03-15') }))).toMatchObject({
      opens: '2027-03-12',
      closes: '2027-03-12',
      hoursAhead: 72,
    });
  });

  test('when the day before has passed, every minute until the event is left, and the window is late', () => {
    const window = first(windowsOf('fresh', { date: day('2027-03-12'), time: '11:00' }, {}, '2027-03-12'));
    expect(window).toMatchObject({ closes: '2027-03-12', closesAfter: 240, late: true });
  });
});

describe('work that keeps', () => {
  test.each(['dried', 'preserved', 'artificial'] as const)('%s opens 56 days before and is boarded two working days before', (material) => {
    expect(first(windowsOf(material, { date: day('2027-03-13') }))).toMatchObject({ opens: '2027-01-16', closes: '2027-03-11' });
  });

  test('the studio’s own days win', () => {
    const own = { opensDaysBefore: 28, boardedDaysBefore: 1 };
    expect(first(windowsOf('dried', { date: day('2027-03-13') }, own))).toMatchObject({ opens: '2027-02-13', closes: '2027-03-12' });
  });

  test('an early hand-over brings the board forward', () => {
    const event = { date: day('2027-03-13'), handOver: { date: day('2027-03-10') } };
    expect(first(windowsOf('dried', event))).toMatchObject({ closes: '2027-03-05' });
  });

  test('a hand-over said after the event is taken as the event', () => {
    const event = { date: day('2027-03-12'), handOver: { date: day('2027-03-19') } };
    expect(dayNumbered(windowsOf('dried', event).handOver.day)).toBe('2027-03-12');
  });

  test('the day of the boards has passed: still until the evening before, late', () => {
    expect(first(windowsOf('dried', { date: day('2027-03-12') }, {}, '2027-03-11'))).toMatchObject({ closes: '2027-03-11', late: true });
  });
});

describe('mixed', () => {
  test('the base closes before the fresh part opens', () => {
    const windows = windowsOf('mixed', { date: day('2027-03-12'), time: '18:00' });
    expect(windows.stages.map(({ stage }) => stage)).toEqual(['base', 'finish']);
    expect(first(windows, 0)).toMatchObject({ opens: '2027-01-15', closes: '2027-03-10' });
    expect(first(windows, 1)).toMatchObject({ opens: '2027-03-11', closes: '2027-03-12' });
  });

  test('with no day left for the base alone, both share what there is', () => {
    const windows = windowsOf('mixed', { date: day('2027-03-12') }, {}, '2027-03-11');
    expect(first(windows, 0)).toMatchObject({ closes: '2027-03-11', late: true });
    expect(first(windows, 1)).toMatchObject({ closes: '2027-03-11', late: false });
  });
});
