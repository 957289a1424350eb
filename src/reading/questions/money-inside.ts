// Questions about what is inside the price: labour, margin, what is left for stems, what to spend.

import { anything, type Forms } from './question-pattern.ts';

export const moneyQuestions: Forms = [
  [
    'labour',
    [
      `(what|whats|what's|how much) ${anything} (labour|labor|wages|wage) ${anything}`,
      '(labour|labor) (share|cost|money|total|charge|percent|rate)',
      `how much ${anything} (labour|labor)`,
      `(<number>)? (labour|labor) ${anything}`,
      `(what|how much) ${anything} (pay|paid|paying) (us|me|for|myself|ourselves) ${anything}`,
    ],
  ],
  [
    'margin',
    [
      `(margin|profit|markup|mark up|mark-up|(we|i|do|you) make on|clear on|earn)`,
      `(what|how much|are|do|will|did) ${anything} (make|earn|clear|pocket|made|making) ${anything} (on|off|from|out of) ${anything}`,
      `(are|is|will) ${anything} (making money|worth it|losing money|break even|profitable|in profit)`,
    ],
  ],
  ['spend', [`(did|have|has) (we|i|you) (spend|spent) ${anything}`, `(we|i) (spend|spent) ${anything} (last|on the last)`]],
  [
    'stemBudget',
    [
      `stem <budget>`,
      `(stem|stems|flower|flowers|material|materials|ingredients|plant|foliage) (budget|money|spend|cost|allowance|costs) (per|each|a|for|on)?`,
      `(budget|money|room|left|spend|allowance|much|allowed|afford) ${anything} (stems|stem|flowers|flower|ingredients|materials) ${anything} (per|each|a|ea|apiece)`,
      `how much ${anything} (on a|in a|into each|in each|into a|on each) (<piece>|stems|flowers|piece|one) <any>{0,3}`,
      `how much ${anything} (spend|have|got|left|put|play with|<budget>|work with|use) <any>{0,4} (per|each|for a|a|for each) (<piece>|piece|one) <any>{0,3}`,
      `(what|how much|whats|what's) ${anything} (left|leaves|leave|have|got|spend) ${anything} (for|on) (stems|flowers|the stems|the flowers|each|ingredients|materials|product|stem|flower)`,
      `(what|how much|whats|what's) ${anything} (per|each|<each>) (<piece>|piece|one)? ${anything} (stems|flowers|spend|budget)`,
      `how much ${anything} spend (per|each|on each|on a|a|on one) <any>{0,3}`,
      `how much (can|do|should|could|may) (i|we) (spend|put) (on|in|into) (each|a|one|every|the|flowers|stems) <any>{0,3}`,
      `(stem|stems|flower) (money|allowance|budget)`,
      `what (can|do) (i|we) (spend|have) (on|for|per) (stems|flowers|each|a|the stems|stem) <any>{0,3}`,
      `(what's|whats|what is) (left|there) for (stems|flowers) ${anything}`,
      `(how much|what) ${anything} (for|on) (stems|flowers)`,
      `budget (per|for each|a|each|for a) <any>{0,3}`,
      `<budget> <each> <any>{0,2}`,
      '<each> <budget>',
    ],
  ],
  [
    'spend',
    [
      `(what|how much) ${anything} (spend|spending|spent) ${anything}`,
      `(wholesale|wholesaler|market) (spend|cost|total|bill|budget|for|figure|all up|overall)`,
      `how much ${anything} (wholesale|market|wholesaler|at market)`,
      `(total|whole|overall) (stem|flower|stems|flowers|material|wholesale) (spend|cost|budget|bill)`,
      `(what|how much|whats|what's) ${anything} (buying|buy|flowers|stems) cost`,
      `(whats|what's|what is|what) (the|our|my|is the)? (<all>)? (wholesale|spend|stem spend|flower bill|flower spend)`,
      'spend',
      '<budget>',
    ],
  ],
];
