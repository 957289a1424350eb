// Right behind a buying list "is that everything" and "what's left over" ask of the goods, and not of the pieces still to make.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase } from '../phrase.ts';

const lead = '(and|so|ok|okay|right|,|but|then|hang on|wait){0,3}';
const tail = '(then|now|yeah|yes|please|pls|thanks|\\?|,|for this|for this one|for the wedding|in total){0,3}';
const whole = pattern(
  `${lead} ((is|was) (that|this|it) (list)? (really)? (everything|all|it|the lot|the whole lot|all of it|complete|the full list|everything i need|everything we need|all i need|all we need|all there is)|(anything|what) else (to (buy|order|get)|i need|we need)?|(anything|have we|have i|did we|did i|is there anything|are we|am i) (forgotten|forget|missing|missed|left off) (anything|something)?) ${tail}`,
);
const left = pattern(
  `${lead} ((what|what's|whats|what is|what will be|what'll be|what would be|anything|how much|how many|how much is|how much will be|what stems are|how many stems are) (be|is|gonna be|going to be|do we have|will we have|have we got|i have|stems)? (left|leftover|spare|over|left spare|to spare) (over|at the end|after|after that|afterwards|from that|of that)?|(any|what are the|what|whats the|what's the|show) (leftovers|left overs|leftover|surplus|waste)) ${tail}`,
);

export const behindBuying: Phrase = {
  name: 'asked behind a buying list',
  examples: [],
  find: ({ tokens, context, message, ...reader }): Finding[] => {
    const [part, another] = message.parts;
    if (context.open?.topic !== 'buying' || part === undefined || another !== undefined) return [];
    const { start, end } = part;
    const asks =
      whole.at(tokens, start, end)?.end === end ? 'allBought' : left.at(tokens, start, end)?.end === end ? 'leftOver' : undefined;
    return asks === undefined ? [] : [found({ tokens, context, message, ...reader }, start, end, [{ fact: 'question', asks }])];
  },
};
