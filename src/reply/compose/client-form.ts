// What the client may see, ready to paste: pieces, who wears them, when, and the price with its tax. No costs, no labour, no sums of the studio's own,
// and nothing about anybody's health.

import type { PieceKind } from '../../handbook/pieces.ts';
import { caresInNote } from '../../handbook/wearing.ts';
import { type ClientMessage, type ClientPiece, type ClientPrice, clientMessage } from '../../handover/client-message.ts';
import { hasPriceRange } from '../../pricing/order-of-event.ts';
import { capital } from '../../values/capital.ts';
import type { Decimal } from '../../values/decimal.ts';
import { printNumber } from '../../values/money.ts';
import type { Answer, Manner } from '../answer.ts';
import type { Block, Line, Span } from '../reply.ts';
import { countSpan, dateSpan, joined, moneySpan, ownWords, strong, text } from '../span.ts';
import { fullDate } from '../words/dates.ts';
import { counted, listed, pieceName, plural } from '../words/names.ts';

/** The form, and after it what the studio should know before sending it; that stays away where others read along. */
export const clientBlocks = (answer: Answer): readonly Block[] => {
  const { event, price, manner } = answer;
  if (event.lines.length === 0)
    return [{ block: 'answer', line: text`There is nothing to send yet: say the pieces and the price, like “40 buttonholes at 25 inc”.` }];
  const message = clientMessage(event, price?.ok ? price.value : undefined);
  return [
    { block: 'answer', line: headLine(message, manner) },
    { block: 'list', items: itemsOf(message, manner) },
    ...(message.price ? priceBlocks(message.price, manner) : []),
    ...wearersBlocks(message, manner),
    ...whenBlocks(message, manner),
    ...(answer.shared ? [] : beforeSending(message, answer)),
  ];
};

/** A role as written may hold a note about a person: what stands behind it is left out then. */
const roleOnly = (role: string): Span => {
  const cares = caresInNote(role);
  const told = cares.includes('implant') || cares.includes('allergy');
  const [first = ''] = role.split(/[(,;:–-]|\b(?:with|has|who)\b/);
  return ownWords(told ? (caresInNote(first).length > 0 ? 'guest' : first) : role);
};

const headLine = ({ title, date, time }: ClientMessage, manner: Manner): Line => {
  const name = title === undefined ? text`Your flowers` : text`${strong(ownWords(title).text)}`;
  return date ? text`${name}, ${dateSpan(fullDate(date, manner))}${time ? ` at ${time}` : ''}:` : text`${name}:`;
};

const itemsOf = ({ pieces, price }: ClientMessage, manner: Manner): readonly Line[] => [
  ...pieces.map((piece) => pieceLine(piece, manner)),
  ...(price?.basis === 'on top'
    ? price.taxes.map((tax): Line => text`${taxName(tax, price.taxes)}: ${moneySpan(manner.money(tax.amount))}`)
    : []),
];

const pieceLine = ({ piece, count, material, wearer, price }: ClientPiece, manner: Manner): Line => {
  const name = text`${countSpan(counted(count, piece, manner.says))}${wearer === undefined ? [] : text` (${roleOnly(wearer)})`}`;
  const of = material === undefined ? '' : `, ${material}`;
  if (!price) return text`${name}${of}`;
  const all = moneySpan(manner.money(price.all));
  return price.each && count > 1 ? text`${name} at ${moneySpan(manner.money(price.each))} each${of}: ${all}` : text`${name}${of}: ${all}`;
};

const priceBlocks = (price: ClientPrice, { money }: Manner): readonly Block[] => [
  { block: 'line', line: text`${price.partial ? 'Total so far' : 'Total'} ${strong(money(price.total))}${totalNote(price, money)}.` },
  ...(price.cashTotal ? [{ block: 'line' as const, line: text`Paid in cash: ${moneySpan(money(price.cashTotal))}.` }] : []),
];

/** Two rates of one tax are told apart by their figures. */
const taxName = ({ name, rate }: ClientPrice['taxes'][number], all: ClientPrice['taxes']): string =>
  all.filter((tax) => tax.name === name).length > 1 ? `${name} at ${printNumber(rate)} %` : name;

const totalNote = ({ basis, taxes }: ClientPrice, money: (amount: Decimal) => string): string => {
  if (basis === 'none' || taxes.length === 0) return '';
  if (basis === 'on top') return `, ${listed([...new Set(taxes.map(({ name }) => name))])} included`;
  return `, including ${listed(taxes.map((tax) => `${money(tax.amount)} ${taxName(tax, taxes)}`))}`;
};

/** "Buttonholes for: groom, 5 groomsmen", kind by kind as the order counts them. */
const wearersBlocks = ({ wearers, differences }: ClientMessage, { says }: Manner): readonly Block[] => {
  const kinds = [...new Set(wearers.map(({ piece }) => piece.value))];
  const lines = kinds.map((kind): Line => {
    const who = wearers
      .filter(({ piece }) => piece.value === kind)
      .map(({ role, count, approx }) => (count === 1 ? [roleOnly(role)] : text`${approx ? 'about ' : ''}${count} ${roleOnly(role)}`));
    return text`${capital(plural(kind, says))} for: ${joined(who, ', ')}.`;
  });
  const open = differences.map(({ piece, over }): Line => {
    const pieces = counted(Math.abs(over), piece, says);
    return over > 0
      ? text`who wears the other ${over === 1 ? pieceName(piece, says) : pieces}?`
      : text`we have ${pieces} too few for this list: shall we add ${over === -1 ? 'it' : 'them'}?`;
  });
  return [
    ...lines.map((line): Block => ({ block: 'line', line })),
    ...(open.length > 0 ? [{ block: 'line' as const, line: text`Please tell us: ${joined(open, ' ')}` }] : []),
  ];
};

const places: { readonly [kind in PieceKind]?: string } = {
  buttonhole: 'on the left lapel',
  'pin corsage': 'on the left shoulder',
  corsage: 'on the left shoulder or wrist',
  'wrist corsage': 'on the left wrist',
};

/** When and where they are put on. Custom, so that a client who wants it otherwise says so. */
const whenBlocks = ({ handOver, worn }: ClientMessage, manner: Manner): readonly Block[] => {
  const when =
    handOver.said && handOver.date
      ? text`ready ${dateSpan(fullDate(handOver.date, manner))}${handOver.time ? ` at ${handOver.time}` : ''}`
      : [];
  const where = worn.flatMap(({ piece }) => (places[piece] ? [`${plural(piece, manner.says)} ${places[piece]}`] : []));
  const parts = [...(when.length > 0 ? [when] : []), ...(where.length > 0 ? [text`usually worn: ${where.join(', ')}`] : [])];
  return parts.length === 0 ? [] : [{ block: 'line', line: text`${capitalLine(joined(parts, '; '))}.` }];
};

const capitalLine = ([first, ...rest]: Line): Line => (first ? [{ ...first, text: capital(first.text) }, ...rest] : []);

/** For the studio, not for the client. */
const beforeSending = (message: ClientMessage, { event, price, manner }: Answer): readonly Block[] => {
  const missing = price?.ok ? [...new Set(price.value.unpriced)].map((piece) => plural(piece, manner.says)) : [];
  const notes: Line[] = [
    ...(price && !price.ok ? [text`I can't price this order; ask “what is the price?” to see why.`] : []), // the reason may name costs
    ...(price ? [] : [text`no price yet.`]),
    ...(missing.length > 0 ? [text`no price yet for the ${listed(missing)}.`] : []),
    ...(message.price?.basisOrigin === 'assumed'
      ? [text`nobody said whether tax is in the price; I took it as ${message.price.basis}.`]
      : []),
    ...(hasPriceRange(event) ? [text`the price is a range; this is the lower end.`] : []),
    ...(message.date ? [] : [text`no date yet.`]),
  ];
  return notes.length === 0 ? [] : [{ block: 'assumed', line: text`Before you send it: ${joined(notes, ' ')}` }];
};
