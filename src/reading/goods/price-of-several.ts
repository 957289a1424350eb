// Whether a price beside several packs is for one of them or for all: "3 bunches for £12", "2 bunches 8 each". "2 rolls $7" says neither, and is asked about.

import type { FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import type { Token } from '../text/token.ts';

type Pack = FactOf<'pack'>;
/** A line whose price is still open is marked until it is asked about. */
export type Priced = Pack & { readonly open?: string };

const ofOne = pattern('(,|\\()? (<each>|(a|an|per|/|the|for a|for one|each) <pack>|x <count>)');
const ofAll = pattern('(,|\\()? (for)? (<all>|all|the (two|three|four|five|six|pair)|both)');

/** What the words beside the price say of several packs. */
export const priceOfSeveral = (reader: Reader, price: Token, quantity: number | undefined): { forAll?: true; open?: string } => {
  if (quantity === undefined || quantity === 1) return {};
  const { tokens } = reader;
  const at = tokens.indexOf(price);
  const before = tokens[/^(a|an)$/.test(tokens[at - 1]?.text ?? '') ? at - 2 : at - 1]?.text ?? ''; // "for a tenner"
  if (ofOne.at(tokens, at + 1, tokens.length) !== undefined || /^(@|at|each|x)$/.test(before)) return {};
  if (ofAll.at(tokens, at + 1, tokens.length) !== undefined || /^(for|\/|=|total|cost|paid)$/.test(before)) return { forAll: true };
  return { open: reader.words(at, at + 1) };
};

const strip = ({ open: _, ...pack }: Priced): Pack => pack;
const isOpen = (fact: object): fact is Priced & { readonly open: string } => 'open' in fact && fact.open !== undefined;

/** The findings with one question for all the prices that are still open, in place of what they would state. */
export const askOpenPrices = (findings: readonly Finding[]): Finding[] => {
  const open = findings.flatMap(({ facts }) => (facts ?? []).filter(isOpen));
  const [first, second] = open;
  if (first === undefined) return [...findings];
  const words = second === undefined ? first.open : open.map((fact) => fact.words).join(', ');
  const ask: Ask = {
    about: 'price',
    why: 'each or all',
    words,
    choices: [
      { words: `${words} each`, facts: open.map(strip) },
      { words: `${words} for all`, facts: open.map((fact) => ({ ...strip(fact), forAll: true })) },
    ],
  };
  const asked = findings.findIndex(({ facts }) => facts?.includes(first));
  return findings.map((finding, at) =>
    finding.facts === undefined
      ? finding
      : { ...finding, facts: finding.facts.filter((fact) => !isOpen(fact)), ...(at === asked ? { asks: [ask] } : {}) },
  );
};
