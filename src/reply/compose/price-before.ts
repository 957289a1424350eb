// The order as it was priced before a message, held against what it comes to now: a price that appears, moves or goes must never do so in silence.

import type { PieceKind } from '../../handbook/pieces.ts';
import { clientPays } from '../../pricing/ex-tax.ts';
import { type PricedEvent, priceEvent } from '../../pricing/price-event.ts';
import type { PricedLine } from '../../pricing/price-order.ts';
import { type Decimal, sum } from '../../values/decimal.ts';
import type { Result } from '../../values/result.ts';
import type { Answer } from '../answer.ts';
import type { Line } from '../reply.ts';
import { countSpan, moneySpan, strong, text } from '../span.ts';
import { counted } from '../words/names.ts';

export const priceBefore = ({ studio, before, today }: Answer): Result<PricedEvent> | undefined =>
  priceEvent(studio.settings, before, today);

/** True when the figures are news: there were none, or they are others, or they can't be worked out any more. */
export const isPriceNews = (answer: Answer): boolean => {
  const { price } = answer;
  const before = priceBefore(answer);
  if (!price?.ok || !before?.ok) return before !== undefined && price !== undefined && before.ok !== price.ok;
  const [was, now] = [before.value.priced.all.exact, price.value.priced.all.exact];
  return !(was.price.equals(now.price) && was.wholesale.equals(now.wholesale));
};

const ofKind = (priced: PricedEvent, piece: PieceKind): readonly PricedLine[] => priced.priced.lines.filter((line) => line.piece === piece);

const quoted = (lines: readonly PricedLine[]): string => lines.map((line) => `${line.count} at ${line.quotedEach.toString()}`).join(', ');

const paid = (lines: readonly PricedLine[]): Decimal =>
  sum(lines.map((line) => clientPays(line.quotedEach.times(line.count), line.rules.taxRate, line.rules.basis)));

/** One price for all that stays while the number moves: what each comes to, old → new. */
export const sharedPriceChanges = (answer: Answer): readonly Line[] => {
  const { before, event, price, manner } = answer;
  const old = priceBefore(answer);
  if (!price?.ok || !old?.ok || before.price?.per !== 'all' || event.price?.per !== 'all') return [];
  if (before.price.amount !== event.price.amount) return [];
  const [was, now] = [old.value.priced, price.value.priced];
  const [only, another] = now.lines;
  if (only === undefined || another !== undefined || was.lines.length !== 1 || was.lines[0]?.count === only.count) return [];
  const printed = (line: PricedLine): string => manner.money(line.quotedEach);
  return was.lines.map(
    (line) =>
      text`Each: ${moneySpan(printed(line))} → ${strong(printed(only))}, as ${moneySpan(manner.money(event.price?.amount ?? '0'))} for all stays.`,
  );
};

/** What the client pays for pieces that were priced before and are quoted the same, where only the tax moved it: "40 buttonholes: $1,130.00 → $1,000.00". */
export const clientTotalChanges = (answer: Answer): readonly Line[] => {
  const { price, manner } = answer;
  const before = priceBefore(answer);
  if (!price?.ok || !before?.ok) return [];
  const kinds = [...new Set(before.value.priced.lines.map((line) => line.piece))];
  return kinds.flatMap((piece) => {
    const [was, now] = [ofKind(before.value, piece), ofKind(price.value, piece)];
    if (now.length === 0 || quoted(was) !== quoted(now) || paid(was).equals(paid(now))) return [];
    const pieces = counted(
      now.reduce((count, line) => count + line.count, 0),
      piece,
      manner.says,
    );
    const printed = (lines: readonly PricedLine[]): string => manner.money(sum(lines.map((line) => line.all.printed.price)));
    return [text`${countSpan(pieces)}, for the client: ${moneySpan(printed(was))} → ${strong(printed(now))}`];
  });
};
