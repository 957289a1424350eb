// Who wears what, read aloud: the first line says whether people and pieces agree, and what is odd is asked, never changed.

import { describe, expect, test } from 'vitest';
import type { EventState } from '../../../src/thread/event.ts';
import { anEvent, line, wears, withSettings, yard } from '../../handover/an-event.ts';
import { asked } from '../../support/an-answer.ts';

const show = (event: Partial<EventState>, studio = yard): string => asked('wearers', anEvent(event), { studio });
const first = (event: Partial<EventState>): string => show(event).split('\n')[0] ?? '';

const party = [wears('groom'), wears('groomsmen', 5), wears('fathers', 2), wears('page boy')];

describe('the first line', () => {
  test.each<[string, Partial<EventState>, string]>([
    ['nobody named', { lines: [line(9)] }, 'Nobody has said who wears them yet.'],
    ['only a number of people', { wearersSaid: 9 }, '9 wearers. Who are they? Say “groom, 5 groomsmen, 2 dads”.'],
    ['about so many', { wearersSaid: 14, wearersRoughly: true }, 'About 14 wearers. Who are they? Say “groom, 5 groomsmen, 2 dads”.'],
    ['agreeing', { lines: [line(9)], wearers: party }, '9 wearers, 9 pieces: they agree.'],
    ['one of each', { lines: [line(1)], wearers: [wears('groom')] }, '1 wearer, 1 piece: they agree.'],
    ['one over', { lines: [line(10)], wearers: party }, '9 wearers, 10 pieces: 1 buttonhole has no name yet.'],
    [
      'two kinds over',
      { lines: [line(10), line(2, 'wrist corsage')], wearers: party },
      '9 wearers, 12 pieces: 1 buttonhole and 2 wrist corsages have no name yet.',
    ],
    ['more wearers than pieces', { lines: [line(7)], wearers: party }, '9 wearers, 7 pieces: 2 buttonholes short.'],
    [
      'short of one kind, over in another',
      { lines: [line(8), line(2, 'wrist corsage')], wearers: party },
      '9 wearers, 10 pieces: 1 buttonhole short; 2 wrist corsages have no name yet.',
    ],
    ['no pieces at all', { wearers: party }, '9 wearers; no pieces are ordered yet.'],
  ])('%s', (_name, event, words) => expect(first(event)).toBe(words));
});

test('each with the piece and the care their note calls for', () => {
  const text = show({ lines: [line(9)], wearers: [...party.slice(0, 3), wears('page boy', 1, { note: 'aged 4' })] });
  expect(text).toContain('- groom: buttonhole\n- 5 groomsmen: buttonholes\n- 2 fathers: buttonholes\n');
  expect(text).toContain('- page boy: buttonhole (aged 4; child: no loose pin, sew it on or tie it)');
});

test('the number of people somebody said is compared too, and the list is left as it is', () => {
  expect(show({ lines: [line(9)], wearers: party, wearersSaid: 10 })).toContain('You said 10 in all; the list has 1 fewer.');
  expect(show({ lines: [line(9)], wearers: party, wearersSaid: 7 })).toContain('You said 7 in all; the list has 2 more.');
  expect(show({ lines: [line(9)], wearers: party, wearersSaid: 9 })).not.toContain('You said');
});

test('a rough number is told as one', () => {
  const text = show({
    lines: [line(8)],
    wearers: [wears('groom'), { ...wears('groomsmen', 7), approx: true }],
    wearersSaid: 11,
    wearersRoughly: true,
  });
  expect(text).toContain('About 8 wearers, 8 pieces: they agree.');
  expect(text).toContain('- about 7 groomsmen: buttonholes');
  expect(text).toContain('You said about 11 in all; the list has 3 fewer.');
});

describe('what is odd is asked', () => {
  test('two grooms stay two grooms', () => {
    const text = show({ lines: [line(6)], wearers: [wears('grooms', 2), wears('groomsmen', 4)] });
    expect(text).toContain('2 grooms, as you wrote. If that is a slip, say “groom, 2 groomsmen”.');
    expect(text).toContain('- 2 grooms: buttonholes');
  });

  test('a role nobody knows is kept as written', () => {
    const text = show({ lines: [line(2)], wearers: [wears('groom'), wears('dog of honour')] });
    expect(text).toContain('- dog of honour: buttonhole');
    expect(text).toContain("I don't know what dog of honour usually wears and have put a buttonhole. Is that right?");
  });

  test('a mother among buttonholes only', () => {
    const text = show({ lines: [line(2)], wearers: [wears('groom'), wears('mother')] });
    expect(text).toContain('Mother: buttonhole, as nothing else is ordered; a wrist corsage is more usual. Is that right?');
  });

  test('a range has to be settled before hand-over', () => {
    expect(show({ lines: [line(40, 'buttonhole', { countMax: 45 })], wearers: party })).toContain(
      '40 to 45 buttonholes: the lists count 40. How many is it to be?',
    );
  });
});

// One spare for each list and one for the groom: wearing.ts names the sources; none gives a percentage.
test('spares are suggested with their figure and who says so, and counted nowhere', () => {
  expect(show({ lines: [line(9)], wearers: party })).toContain('2 spares are usual: one for the list and one for the groom (');
  expect(show({ lines: [line(2)], wearers: [wears('fathers', 2)] })).toContain('1 spare is usual: one for the list (');
  expect(show({ lines: [line(11)], wearers: party })).toContain('The ones without a name could be these.');
});

test('in the studio’s own word', () =>
  expect(show({ lines: [line(2)], wearers: [wears('groom')] }, withSettings({ region: 'US', currency: 'USD' }))).toMatch(
    /^1 wearer, 2 pieces: 1 boutonniere has no name yet\./,
  ));
