// "finished!", "they're done": with pieces in the thread, all of them are made. "we're done" may only end the day, and is asked about.

import type { Fact } from '../fact.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Token } from '../text/token.ts';

const before = '(ok|okay|right|so|well|and|phew|yay|woo|woohoo|finally|at last|lads|team|girls|that|just|,|!|-){0,4}';
const behind = '(now|finally|at last|lads|team|girls|guys|yay|woo|woohoo|phew|with them|,|!|x|\\.|lol|thank god){0,4}';
const all = pattern(
  `${before} ((they're|theyre|they are|these are|those are|they have been|(i've|we've|ive|weve|i|we|just|have)? (finished|done|completed) (them|it|these|those) (all)?) (all|both)? (finished|done|complete|completed|made|boxed)?|finished|finito|completed|job done|done and dusted) ${behind}`,
);
const stops = pattern(
  `${before} ((we're|were|we are|i'm|im|i am|that's me|that's us|it's|its|it is) (all|now|finally)? (done|finished)|done|dun|klaar) ${behind}`,
);
// "made the rest", "rest done": with "bar 2" so many are left.
const rest = '(the)? (<role>|rest|remainder|remaining ones|others) (of (them|it|those))?';
const restMade = [
  pattern(
    `${before} (i've|we've|ive|weve|i|we|have|just){0,3} (made|did|done|finished|completed|wired up and finished|finished off) (all)? ${rest} (today|this morning|this arvo|tonight)? (bar|except|but|apart from|minus|all but) <n:count> ${behind}`,
  ),
  pattern(
    `${before} (i've|we've|ive|weve|i|we|have|just){0,3} (made|did|done|finished|completed|finished off) (all)? ${rest} (today|this morning|this arvo|tonight)? ${behind}`,
  ),
  pattern(
    `${before} ${rest} (is|are|all|now|of them){0,3} (done|made|finished|complete|completed) (today|this morning|this arvo|tonight)? ${behind}`,
  ),
];
const told = /^(finished|done|complete|completed|made|boxed|finito|job done|done and dusted|dusted)$/;

/** Of one kind all of it, or all but so many; of several it may be the rest of the one last counted. */
const restOf = (reader: Reader, start: number, end: number, left: Token | undefined): Finding => {
  const { pieces } = reader.context;
  const words = reader.words(start, end);
  if (left !== undefined) return found(reader, start, end, [{ fact: 'left', count: Number(left.number?.amount) }]);
  const [only, other] = pieces;
  if (only === undefined || other === undefined) return found(reader, start, end, [{ fact: 'made', all: true }]);
  const choices = [
    ...pieces.map((piece) => ({ words: piece, facts: [{ fact: 'made', piece, all: true, words } as Fact] })),
    { words: 'all of them', facts: [{ fact: 'made', all: true, words } as Fact] },
  ];
  return { start, end, asks: [{ about: 'made', why: 'which piece', words, choices }] };
};

export const finishedAlone: Phrase = {
  name: 'finished, said alone',
  examples: [],
  find: (reader): Finding[] => {
    const { tokens, context, message } = reader;
    const [part, another] = message.parts;
    if (context.pieces.length === 0 || part === undefined || another !== undefined || part.asked) return [];
    const { start, end } = part;
    const ofRest = firstAt(restMade, tokens, start, end);
    if (ofRest?.end === end && tokens.slice(start, end).some(({ text }) => /^(the )?(rest|remainder|remaining|others)$/.test(text)))
      return [restOf(reader, start, end, ofRest.kept['n'])];
    if (all.at(tokens, start, end)?.end === end && tokens.slice(start, end).some(({ text }) => told.test(text)))
      return [found(reader, start, end, [{ fact: 'made', all: true }])];
    if (stops.at(tokens, start, end)?.end !== end) return [];
    const words = reader.words(start, end);
    const choices: { words: string; facts: Fact[] }[] = [
      { words: 'all of them, made', facts: [{ fact: 'made', all: true, words }] },
      { words: 'none, done for today', facts: [{ fact: 'question', asks: 'remaining', words }] },
    ];
    return [{ start, end, asks: [{ about: 'made', why: 'which piece', words, choices }] }];
  },
};
