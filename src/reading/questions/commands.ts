// Commands that ask without a question word: "buying list", "print the sheets", "bench card for the buttonholes".

import { pattern } from '../pattern.ts';
import { listForDay, listOfDay } from './bench.ts';

const get =
  '(print|send|show|give|email|post|get|see|share|need|want|download|export|pull up|bring up) (me|us|out|off|over|through){0,2} (the|a|an|our|my|all|that|this|one|full){0,2}';

const forWhat = '(for <any>{1,4}|<all> <any>{0,3})?';

/** Commands only when nothing else is said. */
export const alone = /^(prices|events)$/;

const theJob = '(the|our|my|this|that|her|their)? (<any>){0,3} (order|job|wedding|event|gala|party|booking|one|it|this|that)';
const clientText = '(client|customer|couple|bride|planner) (version|copy|quote|message|msg|email|note|wording|text)';
const write = '(send|give|get|do|make|write|draft|gimme|pull up|need|want)';

export const commands = [
  `(status|recap|summary|overview|rundown|run down|update) (of|on|for) ${theJob}`,
  `${write} (me|us)? (a|the|our)? (quick|short|nice)? ${clientText}`,
  '(quote|message|msg|email|note|wording|version|copy) (for|to) (the|our|my)? (client|customer|couple|bride|planner)',
  `${write} (me|us)? (a|the|our)? (quick|short|nice)? (quote|message|msg|email|note|wording|version|copy) (for|to) (the|our|my)? (client|customer|couple|bride|planner)`,
  '(send|email|text|message|give) (the|our|my)? (client|customer|couple|bride|planner) (the|a|our|their)? (quick|short|nice)? (quote|price|prices|summary|breakdown|version|wording)',
  'read (me|us)? (back|out) (the|this|that|my|our)? (order|job|list|lot|whole thing|details)',
  '(the|a|full)? (list|lists) of (the|all|all the)? wearers',
  'show (me)? (the|your|my|our|full)? (working|workings|sums|maths|math|calc|calcs|breakdown|client|price|event|order|calendar|plan|bench|list|summary|total|recipe)',
  'for the (client|customer)',
  '(client|customer) (version|copy)',
  '(buying|shopping|packing|order|market) list',
  '(open|upcoming|all|list|our|show) (me|us)? (the|our|open|upcoming|all){0,2} (events|weddings)',
  'summary',
  'summarise',
  'recap',
  'status',
  'overview',
  'calendar',
  'remind me <any>{0,6}',
  'bench card',
  'board labels',
  'print (everything|all|(the)? (sheets|sheet))',
  'all sheets',
  'pin-on sheet',
  'try <number> (to|and|-) <number>',
  'try <number>',
  'try (the|our|my|all the)? <piece> (at|for|from|between)? <number> <any>{0,6}',
  'try <number> <any>{0,6}',
  'price ladder',
  'ladder (for|of|from|on|between|the|our|my){0,2} (<piece>|<range>|<amount> (to|and|-) <amount>)? (<each>)? (by <amount>|in steps of <amount>)?',
  listForDay,
  listOfDay,
  'season',
  'review',
  'look back',
  '(board|box|name)? labels',
  'name (tags|cards)',
  '(client|customer|couple) (message|email|note|wording)',
  '(message|email) (for|to) (the|our)? (client|customer|couple)',
  'workings',
  'working',
  'remind me (what|when|how|which) <any>{0,8}',
  'need to know (what|when|how) <any>{0,8}',
  'what if <any>{0,8}',
  'stem budget <any>{0,6}',
  "(what's|whats) <any>{0,3} on the bench <any>{0,4}",
  'picture',
  'wearers',
  'breakdown',
  'on the bench <any>{0,3}',
  '(latest|earliest) <any>{0,6}',
  'how <any>{0,8}',
  '(time|hours|hrs|minutes|mins|bench time|making time) (needed|reqd|required|taken)? (for|on) (the|about|all)? <count> <any>{0,4}',
  '(give|run|catch|take|walk) (me|us) (a|the|up|through|down){0,2} (quick)? (recap|summary|run down|rundown|overview|it|this|everything|on|the) <any>{0,4}',
  'break (it|this|that|the <amount>) down <any>{0,3}',
  '(what|whatever) events <any>{0,4}',
  '(time|hours|hrs) (to (make|do|finish|wire)|will it take|does it take|would it take) <any>{0,8}',
  'time per <any>{0,4}',
  '(remaining|left to make|due today|due tomorrow|total|price|recipe|margin)',
  '(price|total|cost|budget|count|date|tax|stems|bench|start) (again|check)',
  `<sheet> ${forWhat}`,
  `${get} <sheet> ${forWhat}`,
  `${get} (packing|pack|loading|buying|shopping|market|order|price) (list|lists) ${forWhat}`,
  `(packing|pack|loading|buying|shopping|order|market) list ${forWhat}`,
  `(one|single|whole|combined) (buying|shopping|order|market) list ${forWhat}`,
  `${get} (bench|recipe) (card|cards) ${forWhat}`,
  `(bench|recipe) (card|cards) ${forWhat}`,
  `${get} (board|boards|box|name)? (labels|label) ${forWhat}`,
  `${get} name (tags|cards) ${forWhat}`,
  `(print|send|email) (me|us)? (off|out)? (the|all|all the|every|my|our)? (sheets|cards|lot) ${forWhat}`,
  'all (the|our|of the)? sheets',
  `${get} (calendar|ics|ical|timeline|schedule|month) (file|view|picture|invite|please)? ${forWhat}`,
  '(calendar|ics|ical) (file|link|invite)',
  '(picture|image) of (the|my|our)? (calendar|plan|schedule|month|bench)',
  '(by|until|till|for|from|since|in) (when|how long|how many|how much|what time|what date|which day) <any>{0,8}',
  'order by when',
  'what - if <any>{0,8}',
  '<material> or <material>',
  '(compare|ladder) <amount> (and|or|with|to|against|v|vs) <amount> (each)?',
  '(compare|show me|show us) <range> (each|<any>)?',
].map((source) => pattern(source));
