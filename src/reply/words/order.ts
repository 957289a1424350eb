// The order said back in one line: "40 buttonholes at £25.00, VAT included". What was assumed in it is marked.

import type { Material, PieceKind } from '../../handbook/pieces.ts';
import type { PricedLine, PricedOrder } from '../../pricing/price-order.ts';
import type { TaxTerms } from '../../pricing/tax-terms.ts';
import type { EventState, OrderLine } from '../../thread/event.ts';
import { printNumber } from '../../values/money.ts';
import type { Manner } from '../answer.ts';
import type { Line } from '../reply.ts';
import { assumedSpan, countSpan, joined, moneySpan, ownWords, pieceSpan, text } from '../span.ts';
import { grouped } from './counts.ts';
import { counted, plural } from './names.ts';

interface OfKind {
  readonly piece: PieceKind;
  readonly material?: Material;
}

/** " (preserved)" where the order has the kind in more than one material. */
export const materialApart = ({ piece, material }: OfKind, lines: readonly OfKind[]): string =>
  material !== undefined && lines.some((other) => other.piece === piece && other.material !== material) ? ` (${material})` : '';

/** "40 to 45 buttonholes", "about 20 wrist corsages", "1 buttonhole (groom)", "5 buttonholes (preserved)". */
export const lineWords = (line: OrderLine, { says }: Manner, lines: readonly OrderLine[] = []): Line => {
  const count = line.countMax ? `${grouped(line.count)} to ${grouped(line.countMax)}` : `${line.count}`;
  const words = line.countMax ? `${count} ${plural(line.piece, says)}` : counted(line.count, line.piece, says);
  const wearer = line.wearer ? text` (${ownWords(line.wearer)})` : [];
  return text`${line.approx ? assumedSpan('about ') : ''}${countSpan(words)}${wearer}${materialApart(line, lines)}`;
};

export const orderWords = (lines: readonly OrderLine[], manner: Manner): Line =>
  joined(
    lines.map((line) => lineWords(line, manner, lines)),
    ', ',
  );

/** "dried"; in an order of several materials "buttonholes dried, flower crowns fresh". */
export const materialsWords = ({ lines, material }: Pick<EventState, 'lines' | 'material'>, { says }: Manner): string => {
  const of = new Map(lines.map((line) => [line.piece, line.material ?? material]));
  const all = new Set(of.size === 0 ? [material] : lines.map((line) => line.material ?? material));
  if (all.size === 1) return [...all].join('');
  const apart = lines.filter((line) => materialApart(line, lines) !== '');
  const whole = [...of].filter(([piece]) => !apart.some((line) => line.piece === piece));
  return [
    ...whole.flatMap(([piece, each]) => (each === undefined ? [] : [`${plural(piece, says)} ${each}`])),
    ...apart.map((line) => `${counted(line.count, line.piece, says)} ${line.material}`),
  ].join(', ');
};

/** "pin corsages not priced yet", where a total is not the whole. */
export const notPricedYet = (unpriced: readonly PieceKind[], { says }: Manner): string =>
  unpriced.length === 0 ? '' : `${[...new Set(unpriced)].map((piece) => plural(piece, says)).join(' and ')} not priced yet`;

/** "VAT included", "plus GST", "no tax"; said, the studio's usual, or assumed. */
export const basisWords = (tax: TaxTerms): Line => {
  const { value, origin } = tax.basis;
  const words = value === 'none' ? 'no tax' : value === 'included' ? `${tax.name} included` : `plus ${tax.name}`;
  if (origin === 'said') return text`${words}`;
  return origin === 'studio' ? text`${words} (your usual)` : text`${words} ${assumedSpan('(assumed)')}`;
};

/** "VAT 20 %"; a tax that isn't charged, or whose rate nobody has set, has no figure to show. */
export const rateWords = (tax: TaxTerms): string => {
  if (tax.basis.value === 'none') return 'no tax';
  return tax.rateUnset ? `${tax.name}, no rate set` : `${tax.name} ${printNumber(tax.rate.value)} %`;
};

/** The rates of an order whose lines are taxed apart: "VAT 13.5 %, VAT 23 %". */
export const ratesWords = ({ lines, terms }: PricedOrder): string =>
  [...new Set((lines.length > 0 ? lines.map(({ tax }) => tax) : [terms.tax]).map(rateWords))].join(', ');

/** "40 buttonholes at £25.00": what each costs as quoted. */
export const pricedLineWords = (line: PricedLine, priced: PricedOrder, manner: Manner): Line => {
  const name = counted(line.count, line.piece, manner.says);
  const each = text`${pieceSpan(name)}${line.wearer ? text` (${ownWords(line.wearer)})` : []}${materialApart(line, priced.lines)}`;
  return priced.sharedBy ? each : text`${each} at ${moneySpan(manner.money(line.quotedEach))}`;
};
