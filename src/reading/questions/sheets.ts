// Requests for something to hang up or hand round: bench card, pin-on sheet, packing list, calendar, look back.

import type { Forms } from './question-pattern.ts';

export const sheetQuestions: Forms = [
  ['picture', ['(picture|image|month view|pic)']],
  ['card', ['(bench|recipe|make) (card|cards|sheet)', 'card for the wall']],
  ['pinOn', ['(pin-on|pin on|pinning) (sheet|list)', 'who gets (what|which) <any>{0,3}']],
  ['labels', ['(board|boards|box|name) (labels|label|tags|tag|cards)', 'labels']],
  ['sheets', ['(all|every|print) (the)? (sheets|sheet|cards|print outs|printouts)', 'print (everything|it all|the lot)']],
  ['packing', ['(packing|pack|loading) (list|sheet)', 'what <any>{0,3} (to)? (pack|bring|load|take)']],
  ['calendar', ['(calendar|ics|ical|diary) <any>{0,2}', 'make-ahead <any>{0,2}', '(timeline|schedule|plan)']],
  [
    'review',
    [
      "(how did|how'd) <any>{0,4} (do|go|come out|turn out|work out)",
      '(look back|review|post mortem|actual against|planned against) <any>{0,4}',
      'what did <any>{0,4} (really|actually) cost <any>{0,2}',
      'did we make (any|a)? (money|profit|anything) <any>{0,4}',
    ],
  ],
  [
    'review',
    [
      '(was|is) (it|that|this|that one|this one) worth (it|doing|our while|the time|the bother) <any>{0,3}',
      'did (it|that|this|that one|this one) pay (us|off|for itself)? <any>{0,2}',
      'what did we (make|earn|clear|take home) (on|from|out of)? (it|that|this|that one|this one|the (job|wedding|event|order))? (then|in the end|after all)?',
    ],
    /\b(today|yesterday|tonight|week|morning|arvo|afternoon|so far)\b/,
  ],
  ['season', ['(season|year|all events) (table|so far|totals|summary|review)', 'season']],
  [
    'whatFits',
    [
      'what (fits|could i use|can i use|would fit|could go|can go) <any>{0,6}',
      '(suggest|propose) <any>{0,6}',
      'what (recipe|flowers) (fits|fit|can) <any>{0,6}',
    ],
  ],
  [
    'wearers',
    [
      'who (is|are|gets|wears|needs|has|have) <any>{0,6}',
      "(who's|whos) (getting|wearing|having|on|the) <any>{0,6}",
      'wearers',
      'how many (are)? (spare|spares|over) (have we|do we have|are there|is that|again)?',
    ],
  ],
];
