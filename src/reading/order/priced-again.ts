// Kinds that are named again behind their list, each with its price ahead of it: "6 bouts n 2 corsages, 15 ea the bouts 28 ea the corsages", "1 crown and 5 bouts, 14 per bout, 75 crown".

import type { Reader } from '../phrase.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import type { Token } from '../text/token.ts';
import { forSeveral } from './for-kinds.ts';
import type { Mention } from './mention.ts';
import { type Price, priceAt } from './price-at.ts';

const joins = /^(a|an|per|\/|each|every|for|on|the|our)$/;
const isJoin = (token: Token | undefined): boolean => token !== undefined && (token.means['each'] !== undefined || joins.test(token.text));
const ends = (token: Token | undefined): boolean =>
  token === undefined || token.kind !== 'word' || /^(and|n|then|plus|for|with|all|inc|incl|ex)$/.test(token.text) || tellsOfTax(token);

interface Again {
  readonly mention: Mention;
  readonly before: Mention;
  readonly at: number; // its number
  readonly sure: boolean;
  readonly per: Price['per'];
}

const againAt = ({ tokens }: Reader, before: Mention | undefined, mention: Mention): Again | undefined => {
  if (before === undefined || mention.kind === 'unspecified' || mention.material !== undefined) return undefined;
  let at = mention.index - 1;
  while (at > mention.index - 5 && isJoin(tokens[at])) at -= 1;
  const number = tokens[at]?.number;
  if (number === undefined || at <= before.last || !/^(plain|money)$/.test(number.form) || Number(number.amount) < 5) return undefined;
  if (forSeveral(tokens, at + 1) !== undefined) return undefined;
  if (tokens[at + 1]?.text === 'for' && number.form === 'plain' && before.countIndex === before.index) return undefined;
  if (!ends(tokens[mention.last + 1]) || tokens[at - 1]?.text === 'x') return undefined;
  const joined = tokens
    .slice(at + 1, mention.index)
    .some(({ text, means }) => means['each'] !== undefined || /^(a|an|per|\/|for)$/.test(text));
  // "5 bouts … 14 bout": who writes the plural for the one means one by the other.
  const [one, other] = [tokens[mention.index]?.text ?? '', tokens[before.index]?.text ?? ''];
  const single =
    !one.endsWith('s') && (other === `${one}s` || other === `${one}es` || (other === one && before.count?.number?.amount === '1'));
  const sure = number.form === 'money' || joined || (single && Number(number.amount) >= 8);
  // "$126 for the bouts" may be what they come to.
  const each = tokens.slice(at + 1, mention.index).some(({ text, means }) => means['each'] !== undefined || /^(a|an|per|\/)$/.test(text));
  const named = /^(for|on)$/.test(tokens[at + 1]?.text ?? '') && !each;
  return { mention, before, at, sure, per: named ? 'unsaid' : 'each' };
};

/** The mentions with those that only name what a price is for told as such, and their prices. */
export const pricedAgain = (reader: Reader, mentions: readonly Mention[]): { mentions: Mention[]; prices: Price[] } => {
  const again: Again[] = [];
  // "the bouts 15 the corsages 28": each number is of the name before it.
  const misread = new Set<Mention>();
  const counted = new Map<Mention['kind'], Mention>(); // the first of each kind
  for (const mention of mentions) {
    const found = againAt(reader, counted.get(mention.kind), mention);
    if (mention.countIndex !== undefined && !counted.has(mention.kind)) counted.set(mention.kind, mention);
    if (found === undefined) continue;
    const near = mentions.find(({ last }) => last === found.at - 1);
    if (near === undefined || near.countIndex !== undefined || again.some((other) => other.mention === near)) again.push(found);
    else misread.add(mention);
  }
  const first = again[0];
  const listed = mentions.filter((mention) => mention.countIndex !== undefined && mention.index < (first?.mention.index ?? 0));
  // "15 the bouts, 28 the corsages": sure of all where every kind is named again.
  const whole = again.length > 1 && listed.every((line) => again.some(({ before }) => before === line));
  const the = ({ mention, at }: Again): boolean => at < mention.index - 1;
  const meant = again.filter((each) => each.sure || (whole && (the(each) || again.some(({ sure }) => sure))));
  const priced = new Map(meant.map((each) => [each.mention, each]));
  return {
    mentions: mentions.map((mention) => {
      if (!priced.has(mention) && !misread.has(mention)) return mention;
      const { count: _, countIndex: __, exact: ___, ...named } = mention;
      return { ...named, start: mention.index };
    }),
    prices: meant.flatMap(({ mention, at, per }) => {
      const number = reader.tokens[at]?.number;
      if (number === undefined || !reader.free(at)) return [];
      // "no more than 35 a crown": a ceiling, of whichever kind.
      const said = priceAt(reader, at);
      return [
        {
          index: at,
          start: said?.kind === undefined ? at : Math.min(at, said.start),
          end: mention.last + 1,
          number,
          per,
          at: false,
          piece: mention.kind,
          pieceIndex: mention.index,
          ...(said?.kind === undefined ? {} : { kind: said.kind }),
        },
      ];
    }),
  };
};
