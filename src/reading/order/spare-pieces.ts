// "2 spare bouts", "a trial crown", "2 extra bouts as spares": made beside the order, which stays as it is.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const before = /^(spare|spares|sample|trial|mockup|mock|practice|test|backup)$/;
const behind = pattern(
  '(as|for|to be|to have as|to use as|to keep as|\\() (a|the|her|my|some)? (spare|spares|sample|samples|trial|mockup|mock up|practice|test|backup|backups|back up|back ups)',
);

/** Whether the piece named by this token is a spare or a trial one. */
export const isSpare = (tokens: readonly Token[], index: number): boolean =>
  before.test(tokens[tokens[index - 1]?.text === 'up' ? index - 2 : index - 1]?.text ?? '') ||
  behind.at(tokens, index + 1, tokens.length) !== undefined;
