// Goods that are there or on their way, and enough of them or not: "any eucalyptus left in the cold room", "did the roses come", "do 3 bunches cover it".

import { anything, type Forms } from './question-pattern.ts';

const goods = '(<ingredient>|stems|flowers|foliage|greenery)';
const packs = '(bunch|bunches|stems|wraps|boxes|rolls|spools|packs|bags|bundles|sleeves|reels)';
const there =
  '(left|left over|leftover|spare|still|in stock|in hand|on hand|in the <any>{1,2}|in (cold|cool) storage|out the back|kicking about|lying about|knocking about|going spare)';

export const goodsInHand: Forms = [
  [
    'buying',
    [
      `(is|are|was) (it|everything|all|they|it <all>|<all>|the lot|all of it|all the ${goods}|the ${goods}) (all|been|now|already|also){0,2} (ordered|bought|on order) (yet|now|already|for <any>{1,3}|too)?`,
      '(have|has|did) (we|you|i|anyone|someone|somebody|anybody) (already|actually|now)? (order|ordered|bought|buy) (everything|it all|all of it|the lot|all the stems|all the flowers) <any>{0,3}',
      "(what|what's|whats|anything|how much) (is|are|have we|has)? (still|else|left|not){0,2} (to|been|to be)? (be)? (order|ordered|buy|bought) (yet|still)?",
    ],
    /<piece>|\bby when\b/,
  ],
  [
    'stemOrder',
    [
      `(any|much|enough|what) (spare|more|extra)? <any>{0,1} ${goods} (is|are|do we have|have we got|have we)? ${there} ${anything}`,
      `(is|are) there (any|some|much|enough|still|spare){0,2} <any>{0,1} ${goods} ${anything}`,
      `(do|have) (we|i|you) (still)? (have|got|have got)? (any|some|much|enough) (spare|more|extra)? <any>{0,1} ${goods} ${there} ${anything}`,
      `(has|have|did) (anyone|someone|somebody|anybody|you|we|i) (already|actually)? (order|ordered|buy|bought|get|got) (the|our|any|some|enough)? <any>{0,1} ${goods} (yet|already|in)? <any>{0,2}`,
      `(any|got any) (spare|more|extra) <any>{0,1} ${goods} ${anything}`,
      `(did|have|has|will|are|is) (the|our|all the|those|my) <any>{0,1} ${goods} (arrive|arrived|come|came|land|landed|get here|got here|turn up|turned up|in|here|in yet|here yet|been delivered) (yet|in|ok|today|this morning)? <any>{0,2}`,
      `(do|will|would|does|is|are) (the|those|another)? (<count>|a|one) <any>{0,1} ${packs} (of <ingredient>)? (be)? (cover|do|enough|plenty|last|stretch|ok) ${anything}`,
      `<ingredient> (-|:|,|;) how (much|many) <any>{0,2} (do|should|will|to|are|must) <any>{0,4}`,
      // "do i get 3 bunches of gyp or 4"
      `(do|should|shall|must|is|was|did) (i|we|you|u|it|that) (need|want|have|say)? (to)? (get|buy|order|need|grab|want|be|pick up)? (<count>|<range>) (or <count>)? <any>{0,1} ${packs} (of)? (the|our)? <any>{0,1} <ingredient> or (<count>|more|just) <any>{0,2}`,
      `(do|should|shall|must) (i|we|you|u) (need to|want to|have to)? (get|buy|order|need|grab|pick up) (<count>|<range>) or <count> <any>{0,1} ${packs} (of)? (the|our)? <any>{0,1} <ingredient> <any>{0,2}`,
      `(do|should|shall|must) (i|we|you|u) (need to|want to|have to)? (get|buy|order|need|grab|pick up) <range> <any>{0,1} ${packs} (of)? (the|our)? <any>{0,1} <ingredient> <any>{0,2}`,
      `(get|buy|order|grab) (<count>|<range>) <any>{0,1} ${packs} (of)? (the|our)? <any>{0,1} <ingredient> or (<count>|more|just) <any>{0,2}`,
      `(is|are|will|would) <length> (of)? (the|our)? <any>{0,1} <ingredient> (be)? (enough|plenty|ok|do|cover) ${anything}`,
    ],
    /\b((got|have|left) (for|on) (the |my |our )?(stems|flowers)|each|budget|cost|price|charge|spend|dry|drying|hang|per (piece|bout|corsage|crown|comb|lapel)|fresh|dried|made|done|wired|taped|boxed|in (the|our|your) (recipe|price|corsages?|crowns?|bouts?|buttonholes?))\b|[£$€]/,
  ],
  [
    'orderBy',
    [
      `(when|what day|which day|by when) (should|do|must|can|will|does) (the|our|all the)? ${goods} (need to|have to|got to|want to)? (be|come|get|arrive) (in|here|ordered|bought|delivered|by|ready|landed) <any>{0,3}`,
      "(when|what|when's|whens|what's|whats) (is|are)? (the|our)? (order|ordering|stem|stems|flower|flowers) (cut off|cut - off|cutoff|deadline|cut off day) <any>{0,4}",
    ],
    /dry|hang/,
  ],
  [
    'drying',
    [
      `(when|what day|which day|by when) (should|do|must|does|will) (the|our|all the)? ${goods} (need to|have to|got to|want to)? (be|get|go) (hung|dried|hanging|drying|up to dry|cut and hung) <any>{0,3}`,
      `(when|what day) (can|could|should|do) (i|we) (take|get|bring) (the|our|those)? ${goods} (down|off the (rack|racks|line)) <any>{0,3}`,
    ],
  ],
  [
    'prices',
    [
      `(price|prices|cost) (of|for|on) (a|the|our)? <any>{0,1} <ingredient> (now|again|atm|these days|this week|a stem|a bunch|per <pack>|a <pack>)?`,
    ],
    /\b(spend|budget|order|need|left|lot|all|total|should|per (piece|bout|corsage|crown|comb|lapel))\b/,
  ],
];
