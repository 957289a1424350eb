// A question that waits while something else is said. What it is about is kept nowhere yet: it is put again where its answers still hold,
// else it is said that it was not kept. Nothing is dropped in silence.

import type { Fact } from '../../reading/fact.ts';
import type { Ask } from '../../reading/reading.ts';
import type { Answer } from '../answer.ts';
import type { Block } from '../reply.ts';
import { joined, quoted, text } from '../span.ts';
import { factWords } from '../words/facts.ts';

/** Offers: not taking them up is an answer. */
const offers: ReadonlySet<Ask['why']> = new Set<Ask['why']>(['which recipe', 'plan with this', 'really forget', 'did you mean']);

/** What a fact is about, a correction and a first statement alike. */
const subject = (fact: Fact): string => {
  if (fact.fact === 'change') return fact.what === 'count' || fact.what === 'number' ? 'pieces' : fact.what;
  return fact.fact;
};

/** "12 bouts done" leaves "18 done" open; another date than the one asked about takes its place. */
const isSame = (said: Fact, asked: Fact): boolean => {
  if (subject(said) !== subject(asked)) return false;
  if (said.fact === 'made' || said.fact === 'broke' || said.fact === 'left') return 'count' in asked && asked.count === said.count;
  return said.fact !== 'pieces' || asked.fact !== 'pieces' || said.piece === asked.piece;
};

const factsOf = (ask: Ask): readonly Fact[] => ask.choices.flatMap(({ facts }) => facts);

const isSaidAgain = (waiting: Ask, { stated, ask }: Answer): boolean => {
  if (ask?.words === waiting.words) return true;
  const said = [...stated, ...(ask ? factsOf(ask) : [])];
  return said.some((fact) => factsOf(waiting).some((asked) => isSame(fact, asked)));
};

/** Facts that mean the same whatever was said since; a restated order does not. */
const holds = (fact: Fact): boolean =>
  /^(price|date|made|broke|left|crew|tax|material)$/.test(fact.fact) ||
  (fact.fact === 'change' && /^(count|price|date|time)$/.test(fact.what));

const kindsOf = ({ lines }: Answer['event']): string => [...new Set(lines.map(({ piece }) => piece))].sort().join();

const waitingOf = (answer: Answer): Ask | undefined =>
  answer.waiting && answer.how === 'stated' && !offers.has(answer.waiting.why) ? answer.waiting : undefined;

/** The question to put once more behind an answer that left it open. */
export const stillOpen = (answer: Answer): Ask | undefined => {
  const waiting = waitingOf(answer);
  if (waiting === undefined || answer.ask || waiting.why === 'part left') return undefined;
  if (answer.stated.length === 0) return waiting;
  if (isSaidAgain(waiting, answer) || kindsOf(answer.before) !== kindsOf(answer.event)) return undefined;
  return factsOf(waiting).every(holds) ? waiting : undefined;
};

/** What is dropped with a question that can no longer be answered. */
export const notKeptBlocks = (answer: Answer): readonly Block[] => {
  const waiting = waitingOf(answer);
  const moved = answer.stated.length > 0 || answer.ask !== undefined;
  if (waiting === undefined || !moved || stillOpen(answer) || isSaidAgain(waiting, answer)) return [];
  const read = waiting.why === 'part left' ? (waiting.choices[0]?.facts ?? []) : [];
  const said = read.map((fact) => factWords(fact, answer.manner));
  const line = said.length > 0 ? text`Not kept of the message before: ${joined(said, '; ')}.` : text`Not kept: ${quoted(waiting.words)}.`;
  return [{ block: 'assumed', line }];
};
