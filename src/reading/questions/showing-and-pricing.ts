// Questions about the sums and what to charge: "show working", "is tax in there", "what must I charge to keep 3.20".

import { anything, type Forms } from './question-pattern.ts';

export const pricingQuestions: Forms = [
  [
    'working',
    [
      'show (me)? (the|your)? (working|workings|sums|maths|math|breakdown)',
      `(how (did|do|have)|how'd|howd) (you|u|we|it|ya) (get|got|work|reach|come) <any>{0,3} (that|out|this|to)`,
      'break (it|that|this) down',
      '(full|price)? breakdown',
      'walk me through <any>{0,3}',
      'workings',
    ],
  ],
  [
    'client',
    [
      '(for|to send) (to)? (the|my|our)? (client|customer|couple|bride)',
      '(client|customer|couple) (version|copy|quote|message|email|note|wording)',
      '(message|email) (for|to) (the|our)? (client|customer|couple)',
      'quote for the (client|bride|couple)',
      '(send|email|text|message|give) (the|our|my)? (client|customer|couple|bride|planner) (the|a|our|their)? (quick|short|nice)? (quote|price|prices|summary|breakdown|version|wording)',
    ],
  ],
  [
    'why',
    [
      '(what|how) (did|do|have) (you|u) (take|read|understand|make of|get|think|understood|interpret) <any>{0,6}',
      'why (that|this|so|is that|is it|did|are|do|the|not)',
      'why',
    ],
  ],
  [
    'taxStatus',
    [
      `(is|was|are|does|do|did|has|have|are we|is there|with|it) ${anything} <tax> ${anything} (in|included|on top|inc|incl|extra|inclusive|or|ex|added|excluded|include|already|plus)`,
      `(is|does|do|did|was|are|we|have) ${anything} (inc|incl|include|included|includes|including|inclusive|ex|plus|before|after|with|charge|charging|charged|add|adding|quote|quoting|quoted) (of)? ${anything} <tax>`,
      `<tax> (inc|incl|in|included|on top|extra) (or <any>{0,3})?`,
      'what (rate)? (of)? <tax>',
      "(what's|whats|how much is|how much|what is|what) (the|our|is the)? <tax>",
      `(do|are|is|should) (we|i|it|this|that) ${anything} <tax>`,
      '<tax> (on|in) (this|that|it|top|there)',
      '<included> or <onTop>',
      '<onTop> or <included>',
      '(with|inc) or (without|ex) <tax>',
    ],
  ],
  [
    'priceFor',
    [
      `(what|how much) (must|should|do|would|shall|could|can|to|will) (i|we|you)? (have to|need to)? (charge|ask|quote|price|sell) ${anything} (keep|leave|get|have|make|hold|cover|if|at|for)`,
      `what should ${anything} cost if`,
      `(what|how much) ${anything} if (the)? stems (are|cost)`,
      `what (price|to charge) ${anything} (for|to) (keep|leave|get|have|cover|break even|make)`,
      'price <any>{0,3} to (keep|leave|cover)',
    ],
  ],
  [
    'countFor',
    [
      `how many <any>{0,4} (at|@|for|with|out of|from) (<amount>|<money>) ${anything} (for|out of|from|in|on|under|with|within|budget) <any>{0,3} <amount>`,
      `how many <any>{0,4} (for|can|could|would|out of|will|does|do) <any>{0,6} <amount> ${anything} (at|@) <amount>`,
      'how many <any>{0,6} (for|with|from|on|in) (a|our|the|their)? (budget|<money>)',
      'how many <any>{0,2} (can|could|do|would) <any>{0,2} (get|afford|buy) <any>{0,6}',
    ],
  ],
  [
    'ladder',
    [
      '(try|ladder|range|show|compare|prices) (from|between|it at|at|prices)? <number> (to|and|-|up to) <number>',
      'try <number>',
      'try (it|them|these|those|that|all of them) (all)? (at|for|with) <number> <any>{0,3}',
      'try (the|our|my|all the)? <piece> (at|for|from|between)? <number> <any>{0,6}',
      'ladder <any>{0,6}',
      'price ladder',
      'compare <number> <any>{0,4}',
    ],
  ],
];
