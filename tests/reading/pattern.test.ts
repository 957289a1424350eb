// The small language of patterns: what it matches, and that the quick look which rules places out never rules out a match.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formOf, pattern } from '../../src/reading/pattern.ts';
import { parse } from '../../src/reading/patterns/parse-pattern.ts';
import { trialOf } from '../../src/reading/patterns/steps.ts';
import { openMessage } from '../../src/reading/text/message.ts';

const found = (source: string, text: string): string | undefined => {
  const message = openMessage(text);
  const match = pattern(source).in(message.tokens, 0, message.tokens.length);
  return match === undefined ? undefined : message.words(match.start, match.end);
};

describe('a pattern', () => {
  test.each([
    ['made <count> <piece>?', 'we made 12 corsages today', 'made 12 corsages'],
    ['made <count> <piece>?', 'we made 12 today', 'made 12'],
    ['(up|down) to <n:amount>', 'go down to £18', 'down to £18'],
    ['<any>{0,3} left', '5 still left', '5 still left'],
    ['<any>{1,2} <any>{1,2} left', 'only 5 left', 'only 5 left'],
    ['made <count>', 'made\n12', undefined],
    ['<count> (more)? done', '12 more', undefined],
    ['\\? or', 'ok ? or not', '? or'],
  ])('%s in “%s” is %s', (source, text, expected) => {
    expect(found(source, text)).toBe(expected);
  });

  test('keeps the named tokens of the way that fits', () => {
    const { tokens } = openMessage('12 of 40');
    const match = pattern('<n:count> (of <m:count>)?').at(tokens, 0, tokens.length);
    expect([match?.kept['n']?.text, match?.kept['m']?.text]).toEqual(['12', '40']);
  });

  test.each(['made <count', '(made', 'made)', '? made'])('a source that cannot be read throws at start: %s', (source) => {
    expect(() => pattern(source)).toThrow();
  });
});

test('the quick look rules out no match that a plain walk finds', () => {
  const word = fc.constantFrom('made', 'of', 'the', '12', '40', '£5', 'corsages', 'left', 'dried', '\n', '.', 'blue');
  const atom = fc.constantFrom(
    'made',
    'of',
    'the',
    'left',
    '<count>',
    '<piece>',
    '<money>',
    '<any>',
    '<any>{0,2}',
    '(of)? (the)?',
    '(left|<material>)',
  );
  const source = fc.array(atom, { minLength: 1, maxLength: 5 }).map((atoms) => atoms.join(' '));
  fc.assert(
    fc.property(source, fc.array(word, { maxLength: 40 }), (written, words) => {
      const { tokens } = openMessage(words.join(' '));
      const [form, straight, plainly] = [pattern(written), formOf(written), trialOf(parse(written))];
      for (let index = 0; index < tokens.length; index++) {
        const plain = plainly(tokens, index, tokens.length)?.end ?? index;
        // A match of nothing is nobody's match.
        expect(form.at(tokens, index, tokens.length)?.end ?? index).toBe(plain);
        expect(straight.at(tokens, index)?.end ?? index).toBe(plain);
      }
    }),
    { numRuns: 1_000 },
  );
});
