// Text made fit to draw. Which characters the typeface holds is checked against the coverage list its makers publish
// (DejaVu Fonts 2.37, unicover.txt, 2016): all of Greek and Cyrillic, no Han.

import { describe, expect, test } from 'vitest';
import { fitted, printable, widthOf, wrapped } from '../../src/attachments/printable.ts';

describe('what can be printed', () => {
  test.each([
    ['Harbour  dance\n', 'Harbour dance'],
    ['½ stem, 30–40 cm × 2', '½ stem, 30–40 cm × 2'],
    ['Zoë & Łukasz', 'Zoë & Łukasz'],
    ['Ольга, Ελένη', 'Ольга, Ελένη'],
    ['💐 spring 👩🏽‍🌾 dance', 'spring dance'],
    ['花嫁', '□□'],
    ['soft\u00ADhyphen\u0007', 'softhyphen'],
  ])('%s', (typed, printed) => expect(printable(typed)).toBe(printed));
});

describe('fitting', () => {
  test('shortens no more than it must', () => {
    const short = fitted('Harbour dance at the old ropeworks', 120, 12, 'regular');
    expect(short.endsWith('…')).toBe(true);
    expect(widthOf(short, 12, 'regular')).toBeLessThanOrEqual(120);
    const oneMore = `${'Harbour dance at the old ropeworks'.slice(0, short.length)}…`;
    expect(widthOf(oneMore, 12, 'regular')).toBeGreaterThan(120);
    expect(fitted('Dance', 120, 12, 'regular')).toBe('Dance');
  });

  test('breaks at spaces and loses no word', () => {
    const text = 'a fuller side that faces the middle of the jacket';
    const lines = wrapped(text, 90, 12, 'bold');
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.join(' ')).toBe(text);
    for (const line of lines) expect(widthOf(line, 12, 'bold')).toBeLessThanOrEqual(90);
  });
});
