// So many stems for a price, among other goods: "10 roses for 12, gyp 6 a bunch". Alone "10 roses for 12" may as well be roses for twelve people, so it is left.

import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { taxAt } from '../phrases/tax-basis.ts';
import type { Choice } from '../reading.ts';
import type { Part } from '../text/message.ts';
import { stretchesBetween } from '../text/stretches-between.ts';
import { isCount, isNumber, type Token } from '../text/token.ts';
import { itemName } from './item-name.ts';

const counted = '(x)? <n:count> (x|stems|stem|heads|sprigs)? (of)? (<word>){0,1} <i:ingredient> (stems|heads|sprigs)?';
const forPrice = pattern(`(${counted}|(<word>)? <i:ingredient> (x)? <n:count> (stems|heads|sprigs)?) for <p:amount>`);
// "20 bunny tails 9.50": one, or all of them.
const besidePrice = pattern(`${counted} <p:plain>`);
const aPack = pattern('(a|per|/) <pack>');

const isEdge = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || /^(,|;|and|&)$/.test(token.text);
const hasPence = (token: Token | undefined): boolean => isNumber(token, 'money') || /^\d+[.,]\d{2}$/.test(token?.text ?? '');

const wholeMatch = (reader: Reader, form: typeof forPrice, { start, end }: { start: number; end: number }): Match | undefined => {
  const match = form.at(reader.tokens, start, end);
  return match !== undefined && (match.end === end || taxAt(reader, match.end)?.match.end === end) ? match : undefined;
};

const asked = (reader: Reader, { start, end, facts = [] }: Finding, other: Unworded): Finding => {
  const choices = [facts, found(reader, start, end, [other]).facts ?? []].map((given): Choice => {
    const [pack] = given;
    return { words: pack?.fact === 'pack' ? `${pack.size ?? 1} stems for ${pack.price}` : '', facts: given };
  });
  return { start, end, asks: [{ about: 'price', why: 'which number', words: reader.words(start, end), choices }] };
};

/** What of the part is so many for a price, and the parts that are left beside it. */
export const soManyFor = (reader: Reader, part: Part): { readonly findings: readonly Finding[]; readonly rest: readonly Part[] } => {
  const { tokens } = reader;
  if (!forPrice.might(tokens) && !besidePrice.might(tokens)) return { findings: [], rest: [part] };
  const isPriced = tokens.slice(part.start, part.end).some(hasPence) || aPack.in(tokens, part.start, part.end) !== undefined;
  if (!isPriced) return { findings: [], rest: [part] };
  // The clauses that stand alone between commas or lines, tax words and all.
  const cuts = stretchesBetween(reader.tokens, part, isEdge);
  const findings: Finding[] = [];
  for (const cut of cuts) {
    const match = wholeMatch(reader, forPrice, cut);
    const { n, p } = match?.kept ?? {};
    const nameFirst = match !== undefined && tokens[match.start]?.kind === 'word';
    const name =
      match === undefined
        ? undefined
        : itemName(
            tokens
              .slice(match.start, match.end)
              // "white roses 12 for 18" names them all, "12 lovely roses for 18" may not
              .filter(
                ({ kind, means, text }) =>
                  kind === 'word' && (means['ingredient'] !== undefined || (nameFirst && !/^(for|x|stems|heads|sprigs)$/.test(text))),
              ),
            true,
          );
    if (match !== undefined && name !== undefined && n?.number !== undefined && p?.number !== undefined && p.number.max === undefined) {
      const { amount, currency, symbol } = p.number;
      const tax = match.end < cut.end ? taxAt(reader, match.end)?.fact : undefined;
      const pack = (price: string, size: string): Unworded => ({
        fact: 'pack',
        item: name,
        price,
        size: Number(size),
        ...(currency === undefined ? {} : { currency }),
        ...(symbol === undefined ? {} : { symbol }),
        ...(tax?.basis === undefined || tax.basis === 'none' ? {} : { basis: tax.basis }),
        ...(tax?.name === undefined ? {} : { taxName: tax.name }),
      });
      const told = found(reader, cut.start, cut.end, [pack(amount, n.number.amount)]);
      // "roses 12 for 18": twelve of them, or £12 for eighteen
      findings.push(nameFirst && p.number.form === 'plain' && isCount(p) ? asked(reader, told, pack(n.number.amount, amount)) : told);
    } else if (wholeMatch(reader, besidePrice, cut) !== undefined) findings.push({ ...cut, held: true });
  }
  if (findings.length === 0) return { findings, rest: [part] };
  const taken = new Set(findings.map(({ start }) => start));
  const rest: Part[] = [];
  for (const cut of cuts) {
    const before = rest.at(-1);
    if (taken.has(cut.start)) continue;
    if (before !== undefined && ![...taken].some((start) => start > before.start && start < cut.start))
      rest[rest.length - 1] = { ...before, end: cut.end };
    else rest.push({ ...part, ...cut });
  }
  return { findings, rest };
};
