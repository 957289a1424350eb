// "finished!", "they're done": with pieces in the thread, all of them are made. "we're done" may only end the day, and is asked about.

import type { Fact } from '../fact.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase } from '../phrase.ts';

const before = '(ok|okay|right|so|well|and|phew|yay|woo|woohoo|finally|at last|lads|team|girls|that|just|,|!|-){0,4}';
const behind = '(now|finally|at last|lads|team|girls|guys|yay|woo|woohoo|phew|with them|,|!|x|\\.|lol|thank god){0,4}';
const all = pattern(
  `${before} ((they're|theyre|they are|these are|those are|they have been|(i've|we've|ive|weve|i|we|just|have)? (finished|done|completed) (them|it|these|those) (all)?) (all|both)? (finished|done|complete|completed|made|boxed)?|finished|finito|completed|job done|done and dusted) ${behind}`,
);
const stops = pattern(
  `${before} ((we're|were|we are|i'm|im|i am|that's me|that's us|it's|its|it is) (all|now|finally)? (done|finished)|done|dun|klaar) ${behind}`,
);
const told = /^(finished|done|complete|completed|made|boxed|finito|job done|done and dusted|dusted)$/;

export const finishedAlone: Phrase = {
  name: 'finished, said alone',
  examples: [],
  find: (reader): Finding[] => {
    const { tokens, context, message } = reader;
    const [part, another] = message.parts;
    if (context.pieces.length === 0 || part === undefined || another !== undefined || part.asked) return [];
    const { start, end } = part;
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
