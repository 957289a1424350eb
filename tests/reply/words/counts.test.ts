// Counts and durations as people read them. "1,824 h": a comma between groups of three digits, as in the studio's money.

import { describe, expect, test } from 'vitest';
import { grouped } from '../../../src/reply/words/counts.ts';
import { duration, paceWords } from '../../../src/reply/words/dates.ts';
import { counted } from '../../../src/reply/words/names.ts';

describe('thousands', () => {
  test.each([
    [40, '40'],
    [999, '999'],
    [1824, '1,824'],
    [10000, '10,000'],
    [1234567, '1,234,567'],
    ['9500 to 10500', '9,500 to 10,500'],
    ['0.12345', '0.12345'],
  ])('%s', (count, words) => expect(grouped(count)).toBe(words));

  test('in counts of pieces and in hours', () => {
    expect(counted(10000, 'buttonhole', 'buttonhole')).toBe('10,000 buttonholes');
    expect(counted(1, 'flower crown', 'buttonhole')).toBe('1 flower crown');
    expect(duration(109498)).toBe('1,824 h 58 min');
  });
});

test.each([
  [7.5, '7.5 min'],
  [15, '15 min'],
  [60, '1 h'],
  [78, '1 h 18 min'],
  [16.66, '16.7 min'],
])('%s minutes for one piece', (minutes, words) => expect(paceWords(minutes)).toBe(words));
