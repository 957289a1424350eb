// Dates nobody asked about but that a message moved, and work that would be made too early or without its material: said in the reply itself.

import { expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

const last = async (...lines: string[]): Promise<string> => (await talk(lines)).slice((await talk(lines.slice(0, -1))).length);
const order = '40 buttonholes at 25 inc, saturday 20 march, dried';

test('a recipe with a slower plant says which dates it moves, and one that moves none says nothing', async () => {
  // Eucalyptus 14 to 28 days, the range for hanging 5 to 21: the handbook's drying table has the sources.
  const moved = /This recipe moves dates: order by .*17 February → .*9 February, hang to dry .*23 February → .*12 February\./;
  expect(await last(order, 'half a stem eucalyptus each')).toMatch(moved);
  expect(await last(order, '2 larch twigs each')).not.toContain('moves dates');
  expect(await last(`${order}, half a stem eucalyptus each`)).not.toContain('moves dates');
});

test('fresh work for the day after a long closing: how many hours ahead is said before the dates', async () => {
  // 48 h at most for a buttonhole: a panel of working florists (see handbook/make-ahead.ts).
  const reply = await last('10 buttonholes at 25 inc, fresh, tue 26 january');
  expect(reply).toMatch(/Fresh work made 96 h ahead: 48 h is the most/);
  expect(await last('10 buttonholes at 25 inc, fresh, tue 26 january', 'calendar')).toContain('96 h ahead');
  const opened = await last('10 buttonholes at 25 inc, fresh, tue 26 january', 'one of us mon 25 january 3 hours', 'when do we start?');
  expect(opened).not.toContain('h ahead');
});

test('no start is given for material that no way left can have ready, and fresh instead says how early that would be', async () => {
  const reply = await last('40 buttonholes at 25 inc, dried, tue 26 january', 'when do we start?');
  expect(reply).toMatch(/the bench would start by Wed 20 January, and the material cannot be ready by then/);
  expect(reply).toMatch(/make them fresh on Fri 22 January, if stems can be had and keep: that is 96 h ahead/);
});

test('a day beside work done is no event day', async () => {
  expect(await last('10 buttonholes at 25 inc, fresh, saturday 20 february', 'made 10 on monday 15 february')).not.toContain('→');
});

test.each([
  ['can we make them on monday?', /No: Mon 25 January is too early for them/],
  [
    'can we make them on tuesday 9 march?',
    /Yes: on Tue 9 March they may be made; the bench has 8 h that day[\s\S]*material is ready on Tue 16 March/,
  ],
  ['can we make them on monday 8 march?', /No: nobody is at the bench on Mon 8 March/],
  ['can we make them on fri 19 march?', /No: Fri 19 March is too late for them/],
  ['are we ok for saturday?', /nothing is to be handed over by Sat 23 January/],
])('%s', async (asked, answer) => {
  expect(await last('30 buttonholes at 25 inc, dried, sat 20 march', asked)).toMatch(answer);
});
