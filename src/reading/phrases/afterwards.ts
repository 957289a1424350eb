// What it really cost and took, and steps ticked: "spent 182.40 at the market", "took 3 hours for 12", "3 unused", "ordered the statice", "boarded".

import { spending } from '../afterwards/spending.ts';
import { stepsTicked } from '../afterwards/steps.ts';
import { timeTaken } from '../afterwards/time-taken.ts';
import { unused } from '../afterwards/unused.ts';
import type { Match } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const inPart = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const findings: Finding[] = [];
  const add = ({ start, end }: Match, ...facts: Unworded[]): void => {
    if (!findings.some((other) => other.start < end && start < other.end)) findings.push(found(reader, start, end, facts));
  };
  for (const { match, amount } of spending(tokens, part)) add(match, { fact: 'actual', what: 'spent', amount });
  const taken = timeTaken(tokens, part);
  if (taken !== undefined) add(taken.match, ...taken.facts);
  const over = unused(tokens, part);
  if (over !== undefined) add(over.match, over.fact);
  for (const { match, facts } of stepsTicked(tokens, part)) add(match, ...facts);
  return findings;
};

const most = 40; // sentences
const find = (reader: Reader): Finding[] =>
  reader
    .untouched()
    .slice(0, most)
    .flatMap((part) => inPart(reader, part));

export const afterwards: Phrase = {
  name: 'afterwards',
  examples: [
    'spent 182.40 at the market',
    'the flowers came to 84.20 in the end',
    'took 3 hours for 12',
    '3 unused',
    'ordered the statice',
    'boarded',
  ],
  find,
};
