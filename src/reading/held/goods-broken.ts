// What came in and did not come whole: "3 boxes came, 1 smashed", "12 roses came, 3 snapped". None of the pieces broke.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { goneWrong } from '../progress/losses.ts';
import type { Part, Stretch } from '../text/message.ts';

const came = '(came|come|arrived|turned up|delivered|landed|showed up|got here|have come|has come|have arrived|just came|just arrived)';
const goods = pattern(
  `(ok|so|the|our|all|only){0,2} (<count>)? (of)? (the|new|more)? (boxes|box|trays|tray|buckets|crates|bags|pots|jars|vases|tins|parcels|<pack>|<ingredient>|<everyday>|<things>|delivery|stock) (of <any>)? ${came} (in|today|this morning|this arvo|yesterday|just now|late)? (,|and|but|with|w|-|though|;){1,2} <count> (of (them|those|em|the lot))? (<pack>|box|boxes|vase|vases)? (is|are|was|were|all|got|has|have)? (${goneWrong}|chipped)`,
);

export const goodsBroken = ({ tokens }: Reader, part: Part): Stretch[] => {
  const match = goods.might(tokens) ? goods.at(tokens, part.start, part.end) : undefined;
  const ours =
    match !== undefined && tokens.slice(match.start, match.end).some(({ means }) => (means['piece'] ?? 'unspecified') !== 'unspecified');
  return match === undefined || ours ? [] : [{ start: match.start, end: match.end }];
};
