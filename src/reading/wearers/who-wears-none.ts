// Those of a party who wear none, told by who they are: "celebrant says no thanks", "but only the blokes wear one".

import { pattern } from '../pattern.ts';

const joint = '(,|-|\\(|but|and|though|;|except|as|because|cos){0,2}';
const negative =
  "(don't|dont|doesn't|doesnt|do not|does not|won't|wont|will not|isn't|isnt|is not|aren't|arent|are not|not|can't|cant|refuse|refuses|refuse to|refuses to)";
const wearing = '(be)? (want|wants|wanting|need|needs|needing|wear|wears|wearing|get|gets|getting|have|having)';
const goesWithout =
  '(going without|go without|goes without|without|opted out|opting out|said no|say no|says no|said no thanks|says no thanks|said no thank you|says no thank you|passed|is passing|not bothered|not fussed|not keen|refuse|refuses|refused|declined|declines|dropped out|pulled out)';
/** That somebody wears none, behind who it is. */
export const wearNone = `(just)? (${negative} ${wearing}|${goesWithout})`;
/** What of, and courtesy behind it. */
export const noneOfThem =
  '((any|their|his|her|a)? (flower|flowers|<piece>)|any|one|them|it|his|hers|theirs|a flower|anything|on it|to it)? (thanks|thank you|at all|this time|now|after all|though|on the day|\\)){0,2}';
const folk = '(<role>|men|guys|gents|blokes|lads|chaps|fellas|ladies|women|girls|boys|adults|grown ups|kids|children|family)';

// "10 in the party but 2 don't want any"
export const lessForm = pattern(
  `(,|-|\\(|but|and|though|;){0,2} (<n:count>|one|a couple) (of them|of those|of the lot|of em|people|ppl|guys|lads)? (are|is|have|has)? ${wearNone} ${noneOfThem}`,
);

// "groom has hayfever": among numbers that agree he wears none; of one man alone it is a note.
const declines = `(${wearNone}|is allergic|has hayfever)`;
export const noneFor = [
  pattern(
    `${joint} (the|his|her|our|their)? (<n:count> (of the|of)?)? (<owner>)? <r:role> (is|are|has|have|just|both){0,2} ${declines} ${noneOfThem}`,
  ),
  pattern(`${joint} (minus|not|less) (the)? <r:role> (who|as|cos|because|,)? (he|she|they)? (is|are|has|have)? ${declines} ${noneOfThem}`),
];

/** "12 in the party, 2 are babies, so 10 adults": how many are left, behind. */
export const leaves = pattern(
  "<n:count> <any>{2,16} (so|=|leaves|leaving|makes it|down to|that's|thats|which leaves) (it's|its)? (only|just)? <s:count>",
);

/** "12 in the party but only 6 wearing": so many of them. */
export const onlySoMany = pattern(
  `${joint} (it's|its)? (only|just) <n:count> (of (them|those|us|whom|the party))? (<role>|people|ppl|folk)? (are|is|will|be|to|who|that|actually){0,2} (wear|wears|wearing|want|wants|get|gets|getting|having|have|need|needs) (one|them|any|these|it|flowers|a flower)?`,
);

/** How many these are is said beside, or not at all. */
export const onlyThese = pattern(
  `${joint} (it's|its)? (only|just) (the|his|her|our)? ${folk} ((and|&|n) (the)? ${folk})? (are|is|will|be|to|who|that){0,2} (wear|wears|wearing|want|wants|get|gets|getting|having|have|need|needs) (one|them|any|these|it|flowers|a flower)?`,
);
