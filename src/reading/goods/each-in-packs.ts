// "roses 80p each, sold in 20s": what one costs, and by how many they are sold. "80p each, bunch of 20" may be the bunch's price too, and is asked about.

import type { FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import type { Finding } from '../phrase.ts';
import type { Ask } from '../reading.ts';
import { placesIn } from '../text/places-in.ts';
import type { Token } from '../text/token.ts';

type Pack = FactOf<'pack'>;
/** A line of which it is open whether its price is for one or for the pack. */
export type OneOrPack = Pack & { readonly oneOrPack?: string };

const verbs =
  'sold|selling|sell|come|comes|coming|came|packed|bundled|bunched|wrapped|buy|buying|bought|get|got|supplied|available|boxed|tied|arrive|arrives|arriving|do';
const talk = `((for|on)? <ingredient>)? (,|;|-|but|and|only|just|all|they|they're|theyre|it|it's|its|are|is|we|i|you|to|must|can|that|which|them|${verbs}){0,6}`;
const verb = new RegExp(`^(${verbs})$`);
const one = '(each|ea|apiece|(a|per|/) (stem|stm|bloom|head|flower))';
const known: Readonly<Record<string, number>> = {
  fives: 5,
  tens: 10,
  twelves: 12,
  fifteens: 15,
  twenties: 20,
  thirties: 30,
  fifties: 50,
  hundreds: 100,
};
const soldIn = [
  pattern(`${one} ${talk} in (<n:count> (')? s|<w:word>)`),
  pattern(`${one} ${talk} (in (multiples|lots|batches|bundles) of|by the) <n:count>`),
];
const plural = /(s|x)$/;
// "each in bunches of 20", "each, wraps of 20", "ea bunch of 20", "each, 20 to a bunch".
const besidePack = [
  pattern(`${one} ${talk} (in|by the)? (a|the)? <k:pack> (of|x|\\() <n:count>`),
  pattern(`${one} ${talk} <n:count> (stems|stem|heads|blooms)? (per|to a|to the|in a|in the|/|a|in each) <k:pack>`),
];

export interface EachInPacks {
  readonly size: number;
  readonly used: readonly number[];
  readonly open: boolean;
}

/** What is said of packs behind what one costs; `price` is where the price stands. */
export const eachInPacks = (tokens: readonly Token[], price: number, end: number): EachInPacks | undefined => {
  for (const form of soldIn) {
    const match = form.at(tokens, price + 1, end);
    const [number, word] = [match?.kept['n']?.number, match?.kept['w']?.text ?? ''];
    const size = number === undefined ? known[word] : number.max === undefined ? Number(number.amount) : undefined;
    if (match !== undefined && size !== undefined && size > 1) return { size, used: placesIn(match), open: false };
  }
  for (const form of besidePack) {
    const match = form.at(tokens, price + 1, end);
    const number = match?.kept['n']?.number;
    const pack = match?.kept['k'];
    if (match === undefined || number === undefined || number.max !== undefined || Number(number.amount) <= 1) continue;
    if (pack?.means['pack'] === 'stem') continue;
    // "80p each in bunches of 20", "80p each and come 20 to a bunch": what is sold so is the stems, so the price is for one.
    const words = tokens.slice(match.start + 1, match.end).map(({ text }) => text);
    const several = words.some((word) => verb.test(word)) || (plural.test(pack?.text ?? '') && words.includes('in'));
    const perStem = !/^(each|ea|apiece)$/.test(tokens[price + 1]?.text ?? '');
    return { size: Number(number.amount), used: placesIn(match), open: !several && !perStem };
  }
  return undefined;
};

const strip = ({ oneOrPack: _, ...pack }: OneOrPack): Pack => pack;
const isOpen = (fact: object): fact is OneOrPack & { readonly oneOrPack: string } => 'oneOrPack' in fact && fact.oneOrPack !== undefined;

/** The findings with one question for all the prices of which that is open, in place of what they would state. */
export const askOneOrPack = (findings: readonly Finding[]): Finding[] => {
  const open = findings.flatMap(({ facts }) => (facts ?? []).filter(isOpen));
  const [first] = open;
  if (first === undefined) return [...findings];
  const words = open.map(({ oneOrPack }) => oneOrPack).join(', ');
  const packs = new Set(open.map(({ per, size }) => `a ${per ?? 'pack'} of ${size ?? ''}`));
  const ask: Ask = {
    about: 'price',
    why: 'which number',
    words,
    choices: [
      { words: `${words} for one`, facts: open.map((fact) => ({ ...strip(fact), per: 'stem' })) },
      { words: `${words} for ${packs.size === 1 ? [...packs][0] : 'the pack'}`, facts: open.map(strip) },
    ],
  };
  const asked = findings.findIndex(({ facts }) => facts?.includes(first));
  return findings.map((finding, at) => {
    if (finding.facts === undefined) return finding;
    const rest = { ...finding, facts: finding.facts.filter((fact) => !isOpen(fact)) };
    return at === asked ? { ...rest, asks: [...(finding.asks ?? []), ask] } : rest;
  });
};
