// Words of a list of wearers that list nobody: it ends here ("both mums, 3 nans, and nobody else"), or one comes beside the others
// ("5 bridesmaids, plus the maid of honour on top").

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';

const wears =
  '((is|are|to|will|be|needs|need|who){0,2} (wearing|wears|wear|wants|want|wanting|wanted|gets|get|getting|needs|need|needing|having|has|included|involved|listed|invited) (a|any)? (one|them|flowers|flower|anything|it|<piece>)?|to (pin|do|make for))?';
const endsHere = pattern(
  `(,|-|;|\\()? (and|so|but|with|&|then)? (just|only)? (that's|thats|there's|theres|there is|that is|for|it's|its|definitely|absolutely|literally|its just){0,2} ((nobody|noone|none|nothing|no one|not anyone|not anybody) (else|besides|more|extra|other|further|for (anyone|anybody|any) (else|one else)|but (them|those|these)|apart from (them|those|these))|no others|no extras|no more (than (that|those|them|these)|names|people)|not (a|one) (soul|person) (more|else)|end of (the)? list|(all|everyone|everybody|your lot|the lot|my lot|full list|the full list|the whole list|list done|list closed)) ${wears} (\\))?`,
);
const onTop = pattern(
  '(,|-|\\()? (as well|too)? (is|are|comes|goes|being)? (on top|over and above|besides|as an extra|as extras|extra|extras|in addition|additionally|separate|separately|as an add on) (of|to)? (that|those|them|these|the others|the rest|it all|all that|all of that|him|her)? (\\))?',
);
const besideThose = pattern(
  '(,|-)? (and|plus|&|then)? (on top|over and above|besides|in addition|apart) (of|to|from)? (that|those|them|these) (there is|there are|there)? (a|the|one|his|her|their|our|<count>)? (little|small)? <role>',
);
const goesOn = /^(,|;|and|&|plus|\+|-|\/|:|so|=|that's|thats|makes|total|\)|all|pls|please|thanks|ta)$/;

/** Where such words end; `listed` names stand before them. "5 ushers, groom on top of the cake" tells of something else. */
export const listEndsAt = ({ tokens }: Reader, index: number, end: number, listed: number): number | undefined => {
  if (listed === 0) return undefined;
  // "5 bridesmaids and on top of that a maid of honour"
  const beside = besideThose.at(tokens, index, end);
  if (beside !== undefined)
    for (let at = index; at < beside.end; at++) if (/^(that|those|them|these)$/.test(tokens[at]?.text ?? '')) return at + 1;
  const match = endsHere.at(tokens, index, end) ?? (listed > 1 ? onTop.at(tokens, index, end) : undefined);
  if (match === undefined) return undefined;
  return match.end >= end || goesOn.test(tokens[match.end]?.text ?? '') || tokens[match.end]?.kind === 'line' ? match.end : undefined;
};
