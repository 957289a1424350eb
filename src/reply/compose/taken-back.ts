// What an undo took back, named: the last thing that was kept may be older than the last thing that was said.

import type { Fact } from '../../reading/fact.ts';
import type { Manner } from '../answer.ts';
import type { Block, Line } from '../reply.ts';
import { lineToText } from '../reply-to-text.ts';
import { joined, quoted, text } from '../span.ts';
import { factWords } from '../words/facts.ts';

const mostNamed = 4;
const longestWords = 60; // characters

/** A fact in its own words, where the words for it would only say what kind of fact it is. */
const named = (fact: Fact, manner: Manner): Line => {
  const words = fact.words.trim();
  const plain = factWords(fact, manner);
  const bare = fact.fact === 'change' || lineToText(plain) === fact.fact;
  return bare && words !== '' && words.length <= longestWords ? [quoted(words)] : plain;
};

/** What a price list loses is said in a line of its own, with what holds again. */
export const takenBackLine = (all: readonly Fact[], manner: Manner): Line => {
  const facts = all.filter(({ fact }) => fact !== 'pack');
  return facts.length === 0 ? text`Taken back.` : text`Taken back: ${listed(facts, manner)}.`;
};

/** The first few of them; what follows is counted. */
const listed = (facts: readonly Fact[], manner: Manner): Line => {
  const said = facts.slice(0, mostNamed).map((fact) => named(fact, manner));
  const once = said.filter((line, at) => said.findIndex((other) => lineToText(other) === lineToText(line)) === at);
  const more = facts.length > mostNamed ? ` and ${facts.length - mostNamed} more` : '';
  return text`${joined(once, '; ')}${more}`;
};

/** Of the last message nothing was kept, so nothing is taken back; what the last one kept told is named instead. */
export const stillKeptBlocks = (unread: string, kept: readonly Fact[], manner: Manner): readonly Block[] => [
  { block: 'answer', line: text`There is nothing of ${quoted(unread)} to take back: I had kept nothing of it.` },
  ...(kept.length === 0
    ? []
    : [{ block: 'next' as const, line: text`Before it I kept: ${listed(kept, manner)}. Say “undo” again to take that back.` }]),
];
