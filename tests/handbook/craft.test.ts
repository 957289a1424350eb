// The bench card's steps. The notes the studio asked for are all there, in an order the work can follow.

import { describe, expect, test } from 'vitest';
import { craftSteps } from '../../src/handbook/craft.ts';
import { pieceKinds } from '../../src/handbook/pieces.ts';

const words = (kind: (typeof pieceKinds)[number]): string =>
  craftSteps(kind)
    .map(({ step, note }) => `${step}. ${note}`)
    .join('\n');

describe.each(pieceKinds)('making a %s', (kind) => {
  const steps = craftSteps(kind);

  test('begins by cutting the ribbon (common practice, no source)', () => {
    expect(steps[0]?.step).toBe('Cut the ribbon first');
  });

  test('staggers the heads, covers the mechanics, covers the cut wire ends and ends with a check', () => {
    expect(words(kind)).toMatch(/stagger/i);
    expect(words(kind)).toMatch(/cover all the mechanics/i);
    expect(words(kind)).toMatch(/wire ends and cover/);
    expect(steps.at(-1)?.step).toMatch(/^Check it/);
  });

  test('fits a card: at most twelve short steps, each once', () => {
    expect(steps.length).toBeLessThanOrEqual(12);
    expect(new Set(steps.map(({ step }) => step)).size).toBe(steps.length);
    for (const { step, note } of steps) {
      expect(step.length).toBeLessThanOrEqual(45);
      expect(note.length).toBeLessThanOrEqual(120);
    }
  });
});

describe('a lapel piece', () => {
  test('says which side faces the middle of the jacket, and that the fixing is high and hidden (common practice, no source)', () => {
    expect(words('buttonhole')).toMatch(/fuller side faces the middle of the jacket/);
    expect(words('buttonhole')).toMatch(/Tuck the fixing high and hide it/);
  });

  // Constructing Boutonnieres and Corsages, Georgia Agriculture Education, 2005: stem 2 to 2½ in; foliage shows by a third.
  test('has a stem of 2 to 2½ inches, which is 5 to 6 cm in whole numbers', () => {
    expect([2 * 2.54, 2.5 * 2.54].map(Math.floor)).toEqual([5, 6]);
    expect(words('buttonhole')).toContain('5–6 cm');
    expect(words('buttonhole')).toContain('2 to 2½ in');
  });

  // Corsages and boutonniere FAQs (a working florist's page): a boutonniere has no bow, a corsage usually does.
  test('has no bow, where a pinned corsage has one', () => {
    expect(words('buttonhole')).toContain('no bow');
    expect(words('pin corsage')).toContain('Make the bow');
  });
});
