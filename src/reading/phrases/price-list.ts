// What the wholesaler charges: "statice £4.80 wrap of 10 +vat", "strawflowers gone up, 12 to 13.50 a bunch", "pearl head pins box/144 $9.99".

import { leftOut } from '../facts/left-out.ts';
import { commonPack } from '../goods/common-pack.ts';
import { askOneOrPack } from '../goods/each-in-packs.ts';
import { knowsItem } from '../goods/item-name.ts';
import { withLastLine } from '../goods/last-line.ts';
import { withListCurrency } from '../goods/list-currency.ts';
import { noGoods, pinsFor } from '../goods/no-goods.ts';
import { withoutAbsent } from '../goods/none-there.ts';
import { findPack } from '../goods/pack-size.ts';
import { isPrice } from '../goods/price-at.ts';
import { priceForSize } from '../goods/price-for-size.ts';
import { askOpenPrices } from '../goods/price-of-several.ts';
import { priceSteps } from '../goods/price-steps.ts';
import { stretches } from '../goods/price-stretches.ts';
import { readItem } from '../goods/priced-item.ts';
import { recipeBeside } from '../goods/recipe-beside.ts';
import { withFlowerBefore, withTaxAhead } from '../goods/said-of-all.ts';
import { withSecondNames } from '../goods/second-name.ts';
import { sellersTerms } from '../goods/sellers-terms.ts';
import { shareTax } from '../goods/several-goods.ts';
import { soManyFor } from '../goods/so-many-for.ts';
import { useAhead, useBehind } from '../goods/use-beside-price.ts';
import { openParts } from '../open-parts.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { kindOf } from '../recipes/yields.ts';
import type { Part } from '../text/message.ts';
import { placesIn } from '../text/places-in.ts';
import type { Token } from '../text/token.ts';

// "sat feb 20 pins 5p each": the 20th, or twenty of them.
const dayOrCount = pattern('<month> <n:count> (<unlisted>)? <ingredient>');

// "gyp x2, roses x4, £48 the lot": one price for several goods says what none of them costs.
const forTheLot = pattern('<money> (for)? (<all>|altogether|all in|all up|total|in total|all told)');
const severalNamed = (tokens: readonly Token[]): boolean =>
  new Set(tokens.flatMap(({ means }) => means['ingredient'] ?? [])).size > 1 &&
  tokens.filter(({ number }) => number?.form === 'money').length === 1;

/** What one part says of goods and their prices; nothing where it is no list of prices. */
const readPart = (reader: Reader, whole: Part): readonly Finding[] => {
  const tokens = reader.tokens.slice(whole.start, whole.end);
  if (!tokens.some(({ number, text }) => number !== undefined || text === 'free')) return [];
  const sized = priceForSize(reader, whole) ?? pinsFor(reader, whole);
  if (sized !== undefined) return [sized];
  const known = knowsItem(tokens, reader.context.items);
  if (noGoods(reader, whole, known)) return [];
  // "3 rolls for $10 or $4 each": which of them is not said.
  if (known && tokens.some(({ number }) => number?.form === 'money' && (number.or?.length ?? 0) > 1))
    return [{ start: whole.start, end: whole.end, held: true }];
  if (forTheLot.in(reader.tokens, whole.start, whole.end) !== undefined && severalNamed(tokens))
    return [{ start: whole.start, end: whole.end, held: true }];
  if (dayOrCount.in(reader.tokens, whole.start, whole.end) !== undefined) return [{ start: whole.start, end: whole.end, held: true }];
  const step = known ? priceSteps(reader.tokens, whole.start, whole.end) : undefined;
  const steps = step === undefined ? [] : [{ start: step, end: whole.end, held: true }];
  const lone = step === whole.start && tokens.some((token) => token.number?.form === 'money') ? steps : [];
  const part = { ...whole, end: step ?? whole.end };
  const pack = findPack(reader.tokens, part.start, part.end);
  // "25 a head for 40" feeds people.
  if (!known && tokens.some((token) => /^(a|per) head$/.test(token.text))) return lone;
  const packed = pack.per !== undefined || pack.size !== undefined;
  const money = tokens.some((_, at) => isPrice(reader, part.start + at, packed, known));
  if (
    !(
      (known && (money || tokens.some((token) => token.text === 'free'))) ||
      (packed && tokens.some((token) => token.number?.form === 'money' || (money && token.number !== undefined)))
    )
  )
    return lone;
  const cuts = stretches(reader, part.start, part.end, (index) => isPrice(reader, index, packed, known));
  const last = cuts.at(-1);
  const common = cuts.length > 1 && last !== undefined ? commonPack(reader, cuts) : {};
  const priced = cuts.filter((cut) => readItem(reader, cut, common, cut.end).length > 0);
  const facts = priced.flatMap((cut, at) => readItem(reader, cut, common, priced[at + 1]?.start ?? part.end));
  const [only, another] = facts;
  if (only === undefined) return lone;
  const { facts: _, ...rest } = found(reader, part.start, part.end, []);
  const use = another === undefined ? useAhead(reader.tokens, part, only) : undefined;
  const used = use === undefined ? [] : (found(reader, use.start, use.end, [use.fact]).facts ?? []);
  const out = leftOut(reader.tokens, part, facts).filter((index) => use === undefined || index < use.start || index >= use.end);
  const takes = placesIn(part).filter((index) => !out.includes(index));
  return [
    { ...rest, facts: [...withFlowerBefore(withTaxAhead(reader, part, shareTax(facts))), ...used], takes },
    ...out.map((index) => ({ start: index, end: index + 1, held: true })),
    ...lone,
    ...steps,
  ];
};

// "gyp £6 a bunch, does 20 bouts": what it makes, and no order for twenty.
const makes = pattern(
  '(,|-|;|and|which|that|it|so|they|should){0,2} (gets|get|makes|make|does|do|is enough for|enough for|covers|cover|gives|good for|is good for) (me|us|you)? (about|around)? <n:count> (<material>)? <p:piece>',
);
const yieldBehind = ({ tokens }: Reader, { start, end }: Part): Match | undefined => {
  const match = makes.in(tokens, start + 2, end);
  const before = match === undefined ? [] : tokens.slice(start, match.start);
  const priced = before.some(({ number }) => number?.form === 'money') && before.some(({ means }) => means['ingredient'] !== undefined);
  return match?.end === end && priced && !before.some(({ means }) => means['piece'] !== undefined) ? match : undefined;
};

// "ribbon 4.20 for 10m roll, 20cm each": what it costs, and how much of it goes in.
const withUse = (reader: Reader, whole: Part): readonly Finding[] | undefined => {
  const beside = recipeBeside(reader.tokens, whole);
  const listed = beside === undefined ? [] : readPart(reader, beside.rest);
  if (beside !== undefined && listed.some(({ facts }) => facts?.some(({ fact }) => fact === 'pack')))
    return [...listed, found(reader, beside.recipe.start, beside.recipe.end, [beside.recipe.fact])];
  const made = yieldBehind(reader, whole);
  if (made !== undefined) {
    const goods = readPart(reader, { ...whole, end: made.start });
    const [only, more] = goods.flatMap(({ facts }) => facts ?? []);
    const count = made.kept['n']?.number;
    const bunch = only?.fact === 'pack' && more === undefined && /^(bunch|wrap|bundle)$/.test(only.per ?? '') && count?.max === undefined;
    if (!bunch) return [...goods, { ...made, held: true }];
    const lines = [{ ingredient: only.item, length: 1, unit: 'bunch' }];
    return [...goods, found(reader, made.start, made.end, [{ fact: 'recipe', lines, pieces: Number(count?.amount), ...kindOf(made) }])];
  }
  const told = useBehind(reader.tokens, whole);
  const priced = told === undefined ? [] : readPart(reader, { ...whole, end: told.start });
  const [only, another] = priced.flatMap(({ facts }) => facts ?? []);
  if (told === undefined || only?.fact !== 'pack' || another !== undefined) return undefined;
  const use = told.of(only.item);
  return [...priced, use === undefined ? { ...told, held: true } : found(reader, told.start, told.end, [use])];
};

const find = (reader: Reader): Finding[] => {
  const apart = openParts(reader)
    .slice(0, 200)
    .map((part) => soManyFor(reader, part));
  const findings = [
    ...apart.flatMap((each) => each.findings),
    ...apart
      .flatMap(({ rest }) => rest)
      .map((part) => withoutAbsent(reader, part))
      .flatMap((part) => withUse(reader, part) ?? readPart(reader, part)),
  ];
  const inOrder = findings.toSorted((a, b) => a.start - b.start);
  const listed = withSecondNames(reader.tokens, withListCurrency(reader.tokens, inOrder));
  return [...askOneOrPack(askOpenPrices(withLastLine(reader, listed))), ...sellersTerms(reader, listed)];
};

export const priceList: Phrase = {
  name: 'price list',
  examples: ['bunny tails 14.50 a bunch of 50', 'statice 4.80 wrap of 10 + VAT', 'strawflowers gone up, 12 to 13.50 a bunch'],
  find,
};
