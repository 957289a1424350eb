// "bride sent pics, she says 10/10": a mark out of ten, and no day in October.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isOccasion } from '../words/occasion-words.ts';

const rating = pattern(
  '(gave|give|gives|giving|rate|rates|rated|score|scored|scores|mark|marks|marked|reckons|reckon|rating|a|an|solid|easily|honestly|total|absolute|was|were|looked|loved|loves|love|adored|happy|chuffed|thrilled|delighted)',
);
const saying = pattern('(says|said|say|saying|told us|told me|goes|it|them|that|you|us|me|all|pics|photos|job|work|stuff)');
const shown = pattern(
  '(pics|pictures|photos|photo|pic|trial|sample|samples|proofs|mockup|mock up|mock-up|feedback|review|verdict|(loved|loves|love|adored) (it|them|the|everything|our|all))',
);
// "10/10 to the team"
const behind = pattern(
  '(to|from) (the|my|our|all)? (team|girls|lads|crew|you|u|everyone|everybody|all|bride|client|mum|mob|couple|her|him|them|me|us)',
);
const ofADay = /^(date|date's|day|on|handover|pickup|delivery|collection|booked|confirmed|moved)$/;
const near = 4;

/** Whether the stroke here marks what somebody thinks of the work. "She says 10/10" may be a day or a mark, so that nobody reads it. */
export const isMarkGiven = ({ tokens }: Reader, index: number): boolean => {
  const [mark, ten] = tokens[index]?.number?.form === 'slashed' ? (tokens[index]?.number?.parts ?? []) : [];
  if (ten !== 10 || mark === undefined || mark > 12 || tokens[index]?.number?.parts?.length !== 2) return false;
  if (tokens.some(({ text }) => ofADay.test(text) || isOccasion(text))) return false;
  const from = Math.max(0, index - near);
  if (rating.in(tokens, from, index) !== undefined) return true;
  if (behind.at(tokens, index + 1, tokens.length) !== undefined) return true;
  const said = index > 0 && saying.in(tokens, index - 1, index) !== undefined;
  return said && (mark === 10 || shown.in(tokens, 0, tokens.length) !== undefined);
};
