// Whose minutes one piece is planned with. Every place that shows minutes asks here, so the bench card, the plan and the figures agree.

import { describe, expect, test } from 'vitest';
import { plannedMinutes } from '../../src/handover/planned-minutes.ts';
import { minutesEach } from '../../src/planning/bench-rules.ts';
import type { StudioState } from '../../src/studio/studio.ts';
import { newEvent } from '../../src/thread/event.ts';
import type { EventRule } from '../../src/thread/rule-for.ts';
import { anEvent, aStudio, rulesOf } from './a-studio.ts';

const rule = (to: string, piece?: EventRule['piece']): EventRule => ({
  fact: 'rule',
  what: 'minutes',
  to,
  words: `${to} min`,
  ...(piece === undefined ? {} : { piece }),
});
const paced: StudioState = aStudio({ minutes: { corsage: 25 } }, { crew: [{ fact: 'crew', minutesPerPiece: 7, words: '7 min each' }] });

describe('minutes for one piece', () => {
  test.each([
    ['the handbook’s usual where nobody said', 'flower crown', [], 60, 'the handbook'],
    ['the studio’s pace; one that names no piece is the buttonhole’s', 'buttonhole', [], 7, 'the studio'],
    ['the studio’s corsages stand for wrist corsages', 'wrist corsage', [], 25, 'the studio'],
    ['the event’s rule wins', 'buttonhole', [rule('9')], 9, 'this event'],
    ['a rule for the kind wins over a newer one for all', 'buttonhole', [rule('9', 'buttonhole'), rule('12')], 9, 'this event'],
    ['a rule that is no number of minutes is passed over', 'buttonhole', [rule('-3')], 7, 'the studio'],
  ] as const)('%s', (_what, piece, rules, minutes, by) => {
    expect(minutesEach(piece, rulesOf(paced), rules)).toMatchObject({ minutes, by });
  });

  test('the plan and the bench card take the same', () => {
    const rules = [rule('9', 'buttonhole'), rule('12')];
    const lines = [
      { piece: 'buttonhole' as const, count: 4 },
      { piece: 'corsage' as const, count: 2 },
    ];
    const planned = anEvent({ rules, lines }, paced).lines.map((line) => line.minutesEach);
    expect(planned).toEqual([9, 12]);
    expect(lines.map(({ piece }) => plannedMinutes({ ...newEvent, rules, lines }, paced, piece).each.value)).toEqual(planned);
  });
});
