// "five more n i can go home", "3 more bouts then lunch": what is made next, and no more of them is wanted. "4 more please" is.

import { pattern } from '../pattern.ts';
import type { Phrase, Reader } from '../phrase.ts';

const form = pattern(
  "(ok|right|just|only|so|,|another|about){0,3} <count> (more)? (more)? (<material>)? (<piece>)? (and|n|then|&|till|til|until|before|to go then|and then|,){1,2} (i|we|i'm|im|we're|were|it's|its|that's|thats|can|get to|am|are|is|go|'m|i'll|we'll|will|be|get){0,4} (home|off home|go home|off|stop|lunch|tea|bed|wine|beer|gin|pub|the pub|a break|break|smoko|a brew|a cuppa|coffee|me|us|done in|knocking off|knock off|clock off|out of here|go|going|leave|eat|sleep|away|call it|call it a day|call it a night) (tonight|today|now|lads|girls|,|!|lol|yay|thank god|hopefully|i swear){0,3}",
);
const more = /^(more|another)$/;

export const moreThenHome: Phrase = {
  name: 'more, then home',
  examples: [],
  find: (reader: Reader) =>
    form.might(reader.tokens)
      ? reader.untouched().flatMap(({ start, end, asked }) => {
          const match = asked ? undefined : form.at(reader.tokens, start, end);
          return match?.end === end && reader.tokens.slice(start, end).some(({ text }) => more.test(text))
            ? [{ start, end, held: true }]
            : [];
        })
      : [],
};
