// How people say who wears what: the words of a list of wearers.

import { pattern } from '../pattern.ts';

export const entry = pattern(
  '(the|our|both|all|a|an|one|his|her|their|my)? (<n:count>)? (x|of|of the|sets of|for|for the|for his|for her|for each of the|for all the|little|small|wee|young|other|more|best)? (twin|triplet)? <r:role> ((aged|age|ages) <count> (and|&|n)? (<count>)?)? (x <m:count>)? (\\( <any>{1,4} \\))? (are|is|will be|will)? (to have|to wear|in|wearing|getting|having|get|gets|have|has|with|w|w /|wear|wears|need|needs|:|-|=|want|wants)? (a|an|the|each|matching)? (mini|tiny|little|small|smaller|baby|simple|proper|normal|plain|bigger|big|large|larger|nice|fancy|proper)? (<material>)? (<p:piece>)? (each)?',
);
// "ushers four", "best men 2", "groomsmen 4 bouts": the number behind those who are more than one.
export const countedBehind = pattern(
  '(the|our)? <r:role> (:|-|=|x)? <n:count> (in|with|w|wearing|get|have|:|-)? (<material>)? (<p:piece>)?',
);
// "7 men: 1 is the groom, 4 are ushers"
export const countedBefore = pattern('<n:count> (is|are|of them are|of them is) (the|his|her|our)? <r:role>');
/** "groom, 3 ushers, not the dads": these alone wear none. */
export const notThese = pattern('not (the|any|any of the|his|her|our|their)? <role>');
/** "no pageboy after all, just groom and 4 groomsmen" */
export const afterAll = pattern('(after all|now|anymore|any more|any longer|in the end|this time|then)');
export const sideOf = pattern("(on|from|for)? (the)? (<role>|<owner>) ('s)? side (:|,|-)?");
/** "25 gents in the baraat + 2 fathers": where they walk, and no one more. */
export const walkIn = pattern(
  '((in|from|of|for|on) (the|our|his|her|their)? (whole|full|entire)?)? (baraat|barat|line up|lineup|procession|entourage)',
);
// "groom side 12 men, bride side 9": how many on each side.
const side =
  "(the)? (<word>|<role>) ('s)? (side|family|lot) (:|-|=|has|have|is)? <n:count> (men|wearing|people|of them|guys|guests|ladies|boys|family members)?";
const behindThem =
  "<n:count> (<role>|people|guests|wearing|of them)? (on|for|from|of)? (the)? (<word>|<role>|<owner>) ('s)? (side|family|lot) (wearing|to wear|are wearing)? (them|one|flowers)?";
const hers = "(on|for|from|of) (the)? (hers|his|theirs|<role>|<owner>) ('s)?";
const sideBehind = `${behindThem}`;
const wearing = '(all)? (wearing|to wear|getting|total|in all|needing)? (them|one|flowers|it|<all>)?';
const joined = '(,|and|&|-|n|plus){0,2}';
export const bothSides = [
  ...[side, sideBehind].map((one) =>
    pattern(`(wearing (flowers|them|one)? (:|-|,)?)? ${one} ${joined} ${one.replace('<n:', '<m:')} ${wearing}`),
  ),
  // "8 adults and 2 kids wearing"
  pattern(
    '(so|we have|there are|got)? <n:count> (adults|grown ups|grownups|teens|teenagers) (,|and|&|n|plus|\\+){1,2} <m:count> (kids|children|little ones|teens|babies|toddlers) (,|-)? (all|are|will be|to be|is){0,2} (wearing|to wear|getting|getting one|wearing one|get one|wear one|need one|in flowers) (each|one|flowers|them|on the day)?',
  ),
  // "6 on the bride's side, 7 on the groom's"
  pattern(`${behindThem} ${joined} <m:count> (<role>|people|guests|of them)? ${hers} ${wearing}`),
];
/** "six each side plus the couple" */
export const eachSide = pattern(
  '(so|about|we have|there are|got)? <n:count> (people|men|<role>|wearing)? (on)? (each|either|per) side (plus|and|\\+)? (the)? (<c:word>)? (wearing)?',
);
/** "couple plus 6 attendants a side" */
export const coupleFirst = pattern(
  '(the|so|it is)? (happy)? <c:any> (,|and|plus|\\+|&|n|with){1,2} <n:count> (people|men|<role>)? (on)? (a|each|either|per) side (,|all)? (wearing)?',
);
/** "five couples, each a bout and a corsage" */
export const couplesWear = pattern(
  '(so|prom|with|we have|there are|got|:){0,2} <n:count> couples (,|-|:)? (each|all|both)? (getting|with|get|has|have|need|needing|wearing|want)? (a|one|1)? <p:piece> (and|&|\\+|n|,|plus) (a|one|1)? <q:piece> (each|<each>|per couple|a couple)?',
);
/** "bride wants 1 for the groom, 4 for the ushers": who says it wears none of them. */
export const speaker = pattern(
  "(the|our|my)? (bride|groom|couple|client|customer|planner|<role>) (just|has|have|finally)? ((wants|want|says|said|would like|asked for|asks for|has asked for|confirmed|has confirmed|ordered|is after|picked|chose) (us to do|to have|done|flowers|:|-|,|for|one|pieces){0,2}|(gave|given|sent|emailed|texted|messaged|rang|called|phoned|told|handed|forwarded|read) (me|us|in|over|through|back|out|with|up){0,2} (the|a|her|his|their|final|full){0,2} (list|names|wearers|numbers|line up|lineup|wearer list|guest list|list of names|list of wearers) (over|today|through|of who)? (:|-|,|;|so|its|it's){0,2})",
);
export const andMore = pattern('(\\+|plus|and|&) (his|the|her)? <n:count> (\\) )? (men|lads|guys|boys|groomsmen)?');
export const totalForms = [
  pattern(
    "(so|=|makes|that's|thats|total|total of|altogether|makes it|is|comes to|which is|- \\>|all up|in all|in total|makes that) (is|of|:|=|that|about|it)? <n:count> (total|in all|all up|altogether|people|persons|ppl|pax|wearers|of them|in total|overall|all told|heads|pieces)?",
  ),
  pattern(
    '<n:count> (<all>|total|in all|altogether|all up|people|wearers|all told|of them|of us|in the party|in the bridal party|in bridal party)',
  ),
  pattern(
    `<n:count> (people|persons|of them|of us|in all)? (in|for|on) (the|our|this|her|his)? (bridal|wedding|whole|full|entire) (party|crew|line up)`,
  ),
];
export const party = pattern('(bridal|wedding|whole|full) (party|parties|crew)');
export const partyOf = pattern('(party|crew|court|group|squad|lineup) of <n:count>');
// "FOB, FOG, 2 grandads: 4 bouts"
export const tailPieces = pattern('(:|-|=|so|need|total) (<n:count>) <p:piece>');
export const forHead = pattern(
  "(the)? (i|we|they|i'll|we'll)? (need|want|wearing|needing|wants|having)? (<n:count>)? (<material>)? <p:piece> (are|is|go|goes|will be|wanted|needed|required|to go|to be|going|given|(are|will|should|to|all|both){1,2} (be)? (go|going|given))? (for|to|:|=|-|on|<all>|<line>|,) (:|-|<line>){0,2} (the)?",
);
export const fillers =
  /^(prom|court|hoco|homecoming|quince|matric|formal|group|squad|standing|up|there's|theres|there'll|we've|weve|they've|having|getting|pinning|pin|altar|flowers|flower|and|,|\+|&|plus|the|both|\/|-|:|with|n|then|also|so|is|are|for|need|needs|of|x|\(|\)|all|who|whos|who's|wearing|wearers|list|have|getting|pls|please|his|her|it's|its|=|we|got|"|ok|just|add|doing|on|as|well|too|that's|thats|total|altogether|party|bridal|wedding|bout|each|men|boys|them|whole|everyone|everybody|gets|get|one|a|an|their|will|be|people|there|they|wants|want|in|has|wear|wears|to|total|this|time|folks|of course|obviously|naturally|it|side|same|guys|only|no|yes|yep|none|nothing|bar|minus|except|not|but|apart|from|excluding|without|excl|including|incl|counting|plus|bride's|groom's|brides'|grooms'|round|around|across|board|lot)$/;
/** "all wearing one", "need one each": no one more. */
export const oneEach = pattern(
  '(who)? (all|both|they|will|are|to)? (need|needs|get|gets|getting|wear|wears|wearing|want|wants|wanting|have|having|needing)? (a|one|1|single) (each|<each>)?',
);
