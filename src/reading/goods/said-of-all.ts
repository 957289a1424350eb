// What the words of a price list say once and mean for more: "all prices ex vat: gyp £5, lav £6" the tax, "red roses £18, white £16" the flower.

import type { FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import type { Part } from '../text/message.ts';

type Pack = FactOf<'pack'>;

const lead = pattern('(all|the|these|those|new|todays|prices|price|list|are|is|everything|market|wholesale|,){0,5}');
const closes = /^(:|-|,)$/;

/** The goods with the tax that stands ahead of the first of them, closed by a sign. */
export const withTaxAhead = (reader: Reader, part: Part, facts: readonly Pack[]): Pack[] => {
  const from = lead.at(reader.tokens, part.start, part.end)?.end ?? part.start;
  const tax = facts.length < 2 ? undefined : taxAt(reader, from);
  const [first] = facts;
  const sign = reader.tokens[tax?.match.end ?? part.end];
  if (tax === undefined || first?.basis === undefined || !(closes.test(sign?.text ?? '') || sign?.kind === 'line')) return [...facts];
  const { basis, taxName } = first;
  return facts.map((fact) => (fact.basis === undefined ? { ...fact, basis, ...(taxName === undefined ? {} : { taxName }) } : fact));
};

const colour =
  /^(white|pink|red|peach|blush|cream|ivory|yellow|orange|purple|lilac|blue|burgundy|green|coral|apricot|mauve|champagne|rust|hot pink|pale pink|dusty pink)$/;

/** The goods with their flower where only another colour of the one before is named. */
export const withFlowerBefore = (facts: readonly Pack[]): Pack[] => {
  const named: Pack[] = [];
  for (const fact of facts) {
    const [first = '', ...rest] = (named.at(-1)?.item ?? '').split(' ');
    const flower = colour.test(first) && rest.length > 0 ? rest.join(' ') : undefined;
    named.push(flower !== undefined && colour.test(fact.item) ? { ...fact, item: `${fact.item} ${flower}` } : fact);
  }
  return named;
};
