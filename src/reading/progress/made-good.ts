// Pieces lost and made again in one sentence.

import type { Fact, FactOf } from '../fact.ts';
import type { Match } from '../pattern.ts';
import { allFree, type Finding, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { intent } from './done-words.ts';
import { madeGood } from './losses.ts';
import { amountOf } from './made-facts.ts';

const notYet = /^(not|never|haven't|havent|hasn't|hasnt|have not|to|who|nobody)$/;
const isLoss = (fact: Unworded | Fact): fact is FactOf<'broke'> => fact.fact === 'broke';
/** "1 crown fell apart, rebuilt it": as many made again as were lost, unless a number says otherwise. */
export const makeGood = (
  reader: Reader,
  part: Part,
  findings: readonly Finding[],
  take: (match: Match, facts: readonly Unworded[]) => void,
): void => {
  const told = findings.flatMap((finding) => finding.facts ?? []).find(isLoss);
  // "dog ate one bout, remade it": the loss is read already.
  const [before, another] = reader.facts.filter(isLoss);
  const lost = told ?? (another === undefined && reader.facts.length === 1 ? before : undefined);
  const again = lost === undefined ? undefined : madeGood.in(reader.tokens, part.start, part.end);
  const count = again?.kept['again'] === undefined ? lost?.count : amountOf(again.kept['again']);
  if (lost === undefined || again === undefined || count === undefined) return;
  const early = reader.tokens.slice(part.start, again.start).some(({ text }) => intent.has(text) || notYet.test(text));
  if (told === undefined && (early || count > lost.count || !allFree(reader, again.start, again.end))) return;
  take(again, [
    {
      fact: 'made',
      count,
      remade: true,
      ...(lost.piece === undefined ? {} : { piece: lost.piece }),
    },
  ]);
};
