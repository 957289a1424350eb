// What one piece, the whole order or the flowers come to, in the many ways that is asked: "how much is a corsage", "whats the bill", "total spend on flowers".

import { anything, type Forms } from './question-pattern.ts';

const inside =
  /\b(stems?|flowers?(?! (crown|halo|girl|comb|wreath|band|circlet|piece))|spend|spending|budget|labou?r|profit|margin|left|foliage|product|materials|wholesale\w*|clear|earn|make|pocket|in it|in there)\b/;
const taxed = /\b(vat|gst|hst|pst|tax)\b/;
const flowers = '(<ingredient>|stem|stems|flower|flowers|foliage|materials|product|ingredients)';

const inOrOut = '(inc|incl|inclusive|ex|exc|excl|exclusive|plus)';

export const priceAndTotal: Forms = [
  // "is the 18 each for the bouts inc or ex"
  ['taxStatus', [`(is|are|was|were|did|do) <any>{1,9} ${inOrOut} (<tax>)? or ${inOrOut}`]],
  // "was that price vat'd or not"
  ['taxStatus', ["(is|was|are|were|did|does|do|has|have) <any>{1,6} (vat'd|vatd|vatted|vat'ed|gst'd|gstd|gst'ed|hst'd|taxed) <any>{0,4}"]],
  [
    'spend',
    [
      `(total|whole|overall|full|<all>) <any>{0,2} (spend|cost|bill|<budget>) <any>{0,2} ${flowers} <any>{0,3}`,
      `(total|whole|overall|full|<all>) ${flowers} (spend|cost|bill|<budget>|money) <any>{0,3}`,
      `how much <any>{0,8} ${flowers} <any>{0,8} (<all>|in the end|all round) <any>{0,2}`,
      `(what|how much) <any>{0,3} ${flowers} (cost|going to cost|come to|be|gonna cost|run to|set us back) (me|us)? (<all>|in the end)`,
      "(what|how much|whats|what's) <any>{0,4} (spend|spending|spent|<budget>) (at|from|with|in|on) (the)? (market|wholesaler|wholesalers|wholesale)",
    ],
    /\bper\b|\beach\b|\ba (bout|buttonhole|corsage|crown|comb|lapel)|how much (ribbon|wire|tape|foliage)\b|\bhow much (?!money|cash|budget|of )([\w']+ ){1,3}(do|should|shall|must|will|would|can|did|have) (i|we|you)\b(?!.*\b(spend|spending|pay|cost)\b)/,
  ],
  [
    'stemBudget',
    [
      `(what|how much|whats|what's) <any>{0,5} (have|got|left|leaves|leave|there|is|get|play with|<budget>) <any>{0,6} ${flowers} <any>{0,3} (<each>|per <piece>|for a <piece>|for each <piece>|a <piece>)`,
      `(what|how much|whats|what's) <any>{0,5} (have|got|left|leaves|leave|there|get|play with|<budget>) <any>{0,4} (<each>|per|for a|for each|a|each) (<piece>)? <any>{0,1} (for|on|in) (the|our)? ${flowers}`,
      `(after|less|minus|without|net of) (labour|labor|wages|tax|vat|gst|everything) <any>{0,3} (left|leaves|leave) <any>{0,2} (for|on) ${flowers} <any>{0,4}`,
    ],
    /\b(bunch|bunches|order|buy|charge|charging|ask|quote|price)\b/,
  ],
  [
    'margin',
    [
      `(how much|what) (do|did|will|are|would) (we|i) (make|making|clear|clearing|earn|earning|pocket|net|bank) <any>{0,3} (per|on|off|a|from|each|out of|for) ${anything}`,
      `(how much|what) (do|did|will|are|would) (we|i) (clear|clearing|earn|earning|pocket) ${anything}`,
    ],
    /\b(hours?|hrs?|day|days|today|tomorrow|minutes?|mins?|morning|afternoon|week)\b/,
  ],
  ['total', ['<all> (with|plus|<included>|<onTop>|after|less) (the)? <tax> (added|on|in|included|on top)?'], /\b(or|is|are|was)\b/],
  [
    'total',
    [
      `how much (is|was|for|will|would|does|did)? (the|this|that|our|it|they)? (be|come to|cost)? (<all>|in the end) ${anything}`,
      `(how much|what) (is|was|for|will|would|does) (the|this|that|our|their|her|his) (whole|entire|full)? (order|job|lot|thing|event|wedding|quote|invoice) (be|come to|cost|worth|at|total|stand at|value|now|altogether){0,2}`,
      `(what|what's|whats|how much) (is|was)? (the|our|their|her|his)? (bill|invoice|order value|order total|job total|final figure|final price|full price|bottom line|whole lot)`,
      "(what's|whats|what is|what was) (the|this|that|it|their) (whole|entire|full)? (job|lot|order|thing|event|wedding)? (coming to|come to|worth|adding up to|standing at)",
      `(what|how much) (are|do|should|will) (we|i|you) (invoice|invoicing|bill|billing) ${anything}`,
    ],
    inside,
  ],
  // "how much for 5 more?": of what they would cost, not of what is left to make.
  [
    'price',
    [
      'how much (is|are|for|would|will|do|does|it|they|be|to|if|we|i|she|he|want|wants|wanted|need|needs|had|have|did|make|made){0,5} <count> (<material>)? (<piece>)? (more|extra) (<piece>|of them)? (be|cost|come to)?',
      'how much (is|are|for|would|will|do|does|it|they|be|to|if|we|i|she|he|want|wants|wanted|need|needs|had|have|did|make|made){0,5} (add|adds|added|another|an extra) (another|an extra|on)? <count> (<material>)? (<piece>)? (be|cost|come to)?',
    ],
    new RegExp(`${inside.source}|${taxed.source}|\\b(hours?|hrs?|minutes|mins|time|longer|order|buy)\\b`),
  ],
  [
    'price',
    [
      `how much (is|are|was|were|for|do|did|does|will|would)? (we|i|you|it|they|them|a|one|an|each|the|want|wanted|ask|asking|charge|charging|get|getting|quote|quoting|said|say|for|per|cost|be){0,6} <piece> (again|now|then|each|go for|going for|cost|be){0,2}`,
      `what (do|did|are|should|will|would) (we|i|you) (charge|charging|ask|asking|quote|quoting|get|want) (them|her|him|people|for|per|a|an|each|the){0,3} <piece> (again|now|each){0,2}`,
      `(remind me|remind us) (what|how much) <any>{0,4} <piece> (again)?`,
      `(are|is) <any>{0,2} <piece> (still|now) (the)? (same)? (price|at|<amount>) <any>{0,3}`,
      `what (is|are|was|were) (it|they|that|this)? (the|our)? (<each>|per|for|for a|a|each) <piece> (again)?`,
      `how (dear|expensive|pricey|cheap) (are|is) <any>{0,3} <piece>`,
      `what (are|were) (the|our)? <piece> (again|now|each|at)?`,
    ],
    new RegExp(`${inside.source}|${taxed.source}|\\b(keep|cover|made of|for how)\\b`),
  ],
];
