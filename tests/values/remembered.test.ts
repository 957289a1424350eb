import { describe, expect, it } from 'vitest';
import { remembered } from '../../src/values/remembered.ts';

describe('an answer about a word', () => {
  it('is reckoned once and stays the same', () => {
    const asked: string[] = [];
    const length = remembered((word) => {
      asked.push(word);
      return word.length;
    });
    expect([length('bout'), length('crown'), length('bout')]).toEqual([4, 5, 4]);
    expect(asked).toEqual(['bout', 'crown']);
  });

  it('is kept though it is none', () => {
    let asked = 0;
    const nothing = remembered((): string | undefined => {
      asked += 1;
      return undefined;
    });
    nothing('kettle');
    expect(nothing('kettle')).toBeUndefined();
    expect(asked).toBe(1);
  });

  it('is forgotten in time, so that what is kept does not grow with all that is ever said', () => {
    const asked = new Map<string, number>();
    const itself = remembered((word) => {
      asked.set(word, (asked.get(word) ?? 0) + 1);
      return word;
    });
    for (let times = 0; times < 2; times++) for (let at = 0; at < 10_000; at++) itself(`word ${at}`);
    expect(asked.get('word 0')).toBe(2);
  });
});
