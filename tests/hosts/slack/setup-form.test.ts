// The studio's settings as a form: shown, typed, checked field by field, saved.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readSetupForm } from '../../../src/hosts/slack/read-setup-form.ts';
import { setupForm } from '../../../src/hosts/slack/setup-form.ts';
import { closedDays, hoursByWeekday } from '../../../src/hosts/slack/setup-typing.ts';
import type { StudioSettings } from '../../../src/studio/settings.ts';
import { weekdays } from '../../../src/values/day.ts';
import { viewFaults } from '../../support/block-kit-limits.ts';
import { yard } from '../../support/slack-desk.ts';

const full: StudioSettings = {
  ...yard,
  tax: { usual: 'included', rate: '20' },
  labour: { rule: 'on product', share: '30', wage: '12.60', onCosts: '12.07' },
  multiples: { stems: '4', sundries: '3.5' },
  minutes: { buttonhole: 15 },
  bench: { people: 2, hours: { monday: 6, tuesday: 6, saturday: 4.5 }, closed: ['2027-04-02'] },
  reminder: { at: '07:00', channel: 'C7', weekAheadOn: 'friday' },
};

interface Shown {
  readonly block_id?: string;
  readonly element?: Readonly<Record<string, unknown>>;
}
/** What Slack would send back for the form as it is shown, with some fields changed. */
const submitted = (settings: StudioSettings, changes: Record<string, string | null> = {}) =>
  Object.fromEntries(
    (setupForm(settings).blocks as readonly Shown[]).flatMap(({ block_id: id, element }) => {
      if (id === undefined || !element) return [];
      const shown = element['initial_value'] ?? element['initial_time'] ?? element['initial_conversation'];
      const option = element['initial_option'];
      const change = changes[id];
      const entry =
        element['type'] === 'static_select'
          ? { selected_option: change === undefined ? (option ?? null) : change && { value: change } }
          : { value: change === undefined ? (shown ?? null) : change };
      return [[id, { [id]: entry }]];
    }),
  );
const saved = (settings: StudioSettings, changes?: Record<string, string | null>) => readSetupForm(submitted(settings, changes), settings);

test.each([
  ['a new studio', yard],
  ['a studio with everything set', full],
])('%s: the form is one Slack takes, and saving it unchanged changes nothing', (_what, settings) => {
  expect(viewFaults({ ...setupForm(settings) })).toEqual([]);
  expect(saved(settings)).toEqual({ settings });
});

test('what is typed is saved; what the form does not show is kept; what is emptied follows the defaults', () => {
  const read = saved(full, { people: '3', hours: 'Mon-Fri 7, sun 2', tax_rate: null, on_costs: '', currency: 'eur', closed: '' });
  expect(read).toEqual({
    settings: {
      ...full,
      currency: 'EUR',
      tax: { usual: 'included' },
      labour: { rule: 'on product', share: '30', wage: '12.60' },
      bench: { people: 3, hours: { monday: 7, tuesday: 7, wednesday: 7, thursday: 7, friday: 7, sunday: 2 } },
    },
  });
});

describe('each field says what is wrong with it, and nothing is saved', () => {
  test.each([
    ['name', ''],
    ['name', 'x'.repeat(81)],
    ['region', 'Scotland'],
    ['time_zone', 'London'],
    ['currency', 'QQQ'],
    ['tax_rate', '120'],
    ['labour_share', '-3'],
    ['wage', '0'],
    ['stems_multiple', 'four'],
    ['people', '2.5'],
    ['hours', 'most days'],
    ['hours', 'mon 25'],
    ['hours', 'mon 6, mon-tue 5'],
    ['closed', '31 February'],
    ['closed', '2027-02-31'],
    ['reminder_at', '7am'],
    ['labour_rule', 'by guess'],
  ])('%s: %s', (field, typed) => {
    const read = saved(full, { [field]: typed });
    expect('errors' in read ? Object.keys(read.errors) : []).toEqual([field]);
  });
  test('two at once are both named', () => {
    const read = saved(full, { currency: 'pounds', people: 'two' });
    expect('errors' in read && Object.keys(read.errors).sort()).toEqual(['currency', 'people']);
  });
});

test('bench hours are read as they are shown', () => {
  const anyHours = fc.dictionary(
    fc.constantFrom(...weekdays),
    fc.integer({ min: 0, max: 48 }).map((halves) => halves / 2),
  );
  fc.assert(
    fc.property(anyHours, (hours) => {
      expect(hoursByWeekday.read(hoursByWeekday.show(hours))).toEqual({ ...hours });
    }),
  );
  expect(hoursByWeekday.read('fri-mon 5')).toEqual({ friday: 5, saturday: 5, sunday: 5, monday: 5 });
  expect(closedDays.read('2027-04-05; 2027-04-02 2027-04-05')).toEqual(['2027-04-02', '2027-04-05']);
});
