// The day is still to come: "its end of feb sometime, will get the day", "early may, not sure which day yet". Nothing is taken back or asked by it, and a day in it is when we shall hear.

import { firstIn, type Match, pattern } from '../pattern.ts';
import { askedOnce } from '../text/asked-once.ts';
import type { Token } from '../text/token.ts';

const who =
  "(i|we|they|she|he|you|bride|groom|client|couple|planner|mum|mob|family|venue|church|it|i'll|we'll|they'll|she'll|he'll|ill|theyll|i've|they've|will|'ll|gonna|going to|to|need to|have to|can|let me|still|just|yet|also|got){0,4}";
const exact = '(exact|actual|right|proper|final|full|precise|real|specific)?';
const theDay = `(the|a|an|that|which|what|on the|of the|for the|about the|re|me the|us the|you the|u the|her the)? ${exact} (day|date|days|dates|weekend|saturday)`;
const when =
  "(off|from|with|by|once|when|on|this|in|at|for) <any>{1,4}|<weekday>|tomorrow|tmrw|tonight|today|later|soon|asap|next week|this week|yet|in due course|then|tho|though|it is|its|it's";
const forms = [
  `${who} (get|getting|find out|finding out|confirm|confirming|say|saying|decide|deciding|pick|picking|choose|choosing|advise|check|checking|ask|asking|know|send|text|ring|chase|chasing|nail down|pin down|sort|sort out|hear|tell you|tell us|waiting on|waiting for|update (you|u) (with|on)|get back (to (you|u|ya|me|us))? (with|w|on|about|re)?|come back (to (you|u))? (with|w|on)?|let (you|u|ya|us|me|ye) know) ${theDay} (${when}){0,3}`,
  `${who} (haven't|havent|hasn't|hasnt|not|aren't|arent|don't|dont|doesn't|doesnt) (sure|picked|set|decided|got|chosen|fixed|booked|settled|know|confirmed|agreed|a hundred percent) (on|of)? ${theDay} (${when}){0,2}`,
  `(no|not) ${exact} (a|the)? (day|date) (set|picked|fixed|booked|confirmed)? (yet|so far|as yet|at the mo|atm)?`,
  `${exact} (day|date) (is)? (to follow|tbc|tba|tbd|to come|to be confirmed|pending|later|not (set|fixed|picked|decided|known) (yet)?|still open|unknown|tb confirmed)`,
  "(they're|theyre|she's|he's|bride|couple|church|venue|it's)? (still|just)? (waiting (on|for) (the|a|her|his|their|our)? <any>{1,2}|(still)? (choosing|deciding|to decide|tbc|tba|tbd)|(will|to|i'll|we'll|they'll) (firm (it)? up|confirm)|nothing (fixed|set|booked|confirmed|firm) (yet)?|or thereabouts|thereabouts|or so|ish)",
].map((source) => pattern(source));

/** Where it is said that the day will be told later. */
export const dayToCome = (tokens: readonly Token[], start: number, end: number): Match | undefined => firstIn(forms, tokens, start, end);

/** Where the message first says so. */
export const saysDayToCome = askedOnce((tokens) => dayToCome(tokens, 0, tokens.length));
