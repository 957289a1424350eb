// Days that are somebody's own and no event's: "tbc by saturday", "off to a wedding fri 12 feb", "bride free fri 9-1", "any chance of a price by tomorrow".

import { namesPieces } from '../names-pieces.ts';
import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { askedOnce } from '../text/asked-once.ts';
import { anyOccasion } from '../words/occasion-words.ts';
import type { DateRead } from './date-read.ts';
import { hasGoneBy } from './days-gone.ts';
import { isErrandDay } from './errand-days.ts';
import { namesEvent } from './leads.ts';
import { isPricedBy } from './priced-by.ts';

// "tbc by saturday": the day of an answer.
const answerBy = pattern(
  '(tbc|tba|confirm|confirmed|confirming|know|decide|hear|hearing|answer|reply|rsvp|pay|order|finalise|finalize|finalised|get back|come back|respond|response|quotation|quote) (in|back)? ((from|to) (you|me|us|them|her|him|all))? by',
);
// "confirm numbers by 10 feb", "they'll confirm on the 3rd", "need final colours by fri": what is to be known by then.
const toldBy = pattern(
  "((confirm|confirms|confirming|finalise|finalize|finalising|decide|decides|deciding|know|rsvp|rsvps|firm up|pay|pays|paying) (<word>){0,3} by|(they'll|she'll|he'll|will|to|gonna|going to) (confirm|decide|know|pay|let (me|us|you) know) (<word>){0,2} on|(need|needs|want|wants|get|gets|send|have|got|give|chase|due) (me|us)? (<word>){0,2} (numbers|headcount|colours|colors|names|list|details|sizes|measurements|deposit|payment|balance|approval|address|rsvps) (in|back|over|confirmed|sorted|to (me|us))? by|(sending|sends|send|emailing|email|emails|posting|forwarding|dropping off|bringing) (me|us|over|through|on)? (<word>){0,2} (pics|pictures|photos|images|moodboard|mood board|inspo|swatch|swatches|fabric|details|address|list|names|colours|colors|contract|brief|timeline|run sheet|runsheet|schedule) (over|through|across|to us)? (by|on|before)?) (the|end of|latest|at){0,2}",
);
// "mothers day is 9 may this year": talk of the calendar.
const calendar = pattern(
  "(day|easter|easter's|sunday|monday|friday|valentines|thanksgiving) (is|'s|falls|early|late|a|on|so|<weekday>|<plain>|<ordinal>|<month>|,){1,5} this year",
);
// "order cut off is mon 8 feb for v day": when the shop takes orders.
const orderWindow = pattern(
  '((order|orders|preorders|bookings) (close|closes|closing|shut|shuts|end|ends|stop|finish|open|opens|opening|cut off|cutoff|cut - off|deadline)|(last|final) orders)',
);
// "kids party sat so i'm off at 2": what somebody here does that day.
const offThen = pattern(
  "(i'm|im|i am|i'll be|ill be|i'll|i gotta|i have to|i need to) (be)? (off|away|leaving|leave|out|late|gone|finishing early|not in|not working|knocking off) (at|by|on|from|early|then|that day|<plain>|<time>|<weekday>|after)",
);
// "off to a wedding fri 12 feb", "i'm at a funeral 11am", "shut friday for a funeral": somebody here goes to it, and makes nothing for it.
const attending = pattern(
  `((i'm|im|i am|i'll be|we're|we are|she's|he's|off|away|out|going|heading|gone|been invited|invited|driving|flying) (off|away|out|going|all day|back|again|<weekday>){0,2} (at|to|for) (a|an|my|her|his|our|the) (<word>){0,2} (${anyOccasion})|(off|away|out|shut|closed|closing|leave) (on|all|at|from|the|this|next|<weekday>|<ordinal>|<plain>|<month>|<time>|day|early|arvo|afternoon){0,4} (for|at|to) (a|an|my|her|his|our) (<word>){0,2} (${anyOccasion}))`,
);
// "need friday morning off", "bank holiday monday we're shut", "got a wedding of my own to go to", "my bday is 3 feb".
const ownTime = pattern(
  "((uni|college|school|term|semester|course|exams|placement|nursery|creche|tafe|kinder|daycare|footy|football|rugby|cricket|netball|pre - season|preseason|season|sale|sales|lent|ramadan|maternity leave|jury duty) (is|are)? (starts|start|starting|finishes|finish|ends|end|begins|back|goes back|breaks up|is back|resumes)|(need|want|wants|taking|take|got|have|having|booked|with) (the|a|that|my|half)? (morning|afternoon|day|arvo|week|weekend|evening|time|<weekday>)? (morning|day)? off|(can't|cant|cannot|won't|wont|not able to|unable to) (be)? (work|in|come in|make it in|do my shift)|(we're|we are|were|shop|shop's|studio|studio's|everyone|everything) (is|are|all|also)? (shut|closed|closing)|no (post|mail|deliveries|delivery|collections|bins|market|buses|trains|school|classes|signal) (then|that day|on|til|till|today)?|my (own)? (birthday|bday|b'day|anniversary|hols|holiday|holidays|exam|exams))",
);
// "kid's party sat at 2, 15 kids", "my lad's 7th birthday on the 12th"
const ownChild = pattern(
  "(kid's|kids'|son's|daughter's|my (kid's|boy's|girl's|lad's|son's|daughter's|niece's|nephew's|little one's|youngest's|eldest's|toddler's)) (<ordinal>|<any>)? (birthday|bday|b'day|party|birthday party|christening|assembly|play|school play|concert|recital|sports day|graduation)",
);
const ownEvent = pattern(
  '((wedding|party|funeral|christening|do|graduation|event) of (my|our) own|(a|my|another) (<word>){0,2} (wedding|party|funeral|christening|do|event) (<any>){0,3} to (go|get|drive|fly) to)',
);
// "happy new year! back 4 jan", "im in the uk 3-7 feb", "mothers day orders close 5 march"
const ownBefore = pattern(
  "((happy|merry|have a good|enjoy) (the|a)?|(on|off on|away on) (his|her|their|my|our|annual){0,2} (holiday|holidays|hols|leave|vacation) (from|until|till|til|to|on)?|(i'm|im|i'll be|i am|we're|she's|he's|are|is|be|am|all|then|,|!|-) back (in|on|from|by|at|the|open|to work)?|(i'm|im|i'll be|i am|she's|he's) (in|up|down|over) (in|at|to|the)? <word> (<word>)? (from|on|for)?|(last|final) orders (for <any>{1,3})? (is|are|by|on)?|((last|final|latest) (date|day)|cutoff|cut off|cut - off|deadline) (for|on|to) (<word>){1,3} (is|:|on)?|(she's|shes|she is|baby's|baby is|i'm|im) due (on)?|(girl|guy|lad|temp|casual|apprentice|trainee|junior|student|intern|starter|help|<bench>) (starts|starting|begins|joins|joining|is starting) (on|from)?|orders (close|closes|closing|shut|end|stop|finish|in by|must be in by) (on|by|for|at)?)",
);
// "can't do sat 13 feb", "not free on the 13th": a day that somebody says no to.
const saysNo = pattern(
  "((can't|cant|cannot|won't|wont|couldn't|not able to|unable to|don't think we can|dont think we can) (do|make|come|attend|manage|work|take|cover) (it|on|for|that|anything|a job|another|jobs|weddings|the){0,2}|(not|isn't|isnt|aren't|arent|no longer) (free|available|around|taking bookings|taking orders) (on|for|at|the|that|all){0,2}|(booked out|fully booked|double booked|booked solid|chockers|full) (on|for|the|all){0,2})",
);
// "valentine's is gonna be mental"
const busyThen = pattern(
  '(is|are|will|gonna|going|to|be|was|so|this|year|always){1,6} (mental|mad|madness|busy|crazy|huge|hectic|chaos|nuts|manic|insane|mayhem|flat out|over|done|quiet)',
);

// "bride free fri 9-1", "couple coming to see samples sat 6 feb", "client in on sat 10am": when somebody can talk or comes by.
const who =
  "(bride|bride's|groom|groom's|couple|client|client's|customer|planner|mum|mother|mum of bride|mob|family|she|he|they|she's|he's|they're|theyre|i|i'm|im|we|we're|florist|rep|owner|photographer|stylist|organiser)";
const comesBy = pattern(
  `${who} (<word>)? (of bride|rang|rang back|says|said|called|emailed|txt|texted|,){0,2} (she's|he's|they're|is|are|'s|was|only|also|now|will be|can be|will|can|would|wants|want|wanted|like|likes|needs|need|asked|hoping|to|be|both){0,4} (free|available|around|busy|coming in|coming by|coming to (see|look|talk|chat|meet|view|choose|pick|try)|come in|come by|come to (see|look|talk|chat|meet)|popping in|popping by|pop in|dropping in|drop in|dropping by|visiting|visit|calling in|calling|calling round|ringing|meeting|meet|chat|talk|catch up|see samples|see the samples|see colours|see ribbons|in on|in at|swinging by)`,
);
// What is handed over then is a day of ours.
const takes =
  /^(collect|collecting|collection|pickup|pick|picking|fetch|deliver|delivery|delivering|wedding|event|ceremony|party|date)('s)?$/;

const before = (reader: Reader, read: DateRead, form: typeof answerBy, reach: number): boolean =>
  form.in(reader.tokens, Math.max(0, read.start - reach), read.start)?.end === read.start;

/** Whether the whole message tells what somebody here does that day. */
export const tellsOwnDay = askedOnce((tokens): boolean => {
  if (offThen.in(tokens, 0, tokens.length) !== undefined) return true;
  if (namesPieces(tokens)) return false;
  if (anyIn([attending, ownEvent, orderWindow], tokens, 0, tokens.length)) return true;
  if (ownChild.in(tokens, 0, tokens.length) !== undefined && !tokens.some(({ means }) => means['material'] !== undefined)) return true;
  // "wedding 20 march, need the day off after it" names the event's all the same.
  return anyIn([ownTime, calendar], tokens, 0, tokens.length) && !namesEvent(tokens);
});

/** Whether the day is one of an answer or of a price, or of somebody who comes by. */
export const dayOfOthers = (reader: Reader, read: DateRead, all: readonly DateRead[]): boolean => {
  if (before(reader, read, answerBy, 6) || before(reader, read, toldBy, 10)) return true;
  if (isPricedBy(reader, read) || isErrandDay(reader, read) || hasGoneBy(reader, read, all)) return true;
  // "back 4 jan", but "pushed back 4 days"
  const [back, moved] = [reader.tokens[read.start - 1]?.text, reader.tokens[read.start - 2]?.text ?? ''];
  if (back === 'back' && !/^(moved|pushed|put|brought|bring|move|push|set|it|date|event|wedding|shifted|bumped)$/.test(moved)) return true;
  if (
    before(reader, read, ownBefore, 7) ||
    before(reader, read, saysNo, 7) ||
    busyThen.at(reader.tokens, read.end, reader.tokens.length) !== undefined
  )
    return true;
  const part = reader.message.parts.find((each) => each.start <= read.start && read.start < each.end);
  const { tokens } = reader;
  const [start, end] = [part?.start ?? 0, part?.end ?? tokens.length];
  const visit = comesBy.in(tokens, start, read.start);
  if (visit === undefined || read.start - visit.end > 6) return false;
  return !tokens.slice(start, end).some(({ text, means }) => takes.test(text) || means['piece'] !== undefined);
};
