// One more of a kind for one more person: "same again for the second flower girl", "another one for the other flower girl". Which kind it is, the thread knows.

import type { PieceKind } from '../../handbook/pieces.ts';
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

const find = (reader: Reader): Finding[] =>
  reader.untouched().flatMap((part): Finding[] => {
    if (part.asked) return [];
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
