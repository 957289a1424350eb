// Reads one message: runs the phrases in order, lets each take its words, and reports what was left unread. Never throws, stores nothing.

import type { Problem } from '../values/problem.ts';
import { askWhichEnd } from './ask-which-end.ts';
import { askWhichGoods } from './ask-which-goods.ts';
import type { Fact } from './fact.ts';
import { keptBeside } from './left-beside.ts';
import { leftInSilence } from './left-in-silence.ts';
import { askedAtOnce } from './much-at-once.ts';
import { saysRange, withBothEnds } from './one-end-alone.ts';
import { answerOpenQuestion } from './open-question.ts';
import { type Phrase, type Reader, takenBy } from './phrase.ts';
import { everydayTalk, heldBack } from './phrases/held-back.ts';
import { otherWork } from './phrases/other-work.ts';
import { phrases } from './phrases.ts';
import { withPiecesAsked } from './pieces-asked-about.ts';
import type { Ask, Reading, ReadingContext } from './reading.ts';
import { type Message, openMessage } from './text/message.ts';
import { packed } from './text/packed.ts';
import { unreadWords } from './unread.ts';

/** Longer messages are refused, not cut: half a message can say the opposite of the whole. */
export const longestMessage = 40_000;

/** One phrase that read something: for "why?" and for tests. */
export interface Trace {
  readonly phrase: string;
  readonly words: string;
  readonly facts: readonly Fact[];
  readonly asks: readonly Ask[];
}

export interface TracedReading extends Reading {
  readonly trace: readonly Trace[];
}

const readerOf = (
  message: Message,
  context: ReadingContext,
  taken: readonly (string | undefined)[],
  facts: readonly Fact[],
  asks: readonly Ask[],
): Reader => ({
  message,
  tokens: message.tokens,
  context,
  facts,
  asks,
  free: (index) => taken[index] === undefined && message.tokens[index] !== undefined,
  untouched: () =>
    message.parts.filter((part) => {
      for (let index = part.start; index < part.end; index++) if (taken[index] !== undefined) return false;
      return true;
    }),
  words: message.words,
});

const isOthers: ReadonlySet<string> = new Set([everydayTalk, heldBack, otherWork].map(({ name }) => name));

export const readPhrases = (text: string, context: ReadingContext, list: readonly Phrase[] = phrases): TracedReading =>
  readOpened(openMessage(text), context, list);

const readOpened = (message: Message, context: ReadingContext, list: readonly Phrase[]): TracedReading => {
  const taken = packed(message.tokens.map((): string | undefined => undefined));
  const [held, whole, apart] = [new Set<number>(), new Set<number>(), new Set<number>()];
  const facts: Fact[] = [];
  const asks: Ask[] = [];
  const problems: Problem[] = [];
  const trace: Trace[] = [];
  const reader = readerOf(message, context, taken, facts, asks);
  const ranged = saysRange(message.tokens);
  for (const phrase of list) {
    for (const read of phrase.find(reader)) {
      const tokens = takenBy(read);
      if (tokens.some((index) => taken[index] !== undefined)) continue;
      const finding = ranged ? withBothEnds(message.tokens, read, tokens) : read;
      for (const index of tokens) {
        taken[index] = phrase.name;
        if (finding.held === true) held.add(index);
        if (finding.whole === true) whole.add(index);
        if (finding.apart === true) apart.add(index);
      }
      for (const index of leftInSilence(message.tokens, finding, tokens)) held.add(index);
      facts.push(...(finding.facts ?? []));
      asks.push(...(finding.asks ?? []));
      problems.push(...(finding.problems ?? []));
      trace.push({
        phrase: phrase.name,
        words: message.words(finding.start, finding.end),
        facts: finding.facts ?? [],
        asks: finding.asks ?? [],
      });
    }
  }
  const left = {
    isUnread: (index: number): boolean => index >= 0 && index < taken.length && taken[index] === undefined,
    isHeld: (index: number): boolean => held.has(index),
    isApart: (index: number): boolean => apart.has(index),
  };
  const isLeft = (index: number): boolean => left.isUnread(index) || left.isHeld(index);
  const unread = unreadWords(message, isLeft, (index) => whole.has(index));
  const kept = asks.length > 0 || problems.length > 0 ? { facts, asks } : keptBeside(message, left, facts, unread);
  const read = askedAtOnce(message, { ...kept, unread }, (index) => isLeft(index) && !left.isApart(index));
  return { ...read, problems, trace, ...(trace.some(({ phrase }) => isOthers.has(phrase)) ? { setAside: true } : {}) };
};

/** What one message states, asks and leaves open. */
export const readMessage = (text: string, context: ReadingContext): Reading => {
  if (text.length > longestMessage) {
    return {
      facts: [],
      unread: [],
      asks: [],
      problems: [{ code: 'message-too-long', data: { characters: text.length, most: longestMessage } }],
    };
  }
  const answer = answerOpenQuestion(text, context);
  return answer === undefined
    ? withPiecesAsked(readAnew(text, context), context.open)
    : { ...withPiecesAsked(answer, context.open), answersOpen: true };
};

const readAnew = (text: string, context: ReadingContext): Reading => {
  const message = openMessage(text);
  const { trace: _, ...reading } = readOpened(message, context, phrases);
  const ask = saysRange(message.tokens)
    ? askWhichEnd(message, reading, (end) => readOpened({ ...message, tokens: end }, context, phrases))
    : askWhichGoods(message, reading, (one) => readOpened(one, context, phrases));
  return ask === undefined ? reading : { ...reading, asks: [ask], unread: [] };
};
