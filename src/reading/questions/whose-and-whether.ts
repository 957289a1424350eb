// Whose piece it is, who gets one, and whether there are hands and days enough: tried before all other forms.

import { anything, type Forms } from './question-pattern.ts';

const wearer = '(<role>|<owner>)';
const theirs = '(the|his|her|their|our|both|all){0,2}';

export const whoseAndWhether: Forms = [
  // "when do the roses go in water", "how long should they condition"
  [
    'inWater',
    [
      '(when|what day|which day|how long|how many hours|by when) <any>{0,8} (in|into|out of) (the|some)? (water|buckets|bucket|drink)',
      '(when|what day|how long|how many hours) (do|does|should|shall|must|can|is|are|will|to|has|have){0,1} (we|i|you|the|my|our|all){0,2} <any>{0,2} (condition|conditioned|conditioning|hydrate|hydrated|hydrating) <any>{0,5}',
      '(is|are|will|would) (<count> (hours|hrs|hour)|<duration>|overnight|an hour) (in water|in the bucket|in a bucket|conditioning|of conditioning) (be)? (enough|ok|okay|long enough|plenty|too long|too short) <any>{0,4}',
      '(<duration>|overnight) (in water|in the bucket|conditioning) (be)? (enough|ok|okay|long enough|plenty) <any>{0,4}',
    ],
    /\b(bouts?|corsages?|crowns?|spent|paid|event|wedding)\b/,
  ],
  // "are we over on the corsages": what goes in against what there is for it
  [
    'stemBudget',
    [
      '(are|is|am|how much are|how far are) (we|i|it|they|the <piece>)? (still|way|much|well|far)? (over|under|inside|within) (budget)? (on|with|for) (the|our)? (stems|flowers|<piece>) <any>{0,2}',
    ],
    /\b(time|hours?|mins?|minutes|labou?r|late|behind)\b/,
  ],
  // "can we get away with 1 ranunculus": so many in each are tried
  [
    'whatIf',
    [
      '(can|could|would|will|what if|should) (we|i|you|it|she) (just|still)? (get away with|get by with|get by on|manage with|make do with|do with|do it with|cut down to|cut back to|drop to|drop down to|go down to|use) (just|only)? (<count>|a) (<word>){0,2} <ingredient> <any>{0,4}',
    ],
    /\b(1[3-9]|[2-9]\d|\d{3,}|bunch|bunches|wrap|wraps|box|boxes)\b/,
  ],
  [
    'fits',
    [
      `(will|would|can|could|do) (we|i) (have|get) (all)? (the|those|about|another)? (<count>)? (<material>)? <piece> (done|made|finished|ready|boxed|wired) (by|for|before|in time|on) <any>{0,4}`,
      `(is|are|will|would) <count> (more|extra|other)? <bench> (be)? (enough|ok|okay|plenty|sufficient|do (it|for|by|on|to)) ${anything}`,
      '(can|could|will|would) (the|all|all the|those|these|they){1,2} <piece> be (done|made|finished|ready|boxed|wired) (by|for|before|in) <any>{0,4}',
      '(is|are|will|would) (that|it|this|they) (be)? (still|all)? (ok|okay|fine|doable|possible|alright|manageable|realistic) (for|by) <any>{0,3}',
      '(is|are|was) (<plain> <month>|the <ordinal> (of)? (<month>)?|<slashed>|<month> <any>) (ok|okay|alright|fine|free|possible|doable|too soon|manageable) <any>{0,5}',
      `(are|r|am) (we|i) (free|clear|available|booked|full|busy|flat out) (on|for|at|that|this)? ${anything}`,
      '(can|could|will|would) (we|i) (even|really|still|possibly)? (do|make|manage) (another|about)? <count> (more)? (<material>)? <piece> (more)? (by|before) <any>{0,3}',
      '<count> <any>{0,6} (doable|possible|feasible|realistic|manageable|achievable) (or not|then|at all|do you think)?',
    ],
    /\bhours?\b|\bhrs\b|\bat \S+|@|\beach\b|[£$€]/,
  ],
  ['summary', ["(what|what's|whats|anything) (am i|are we|is|i'm|im|we're) (missing|forgetting|short of) <any>{0,3}"], /<piece>/],
  [
    'orderBy',
    [
      '(do|should|must) (i|we) (need to|have to|really need to|have)? order (today|tomorrow|tmrw|now|yet|this week|by <weekday>|on <weekday>|<weekday>)',
    ],
    /\b(what|which|how)\b/,
  ],
  [
    'wearers',
    [
      "(who's|whos|who is|who are|who|whose) (is|are)? (the|this|that|these|those) (<material>)? <piece> (for|meant for|going to|go to)",
      'whose <piece> ((is|are) (it|this|that|these|those)|(it|this|that|these|those) (is|are))',
      '(who|whose) (the|this|that|these|those) (<material>)? <piece> (is|are) (for|on|going to)',
      'whose (is|are) (the|this|that|these|those) (<material>)? <piece>',
      `(has|have|is|are|does|do|did|will) ${theirs} ${wearer} <any>{0,2} (got|get|getting|have|having|wear|wearing|need|want|on) <any>{0,2} (one|ones|any|<piece>|something|a flower|flowers|the list)`,
      `(what|what's|whats) (is|are|does|do|will|did|we giving|we putting on|we doing for)? ${theirs} ${wearer} <any>{0,2} (get|getting|have|having|wear|wearing|got)`,
      `which (one|piece|<piece>) (is|goes|was|are) (to|on|for)? ${theirs} (${wearer}|mine)`,
      `(have|did) (we|i|you|they) (put|add|include|forget|forgotten|got|counted|count) ${theirs} ${wearer} <any>{0,4}`,
      `how many (<each>)? (do|does|will|are) ${theirs} <role> <any>{0,3}`,
      `(is|are|was|were) ${theirs} ${wearer} (down|on|in|up|listed|included) (for|on|as|with|in)? <any>{0,4}`,
      `which ${wearer} <any>{0,1} (has|have|gets|get|got|is getting|wears|wearing|is wearing|needs) <any>{0,5}`,
      "(who|who's|whos|who is) (hasn't|hasnt|has|is|isn't|isnt|not|still|else|yet){0,3} (got|have|has|get|getting|had|need|needs|missing|without) (not)? (a|an|one|theirs|any|their)? (one|<piece>|flower|flowers|theirs)? (yet|still|too|again)?",
    ],
    /\d+ <piece>|left|how much/,
  ],
];
