// What is said behind a change and changes nothing more: "…, she did ask, I said no", "… (two cousins got promoted)".

import type { Token } from '../text/token.ts';

const joint = /^(,|-|\(|;|as|cos|coz|because|since|now|please|pls)$/;
const saysMore = /^(not|but|and|instead|was|add|plus|make|also|if|unless|maybe|or)$/;

const isPlain = ({ number, means, text }: Token): boolean =>
  number === undefined &&
  means['piece'] === undefined &&
  means['material'] === undefined &&
  means['ingredient'] === undefined &&
  !saysMore.test(text);

/** Whether nothing but talk stands from here to the end. */
export const onlyTalk = (tokens: readonly Token[], from: number, end: number): boolean => {
  if (from >= end) return true;
  return joint.test(tokens[from]?.text ?? '') && tokens.slice(from, end).every(isPlain);
};
