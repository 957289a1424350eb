// The calendar, last step to first, counted by hand on the yard's working days (Tuesday to Friday). Drying days: Harvesting Everlasting Flowers for Drying (Iowa State
// University Extension, 1996): 14-21 days; general range 5-21 with the Chicago Botanic Garden's 5-14 (Chicago Tribune, 26 September 1999).
// Conditioning 2 hours (Flower Library, Floral Design Institute) to overnight. Lead times and the week to decide: common practice, no source.

import { describe, expect, test } from 'vitest';
import type { CalendarStep, StepName } from '../../src/planning/calendar-step.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import type { StudioState } from '../../src/studio/studio.ts';
import type { EventState } from '../../src/thread/event.ts';
import { anEvent, aStudio, day, rulesOf } from './a-studio.ts';

const calendarOf = (event: Partial<EventState> = {}, studio: StudioState = aStudio(), today = '2027-01-20'): readonly CalendarStep[] =>
  planBench([anEvent(event, studio)], rulesOf(studio), day(today)).events[0]?.calendar ?? [];
const named = (steps: readonly CalendarStep[]): readonly string[] => steps.map((step) => `${step.date} ${step.step}`);
const stepOf = (steps: readonly CalendarStep[], name: StepName): CalendarStep => {
  const found = steps.find((step) => step.step === name);
  if (!found) throw new Error(`no step ${name}`);
  return found;
};
const stems = (...ingredients: readonly string[]) => ({ any: ingredients.map((ingredient) => ({ ingredient, stems: 1 })) });

describe('dried, for Saturday 13 March', () => {
  const steps = calendarOf();

  test('every step has its day, last to first', () => {
    expect(named(steps)).toEqual([
      '2027-03-13 event',
      '2027-03-12 hand over',
      '2027-03-11 boarded',
      '2027-03-11 bench',
      '2027-03-10 bench',
      '2027-03-09 material ready',
      '2027-02-19 check the drying',
      '2027-02-16 hang or treat',
      '2027-02-10 order by',
      '2027-02-02 decide recipe and ribbon',
    ]);
    expect(steps.filter((step) => step.late)).toEqual([]);
  });

  test('hanging shows its range, its source and when to begin checking', () => {
    expect(stepOf(steps, 'hang or treat')).toMatchObject({
      days: { least: 5, most: 21 },
      between: { from: '2027-02-21', to: '2027-03-09' },
      grade: 'official',
      assumed: true, // nobody named the plants
    });
  });

  test('bench days carry their whole pieces', () => {
    expect(steps.filter((step) => step.step === 'bench').map((step) => step.pieces)).toEqual([{ buttonhole: 28 }, { buttonhole: 12 }]);
  });

  test('the closed Saturday moves the hand-over to Friday and says so', () => {
    expect(stepOf(steps, 'hand over')).toMatchObject({ movedFrom: '2027-03-13', assumed: true, grade: 'common practice' });
  });
});

describe('drying by the plants of the recipe', () => {
  test.each([
    ['strawflower, 7 to 21 days over its sources', stems('strawflower'), {}, { least: 7, most: 21 }, 'strawflower'],
    ['the slowest plant sets the date', stems('strawflower', 'eucalyptus'), {}, { least: 14, most: 28 }, 'eucalyptus'],
    ['the studio’s own days win', stems('statice'), { drying: { Statice: { least: 8, most: 10 } } }, { least: 8, most: 10 }, 'statice'],
    ['a plant without published days takes the general range', stems('bunny tails'), {}, { least: 5, most: 21 }, 'bunny tail'],
  ])('%s', (_, recipes, settings, days, plant) => {
    const step = stepOf(calendarOf({ recipes }, aStudio(settings)), 'hang or treat');
    expect(step.days).toEqual(days);
    expect(step.plant).toBe(plant);
    expect(step.grade).toBe('drying' in settings ? 'the studio' : step.grade);
  });

  test('"we dry statice 10 days": the later word wins over the settings', () => {
    const said = [{ fact: 'drying', item: 'sea lavender', days: 10, words: '' } as const];
    const studio = aStudio({ drying: { Statice: { least: 4, most: 6 } } }, { drying: said });
    expect(stepOf(calendarOf({ recipes: stems('statice') }, studio), 'hang or treat').days).toEqual({ least: 10, most: 10 });
  });

  test('bought ready dried: nothing to hang, and the order is later', () => {
    const steps = calendarOf({ recipes: stems('dried statice', 'preserved eucalyptus') });
    expect(named(steps).slice(-3)).toEqual(['2027-03-09 material ready', '2027-03-03 order by', '2027-02-23 decide recipe and ribbon']);
    expect(stepOf(steps, 'decide recipe and ribbon').done).toBe(true);
  });

  test('the price list may say that an item comes dried, and how long it takes to come', () => {
    const pack = { fact: 'pack', item: 'Bunny tails', price: '6.50', dryingDays: 0, leadDays: 5, words: '' } as const;
    const steps = calendarOf({ recipes: stems('bunny tails') }, aStudio({}, { packs: [pack] }));
    expect(steps.some((step) => step.step === 'hang or treat')).toBe(false);
    expect(stepOf(steps, 'order by').date).toBe('2027-02-26');
  });
});

describe('fresh, for Saturday 13 March', () => {
  const steps = calendarOf({ material: 'fresh' });

  test('in water overnight before the bench day, ordered the studio’s three working days before that', () => {
    expect(named(steps)).toEqual([
      '2027-03-13 event',
      '2027-03-12 hand over',
      '2027-03-12 boarded',
      '2027-03-12 bench',
      '2027-03-12 material ready',
      '2027-03-11 condition',
      '2027-03-05 order by',
      '2027-02-25 decide recipe and ribbon',
    ]);
    expect(stepOf(steps, 'condition')).toMatchObject({ hours: { least: 2, most: 12 }, material: 'fresh' });
  });
});

test('mixed has both ways to the bench', () => {
  const steps = calendarOf({ material: 'mixed' });
  expect(steps.filter((step) => step.step === 'order by').map((step) => [step.date, step.material])).toEqual([
    ['2027-03-05', 'fresh'],
    ['2027-02-11', 'dried'],
  ]);
});

test('silk flowers are ordered, not dried', () => {
  expect(calendarOf({ material: 'artificial' }).map((step) => step.step)).not.toContain('hang or treat');
});

test('a material nobody said: the last day on which dried is still open', () => {
  const studio = aStudio();
  const event = { ...anEvent(), lines: anEvent().lines.map((line) => ({ ...line, material: 'fresh' as const, materialAssumed: true })) };
  const [plan] = planBench([event], rulesOf(studio), day('2027-01-20')).events;
  expect(stepOf(plan?.calendar ?? [], 'decide the material').date).toBe('2027-02-10');
});

describe('late', () => {
  test('three weeks of drying for tomorrow: what is late, and that only fresh can be in time', () => {
    const steps = calendarOf({ date: day('2027-01-21') });
    expect(stepOf(steps, 'hang or treat')).toMatchObject({ late: true, waitsFor: 'order by', canStill: [] });
    expect(stepOf(steps, 'order by').canStill.map((way) => [way.do, 'inTime' in way ? way.inTime : undefined])).toEqual([
      ['hang on arrival', 'no'],
      ['silica gel', 'no'],
      ['buy it ready dried', 'no'],
      ['make them fresh', undefined],
    ]);
    expect(stepOf(steps, 'boarded')).toMatchObject({ late: true, canStill: [{ do: 'board as they are finished' }] });
  });

  test('three weeks ahead: hanging is in time only if it dries fast; silica gel and ready-dried are in time', () => {
    const steps = calendarOf({ date: day('2027-02-13') }); // latest start Thursday 11 February
    expect(stepOf(steps, 'order by').canStill).toEqual([
      { do: 'hang on arrival', hang: '2027-01-26', readyFrom: '2027-01-31', readyBy: '2027-02-16', inTime: 'only if it dries fast' },
      { do: 'silica gel', readyFrom: '2027-01-29', readyBy: '2027-02-03', inTime: 'yes' },
      { do: 'buy it ready dried', arrives: '2027-01-26', inTime: 'yes' },
      { do: 'make them fresh', on: '2027-02-12' },
    ]);
  });

  test('fresh flowers not ordered two days ahead: the market is left', () => {
    const order = stepOf(calendarOf({ date: day('2027-01-23'), material: 'fresh' }), 'order by');
    expect(order).toMatchObject({ late: true });
    expect(order.canStill).toEqual([
      { do: 'order today', arrives: '2027-01-26', inTime: 'no' },
      { do: 'fetch it from the market', by: '2027-01-22' },
    ]);
  });
});

describe('done', () => {
  const late = { date: day('2027-02-06') };
  const step = (name: 'ordered' | 'received' | 'hung' | 'drying checked', item?: string) => ({
    fact: 'step' as const,
    step: name,
    words: '',
    ...(item ? { item } : {}),
  });

  test.each<[string, Partial<EventState>, readonly StepName[]]>([
    ['nothing ticked', {}, ['check the drying', 'hang or treat', 'order by', 'decide recipe and ribbon']],
    ['ordered', { steps: [step('ordered')] }, ['check the drying', 'hang or treat']],
    ['hung', { steps: [step('hung')] }, ['check the drying']],
    ['drying checked', { steps: [step('drying checked')] }, []],
    ['pieces are made, so the material was there', { progress: { buttonhole: { made: 1, broke: 0 } } }, []],
    [
      'one of two plants hung is not all',
      { recipes: stems('statice', 'lavender'), steps: [step('hung', 'statice')] },
      ['check the drying', 'hang or treat', 'order by'],
    ],
    [
      'both hung',
      { recipes: stems('statice', 'lavender'), steps: [step('hung', 'statice'), step('hung', 'Lavender')] },
      ['check the drying'],
    ],
  ])('%s', (_, event, open) => {
    const steps = calendarOf({ ...late, ...event }, aStudio(), '2027-02-02');
    expect(steps.filter((one) => one.late).map((one) => one.step)).toEqual(open);
  });
});
