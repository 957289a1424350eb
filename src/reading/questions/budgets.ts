// How many fit a budget: "how many bouts for 600", "her budget is 300, how many is that", "what would 500 buy".

import { anything, type Forms } from './question-pattern.ts';

const holds = "(<budget>|has|have|got|they've|she's|he's|theyve|only|with|given)";
const getting = '(get|buy|cover|give|do|make|pay for|run to|stretch to)';

export const budgetQuestions: Forms = [
  [
    'countFor',
    [
      `${holds} (is|of|about|only|got|around|just|a){0,2} <amount> (to spend|<budget>|in all|all in|,|total){0,2} (and|so|then)? how many ${anything}`,
      `how many ${anything} (will|would|does|do|can|could) (a|the)? (<budget>)? (of)? <amount> ${getting} ${anything}`,
      `what (will|would|does|can|could) (a|the)? (<budget>)? (of)? <amount> (get|buy|run to|stretch to) ${anything}`,
      `how many <any>{0,4} (for|from|out of|on|with|in|under|within) (a|the|their|her|his|our)? (<budget>)? (of)? (only|about|under|<upTo>)? (<money>|<plain>) (quid|all in|total|budget|max|<all>|please)? (at <amount> (<each>)?)?`,
      `(most|max|maximum) (<any>){0,5} (for|on|with|out of|from|under|within) (a|the)? (<budget>)? (of)? <amount>`,
      `what (can|could|would|will|does|do) (they|she|he|i|we|you|the client|the couple|client|a client|a customer|somebody|someone|anybody|anyone|people|a person|a couple|a bride|one) (get|have|afford|buy) (for|with|on|from|out of) (a|the)? (<budget>)? (of)? <amount>`,
      `how many ${anything} (fit|fits|afford|within|inside) (in|on|for|into|the|their|her|his|a|our){0,2} (<budget>|<amount>) ${anything}`,
      // "600 all in, whats that in bouts"
      `<amount> (<all>|<budget>|to spend|max|tops){0,2} (,|-|so|and){0,2} (what's|whats|what is|what would|how many is) (that|this|it) (be|come to|get (us|them|her)?)? in (<material>)? <piece> <any>{0,2}`,
      `how many <any>{1,6} (if|when|since|as|seeing as) (she|she's|shes|he|he's|hes|they|they're|theyre|client|bride|the <word>) (only|just|really)? (wants to|want to|willing to|happy to|can|will|going to|is|are){0,2} (pay|spend|spending|paying|go to|stretch to) (about|only|just|<upTo>)? <amount> <any>{0,3}`,
      `how many <any>{0,6} (before|til|till|until) (we|i|she|he|they|it|you|that) (hit|hits|reach|reaches|get to|gets to|go over|goes over|go past|goes past) (the)? <amount> <any>{0,2}`,
      // "how many could we give Grace if she's only got £150 to spend"
      `how many <any>{1,8} (if|when|as|since|seeing|seeing as|given) <any>{1,5} (only|just)? (<money>|<amount>) (to spend|<budget>|to play with|max|tops|in total|all in|altogether|and no more)`,
      `with (only|just|about|a)? <amount> to (spend|play with) how many ${anything}`,
      `(enough|money|budget) for how many`,
    ],
    /\b(left|remaining|done|to go|made|hours?|hrs|mins|minutes|people|guests|friday|saturday|sunday|monday|days?)\b|\b(for|on|in) \d+ (corsages|bouts|buttonholes|lapels|crowns|combs|pieces|people|of|jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/,
  ],
];
