// What the flowers may be: "maybe dried", "might go fresh", "dried perhaps". It is no word that they are.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isEnd } from '../text/sentence-end.ts';

const ahead = pattern(
  '(maybe|mebbe|perhaps|possibly|poss|might|(may|could) (be|go|use|have)) (even|all|just)? (be|go|go for|do|use|have)? (all|the)? <material>',
);
const behind = pattern('<material> (,|-)? (maybe|mebbe|perhaps|possibly|poss|not sure|not sure yet|not certain|not decided|undecided)');
const reach = 5;

export const isDoubted = ({ tokens }: Reader, index: number): boolean => {
  const told = behind.at(tokens, index, tokens.length);
  if (told !== undefined && (told.end === tokens.length || isEnd(tokens, told.end))) return true;
  for (let start = Math.max(0, index - reach); start < index; start++)
    if (ahead.at(tokens, start, index + 1)?.end === index + 1) return true;
  return false;
};
