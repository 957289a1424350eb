// Tokens: one shape through all that is done to them, and the words and numbers made of stretches of them.

import { describe, expect, it } from 'vitest';
import { lex } from '../../../src/reading/text/lex.ts';
import { none } from '../../../src/reading/text/means.ts';
import { openMessage } from '../../../src/reading/text/message.ts';
import { asNumber, changed, cut, textOf } from '../../../src/reading/text/token.ts';
import { corpusLines } from '../support/corpus-files.ts';
import type { CorpusLine } from '../support/expectation.ts';

const fields = ['kind', 'text', 'start', 'end', 'glued', 'number', 'means', 'guessed'];

describe('the shape of a token', () => {
  it('is the same for every token of every message, whatever was done to it', () => {
    const shapes = corpusLines<CorpusLine>('more.jsonl').flatMap(({ text }) =>
      openMessage(text).tokens.map((token) => Object.keys(token).join()),
    );
    expect([...new Set(shapes)]).toEqual([fields.join()]);
  });

  it('has no number, no meaning and no guess where none is given', () => {
    expect(cut({ kind: 'word', text: 'statice', start: 0, end: 7, glued: false })).toMatchObject({
      number: undefined,
      means: none,
      guessed: undefined,
    });
  });

  it('keeps what is not changed', () => {
    const [token] = lex('lapels');
    if (token === undefined) throw new Error('no token');
    expect(changed(token, { glued: true, text: 'lapel' })).toEqual({ ...token, glued: true, text: 'lapel' });
  });
});

describe('a stretch of tokens', () => {
  const tokens = lex('make   two dozen\nbouts');

  it('is its words, a space between them', () => {
    expect(textOf(tokens, 1, 3)).toBe('two dozen');
    expect(textOf(tokens, 2, 2)).toBe('');
    expect(textOf([], 0, 0)).toBe('');
  });

  it('becomes one number that stands where the stretch stood', () => {
    const number = { form: 'plain', amount: '24', inDozens: true } as const;
    expect(asNumber(tokens, 1, 3, number)).toEqual({
      kind: 'number',
      text: 'two dozen',
      start: 7,
      end: 16,
      glued: false,
      number,
      means: none,
      guessed: undefined,
    });
  });
});
