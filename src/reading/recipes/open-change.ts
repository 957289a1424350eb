// A flower changed to a range or a choice: "make the gyp 3-4 per bout", "add 2 or 3 ferns", "swap the fern for 2-3 ruscus". How many is not said.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';

const verb =
  /^(add|adding|swap|change|switch|replace|sub|make|use|using|put|pop|throw|tuck|have|do|set|bump|up|raise|increase|reduce|drop|cut|lower|bring|take|knock|trim|push)$/;
const ahead = pattern('<range> (x|stems|stem|of|more|extra|<material>){0,2} <ingredient>');
const behind = pattern(
  '<ingredient> (up|down|back)? (to|<upTo>)? <range> (stems|stem|sprigs)? ((per|a|an|each|in|on|for|<each>){1,2} (the|each)? (<piece>)?)?',
);

export const isOpenChange = ({ tokens }: Reader, { start, end }: Stretch): boolean => {
  if (!verb.test(tokens[start]?.text ?? '')) return false;
  return ahead.in(tokens, start, end) !== undefined || behind.in(tokens, start, end)?.end === end;
};
