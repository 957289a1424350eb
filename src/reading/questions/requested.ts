// What looks like a question and asks for something to be done: an order, an errand, word to be sent later.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { listForDay, listOfDay } from './bench.ts';

// Requests that look like questions: "can you make it 45".
export const request = pattern(
  '(can|could|would|will) (you|u|ya|someone|we please) (please|pls|plz|just|also)? (make|change|update|add|put|bump|set|log|note|swap|drop|move|record|mark|take|knock|correct|fix|switch|remove|order|bring|get|grab|pass|check|price|quote|cost)',
);

// "can you make 20 bouts by friday?": whether they can be ready in time is what is asked.
const inTime = pattern(
  '(can|could|would|will) (you|u|ya|ye) (please|pls|plz|possibly)? (make|do) (us|me|them|her|him)? (about|around|another|all|the)? <count> (more|x)? (<material>)? (<word>)? <piece> (<any>){0,6} (by|before|in time|for tomorrow|for today)',
);
export const asksInTime = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = inTime.in(tokens, start, Math.min(end, start + 20));
  return (
    match !== undefined &&
    !tokens.slice(match.start, end).some(({ number, means }) => number?.form === 'money' || means['each'] !== undefined)
  );
};

// "could you do 11 buttonholes at £7.50 and 3 corsages at £14?": in a thread without an order, that is the order.
const wanted = pattern(
  '(can|could|would|will) ((you|u|ya|ye|yous|we) (please|pls|plz|possibly)? (do|make|manage|supply)|we (please|pls)? (price|quote|cost) (up|out|for)?)',
);
const counted = pattern('(<count> (x|of|no|nos|off|pcs)? (<material>)? <piece>|<piece> (x|:|-) <count>)');
export const ordersByAsking = ({ tokens, context }: Reader, part: Part): boolean => {
  const asked = context.pieces.length > 0 ? undefined : wanted.in(tokens, part.start, Math.min(part.end, part.start + 7));
  const quoted =
    asked !== undefined && tokens[asked.start + 1]?.text === 'we' && !/^(do|make|manage|supply)$/.test(tokens[asked.end - 1]?.text ?? '');
  // "can we do 35 at 11.50 plus tax" orders; with a question mark one kind alone is asked about.
  const ofUs = part.asked && tokens[(asked?.start ?? 0) + 1]?.text === 'we';
  const first = asked === undefined ? undefined : counted.in(tokens, asked.end, quoted && !part.asked ? tokens.length : part.end);
  if (asked === undefined || first === undefined) return false;
  if (quoted || counted.in(tokens, first.end, part.end) !== undefined) return true;
  const says = (...tags: string[]): boolean =>
    tokens.slice(first.end, part.end).some((token) => tags.some((tag) => token.means[tag] !== undefined));
  return !ofUs && says('taxName', 'taxWord') && tokens.slice(first.end, part.end).some((token) => token.number !== undefined);
};

// "can someone water the 12 buckets": asked of people, not of the bot.
const ofPeople = pattern(
  "(can|could|would|will|can't|cant) (someone|anyone|somebody|anybody|one of you|some one|any of you) (please|pls|plz)? <do:word>",
);
// "could someone post the list for friday": anyone who has it, and the bot does.
const ownList = pattern(`(${listForDay}|${listOfDay})`);
const tellsMe = /^(tell|remind|show|know|say|check|confirm|work|see|find|remember|explain|send|price|quote)$/;
export const asksPeople = (reader: Reader, part: Part): boolean => {
  const people = ofPeople.in(reader.tokens, part.start, Math.min(part.end, part.start + 8));
  // "how many bouts could somebody get for $500" asks about them.
  const about = people !== undefined && reader.tokens.slice(part.start, people.start).some(({ text }) => /^(how|what|which)$/.test(text));
  if (people !== undefined && ownList.in(reader.tokens, people.start + 1, part.end) !== undefined) return false;
  return people !== undefined && !about && !tellsMe.test(people.kept['do']?.text ?? '');
};

// "let me know when 12 are done": asked of people, for later.
export const forLater = pattern(
  "(please|pls|just|,){0,2} (let|tell) (me|us) (know)? (when|if|once) (you|u|you're|you've|<number>|she|he|it|anything|anyone|there|theres|ready|done|finished|the <any>{1,2} (arrive|arrives|are done|is done|are ready|is ready|come|comes|land|lands|get here|turn up))",
);
