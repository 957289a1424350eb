// The overload of one event apart from the others': its own stretch, its own cures, each still enough for it.

import { describe, expect, it } from 'vitest';
import { overloadOf } from '../../src/planning/overload-of.ts';
import { planBench } from '../../src/planning/plan-bench.ts';
import { anEvent, day, rulesOf } from './a-studio.ts';

const today = day('2027-03-02');
const early = anEvent(
  { date: day('2027-03-06'), material: 'fresh', lines: [{ piece: 'buttonhole', count: 60 }] },
  undefined,
  'harbour dance',
);
const late = anEvent(
  { date: day('2027-03-13'), material: 'fresh', lines: [{ piece: 'buttonhole', count: 50 }] },
  undefined,
  'net loft party',
);
const bench = planBench([early, late], rulesOf(), today);

describe('two events that are both short', () => {
  it('each has its own stretch and its own number of pieces too many', () => {
    expect(bench.fits).toBe(false);
    // Ten hours on the day before at 15 min each are 40 pieces.
    for (const [key, over, from] of [
      ['harbour dance', 20, '2027-03-05'],
      ['net loft party', 10, '2027-03-12'],
    ] as const) {
      const alone = overloadOf(bench, key);
      expect(alone.tight).toMatchObject({ from, to: from, keys: [key], minutesShort: over * 15 });
      expect(alone.cures.find(({ cure }) => cure === 'fewer pieces')).toMatchObject({ drops: [{ key, pieces: over, keeps: 40 }] });
    }
  });

  it('is the plan itself where the event asked about is the only one', () => {
    const alone = planBench([early], rulesOf(), today);
    expect(overloadOf(alone, 'harbour dance')).toBe(alone);
  });

  it('is the whole bench for an event that fits', () => {
    expect(overloadOf(bench, 'another')).toBe(bench);
  });
});
