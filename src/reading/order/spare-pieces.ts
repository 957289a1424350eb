// "2 spare bouts", "a trial crown", "2 extra bouts as spares": made beside the order, which stays as it is.

import { pattern } from '../pattern.ts';
import type { Token } from '../text/token.ts';

const before = /^(spare|spares|sample|trial|mockup|mock|practice|test|backup)$/;
const behind = pattern(
  '(as|for|to be|to have as|to use as|to keep as|\\() (a|the|her|my|some)? (spare|spares|sample|samples|trial|mockup|mock up|practice|test|backup|backups|back up|back ups)',
);

// "need 2 bouts by friday for the trial": a day may stand between.
const forTrial = pattern(
  "for (the|a|an|her|his|their|bride's|brides|hair|makeup){0,3} (trial|trials|mockup|mock up|fitting|tasting|consult)",
);
const boundary = /^(,|;|and|&|\+|plus|then|but|n)$/;
const laterTrial = (tokens: readonly Token[], index: number): boolean => {
  const match = forTrial.in(tokens, index + 1, Math.min(tokens.length, index + 10));
  if (match === undefined) return false;
  return !tokens
    .slice(index + 1, match.start)
    .some(({ kind, means, text }) => kind === 'line' || means['piece'] !== undefined || means['each'] !== undefined || boundary.test(text));
};

/** Whether the piece named by this token is a spare or a trial one. */
export const isSpare = (tokens: readonly Token[], index: number): boolean =>
  before.test(tokens[tokens[index - 1]?.text === 'up' ? index - 2 : index - 1]?.text ?? '') ||
  behind.at(tokens, index + 1, tokens.length) !== undefined ||
  laterTrial(tokens, index);
