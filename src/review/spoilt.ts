// Stems that came dead or broke: used up, and so no left-over. They tell nothing of the spare that was needed before the pieces are made.

import type { FactOf } from '../reading/fact.ts';

type Actual = FactOf<'actual'>;

const spoils =
  /\b(dead|died|dying|wilted|rotten|rotted|mouldy|moldy|gone off|went off|no good|bad|useless|unusable|rubbish|knackered|ruined|damaged|bruised|limp|broke|broken|snapped|bent|crushed|squashed)\b/i;
const leftOver = /\b(left ?over|unused|not used|surplus|spare|over)\b/i;

export const isSpoilt = ({ what, item, words }: Actual): boolean =>
  what === 'unused' && item !== undefined && spoils.test(words) && !leftOver.test(words);

/** How many of an item were told as spoilt, in all. */
export const spoiltOf = (actuals: readonly Actual[], item: string): number =>
  actuals.filter((fact) => fact.item === item && isSpoilt(fact)).reduce((all, { count }) => all + (count ?? 0), 0);
