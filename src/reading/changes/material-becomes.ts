// One material in the place of another in the whole order: "dried becomes preserved, all of it", "the fresh turns into silk throughout".

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const form = pattern(
  '(ok|so|and|also|sorry|,|all|the|everything|anything){0,3} <a:material> (flowers|stuff|ones|bits|material)? (now|will|should|to|is to){0,2} (becomes|become|turns into|turn into|goes to|changes to|change to) <b:material> (instead|now|please|pls|,|-|all of (it|them)|throughout|everywhere|the (whole )?lot|across the board|for (everything|all of it)){0,4}',
);

export const materialBecomes = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const match = asked ? undefined : form.at(reader.tokens, start, end);
  const [from, to] = [match?.kept['a']?.means['material'], match?.kept['b']?.means['material']];
  if (match?.end !== end || from === undefined || to === undefined || from === to) return undefined;
  return found(reader, start, end, [{ fact: 'change', what: 'material', to, from }]);
};
