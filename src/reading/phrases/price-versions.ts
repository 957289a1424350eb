// "20 lapels and 3 crowns, show her the R45 and the R60 version": two ways to price them all, and no price of one kind each.
// With several kinds beside them they are held; of one kind alone both are worked out, where prices are read.

import { firstIn, pattern } from '../pattern.ts';
import { allFree, type Finding, type Phrase, type Reader } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';

const joint = '(and|or|&|n|/|\\+|,|vs|versus)';
const version =
  '(version|versions|option|options|variant|variants|alternative|alternatives|look|looks|package|packages|tier|tiers|idea|ideas)';
const forms = [
  `<amount> (<each>)? (${version})? ${joint} (a|an|the|at|our|my)? <amount> (<each>)? (price|priced)? (${version}|one|ones)`,
  `${version} (at|of|for|:|-|priced at|priced){0,2} (the)? <amount> (<each>)? ${joint} (at|the|a|an)? <amount>`,
  `(show|give|send|quote|offer) (her|him|them|the bride|the client|client|bride|it)? (both|either) (the|a|at)? <amount> (<each>)? ${joint} (the|a|at)? <amount>`,
].map((source) => pattern(source));
const wordOf = new RegExp(`^${version}$`);

const find = (reader: Reader): Finding[] => {
  const { tokens } = reader;
  const match = firstIn(forms, tokens, 0, tokens.length);
  if (match === undefined || !allFree(reader, match.start, match.end)) return [];
  const kinds = new Set(tokens.flatMap((token) => kindNamed(token) ?? []));
  // "the 45 and the 60 ones" may be the sizes of two kinds: only what stands behind a shown price is one of two.
  const among = tokens.slice(match.start, match.end);
  const shown = among.some(({ text }) => wordOf.test(text) || /^(both|either)$/.test(text)) || among.some(({ text }) => text === 'or');
  const pieceBehind = tokens[match.end]?.means['piece'] !== undefined;
  return kinds.size > 1 && shown && !pieceBehind ? [{ start: match.start, end: match.end, held: true }] : [];
};

export const priceVersions: Phrase = { name: 'price versions', examples: [], find };
