// What a seller writes round a price list: the least order, carriage, hours to order by, what is no longer made. None of it is this bench's.

import { anyIn, firstIn, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { stretchesBetween } from '../text/stretches-between.ts';
import type { Token } from '../text/token.ts';
import { longList } from './whole-list.ts';

const terms = [
  pattern('(min|minimum|moq) (order|spend|drop|purchase|qty|quantity|buy|value)?'),
  pattern(
    '(freight|carriage|courier|postage|shipping|delivery|deliveries|haulage|surcharge|pallet|dispatch) (fee|charge|charges|cost|costs|is|at|flat|:|-|from|extra|free|inc|only|to){0,3} (<amount>|<percent>|free|extra)',
  ),
  pattern('<money> (freight|carriage|courier|postage|shipping|delivery|surcharge|handling|deposit)'),
  pattern('(free|no) (freight|carriage|courier|postage|shipping|delivery) (over|above|from|on|within)'),
  pattern('(order|orders|ordering|place orders|get orders in|orders in) (by|before|b4|no later than|must be in|close|closes|must be)'),
  pattern('(cut - off|cut off|cutoff|cutoffs|order deadline)'),
  pattern('(text|email|phone|ring|call|send|whatsapp) (your|all|any|in)? (order|orders)'),
  pattern('(deposit|deposits|returnable|refundable|restocking)'),
  pattern('(closed|shut|not open|no deliveries|no delivery|no market) (on|all|for|this|next)? (<weekday>|easter|christmas)'),
  pattern('(ask about|discount|less) (<percent>)'),
  pattern('<percent> (off|discount|less|for cash|surcharge)'),
  pattern('(on|for) orders (under|over|above|below|of)'),
  pattern('(account|accounts|invoice|invoices|terms) (is|are|:)? (strictly)? <number> (days|day)'),
];
// Pieces the seller makes up, or has stopped making.
const madeUp = [
  pattern('(no longer|not) (<word>){0,2} (stock|stocking|supply|supplying|make|making|do|doing|sell|selling|carry|carrying)'),
  pattern('no <any>{1,8} (any more|anymore|any longer)'),
  pattern('(ready|pre) (-)? made'),
  pattern('(readymade|premade|made up)'),
  pattern("(we|we've|weve|we have|have) (now)? (stopped|discontinued|given up|finished with)"),
];
const counted = pattern('<count> (<material>)? <piece>');
const taxed = ({ means }: Token): boolean => (means['taxName'] ?? means['included'] ?? means['onTop']) !== undefined;
const telling = ({ number, means }: Token): boolean => number !== undefined || means['weekday'] !== undefined;

// Of a sentence the clauses that tell terms, and what goes on with them: "freight $18 flat, order by 2pm Thurs".
const termsIn = ({ tokens }: Reader, part: Part): readonly Stretch[] => {
  if (counted.in(tokens, part.start, part.end) !== undefined) return [];
  if (anyIn(madeUp, tokens, part.start, part.end)) return [part];
  const clauses = stretchesBetween(tokens, part, (token) => token?.text === ',');
  const held: Stretch[] = [];
  for (const clause of clauses) {
    const words = tokens.slice(clause.start, clause.end);
    const goesOn = held.length > 0 && words.some(telling);
    if ((goesOn || firstIn(terms, tokens, clause.start, clause.end) !== undefined) && !words.some(taxed)) held.push(clause);
  }
  return held;
};

/** The terms round a list of goods, kept from every other reading; none where there is no list. */
export const sellersTerms = (reader: Reader, findings: readonly Finding[]): readonly Finding[] => {
  const lines = findings.filter(({ facts }) => facts?.some(({ fact }) => fact === 'pack'));
  if (lines.length < longList) return [];
  const taken = (part: Part): boolean => findings.some(({ start, end }) => start < part.end && part.start < end);
  return reader
    .untouched()
    .filter((part) => !taken(part))
    .flatMap((part) => termsIn(reader, part))
    .map(({ start, end }) => ({ start, end, held: true }));
};
