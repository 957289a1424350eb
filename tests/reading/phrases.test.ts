// Every phrase reads its own examples; the help and the README show them, so they must be true.

import { describe, expect, it } from 'vitest';
import { phrases } from '../../src/reading/phrases.ts';
import { context } from './support/context.ts';
import { explain } from './support/explain.ts';

describe.each(phrases.filter((phrase) => phrase.examples.length > 0))('$name', (phrase) => {
  it.each(phrase.examples)('reads "%s"', (example) => {
    expect(explain(example, context).read.map((each) => each.phrase)).toContain(phrase.name);
  });
});

it('says which words gave which fact', () => {
  const { read, unread } = explain('40 Lapel Pieces at £25 inc tax', context);
  expect(read.map((each) => [each.phrase, each.words])).toEqual([
    ['order', '40 Lapel Pieces at £25'],
    ['tax basis', 'inc tax'],
  ]);
  expect(unread).toEqual([]);
});
