// "uncle pat dropped, so 7 men now not 8", "the best man dropped a tray so 7 bouts now not 8": somebody left, or why there are fewer, and no count of
// what broke.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const forms = [
  "(<role>|<owner>|<unlisted>) ('s|has|have|just|is){0,2} dropped (out)? (,|so|-|and|now|;){1,2} (<any>){0,3} <count> (<any>){0,2} (now|not)",
  'dropped (a|an|the|one|our|his|her) <any> (,|so|-|and|;){1,2} (<any>){0,2} <count> (<piece>)? (left|now|good)? (now)? (,)? (not|instead)',
].map((source) => pattern(source));

export const tellsWhoLeft = ({ tokens }: Reader, { start, end }: Part): boolean => anyIn(forms, tokens, start, end);
