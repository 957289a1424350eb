// Two prices that hang on what the flowers are: "25 lapels, 21 each preserved or 14 each fresh". Neither is the price until somebody chooses.

import { firstAt, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Price } from './price-at.ts';

const amountFirst = pattern(
  "<a:amount> (<f:each>)? (for|if|in|if it's|if its)? (it's|its|they're|theyre)? <m:material> (,)? (or|otherwise|/|and|,|but)? (at|@)? <b:amount> (<g:each>)? (for|if|in|if it's|if its)? (it's|its|they're|theyre)? <n:material>",
);
const materialFirst = pattern(
  '<m:material> (is|at|@|:|=)? <a:amount> (<f:each>)? (,)? (or|otherwise|/)? <n:material> (is|at|@|:|=)? <b:amount> (<g:each>)?',
);

const orders = [amountFirst, materialFirst];
/** The two as one price with two amounts, if such a pair begins at this token. */
export const pricesByMaterial = (reader: Reader, index: number): Price | undefined => {
  const { tokens } = reader;
  const match = firstAt(orders, tokens, index, tokens.length);
  const [first, second] = [match?.kept['a'], match?.kept['b']];
  if (match === undefined || first?.number === undefined || second?.number === undefined) return undefined;
  if (match.kept['m']?.means['material'] === match.kept['n']?.means['material']) return undefined;
  if (first.number.max !== undefined || second.number.max !== undefined || first.number.or !== undefined) return undefined;
  const at = /^(at|@)$/.test(tokens[tokens.indexOf(first, index) - 1]?.text ?? '');
  // "20 bouts, 12 dried 8 fresh" shares them out.
  const priced = at || match.kept['f'] !== undefined || match.kept['g'] !== undefined || first.number.form === 'money';
  if (!priced && !tokens.slice(match.start, match.end).some((token) => /^(or|otherwise|\/|if)$/.test(token.text))) return undefined;
  for (let place = match.start; place < match.end; place++) if (!reader.free(place)) return undefined;
  const number = second.number.form === 'money' && first.number.form === 'plain' ? second.number : first.number;
  return {
    index: tokens.indexOf(first, index),
    start: at && tokens.indexOf(first, index) === match.start ? match.start - 1 : match.start,
    end: match.end,
    number: { ...number, amount: first.number.amount, or: [first.number.amount, second.number.amount] },
    per: 'each',
    at,
  };
};
