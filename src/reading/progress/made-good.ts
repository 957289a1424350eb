// Pieces lost and made again in one sentence.

import type { FactOf } from '../fact.ts';
import type { Match } from '../pattern.ts';
import type { Finding, Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { madeGood } from './losses.ts';
import { amountOf } from './made-facts.ts';

/** "1 crown fell apart, rebuilt it": as many made again as were lost, unless a number says otherwise. */
export const makeGood = (
  reader: Reader,
  part: Part,
  findings: readonly Finding[],
  take: (match: Match, facts: readonly Unworded[]) => void,
): void => {
  const lost = findings.flatMap((finding) => finding.facts ?? []).find((fact): fact is FactOf<'broke'> => fact.fact === 'broke');
  const again = lost === undefined ? undefined : madeGood.in(reader.tokens, part.start, part.end);
  if (lost !== undefined && again !== undefined)
    take(again, [
      {
        fact: 'made',
        count: again.kept['again'] === undefined ? lost.count : amountOf(again.kept['again']),
        remade: true,
        ...(lost.piece === undefined ? {} : { piece: lost.piece }),
      },
    ]);
};
