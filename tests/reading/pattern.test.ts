// The small language of patterns: what it matches, and that the quick look which rules places out never rules out a match.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formOf, isA, pattern } from '../../src/reading/pattern.ts';
import { type Node, parse } from '../../src/reading/patterns/parse-pattern.ts';
import { openMessage } from '../../src/reading/text/message.ts';
import type { Token } from '../../src/reading/text/token.ts';

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

// What a pattern means, spelt out: every way through its nodes, the first that fits. No program, no bits, no quick look.
type Way = readonly [number, Readonly<Record<string, Token>>];
const waysThrough = (tokens: readonly Token[], [first, ...rest]: readonly Node[], [index, kept]: Way): Way[] => {
  const token = tokens[index];
  const onward = (ways: readonly Way[]): Way[] => ways.flatMap((way) => waysThrough(tokens, rest, way));
  if (first === undefined) return [[index, kept]];
  if (first.is === 'word') return token?.text === first.text ? onward([[index + 1, kept]]) : [];
  if (first.is === 'tag')
    return token !== undefined && isA(token, first.tag) ? onward([[index + 1, { ...kept, [first.name]: token }]]) : [];
  if (first.is === 'choice') return first.choices.flatMap((choice) => waysThrough(tokens, [...choice, ...rest], [index, kept]));
  const { only, least, most } = first;
  if (most === 0) return onward([[index, kept]]);
  const fewer: Node = { is: 'repeat', only, least: Math.max(0, least - 1), most: most - 1 };
  return [...waysThrough(tokens, [...only, fewer, ...rest], [index, kept]), ...(least === 0 ? onward([[index, kept]]) : [])];
};

test('a trial finds what a plain walk finds, and the quick look rules none of it out', () => {
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
    '<n:count>?',
    '(of the|of|<n:count> left|<money>)',
    '((<any> of)? left|the (of|<n:any>)){0,2}',
    '(made|of|the|left|dried){1,3}',
    '(made|of the|left|dried|<count>|the|of) (12|40)?',
  );
  const source = fc.array(atom, { minLength: 1, maxLength: 5 }).map((atoms) => atoms.join(' '));
  fc.assert(
    fc.property(source, fc.array(word, { maxLength: 40 }), (written, words) => {
      const { tokens } = openMessage(words.join(' '));
      const [form, straight, nodes] = [pattern(written), formOf(written), parse(written)];
      for (let index = 0; index < tokens.length; index++) {
        const [end = index, kept = {}] = waysThrough(tokens, nodes, [index, {}])[0] ?? [];
        // A match of nothing is nobody's match.
        for (const match of [form.at(tokens, index, tokens.length), straight.at(tokens, index)]) {
          expect(match?.end ?? index).toBe(end);
          if (match !== undefined) expect(match.kept).toEqual(kept);
        }
      }
    }),
    { numRuns: 1_000 },
  );
});
