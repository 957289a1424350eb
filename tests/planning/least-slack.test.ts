// The row of slack against the same thing done the slow way.

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { slackRow } from '../../src/planning/least-slack.ts';

test('adding from a place on, setting one and asking for the least give what a plain list gives', () => {
  const change = fc.record({ kind: fc.constantFrom('add', 'set'), place: fc.nat({ max: 12 }), amount: fc.integer({ min: -50, max: 50 }) });
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 13 }), fc.array(change, { maxLength: 40 }), (size, changes) => {
      const row = slackRow(size);
      const plain = Array.from({ length: size }, () => Number.POSITIVE_INFINITY);
      for (const { kind, place, amount } of changes) {
        if (place >= size) continue;
        if (kind === 'set') {
          row.setAt(place, amount);
          plain[place] = amount;
        } else {
          row.addFrom(place, amount);
          for (let at = place; at < size; at += 1) plain[at] = (plain[at] ?? 0) + amount;
        }
        for (let from = 0; from < size; from += 1) {
          const least = row.leastFrom(from);
          expect(least).toBe(Math.min(...plain.slice(from)));
          expect(row.whereLeast(from)).toBe(plain.indexOf(least, from));
        }
      }
    }),
  );
});
