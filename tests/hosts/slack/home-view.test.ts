// Home: what is due, the week at the bench and the open events in pages, within Slack's limits.

import { describe, expect, test } from 'vitest';
import { homeForGuests, homeView } from '../../../src/hosts/slack/home-view.ts';
import { viewFaults } from '../../support/block-kit-limits.ts';
import { emptyHome, weekOf } from '../../support/slack-desk.ts';

const url = 'https://net-loft.slack.com/';
const drawn = (events: number, page = 0) => {
  const view = homeView(events === 0 ? emptyHome : weekOf(events), page, url);
  expect(viewFaults({ ...view })).toEqual([]);
  return { view, json: JSON.stringify(view) };
};
const titles = (json: string): string[] => [...json.matchAll(/"text":"(Wedding \d+)","style"/g)].map((match) => match[1] ?? '');

test('with nothing yet it says so, and offers to set up the studio', () => {
  const { json } = drawn(0);
  expect(json).toContain('No bench days this week.');
  expect(json).toContain('Nothing is due today.');
  expect(json).toContain('None yet.');
  expect(json).toContain('Set up the studio');
});

test('the week: bars with their figures in words, closed days, and what is too full', () => {
  const text = JSON.parse(drawn(3).json).blocks[1].elements;
  expect(text[0].elements[0].text.split('\n')).toEqual([
    'Mon 8 Mar  ██████░░ 4 of 6 h',
    'Tue 9 Mar  ████████ 8.5 of 6 h',
    'Wed 10 Mar ░░░░░░░░ 0 of 6 h',
    'Thu 11 Mar ████████ 6 of 6 h',
    'Fri 12 Mar █░░░░░░░ 0.3 of 6 h',
    'Sat 13 Mar ████████ 1 of 0 h',
    'Sun 14 Mar closed',
  ]);
  expect(text[1].elements[0].text).toBe('Too full: Tue 9 March by 2 h 30 min, Sat 13 March by 1 h');
});

describe('80 events', () => {
  test('come in pages, the late one first, then by date, those without a date last', () => {
    const pages = [0, 1, 2, 3].map((page) => titles(drawn(80, page).json));
    expect(pages.map(({ length }) => length)).toEqual([20, 20, 20, 20]);
    const all = pages.flat();
    expect(new Set(all).size).toBe(80);
    expect(all[0]).toBe('Wedding 57');
    expect(all.at(-1)).toMatch(/9$/);
    expect(drawn(80, 0).json).toContain('Late: order by Fri 5 March');
  });
  test('a page that is no more shows the last', () => {
    expect(titles(drawn(80, 99).json)).toEqual(titles(drawn(80, 3).json));
    expect(titles(drawn(80, -1).json)).toEqual(titles(drawn(80, 0).json));
  });
  test('due today is cut off, and says by how much', () => {
    expect(drawn(80).json).toContain('and 15 more');
  });
});

test('links go to the thread', () => {
  expect(drawn(1).json).toContain('https://net-loft.slack.com/archives/C1/p1800000010000100');
});

test('names people typed are inert', () => {
  const week = weekOf(1);
  const event = {
    ...week.events[0],
    in: { workspace: 'T1', channel: 'C1', thread: '1.2' },
    title: '<!channel> @here *x*\u202e',
    pieces: '<@U1>',
  };
  const view = homeView({ ...week, events: [event], due: [{ event: '<!here>', what: '#general' }] }, 0, url);
  expect(viewFaults({ ...view })).toEqual([]);
  expect(JSON.stringify(view)).toContain('"text":"<!channel> @here *x*"');
});

test('guests see no events', () => {
  expect(viewFaults({ ...homeForGuests })).toEqual([]);
  expect(JSON.stringify(homeForGuests)).not.toContain('Wedding');
});
