// Where the words of a changed recipe begin and end: without a lead-in, a heading or a polite tail.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';

const leadIn =
  /^(ok|okay|sorry|actually|please|pls|can|could|you|we|so|,|let's|lets|no|just|oh|hi|hey|she|he|they|bride|wants|want|wait|right|now|then|also|but|would|like|to|decided|prefers|-)$/;
const tail =
  /^(please|pls|now|then|this|time|thanks|ta|after|all|though|instead|too|,|sorry|today|altogether|completely|whatsoever|in|it|them|ok)$/;

// "correction to the recipe: 3 roses not 2", "change to the bouts: 2 gum not 3"
export const headedBy = pattern(
  '(<p:piece> recipe (change|tweak|update|correction|fix|edit) (:|-|,)|(a|quick|small|little|slight|one)? (correction|change|fix|amendment|update|edit|tweak|typo) (to|on|for|in) (the|our|this|my|that)? ((<p:piece>)? recipe|<p:piece>) (:|-|,|,|\\.))',
);

const forAll = pattern(
  "(for|on|in) (everyone|everybody|<all>|them|both|the whole lot|the rest|every one|every single one|each one|any of|each of|all of|both of|anything|anyone|anybody|any one|any) (')? (them|em|these|those)?",
);
export const trimmed = (reader: Reader, { start, end }: Stretch): Stretch => {
  let [from, to] = [start, end];
  // "no" alone leads in only before a comma: "no, drop the fern".
  while (
    from < to &&
    leadIn.test(reader.tokens[from]?.text ?? '') &&
    !(reader.tokens[from]?.text === 'no' && reader.tokens[from + 1]?.text !== ',')
  )
    from += 1;
  while (to > from && tail.test(reader.tokens[to - 1]?.text ?? '')) to -= 1;
  const all = forAll.in(reader.tokens, from, to);
  if (all?.end === to) to = all.start;
  return { start: from, end: to };
};
