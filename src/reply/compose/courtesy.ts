// A greeting, thanks or a bare no said to the bot and nothing else: answered in kind, for it asked nothing and told nothing.

import type { Block } from '../reply.ts';
import { text } from '../span.ts';

const greeting = /^(hi|hiya|hello|hey|heya|howdy|g'?day|morning|good|afternoon|evening|yo|kia|ora|howzit|namaste|there|all|team|everyone)$/;
const greets = /^(hi|hiya|hello|hey|heya|howdy|g'?day|morning|good|yo|kia|howzit|namaste|afternoon|evening)$/;
const thanking =
  /^(thanks|thank|thankyou|ta|cheers|thx|tysm|ty|you|u|so|much|very|many|a|lot|mate|love|legend|great|perfect|brilliant|lovely|nice|one|ok|okay|bot|team|all|for|that|x+)$/;
const thanks = /^(thanks|thank|thankyou|ta|cheers|thx|tysm|ty)$/;

const refusing =
  /^(no|nope|nah|naw|thanks|thank|you|ta|leave|it|that|those|as|is|not|now|yet|them|please|pls|don't|dont|bother|sorry|ok|okay)$/;
const refuses = /^(no|nope|nah|naw|leave|don't|dont)$/;

const most = 6; // words

/** The answer, where the message is courtesy through and through. */
export const courtesyBlocks = (said: string): readonly Block[] | undefined => {
  const words = said
    .toLowerCase()
    .replaceAll('’', "'")
    .split(/[^\p{L}']+/u)
    .filter((word) => word !== '');
  if (words.length === 0 || words.length > most || /\d/.test(said)) return undefined;
  if (words.every((word) => thanking.test(word)) && words.some((word) => thanks.test(word)))
    return [{ block: 'answer', line: text`You're welcome.` }];
  if (words.every((word) => greeting.test(word)) && greets.test(words[0] ?? ''))
    return [{ block: 'answer', line: text`Hello. Say an order, like “40 buttonholes at 25 inc tax”, or “help”.` }];
  if (words.every((word) => refusing.test(word)) && refuses.test(words[0] ?? '')) return [{ block: 'answer', line: text`Left as it was.` }];
  return undefined;
};
