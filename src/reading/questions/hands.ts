// Who is at the bench and for how long: "who's on thursday", "how many of us are in friday", "how many hours have we got sat". Hours are kept by day, not by name.

import { anything, type Forms } from './question-pattern.ts';

const day =
  '(on|for|in|this|next|at|the|coming){0,3} (<weekday>|today|tomorrow|tmrw|tomoz|tmr|tonight|2moro|this week|next week|the week|the weekend|this weekend|<ordinal>|<plain> <month>|<month> <plain>)';
const at =
  '(on|in|here|working|available|around|about|free|coming in|coming|at the bench|on the bench|in the studio|helping|helping out|rostered|rostered on|making|wiring)';
const people = '(<bench>|hands|people|bodies|helpers|staff|freelancers|pairs of hands|makers|of the team)';

const enough = '(enough|ok|okay|long enough|plenty|sufficient|going to do it|gonna do it|do it|cover it)';

export const handQuestions: Forms = [
  // "is 2 hrs enough for 12 corsages if it's just me": how long they take, whoever makes them
  [
    'labourTime',
    [
      `(is|are|will|would|do|does|can) (about|only|just)? (<duration>|(a|one|the|half a|an)? (morning|afternoon|arvo|day|half day|evening)) (be|really|going to be|gonna be)? ${enough} (time)? <any>{0,5} <count> (<material>)? <piece> ${anything}`,
    ],
    /how (long|many|much)|charge|price|[£$€]/,
  ],
  [
    'hands',
    [
      `(who|who's|whos|who is|who are|who've|whove|who all) (is|are|else|all|have we got|have i got|do we have|we got|will be|gonna be){0,2} ${at} (with me|too)? ${day}`,
      `(who|who all) (else)? (have we got|do we have|have i got|we got|is there|are we having) (in|on|at the bench)? ${day}`,
      `how many ${people} (are|have|do|is|will|we|i|there|got|be|on|in|working|at the bench|available|free){0,5} ${day}`,
      `how many (are|have|do|will) (we|be|there|got|have|on|in){0,3} ${at} ${day}`,
      `how many (bench)? (hours|hrs) (are|have|do|is|will|we|i|there|got|be|of bench|bench time|at the bench){1,5} ${day}`,
      `(is|are) (anyone|anybody|someone|somebody|<word>|<word> and <word>) (in|working|here|around|at the bench|on the bench|on shift|rostered|rostered on) ${day}`,
      "(who's|whos|who is|who are) (at|on) the (bench|rota|roster)",
    ],
    /\b(it|event|wedding|party|ceremony|delivery|order|that|this|everything|all|they|date|market|wholesaler|gyp|shop)\b.*\b(in|working|here|around)\b|<piece>/,
  ],
];
