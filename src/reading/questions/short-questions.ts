// Questions of a word or two: "price?", "qty left?", "lapel price again", "vat?". They are the whole of what is said.

import type { Asked } from '../fact.ts';
import { type Pattern, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { listAlone } from './bench.ts';

const fill = '(the|our|my|this|that|it|them|one|ones|on|for|of|per|an|a|each|new|current|now|job|order|event|and|to){0,3}';
const end =
  '(again|pls|please|now|so far|then|today|on this|for this|for this one|on this one|each|altogether|for them|on them|for it|<all>|\\?){0,2}';
const kind = '(<material>)? (<piece>)?';

// "so 18 down 8 to go right?", "18 done?", "8 to go?": the tally, said to be checked.
const tallied = "(so|ok|and|that's|thats|we're|we are|it's|its|is it|have we|we have|we've|got|still|just|only|now|,){0,3}";
const downNow = '(down|done|made|finished|boxed)';
const leftNow = '(to go|left|left to go|left to do|left to make|to do|to make|remaining|more to go|still to go)';
const tally = `${tallied} (<count> (<piece>)? ${downNow} (,|and|so|with|-){0,2} <count> (more)? (<piece>)? ${leftNow}|<count> (<piece>)? ${downNow}|<count> (more)? (<piece>)? ${leftNow})`;

const taxed = '(inc|incl|inclusive|including|ex|exc|excl|exclusive|excluding|plus)';

/** [asks, how it may be said, whether it asks without a question mark too] */
const sources: readonly (readonly [Asked, string, boolean])[] = [
  ['count', '(total|full|overall|whole) (number of)? (pieces|nos|count|number|qty|quantity|headcount|<piece>)', false],
  ['prices', '(the|our)? <ingredient> (price|prices|cost) (now|atm|this week)?', true],
  ['prices', '(price|prices|cost) (of|for|on) (the|our|a)? <ingredient> (now|atm|this week)?', true],
  [
    'total',
    `${fill} (how much)? (is|for|are)? (order|full|final|sum|whole)? (<all>) (price|cost|bill|due|amount|order|job|lot|value)? ${fill}`,
    false,
  ],
  [
    'price',
    `${fill} ${kind} ${fill} (price|cost|costs|rate|pricing|unit price|unit cost|price point|charge) ${fill} ${kind} (<each>)?`,
    true,
  ],
  ['price', `(what|whats|what's|how much)? (is|are|for|at)? (<each>|per <piece>|a single <piece>) (one|for)?`, false],
  ['price', `how much`, false],
  [
    'remaining',
    `(qty|count|number|how many|nos|any|what|balance|what's)? (still)? ${kind} (still)? (left to make|left to do|left to go|left over|left|remaining|to go|to make|to do|to finish|outstanding|pending|unfinished|unmade|not done|short|still to do|still to make)`,
    false,
  ],
  // "balance how many nos?", "pending qty?"
  [
    'remaining',
    `(balance|pending|baki|remaining|outstanding) (${kind} (how many|qty|quantity|nos|no|count|pcs|pieces|number) (nos|no|pcs|pieces|<piece>)?|<piece>) (is|are)? (left|there|now|still|to make|to do)?`,
    false,
  ],
  [
    'remaining',
    `(all|how many|everything|nearly|any|${kind})? (done|made|finished|ready|complete|completed|boxed) (yet)? (so far)?`,
    false,
  ],
  ['remaining', `${tally} (,)? (right|yeah|yes|correct|then|yh|eh|innit|isn't it|isnt it)?`, false],
  ['remaining', `${tally} (,)? (right|correct|isn't it|isnt it|innit)`, true],
  ['working', '(the)? (working|workings)', true],
  ['picture', '(show|send|give)? (me|us|it|that|the calendar|the plan)? (it|that)? as (a|an) (picture|image|pic)', true],
  ['remaining', `(tally|progress|where we at|how far along|how far)`, false],
  ['count', `${fill} ${kind} (count|qty|quantity|numbers|nos|no of pieces|headcount|order count|piece count) ${fill} ${kind}`, true],
  [
    'taxStatus',
    `(is|with|any|what|has|after|before|<included>|<onTop>)? (the)? <tax> (rate|amount|incl|inc|included|in|extra|on top|inclusive|added|yet|too|as well|status)?`,
    false,
  ],
  [
    'taxStatus',
    `(is)? (that|it|this|price|prices)? (inc|incl|inclusive|included|ex|excl|exclusive|including|excluding) (or (not|no|ex|excl|exclusive|plus|extra|inc|incl|<onTop>|<included>))?`,
    false,
  ],
  ['taxStatus', '(before|with|inc|incl|in|plus|ex|excl|without) or (after|without|ex|excl|out|not|inc|incl|with|no|all in) (<tax>)?', true],
  [
    'taxStatus',
    '(before|with|inc|incl|plus|ex|excl|without) <tax> or (after|without|ex|excl|not|inc|incl|with|no|all in|plus) (<tax>|it)?',
    true,
  ],
  // "is the 18 each inc or ex?", "was that 14 plus vat or inc"
  ['taxStatus', `(is|are|was|were|did|do) <any>{0,4} ${taxed} (<tax>)? or (${taxed}|extra|on top|without|before) (<tax>)?`, true],
  [
    'taxStatus',
    `(is|are|was|were) (the|that|this|our|my|it){0,2} (<piece>)? (at)? <amount> (<each>|<all>)? ${taxed} (<tax>)? or (not|what)`,
    true,
  ],
  ['eventDate', `${fill} (wedding|event|party|handover|pickup|ceremony)? (date and time|date|when|what day|which day|day) ${fill}`, false],
  ['eventDate', '(due|needed|wanted|required|for|ready) (for|by)? (when|what day|which day|what date)', true],
  [
    'start',
    `(start day|start date|start when|start by|start|begin when|begin|when start|first day|earliest start|earliest (we|i) can (start|begin|make))`,
    false,
  ],
  [
    'latestStart',
    `(latest start day|latest start|last start|last day to (start|begin|make)|last date to (start|begin)|last possible start)`,
    true,
  ],
  [
    'orderBy',
    `(order by when|order by|order when|last order day|last order|order deadline|ordering deadline|(cut off|cutoff|cut-off|deadline|last day|last date|latest) (for|to) (order|ordering|orders|buy|the flowers|stems|flowers|stem order))`,
    true,
  ],
  ['labourTime', `${fill} (hours|hrs|time needed|how long|bench time|making time|bench hours|minutes|mins) ${fill} ${kind}`, false],
  ['stemOrder', `(how many|total|no of|number of|what)? (stems|bunches|<ingredient>) (needed|to order|to buy|total|to get)?`, false],
  [
    'stemOrder',
    '(total|whole|full)? (stem|stems) (count|numbers|number|qty) (for (it all|the lot|everything|all of (them|it|these)|this|this one|the job))?',
    true,
  ],
  ['material', '(all)? <material> (or not|or what|this one|these|for this one|right)?', false],
  ['recipe', `${fill} ${kind} (recipe|make up|stems <each>|ingredients) ${fill} ${kind}`, true],
  ['due', '(due today|due tomorrow|due <weekday>|due|whats due|jobs today|jobs|next job)', false],
  ['due', listAlone, true],
  ['margin', `${fill} ${kind} (margin|profit|mark up|markup|break even) ${fill} ${kind}`, true],
  ['labour', `${fill} ${kind} (labour|labor) (cost|share|money|charge)? ${fill} ${kind} (<each>)?`, true],
  ['spend', '(total|whole|overall)? (flower|flowers|stem|stems|wholesale|market) (bill|spend)', true],
  ['stemBudget', `(stem|stems|flower|flowers) (money|allowance|<budget>) ${fill} ${kind} (<each>)?`, true],
  ['start', '(start day|start date)', true],
  ['latestStart', '(latest|last) (day|date|time)? (i|we) (can|could|should) (start|begin|leave it)', true],
  ['remaining', `${kind} (left to make|left to do|still to make|still to do|still to wire|to make|to go)`, true],
  ['count', `(number|no|qty|quantity) of (the)? <piece>`, true],
  ['fits', '(<weekday>|tomorrow|this weekend) (ok|okay|doable|possible|alright|too tight|too soon|feasible|manageable)', false],
  ['fits', '(doable|possible|feasible|on track|in time|enough time|too tight|too much)', false],
  // "does the 6 hours include the taping?"
  ['other', '(do|does|did|is|are|will) (the|that|those|our)? <duration> (include|including|cover|count|allow for) <any>{1,4}', false],
  ['other', '(is|are) (the)? <any>{1,3} (in|included in|part of|counted in) (the|that|those) <duration>', false],
  ['whatIf', '(and|or|so|then) (for|at|if|with|say)? <count> (<each>)?', false],
];
const forms: readonly { readonly asks: Asked; readonly form: Pattern; readonly bare: boolean }[] = sources.map(([asks, source, bare]) => ({
  asks,
  form: pattern(`${source} ${end}`),
  bare,
}));

/** What a part of a word or two asks, when it is said with a question mark, or is plain enough alone. */
export const shortQuestion = (reader: Reader, part: Part, from: number): Asked | undefined => {
  if (part.end - from > 8) return undefined;
  const whole = part.start === 0 && part.end >= reader.tokens.length - 1;
  for (const { asks, form, bare } of forms) {
    if (!part.asked && !(bare && whole)) continue;
    if (form.at(reader.tokens, from, part.end)?.end === part.end) return asks;
  }
  return undefined;
};
