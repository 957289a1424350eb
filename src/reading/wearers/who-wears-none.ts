// Those of a party who wear none, told by who they are: "celebrant says no thanks", "but only the blokes wear one".

import { pattern } from '../pattern.ts';

const joint = '(,|-|\\(|but|and|though|;|except|as|because|cos){0,2}';
const declines =
  "(don't want|dont want|doesn't want|doesnt want|do not want|does not want|don't need|dont need|doesn't need|doesnt need|won't wear|wont wear|will not wear|won't have|wont have|not wearing|not having|not getting|not wanting|aren't wearing|arent wearing|isn't wearing|isnt wearing|isn't having|isnt having|won't be wearing|wont be wearing|won't be having|refuses|refuse|refuses to wear|refuse to wear|refused|opted out|opting out|said no|say no|says no|said no thanks|says no thanks|said no thank you|says no thank you|passed|is passing|not bothered|not fussed|not keen|going without|goes without|declined|declines|dropped out|pulled out|is allergic|has hayfever)";
const ends =
  '((any|their|his|her|a)? (flower|flowers|<piece>)|any|one|them|it|his|hers|theirs|a flower|on it|to it)? (thanks|thank you|at all|this time|\\))?';
const folk = '(<role>|men|guys|gents|blokes|lads|chaps|fellas|ladies|women|girls|boys|adults|grown ups|kids|children|family)';

// "10 in the party but 2 don't want any"
export const lessForm = pattern(
  "(,|-|\\(|but|and|though|;){0,2} (<n:count>|one|a couple) (of them|of those|of the lot|of em|people|ppl|guys|lads)? (are|is|have|has)? (don't want|dont want|doesn't want|doesnt want|do not want|don't need|dont need|doesn't need|doesnt need|won't wear|wont wear|not wearing|aren't wearing|arent wearing|isn't wearing|isnt wearing|won't be wearing|wont be wearing|refuse to wear|opted out|opting out|said no|say no|says no|passed|not bothered|not having|not getting|go without|going without|declined|dropped out|pulled out) ((any|their|his|her)? (flower|flowers|buttonholes|pieces)|any|one|them|it|theirs|a flower|on it|to it)? (thanks|at all|\\))?",
);

export const noneFor = [
  pattern(
    `${joint} (the|his|her|our|their)? (<n:count> (of the|of)?)? (<owner>)? <r:role> (is|are|has|have|just|both){0,2} ${declines} ${ends}`,
  ),
  pattern(`${joint} (minus|not|less) (the)? <r:role> (who|as|cos|because|,)? (he|she|they)? (is|are|has|have)? ${declines} ${ends}`),
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
