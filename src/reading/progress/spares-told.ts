// Words for spares among what is made, and for nobody having made them.

import { pattern } from '../pattern.ts';

export const spares = pattern(
  '(incl|including|inc|with|(out of|of|from|in|among) (which|that|those|these|them|it)|plus|and|,|+){0,2} (only|just)? <n:count> ((of them|of those|of these|<piece>)? (are|is|being)? (a)? (spare|spares|extra|extras)|(of them|of those|of these)? (as|for) (a)? (spare|spares|extras|backups|backup|back up|back ups|insurance))',
);
// "made 2 bouts as spares": all of those.
export const asSpares = pattern('(as|for) (a)? (spare|spares|extras|backups|backup|back ups|back up|insurance)');
export const nobody = /^(nobody|nobodys|nobody's|noone|noones|noone's)$/;
