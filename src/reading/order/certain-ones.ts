// "a crown" counts only in a list or after "need"; in talk it is just a crown. "a crown and a corsage" are one of each.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import type { Price } from './price-at.ts';

const wanted = new Set('need want needs wants and + & , plus order quote doing making also with make do'.split(' '));
const joins = /^(and|\+|&|,|plus)$/;

// "groom gets 2 plus a bout": two of what was said before, and the bout may be his that is ordered already.
const sharesOut = pattern('<role> (gets|get|has|have|takes|needs|wants|:|-)? <count> (plus|and|&|\\+|n)');

export const certain = ({ tokens }: Reader, mentions: readonly Mention[], prices: readonly Price[]): Mention[] => {
  const numbered = mentions.some((mention) => mention.count !== undefined);
  let dropped = -1; // where the last one that is no order ends: "she wore a crown and a corsage"
  return mentions.map((mention, at) => {
    if (mention.exact !== 1) return mention;
    const [before, next] = [tokens[mention.start - 1], mentions[at + 1]];
    const opens = before === undefined || before.kind !== 'word';
    const listed = opens && next?.exact === 1 && next.start === mention.end + 1 && joins.test(tokens[mention.end]?.text ?? '');
    const goesOn = before !== undefined && wanted.has(before.text) && dropped !== mention.start - 1;
    const besideShare =
      /^(plus|and|&|\+|n)$/.test(before?.text ?? '') && sharesOut.in(tokens, mention.start - 4, mention.start)?.end === mention.start;
    // "12 plus vat a bout": what one costs
    const priced =
      /^(a|an)$/.test(tokens[mention.index - 1]?.text ?? '') &&
      prices.some(({ pieceIndex, per, index }) => pieceIndex === mention.index && per === 'each' && index < mention.start);
    if (!besideShare && !priced && (numbered || prices.length > 0 || listed || goesOn)) return mention;
    dropped = mention.end;
    const { exact: _, countIndex: __, ...unnumbered } = mention;
    return unnumbered;
  });
};
