// The labour check in one line: the minutes the labour money pays for against the minutes planned at the bench, and what would close a gap.

import { benchRules, type MinutesEach, minutesEach } from '../../planning/bench-rules.ts';
import { checkLabour, type LabourCheck } from '../../pricing/labour-check.ts';
import type { PricedLine, PricedOrder } from '../../pricing/price-order.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { assumedSpan, moneySpan, strong, text } from '../span.ts';
import { duration } from '../words/dates.ts';
import { pieceName } from '../words/names.ts';

const planned = (line: PricedLine, { studio, event }: Answer): MinutesEach => minutesEach(line.piece, benchRules(studio), event.rules);

export const labourCheckOf = (priced: PricedOrder, answer: Answer): LabourCheck | undefined => {
  const { wage } = priced.terms;
  return wage ? checkLabour(priced, wage.cost, (line) => planned(line, answer).minutes) : undefined;
};

export const labourLine = (priced: PricedOrder, answer: Answer): Line => {
  const { manner } = answer;
  const check = labourCheckOf(priced, answer);
  if (!check) return text`Labour ${moneySpan(manner.money(priced.all.printed.labour))} in all. Set a wage to see the minutes it pays for.`;
  const usual = priced.lines.every((line) => planned(line, answer).own) ? '' : assumedSpan(' (usual minutes, not yours yet)');
  const [first] = check.lines;
  const paid =
    first && check.lines.length === 1
      ? text`Labour pays for ${strong(duration(first.paidEach))} each; you plan ${plannedWords(first.plannedEach)}${usual}.`
      : text`Labour pays for ${strong(duration(check.paid))}; you plan ${duration(check.planned)}${usual}.`;
  return check.short > 0 ? text`${paid} ${shortLine(check, priced, manner)}` : paid;
};

/** The unit was just said, unless it takes hours too. */
const plannedWords = (minutes: number): string => (minutes < 60 ? String(minutes) : duration(minutes));

const shortLine = (check: LabourCheck, priced: PricedOrder, manner: Manner): Line => {
  const cure = check.atSameShare?.[0];
  const piece = priced.lines.length > 1 && priced.lines[0] ? ` for a ${pieceName(priced.lines[0].piece, manner.says)}` : '';
  const price = cure ? text` ${moneySpan(manner.money(cure.price))}${piece} would cover it.` : [];
  return text`That is ${strong(`${duration(check.short)} short`)} for the order.${price}`;
};
