// Things counted that are no flower work: a plural that stands in no list of the trade ("20 candles", "3 pizzas").

import { isNameless, type Token } from '../text/token.ts';

// Words that end as plurals do and count no other things: short talk, verbs, and what the bench calls its own.
const common =
  /^(spares|replacements|heaps|loads|oops|ooops|woops|whoops|apologies|corrections|sundries|dearest|extras|bits|sprigs|bases|blanks|backs|backings|clips|tops|dips|singles|doubles|trios|triples|halves|quarters|thirds|tens|fives|dozens|hundreds|lots|sets|sorts|types|styles|sizes|kinds|designs|versions|colours|colors|wearers|males|females|adults|seniors|juniors|teens|littlies|minis|jumbos|mens|ladies|childrens|couples|times|ways|hands|hours|hrs|mins|minutes|days|nights|weeks|wks|months|years|secs|seconds|cents|pence|euros|pounds|dollars|rands|rupees|bucks|quids|units|items|nos|pcs|pces|pieces|pairs|others|ones|yours|ours|theirs|mine|hers|his|this|thus|less|plus|minus|yes|pls|plz|thanks|thx|whats|thats|lets|its|is|was|has|does|goes|gets|makes|takes|needs|wants|looks|likes|says|comes|holds|works|costs|feels|seems|sounds|leaves|covers|buys|means|stays|stands|starts|ends|finishes|keeps|gives|leads|becomes|equals|includes|totals|drops|wears|prefers|pays|fits|suits|helps|always|perhaps|across|towards|besides|sometimes|afterwards|upwards|onwards|regardless|various|previous|serious|precious|gorgeous|fabulous|christmas|xmas|focus|bonus|gas|bus|as|us)$/;

/** Whether the word is a plural of which the trade knows nothing. */
export const isOtherThings = (token: Token): boolean =>
  token.kind === 'word' &&
  token.number === undefined &&
  token.guessed === undefined &&
  /^[a-z-]{3,}s$/.test(token.text) &&
  !/(ss|'s|ous|ius|eus|lus|rus)$/.test(token.text) &&
  !common.test(token.text) &&
  isNameless(token);

const joining =
  /^(they|she|he|we|i|you|u|it|who|which|want|wants|wanted|need|needs|have|has|had|will|can|could|would|like|likes|got|get|gets|make|makes|made|do|does|did|said|says|then|so|but|if|when|not|no|only|just|also|too|please|pls|in|of|for|to|at|on|by|with|from|per|each|and|or|but|as|is|are|was|were|wearing|having|doing|making|than|that|the|a|an)$/;

/** A word that no list knows and that joins no others: "20 table candles", "12 gold chairs". */
export const isUnlisted = (token: Token): boolean =>
  token.kind === 'word' && token.number === undefined && isNameless(token) && !joining.test(token.text);
