// How many there were, told behind: "crowns all finished, 4 of them", "bouts done, 12 of those". Without "all" it is that many, and not all of the kind.

import { pattern } from '../pattern.ts';
import { type Finding, type Reader, takenBy } from '../phrase.ts';
import { placesIn } from '../text/places-in.ts';
import { isSingle } from '../text/token.ts';
import { amountOf } from './made-facts.ts';

const behind = pattern(
  "(,|-|\\(|:)? (that's|thats|that was|it's|its|so)? <n:count> of (them|em|those|these) (\\))? (in all|in total|all told|altogether|now|today|so far)? (pls|please|thanks|ta)?",
);
const every = /^(all|both|every|each|everything|lot|whole)$/;

export const withSoManyOfThem = ({ tokens, free, words }: Reader, finding: Finding): Finding => {
  const [fact, another] = finding.facts ?? [];
  if (fact?.fact !== 'made' || another !== undefined || fact.all !== true || fact.count !== undefined || fact.stage !== undefined)
    return finding;
  const match = behind.at(tokens, finding.end, tokens.length);
  const number = match?.kept['n'];
  const next = tokens[match?.end ?? 0];
  if (match === undefined || number === undefined || !(next === undefined || next.kind !== 'word')) return finding;
  for (let index = match.start; index < match.end; index++) if (!free(index)) return finding;
  const own = takenBy(finding);
  const takes = [...own, ...placesIn(match)];
  // "bouts finished, 10-12 of them": how many is not said.
  if (!isSingle(number.number)) return { start: finding.start, end: match.end, takes, held: true };
  const { all: _, ...rest } = fact;
  const whole = [finding.start - 1, ...own].some((index) => every.test(tokens[index]?.text ?? ''));
  const counted = { ...rest, count: amountOf(number), ...(whole ? { all: true as const } : {}), words: words(finding.start, match.end) };
  return { ...finding, end: match.end, takes, facts: [counted] };
};
