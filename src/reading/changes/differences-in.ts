// What is added to the order or taken off it: "add 2 to the bouts", "another corsage at 28", "add a flower crown for the flower girl, 40".

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import type { Match } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { addedFor, countDifference, priceBehind } from './differences.ts';
import { priceDifference } from './price-differences.ts';
import { numberAlone, type Own, priceOfThose, withAsks } from './price-of-added.ts';
import { sameVerb } from './same-verb.ts';

// "bouts 2 less", "add 2 to the bouts": of the only kind that is named.
const ofTheKind = (reader: Reader, part: Part, finding: Finding): Finding => {
  const at = reader.tokens
    .slice(part.start, part.end)
    .flatMap(({ means }, offset) => (means['piece'] === undefined ? [] : [part.start + offset]));
  const [index, another] = at;
  const [fact] = finding.facts ?? [];
  const piece = reader.tokens[index ?? -1]?.means['piece'];
  if (index === undefined || another !== undefined || fact?.fact !== 'change' || fact.piece !== undefined || piece === 'unspecified')
    return finding;
  const [start, end] = [Math.min(index, finding.start), Math.max(index + 1, finding.end)];
  return { ...finding, start, end, facts: [{ ...fact, piece: piece as PieceKind }] };
};

// "another corsage at 28"
const ownPrice = (reader: Reader, read: { match: Match; fact: Unworded }, end: number): Own | undefined => {
  const { fact } = read;
  if (fact.fact !== 'change' || fact.what !== 'count' || !(Number(fact.by) > 0)) return undefined;
  const ofThose = priceOfThose(reader, read.match.end, end, fact.piece);
  if (ofThose !== undefined || fact.piece === undefined) return ofThose;
  const match = priceBehind.at(reader.tokens, read.match.end, end);
  const number = match?.kept['a']?.number;
  if (match === undefined || number === undefined || number.max !== undefined)
    return numberAlone(reader, { match: read.match, piece: fact.piece, count: Number(fact.by) }, end);
  return { facts: [{ fact: 'price', amount: number.amount, ...currencyFields(number), per: 'each', piece: fact.piece }], end: match.end };
};

// "add a flower crown for the flower girl, 40": one more, its wearer, and its price.
const givenTo = ({ tokens }: Reader, read: { match: Match; fact: Unworded }, end: number): Own | undefined => {
  const { fact } = read;
  if (fact.fact !== 'change' || fact.what !== 'count' || fact.piece === undefined || Number(fact.by) !== 1) return undefined;
  const added = addedFor(tokens, read.match, end);
  if (added === undefined) return undefined;
  const { piece } = fact;
  const price: Unworded[] = added.amount === undefined ? [] : [{ fact: 'price', amount: added.amount.amount, per: 'each', piece }];
  // "another corsage for gran" is one gran more; "add a corsage for gran" may be for the one on the list.
  const more = tokens.slice(read.match.start, read.match.end).some(({ text }) => /^(another|extra|more|additional)$/.test(text));
  const how = more ? { by: 'more' as const } : { notes: true as const };
  return { facts: [...price, { fact: 'wearers', wearers: [{ wearer: added.wearer, count: 1, piece }], ...how }], end: added.end };
};

// "add 3 crowns and 2 combs": both are added.
const withFollowing = (
  reader: Reader,
  said: { readonly start: number; readonly end: number; readonly fact: Unworded },
  end: number,
  findings: Finding[],
): number => {
  let last = said.end;
  for (let more = sameVerb(reader.tokens, said.start, last, end, said.fact); more !== undefined; ) {
    const { match, fact } = more;
    const own = fact === undefined ? undefined : ownPrice(reader, { match, fact }, end);
    last = own?.end ?? match.end;
    findings.push(
      fact === undefined
        ? { start: match.start, end: last, held: true }
        : withAsks(found(reader, match.start, last, [fact, ...(own?.facts ?? [])]), own),
    );
    more = sameVerb(reader.tokens, said.start, last, end, fact ?? said.fact);
  }
  return last;
};

/** The differences a part says, each with its price and whose it is. */
export const differencesIn = (reader: Reader, part: Part): Finding[] => {
  const findings: Finding[] = [];
  for (let index = part.start; index < part.end; index++) {
    const read = priceDifference(reader.tokens, index, part.end) ?? countDifference(reader.tokens, index, part.end);
    if (read === undefined) continue;
    // "20 bouts and 3 corsages" is a list; only what opens the message or follows a word of change adds to the order.
    const first = reader.tokens[index]?.text ?? '';
    const joining = /^(and|\+|plus|also|&|with|less|minus)$/.test(first);
    const marked =
      first === '+' && reader.tokens[index + 1]?.glued === true && /^(so|that's|thats|,|-)$/.test(reader.tokens[index - 1]?.text ?? '');
    if (joining && !marked && (index > part.start || part.start > 0)) continue;
    if (findings.length === 0 && ordersBefore(reader, part.start, index)) continue;
    if (read.fact === undefined) {
      findings.push({ start: index, end: read.match.end, held: true });
      index = read.match.end - 1;
      continue;
    }
    const whose = givenTo(reader, { match: read.match, fact: read.fact }, part.end);
    const own = whose ?? ownPrice(reader, { match: read.match, fact: read.fact }, part.end);
    const end = own?.end ?? read.match.end;
    findings.push(withAsks(found(reader, index, end, [read.fact, ...(own?.facts ?? [])]), own));
    index = withFollowing(reader, { start: index, end, fact: read.fact }, part.end, findings) - 1;
  }
  const [only, second] = findings;
  return only === undefined || second !== undefined ? findings : [ofTheKind(reader, part, only)];
};

// A counted piece or a price before it makes it one line of an order: "6 bouts 2 extra corsages at 30".
const ordersBefore = (reader: Reader, start: number, index: number): boolean =>
  reader.tokens
    .slice(start, index)
    .some(
      (token, at) =>
        (token.means['piece'] !== undefined && reader.tokens[start + at - 1]?.number?.form === 'plain') || token.number?.form === 'money',
    );
