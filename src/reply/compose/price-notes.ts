// What stands behind a price and must not stay hidden: rules of this event alone, what the material or a coming change does to the tax, a total's shares,
// a minimum not reached, the cash total, the other end of a range, a number said roughly.

import { cashTotal } from '../../pricing/cash-total.ts';
import { hasPriceRange } from '../../pricing/order-of-event.ts';
import { priceEvent } from '../../pricing/price-event.ts';
import type { PricedOrder } from '../../pricing/price-order.ts';
import type { Override } from '../../pricing/price-terms.ts';
import type { TaxTerms } from '../../pricing/tax-terms.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { joined, moneySpan, strong, text } from '../span.ts';
import { grouped } from '../words/counts.ts';
import { fullDate } from '../words/dates.ts';
import { counted, pieceName } from '../words/names.ts';
import { rateWords } from '../words/order.ts';

export const priceNotes = (priced: PricedOrder, answer: Answer): readonly Line[] => [
  ...overrideNotes(priced.terms.overrides, answer.manner),
  ...taxNotes(priced, answer),
  ...orderNotes(priced, answer),
];

const inMoney: ReadonlySet<Override['what']> = new Set(['sundries', 'minimum price', 'price step']);

const inPercent: ReadonlySet<Override['what']> = new Set(['labour share']);

/** A rule said again as it stands overrides nothing. */
const overrideNotes = (all: readonly Override[], { says, money }: Manner): readonly Line[] => {
  const overrides = all.filter(({ to, from }) => to !== from);
  if (overrides.length === 0) return [];
  const parts = overrides.map(({ what, to, from, piece }) => {
    const one = (figure: string): string => (inMoney.has(what) ? money(figure) : inPercent.has(what) ? `${figure} %` : figure);
    const shown = (figures: string): string => figures.split(' / ').map(one).join(' / ');
    return text`${what}${piece ? ` of a ${pieceName(piece, says)}` : ''} ${strong(shown(to))}${from ? ` instead of ${shown(from)}` : ''}`;
  });
  return [text`For this event only: ${joined(parts, ', ')}.`];
};

/** Which material brought which rate, and what the handbook warns of, once for each rate in the order. */
const materialNotes = ({ lines }: PricedOrder): readonly Line[] => {
  const taxes = new Map(lines.map(({ tax }) => [tax.decidedBy, tax]));
  const decided = [...taxes.values()].filter((tax) => tax.decidedBy !== undefined);
  const why =
    decided.length > 1
      ? [text`${decided.map((tax) => `${rateWords(tax)} on the ${tax.decidedBy} pieces`).join(', ')}.`]
      : decided.map((tax) => text`${rateWords(tax)} because the pieces are ${tax.decidedBy ?? ''}.`);
  const warned = new Set([...taxes.values()].flatMap(({ note }) => (note === undefined ? [] : [note])));
  return [...why, ...[...warned].map((note) => text`${note}`)];
};

/** The tax was called by a name that is not the one worked with. */
export const otherTaxSaid = (tax: TaxTerms, { tax: said }: Answer['event']): readonly Line[] =>
  said.name !== undefined && said.name !== tax.name && tax.basis.value !== 'none'
    ? [text`You said ${said.name}; this is worked out with ${tax.name}.`]
    : [];

const taxNotes = (priced: PricedOrder, { event, manner }: Answer): readonly Line[] => {
  const { tax } = priced.terms;
  const notes: Line[] = [...materialNotes(priced)];
  if (tax.rateUnset) notes.push(text`No rate is set for the ${tax.name} that comes on top: say “tax 8.25%” or set it for the studio.`);
  notes.push(...otherTaxSaid(tax, event));
  if (tax.notRegistered && event.tax.basis && event.tax.basis !== 'none')
    notes.push(text`The studio is set as not registered for tax, so none is taken off.`);
  for (const change of tax.changes) {
    const rate = `${printNumber(change.rate)} %`;
    const day = fullDate(change.day, manner);
    notes.push(
      change.status === 'law'
        ? text`The rate is ${rate} from ${day}, before the event, and is used here.`
        : text`${rate} is planned from ${day}; it is not law yet and is not used here.`,
    );
  }
  return notes;
};

/** A range or a rough number was said; the figures are for one. */
const countNotes = ({ lines }: Answer['event'], { says }: Manner): readonly Line[] =>
  lines.flatMap((line) => {
    if (line.countMax !== undefined)
      return [
        text`Worked out for ${counted(line.count, line.piece, says)}, the fewest of ${grouped(line.count)} to ${grouped(line.countMax)}.`,
      ];
    return line.approx ? [text`Worked out for exactly ${counted(line.count, line.piece, says)}, as about that many was said.`] : [];
  });

/** A minimum is the studio's own figure, held against the price as it is quoted. */
const minimumBasis = { included: ', both with the tax in', 'on top': ', both before tax', none: '' } as const;

const orderNotes = (priced: PricedOrder, answer: Answer): readonly Line[] => {
  const { event, manner, studio, today } = answer;
  const notes: Line[] = [];
  if (priced.sharedBy && priced.lines.length > 1) notes.push(text`The total is shared over the kinds by ${priced.sharedBy}.`);
  for (const line of priced.lines) {
    if (line.belowMinimum)
      notes.push(
        text`${moneySpan(manner.money(line.quotedEach))} is below your minimum of ${moneySpan(manner.money(line.belowMinimum))} for a ${pieceName(line.piece, manner.says)}${minimumBasis[line.tax.basis.value]}.`,
      );
  }
  notes.push(...countNotes(event, manner));
  const cash = cashTotal(priced);
  if (cash) notes.push(text`Paid in cash: ${moneySpan(manner.money(cash))}.`);
  if (hasPriceRange(event)) {
    const most = priceEvent(studio.settings, event, today, 'most');
    const first = most?.ok ? most.value.priced.lines[0] : undefined;
    if (first)
      notes.push(
        text`At the top of the range, ${moneySpan(manner.money(first.quotedEach))} each: ${strong(manner.money(first.each.printed.stems))} of stems each.`,
      );
  }
  return notes;
};
