// Where somebody lives and how to get in: "its unit 6, 118 King st, press bell 2". Its numbers are nobody's count and no price.

import { firstAt, firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { clausesOf } from './clauses.ts';

const way = '(street|st|str|road|rd|lane|ln|avenue|ave|av|crescent|cres|terrace|tce|highway|hwy|boulevard|blvd|esplanade|pde|mews)';
const mild = '(close|drive|dr|place|pl|court|ct|way|parade|square|sq|grove|gardens|row|hill|quay|walk)';
const behind = '(unit|flat|apt|suite|level|floor|north|south|east|west){0,2} (<plain>)?';
const called =
  '(<unlisted>|<ordinal>|<ingredient>|king|queen|high|church|station|mill|park|main|old|new|north|south|east|west|upper|lower)';
const street = [
  `(no|number|nr|#)? <n:plain> ${called}{1,2} ${way} ${behind}`,
  `(no|number|nr|#)? <n:plain> <unlisted>{1,2} ${mild} ${behind}`,
].map((source) => pattern(source));
const unit = pattern(
  "(its|it's|we're|were|we are|im|i'm|at|to|address is|address|the address is|:|,|the){0,3} (unit|flat|apt|apartment|suite|level|floor|lot|shed|block|tower|door|number|no) (number|no)? <plain>",
);
const entry = pattern(
  '(and|then|pls|please|just|,){0,2} (press|ring|buzz|hit|use|dial|push|key in|punch in) (the)? (bell|buzzer|doorbell|intercom|button|gate|door|code|no|number|unit|flat)? (number|no|on|is|at|#)? <plain>',
);
const inside = pattern(
  "(and|then|the|,|it's|its|on|at|in){0,3} (bell|buzzer|intercom|gate code|door code|gate|door|code|bay|dock|floor|level|<ordinal> floor|<ordinal> door|postcode|post code|zip|entrance|entry|keypad|key safe|lockbox|lock box) (number|no|is|:|#|code){0,2} (<plain>|<ordinal>|<code>)?",
);
// "10 king st bouts", "12 day way cheaper": something is counted after all.
const counts = ({ tokens }: Reader, { start, end }: Stretch): boolean =>
  tokens
    .slice(start, end)
    .some(
      ({ means, number }) =>
        means['piece'] !== undefined || means['ingredient'] !== undefined || means['each'] !== undefined || number?.form === 'money',
    );

const streetIn = (reader: Reader, { start, end }: Stretch): Stretch | undefined => {
  const match = firstIn(street, reader.tokens, start, end);
  const next = match === undefined ? undefined : reader.tokens[match.end];
  return match === undefined || next?.means['piece'] !== undefined ? undefined : { start: match.start, end: match.end };
};

/** The stretches of an address: the street by itself where pieces or a day stand in its clause, and clauses that tell how to get in. */
export const addressStretches = (reader: Reader, part: Part): Stretch[] => {
  const { tokens } = reader;
  const clauses = clausesOf(reader, part);
  const at = clauses.findIndex((clause) => streetIn(reader, clause) !== undefined);
  const stretches: Stretch[] = [];
  for (const [index, clause] of clauses.entries()) {
    const from = tokens[clause.start]?.text === ',' ? clause.start + 1 : clause.start;
    const own = at < 0 ? undefined : streetIn(reader, clause);
    if (own !== undefined) stretches.push(own);
    else if (counts(reader, clause)) continue;
    else if (entry.at(tokens, from, clause.end)?.end === clause.end) stretches.push(clause);
    else if (at >= 0 && Math.abs(index - at) <= 3 && firstAt([unit, inside], tokens, from, clause.end)?.end === clause.end)
      stretches.push(clause);
  }
  return stretches;
};
