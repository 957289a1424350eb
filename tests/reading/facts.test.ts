// Our own corpus, one file per fact: each message with the exact facts it states, what it asks, and what cannot be.
// common practice, no source: florists' own ways of writing.

import { describe, expect, it } from 'vitest';
import { type Fact, factSchema } from '../../src/reading/fact.ts';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';
import { corpusLines, factFiles } from './support/corpus-files.ts';

interface Line {
  readonly says: string;
  readonly facts: readonly object[];
  readonly asks?: readonly { readonly why: string; readonly choices: readonly (readonly object[])[] }[];
  readonly problems?: readonly string[];
}

const withoutWords = ({ words: _, ...fact }: Fact): object => fact;

describe.each(factFiles())('%s', (file) => {
  it.each(corpusLines<Line>(file).map((line) => [line.says, line] as const))('%s', (says, line) => {
    const reading = readMessage(says, context);
    expect(reading.facts.map(withoutWords)).toEqual(line.facts);
    expect(reading.asks.map((ask) => ({ why: ask.why, choices: ask.choices.map((choice) => choice.facts.map(withoutWords)) }))).toEqual(
      line.asks ?? [],
    );
    expect(reading.problems.map((problem) => problem.code)).toEqual(line.problems ?? []);
    for (const fact of reading.facts) expect(factSchema.safeParse(fact).success).toBe(true);
    for (const fact of reading.facts) expect(says).toContain(fact.words);
  });
});
