// Questions about the bench: "are we ok for saturday", "when do we start", "what is due tomorrow", "how many left".

import { anything, type Forms } from './question-pattern.ts';

/** "send me the list for tomorrow" */
export const listForDay =
  '(send|show|give|post|share|print|text|email|pop|put) (up|over|out)? (me|us|everyone|everybody|the team|the girls)? (the|my|our)? (bench|job|work|to do|todo)? (list|jobs|plan) (up)? (for|on) (today|tomorrow|tmrw|tomoz|tmr|tonight|this week|next week|the week|the weekend|<weekday>|<weekday> and <weekday>) (up)?';

const dayOwn =
  "(today's|todays|tomorrow's|tomorrows|tmrw's|tmrws|tonight's|tonights|this week's|this weeks|next week's|next weeks|the week's|the weeks|the weekend's|the weekends|<weekday>|<weekday> 's)";
const ofDay = `(the|my|our)? ${dayOwn} (bench|job|work|to do|todo|making)?`;
/** "send todays list", "whats on fridays jobs" */
export const listOfDay = `(send|show|give|post|share|print|text|email|whats|what's|what is|see) (up|over|out|on)? (me|us|everyone|the team|the girls)? ${ofDay} (list|jobs|plan)`;
/** "todays list" */
export const listAlone = `${ofDay} list`;

export const benchQuestions: Forms = [
  [
    'fits',
    [
      `(can|could|do|would|will|is|have) (we|i|you|there|it|this) ${anything} (take|fit|squeeze|add|manage|cope|handle|room|slot|accept|take on|capacity|get) ${anything} (another|more|<count>|extra|in|for|by|on|done|before|all|made|finish|finished|through)`,
      `(are|r|will) (we|u|you|things) <any>{0,2} (ok|okay|alright|on track|good|fine|sorted|set|behind|ahead|still ok|on schedule|ready|safe|right) ${anything}`,
      `(is|are) ${anything} (on track|too much|doable|possible|ready|tight|realistic|enough time|feasible|achievable)`,
      `(are|is|will|can|do|would) (we|i|it|they|this|that) ${anything} (finish|make it|be ready|be done|get there|done in time|have time|get done|fit|manage|have enough time|be finished|make them)`,
      `(is|are) (<weekday>|tomorrow|the <ordinal>) (ok|okay|alright|fine|free) ${anything}`,
      '(on track|on schedule|enough time)',
      "(reckon|think) (we|we'll|i'll|we're|they'll|it'll) (will|can|could|gonna|going to|all|get){0,2} (be)? (done|finished|ready|there|make it) (by|before|for|in time|on) <any>{0,3}",
      `(have we|do we have|we got|got) ${anything} (time|capacity|room) ${anything}`,
    ],
  ],
  [
    'latestStart',
    [
      `(latest|last) <any>{0,4} (start|begin|day)`,
      `(how late|when at the latest) ${anything}`,
      `(latest|last) (we|i) can (start|begin|leave) ${anything}`,
    ],
  ],
  [
    'start',
    [
      `(when|what day|which day|what date|how soon|how early|how far ahead|what time) ${anything} (start|begin|starting|make|making|get going|kick off|get stuck in|beginning|be made|made)`,
      `(start|starting|begin) (when|date|day)`,
      `(do|should|can|could) (we|i) (need to)? (start|begin) ${anything}`,
      `(when's|whens|what's|whats) ${anything} (start|starting|start date|start day)`,
      'start (date|day)',
    ],
  ],
  [
    'due',
    [
      `(what|what's|whats|anything|how many|how much|who|which|what're|whatre|show) ${anything} (due|today|tomorrow|tmrw|tomoz|this week|next week|on the bench|on bench|this morning|this arvo|this afternoon|tonight|for <weekday>|on <weekday>|<weekday>|on today|for today|on the list|first|weekend|this weekend|2day|tmr|tomorow|tommorow) <any>{0,3}`,
      `(today|tomorrow|tmrw|<weekday>) (what|list|jobs|bench|plan|whats|what's) <any>{0,3}`,
      `(bench|jobs|to do|todo|list) (today|tomorrow|this week|list|for|on) <any>{0,3}`,
      `(what|whats|what's) (due|on|next|up|to make|first|on now|to be made) <any>{0,4}`,
      `(what|which|how many) <any>{0,4} (should|do|must|shall|are|am|need|needs|to) <any>{0,3} (make|making|do|doing|made|be made|work on) <any>{0,3} (today|tomorrow|now|tmrw|this week|next|first|on <weekday>|<weekday>)`,
      '(any|anything) <any>{0,3} due <any>{0,4}',
      '(anything|owt|much|any (jobs|weddings|events|orders)) (else|booked|booked in|due|in|on|going out){0,2} (on|for|in) (the)? (<ordinal>|<plain> <month>|<month> <plain>|<slashed>)',
      "(any|anything|what|what's|whats|which) <any>{0,2} (going out|leaving|being collected|getting collected) <any>{0,4}",
      `what have we (got)? (on|for|in) ${anything}`,
      "(what|what's|whats) on <weekday>",
      'due (today|tomorrow|tmrw|this week|<weekday>)',
      "(which|what|whose) (job|order|one|wedding|event) (is|'s|comes|goes) (next|first|up|up next|soonest|after this)",
      listForDay,
      listOfDay,
      "(what|what's|whats|which) <any>{0,2} (needs|need|has|have|must|got|getting) (to)? (be|get) (ready|done|made|finished|boxed|wired) (for|by|on|before) <any>{1,4}",
    ],
    // "whats the price for 20 bouts by friday"
    /\b(price|cost|quote) (for|of|on)\b/,
  ],
  [
    'remaining',
    [
      `(how many|how much|what|what's|whats|how far|which) ${anything} (left|remaining|remain|to go|outstanding|still|to do|to make|more|short|unfinished|not done|pending|missing|behind|are we at|off|need making|needed|balance) ${anything}`,
      `(what|what's|whats) (left|remaining|still|outstanding)`,
      `(where|how) (are|r) (we|u) (at|up to|going|doing|with) ${anything}`,
      'how (we|things) (doing|going|looking|tracking|travelling|getting on) <any>{0,3}',
      `(are|is|have|did|r) (the|all|we|they|you|any|those) ${anything} (done|finished|made|complete|completed|boxed) ${anything}`,
      `(left|remaining) (to make|to do|to go|over)`,
      `how (many|much|far) <any>{0,3} (done|made|finished|along|through|have we|did we|did you|completed|so far|complete) ${anything}`,
      'how many (are we|we) (down|short|at|on|up to|behind)',
      '(progress|tally|score)',
      `how many (have|did|has) ${anything}`,
      "how's it (going|looking) with <any>{0,4}",
      `(many|much) (to go|left)`,
    ],
    /%|\bcharg(e|ed|ing)\b|\bquoted?\b|\bpercent|\bdiscount|\bow(e|es|ed|ing)\b|\bto pay\b/,
  ],
];
