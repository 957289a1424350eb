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
  ['season', ['(season|year|all events) (table|so far|totals|summary|review)', 'season']],
  [
    'whatFits',
    [
      'what (fits|could i use|can i use|would fit|could go|can go) <any>{0,6}',
      '(suggest|propose) <any>{0,6}',
      'what (recipe|flowers) (fits|fit|can) <any>{0,6}',
    ],
  ],
  ['wearers', ['who (is|are|gets|wears|needs|has|have) <any>{0,6}', "(who's|whos) (getting|wearing|having|on|the) <any>{0,6}", 'wearers']],
];
