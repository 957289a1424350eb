// The price answer: what is left for stems and sundries in each piece, then the table of parts, the labour check and the figure done in the head.

import type { Parts } from '../../pricing/parts.ts';
import type { PricedEvent } from '../../pricing/price-event.ts';
import { type PricedLine, type PricedOrder, piecesIn } from '../../pricing/price-order.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { assumedSpan, joined, moneySpan, plainLine, strong, text } from '../span.ts';
import { grouped } from '../words/counts.ts';
import { counted, pieceName } from '../words/names.ts';
import { basisWords, materialApart, pricedLineWords, ratesWords } from '../words/order.ts';
import { assumedIn } from './assumed.ts';
import { labourLine } from './labour.ts';
import { priceNotes } from './price-notes.ts';
import { recipeInShort } from './stem-split.ts';

/** First line: what was read and what it leaves. The blocks below it are the long form, one screen. */
export const budgetBlocks = ({ priced, onePiece }: PricedEvent, answer: Answer): readonly Block[] => {
  const { manner } = answer;
  const [first] = priced.lines;
  if (!first) return [];
  return [
    { block: 'answer', line: onePiece ? onePieceLine(first, priced, manner) : answerLine(priced, manner) },
    priced.lines.length === 1 ? partsTable(first, priced, manner, onePiece) : linesTable(priced, manner),
    { block: 'line', line: labourLine(priced, answer) },
    ...recipeInShort(priced, answer).map((line): Block => ({ block: 'line', line })),
    ...priceNotes(priced, answer).map((line): Block => ({ block: 'line', line })),
    { block: 'assumed', line: headMathsLine(first, priced, manner) },
    { block: 'assumed', line: termsLine(priced) },
  ];
};

const left = (parts: Parts, manner: Manner): Line =>
  parts.sundries.isZero()
    ? text`${strong(manner.money(parts.wholesale))} each for stems and sundries`
    : text`${strong(manner.money(parts.stems))} of stems each, plus ${moneySpan(manner.money(parts.sundries))} sundries`;

const answerLine = (priced: PricedOrder, manner: Manner): Line => {
  const [first] = priced.lines;
  const order = joined(
    priced.lines.map((line) => pricedLineWords(line, priced, manner)),
    ', ',
  );
  const basis = basisWords(priced.terms.tax);
  const several = priced.sharedBy || priced.lines.length > 1;
  const all = moneySpan(manner.money(priced.all.printed.price));
  const said = several
    ? onTop(priced)
      ? text`${order}, ${basis}, ${all} in all with the tax`
      : text`${order}, ${all} in all, ${basis}`
    : text`${order}, ${basis}`;
  if (first && priced.lines.length === 1) return text`${said}: ${left(first.each.printed, manner)}.`;
  return text`${said}: ${strong(manner.money(priced.all.printed.wholesale))} to spend on stems and sundries.`;
};

const onePieceLine = (line: PricedLine, priced: PricedOrder, manner: Manner): Line =>
  text`At ${moneySpan(manner.money(line.quotedEach))}, ${basisWords(priced.terms.tax)}: ${left(line.each.printed, manner)}.`;

type Row = readonly [title: string, of: (parts: Parts) => Parts[keyof Parts]];

const rowsOf = (priced: PricedOrder): readonly Row[] => [
  ...paidRows(priced),
  ['Labour', (parts) => parts.labour],
  ['Product', (parts) => parts.product],
  ['Wholesale', (parts) => parts.wholesale],
  ...(priced.all.printed.sundries.isZero() ? [] : wholesaleRows),
];

/** From what was quoted: down to the price before tax, or up to what the client pays. */
const paidRows = (priced: PricedOrder): readonly Row[] => {
  const pays: Row = ['Client pays', (parts) => parts.price];
  const tax: Row = [ratesWords(priced), (parts) => parts.tax];
  if (priced.terms.tax.basis.value === 'none') return [pays];
  return onTop(priced) ? [['Before tax (quoted)', (parts) => parts.exTax], tax, pays] : [pays, tax, ['Before tax', (parts) => parts.exTax]];
};

const wholesaleRows: readonly Row[] = [
  ['· sundries', (parts) => parts.sundries],
  ['· stems', (parts) => parts.stems],
];

const partsTable = (line: PricedLine, priced: PricedOrder, manner: Manner, onePiece: boolean): Block => ({
  block: 'table',
  caption: 'The price and its parts',
  columns: [
    { title: '', align: 'left' },
    { title: 'each', align: 'right' },
    ...(onePiece ? [] : [{ title: `all ${grouped(line.count)}`, align: 'right' as const }]),
  ],
  rows: rowsOf(priced).map(([title, of]) => [
    plainLine(title),
    [moneySpan(manner.money(of(line.each.printed)))],
    ...(onePiece ? [] : [[moneySpan(manner.money(of(line.all.printed)))]]),
  ]),
});

const onTop = (priced: PricedOrder): boolean => priced.terms.tax.basis.value === 'on top';

/** Where no sundries are planned the same money has to pay for them too, and the column is called what the parts call it. */
const bought = (priced: PricedOrder): string => (priced.all.printed.sundries.isZero() ? 'wholesale' : 'stems');

/** A row a line of the order: the price each, and what it leaves for stems each and in all. */
const linesTable = (priced: PricedOrder, manner: Manner): Block => ({
  block: 'table',
  caption: 'The order line by line',
  columns: [
    { title: '', align: 'left' },
    { title: onTop(priced) ? 'each ex tax' : 'each', align: 'right' },
    { title: bought(priced), align: 'right' },
    { title: 'labour', align: 'right' },
    { title: onTop(priced) ? 'client pays' : 'all', align: 'right' },
  ],
  rows: [
    ...priced.lines.map((line) => [
      text`${counted(line.count, line.piece, manner.says)}${materialApart(line, priced.lines)}`,
      [moneySpan(manner.money(onTop(priced) ? line.each.printed.exTax : line.each.printed.price))],
      [moneySpan(manner.money(line.each.printed.stems))],
      [moneySpan(manner.money(line.each.printed.labour))],
      [moneySpan(manner.money(line.all.printed.price))],
    ]),
    [
      text`${strong(`all ${grouped(piecesIn(priced))}`)}`,
      [],
      [moneySpan(manner.money(priced.all.printed.stems))],
      [moneySpan(manner.money(priced.all.printed.labour))],
      [strong(manner.money(priced.all.printed.price))],
    ],
  ],
});

/** The percentages-one-by-one figure beside the exact one, with the gap named, so that nobody trusts the wrong one. */
const headMathsLine = (line: PricedLine, priced: PricedOrder, manner: Manner): Line => {
  const head = line.headMaths.wholesale;
  const gap = line.each.exact.wholesale.minus(head);
  const inHead = text`In your head, ${moneySpan(manner.money(head))} for stems and sundries`;
  if (manner.money(gap.abs()) === manner.money('0')) return text`${inHead}: the same.`;
  const piece = priced.lines.length > 1 ? text` (${pieceName(line.piece, manner.says)})` : [];
  return text`${inHead}${piece}: taking percentages off one by one comes out ${manner.money(gap.abs())} ${gap.isPositive() ? 'low' : 'high'}.`;
};

const termsLine = (priced: PricedOrder): Line => {
  const { terms, lines } = priced;
  const { labour, multiples } = terms;
  const share = printNumber(labour.share.value);
  const ofExTax = lines[0] ? printNumber(lines[0].labourOfExTax, 1) : share;
  const rule =
    labour.rule.value === 'on product'
      ? `Labour ${share} % on product (${ofExTax} % of the price before tax)`
      : `Labour ${share} % out of the price before tax`;
  const stems = printNumber(multiples.stems.value);
  const sundries = printNumber(multiples.sundries.value);
  const times = stems === sundries ? `wholesale ×${stems}` : `stems ×${stems}, sundries ×${sundries}`;
  const guessed = assumedIn(priced);
  const usual = guessed.length > 0 ? assumedSpan(` (assumed: ${guessed.join(', ')})`) : '';
  return text`${rule}, ${times}, ${ratesWords(priced)}${usual}. Tax: check with your accountant.`;
};
