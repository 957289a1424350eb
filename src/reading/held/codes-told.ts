// Codes that open something: "locker combo is 24-6-31", "pin for the alarm is 4-5-27". Their numbers are no day and no count.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { none } from '../text/means.ts';
import type { Part, Stretch } from '../text/message.ts';

const thing =
  '(locker|safe|lock|padlock|door|gate|garage|alarm|key safe|keysafe|lockbox|lock box|keypad|bike|shed|till|studio|shop|van|cupboard|cabinet|cool room|coolroom|cold room|fridge|suitcase|phone|entry|front door|back door|side gate|wifi|gym|bank|card|sim|app|login|computer|laptop|printer|tablet|website|building|venue|loading dock|intercom|storeroom|store room|unit|car park|carpark)';
const code = '(combo|combination|code|pin|passcode|password|pass code|pin code|pin number|passphrase)';
const is = "(no|number|is|'s|:|=|-|now|again|was|changed to|still|will be|,|lock){0,4}";
const number = '(<slashed>|<code>|<number>) ((-|\\/|\\.)? (<number>|<slashed>|<code>)){0,4}';
const alone = pattern(
  `(the|my|our|new)? (combination|combo|padlock|lock|passcode|password|pin code|pincode|pin number) (lock)? ${is} (<slashed>|<code>|<plain> (-|\\/)? <plain> (-|\\/)? <plain>)`,
);
const forms = [
  pattern(`(the|my|our|new)? ${thing} ${code} ${is} ${number}`),
  pattern(`(the|my|our|new)? ${code} (for|to|on|of) (the|my|our|their|her|his)? ${thing} ${is} ${number}`),
  alone,
];

/** The stretches that tell a code; "door code, 12 bouts" counts bouts. */
export const codeStretches = ({ tokens }: Reader, { start, end }: Part): Stretch[] => {
  const stretches: Stretch[] = [];
  for (const form of forms)
    for (let index = form.next(tokens, start, end); index < end; index = form.next(tokens, index + 1, end)) {
      const match = form.at(tokens, index, end);
      const next = tokens[match?.end ?? 0]?.means ?? none;
      // "wedding combo 13/2/27" may be anything.
      if (form === alone && tokens[index - 1]?.kind === 'word') continue;
      if (match === undefined || (match.end < end && ['piece', 'ingredient', 'material', 'role'].some((tag) => next[tag] !== undefined)))
        continue;
      stretches.push({ start: match.start, end: match.end });
    }
  return stretches;
};
