// What stands behind the comma of a price list's line: a colour or a sort of what is before it, and no goods of its own.
// "Statice, lilac  wrap of 25  8.20" is one pack of statice; of two roses each keeps what tells it from the other.

import type { Fact, FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const inColumns = '(,|-|:)? (a|an|per)? (<pack>|<count> (-)? <pack>|<length>|<weight>)';
const colourOnly = /^(lilac|violet|violets)$/;
// These are sold by their own names too, so that only the list's other lines tell which is meant.
const either =
  /^(lavender|lav|rose|peach|plum|heather|mint|sage|olive|mimosa|magnolia|silver dollar|baby blue|elastic|pearl|pearls|cotton|lace|velvet|organza|satin|wire|bead|beads)$/;
const described = pattern(`(<ingredient>|<word>) , <unlisted> ${inColumns}`);
const mount = /^(wristlet|bracelet|comb|hair comb|clip|hair clip|headband|corsage bracelet|band)$/;
const behind = pattern(`<word> ${inColumns}`);

/** Whether the name at `index` only tells more of the goods before it. */
export const isSecondName = (tokens: readonly Token[], index: number): boolean => {
  const [before, token] = [tokens[index - 2], tokens[index]];
  if (token === undefined || tokens[index - 1]?.text !== ',' || before?.means['ingredient'] === undefined) return false;
  if (behind.at(tokens, index, tokens.length) === undefined) return false;
  if (colourOnly.test(token.text) || (either.test(token.text) && mount.test(before.means['ingredient']))) return true;
  return either.test(token.text) && described.in(tokens, 0, tokens.length) !== undefined;
};

const told = pattern(`(<material>)? <i:ingredient> , (<c:word> (<word>)?|<l:length>) (,|-|:)? (a|an|per)? (<pack>|<count> (-)? <pack>)`);
const secondOf = (tokens: readonly Token[], { start, end }: Finding): string | undefined => {
  const match = told.at(tokens, start, end);
  if (match === undefined) return undefined;
  return tokens
    .slice(match.start, match.end)
    .filter((token) => token === match.kept['c'] || token === match.kept['l'])
    .map(({ text }) => text.replace(/ /g, ''))[0];
};

/** The goods of a list, each with its second name where another line has the same goods at another price. */
export const withSecondNames = (tokens: readonly Token[], findings: readonly Finding[]): readonly Finding[] => {
  const prices = new Map<string, Set<string>>();
  for (const fact of findings.flatMap(({ facts }) => facts ?? []))
    if (fact.fact === 'pack') prices.set(fact.item, (prices.get(fact.item) ?? new Set()).add(fact.price));
  const twice = (fact: Fact): fact is FactOf<'pack'> => fact.fact === 'pack' && (prices.get(fact.item)?.size ?? 0) > 1;
  if (!findings.some(({ facts }) => facts?.some(twice))) return findings;
  return findings.map((finding) => {
    const [only, another] = finding.facts ?? [];
    const second = only === undefined || another !== undefined || !twice(only) ? undefined : secondOf(tokens, finding);
    return second === undefined || only?.fact !== 'pack' ? finding : { ...finding, facts: [{ ...only, item: `${second} ${only.item}` }] };
  });
};
