// One more of a kind for one more person: "same again for the second flower girl", "another one for the other flower girl". Which kind it is, the thread knows.
// And the whole order again for another day, "same again for 6 march but 15": a second event, which moves nothing of this one.

import type { PieceKind } from '../../handbook/pieces.ts';
import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';

const lead = "(and|ok|so|oh|also|plus|then|please|pls|,|she wants|they want|we need|need|add|do|can we do|i'll have){0,3}";
const form = pattern(
  `${lead} (same again|the same again|same|the same|ditto|another|another one|one more|(1|one) more|one|1) (<p:piece>)? (please|pls|too)? for (the|her|his|their|our) <w:any> <r:role> (too|please|pls|as well|thanks|ta|x|now){0,2}`,
);
const bare = pattern(
  `${lead} (same again|the same again|ditto|another one|one more|(1|one) more) (please|pls|too)? for (the|her|his|their|our)? <r:role> (too|please|pls|as well|thanks|ta|x|now){0,2}`,
);
const further = /^(second|2nd|other|third|3rd|next|last|extra)$/;

const again = pattern(
  `${lead} (same again|the same again|same order|the same order|exact same order|exactly the same|same thing|the same thing|same as above|same lot|the same lot|the same|same|repeat order|repeat|a repeat|another one|another order|another wedding|another event) (order|again|of|like|as|this|it|that|one|please|pls|too){0,4} (for|on)`,
);

// "Same again for friday" may be of the hands at the bench: only a day of a month is another event's.
const anotherEvent = ({ tokens, context, words }: Reader, start: number, end: number): Finding | undefined => {
  const match = context.eventDate === undefined ? undefined : again.at(tokens, start, end);
  const read = match === undefined ? undefined : (dateAt(tokens, match.end, context) ?? dateAt(tokens, match.end + 1, context));
  const [day, other] = read?.days ?? [];
  if (match === undefined || read === undefined || day === undefined || other !== undefined || day === context.eventDate) return undefined;
  const ofMonth = tokens.slice(match.end, read.end).some(({ means, number }) => means['month'] !== undefined || number?.form === 'slashed');
  if (!ofMonth) return undefined;
  return { start, end, problems: [{ code: 'another-event', data: { date: day, words: words(start, read.end) } }] };
};

const find = (reader: Reader): Finding[] =>
  reader.untouched().flatMap((part): Finding[] => {
    if (part.asked) return [];
    const second = anotherEvent(reader, part.start, part.end);
    if (second !== undefined) return [second];
    const nth = form.at(reader.tokens, part.start, part.end);
    const match = nth?.end === part.end && further.test(nth.kept['w']?.text ?? '') ? nth : bare.at(reader.tokens, part.start, part.end);
    const [role, kind] = [match?.kept['r'], match?.kept['p']?.means['piece'] as PieceKind | undefined];
    const wearer = role?.means['role'];
    // "same again for the bridesmaids": how many they are is not said.
    if (match?.end !== part.end || role === undefined || wearer === undefined || wearer === 'rest' || /(s|men|folk)$/.test(role.text))
      return [];
    const piece = ofKind(kind);
    return [
      found(reader, part.start, part.end, [
        { fact: 'wearers', wearers: [{ wearer, count: 1, ...piece }], by: 'more' },
        { fact: 'change', what: 'count', by: 1, ...piece },
      ]),
    ];
  });

export const sameAgain: Phrase = { name: 'same again', examples: [], find };
