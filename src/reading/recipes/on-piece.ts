// A few stems told to be on a kind, and nothing else: "3 orchid heads on the wrist ones, no filler". So few go into each; of more it is not said.

import { quantity } from '../goods/quantity.ts';
import type { Line } from '../goods/recipe-lines.ts';
import { type Match, pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const form = pattern('(on|in|into) (the|our|all the|all)? <p:piece>');
const goesOn = /^(,|-|no|without|nothing|\()$/;
const most = 12;

/** Where the stretch opens with stems and closes with the kind, or with what is not in it. */
export const onPiece = (tokens: readonly Token[], first: number, end: number): Match | undefined => {
  const match = quantity(tokens, first) === undefined ? undefined : form.in(tokens, first, end);
  return match !== undefined && (match.end === end || goesOn.test(tokens[match.end]?.text ?? '')) ? match : undefined;
};

export const tooMany = (lines: readonly Line[]): boolean => lines.some(({ line }) => line.stems === undefined || line.stems > most);
