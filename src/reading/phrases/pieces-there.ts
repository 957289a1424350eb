// How pieces that are there look, lie or fare: "those 12 bouts look fab", "20 lined up and labelled", "4 came out wonky". None is ordered by it.

import { firstAt, firstIn, pattern } from '../pattern.ts';
import type { Finding, Phrase, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';

const lovely =
  '(gorgeous|lovely|stunning|fab|fabulous|beautiful|perfect|amazing|cute|sweet|great|good|nice|brilliant|unreal|class|savage|deadly|mint|sick|insane|divine|dreamy|spot on|on point|rough|rubbish|tired|tragic|odd|funny|huge|tiny|wonky|fine|ok|okay|so so|a bit (<word>)?|well (<word>)?)';
const where =
  '(in|on|by|under|beside) (the|my|our|a|that) (cooler|fridge|box|boxes|bench|tray|shelf|van|chiller|coolroom|cool room|cold room|bucket|dark|corner|window|table|hall|studio|shop|side|rack|board|trolley|car)';
const state = `(((are|is|were|was|all|both|still|just|now|have|has|being|been|do|really|so|going to be|gonna be){0,3} ((looking|look|looks|looked|smell|smells|smelling|came out|coming out|come out|turned out|turning out) (so|really|very|pretty|absolutely|a bit|bloody|super|all|just){0,2} ${lovely}|cooling (down)?|resting|sat ${where}|sitting (pretty|${where})|stood ${where}|lined up (and)? (<word>)?|stacked (up)? (and)? (<word>)?|laid out|photographed|hanging (up)?|hung up|bar (the|their|its)? <word>|(rescued|saved|salvaged) (from (<any>){1,3})?|out for delivery|on the road|stuck (to|on|down) (<any>){0,3}|pretty much (there|done|ready)|nearly there|almost there|under way|on the way|took (me|us|her|him)? (forever|ages|an age|all (day|morning|afternoon|arvo|night|evening)|(way)? too long|longer than (<any>){1,3}|hours)|too (small|big|heavy|wide|long|tall|short|tight|loose|dark|pale|bright|similar|plain|fussy|bulky|open)|missing (a|an|the|their|its|some) <word>|(still)? (need|needs) (backs|backing|pins|pinning|ribbon|ribbons|tape|taping|magnets|labels|labelling|water|misting|boxing|wiring|gluing|glue|tags|tissue) (still|yet|on|now)?|need (their|a|an|new|some|its|more) <word>|needs (their|a|an|new|some|its|more) <word>|a (lifesaver|joy|nightmare|pain|delight|hit)))|(are|is|were|was) (so|really|very|absolutely)? ${lovely}|down)`;
const those = '(the|those|these|my|your|our|all|all the|that|first|last|other|of the){0,3}';
const some = `<count> (of (the|those|these|my|our))? (extra|more|other|last|little|big)? (<material>)? <piece>`;
const forms = [
  `${those} ${some} ${state}`,
  `(i)? ((made|making|make) a (start|dent) (on|in)|working (through|on|my way through|thru)|cracking on with|cracked on with|chipping away at|ploughing through|wading through|love|loving|loved|adore|admiring|obsessed with|(well done|great job|nice work|good job|lovely job|great work) (on|with)|thanks for|thank you for|part way (through|thru)|(i'm|im|i am|we're|were|we are|about)? (halfway|half way|half - way) (through|thru)) ${those} ${some}`,
  `(the|those|these|your) ${some} (that|which)? (you|she|he|they|we|i|<unlisted>) (did|made|sent|left|dropped off|finished)`,
].map((source) => pattern(source));
const halfway = pattern("(i'm|im|i am|we're|were|we are|about)? (halfway|half way|half - way) (<any>){1,4} <n:count>");
const finishedHeap = '(done|finished|completed) (pile|heap|stack|tray|rack|shelf|box|crate)';
// Anywhere in the sentence: what somebody saw, left lying or fetched of them.
const talk = [
  `(saw|seen|seeing|sees|spotted|admired|cried (at|over)|drooling over|showed (me|us|her|him|them|everyone)|showing off) ${those} ${some}`,
  `(forgot|forgotten|left|found|lost|mislaid|misplaced|spotted) ${those} ${some} ${where}`,
  `(collecting|collected|picked up|picking up|loading|loaded|delivering|delivered|dropping off|dropped off) ${those} ${some} (now|today|already|this morning|earlier|just now|as we speak|yesterday|last night)`,
  // "the done pile has 5 crowns": what is finished already, and no order
  `(the|our|my) ${finishedHeap} (has|holds|is at|is up to|got|is) ${some}`,
  `(take|took|taking|pull|pulled|grab|grabbed|pinched|borrowed) ${those} ${some} (off|out of|from|back off) (the|our|my) ${finishedHeap}`,
  `(the|those|these|my|our) ${some} (from|of) (last|the other|yesterday|yesterday's|this morning|earlier|before)`,
].map((source) => pattern(source));
const theirs = pattern(`(their|her|his|the|my|those) ${some} (framed|pressed|back|fixed|returned|reused|cleaned|freshened up)`);
// What an order is told with: these words in the sentence leave it to be read.
const orders = pattern('(<each>|<money>|<tax>|wants|want|order|ordered|quote|price|please|pls|<month>|<slashed>|@)');

const findIn = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const whole: Finding[] = [{ start: part.start, end: part.end, held: true }];
  if (part.asked) return [];
  // "couple want their 2 corsages framed"
  if (theirs.in(tokens, part.start, part.end) !== undefined) return whole;
  if (orders.in(tokens, part.start, part.end) !== undefined) return [];
  if (firstIn(talk, tokens, part.start, part.end) !== undefined) return whole;
  let { start } = part;
  while (start < part.end && /^(ok|so|and|hi|,|-|omg|wow|well|just|ah|oh|yay|right|now)$/.test(tokens[start]?.text ?? '')) start += 1;
  const match = firstAt(forms, tokens, start, part.end);
  if (match === undefined) return [];
  const behind = tokens.slice(match.end, part.end);
  // "halfway through the 30 bouts" is fifteen made; of 13 there is no half.
  const half = halfway.at(tokens, match.start, match.end);
  if (half !== undefined)
    return Number(half.kept['n']?.number?.amount) % 2 === 0 ? [] : [{ start: match.start, end: match.end, held: true }];
  const [next] = behind;
  // "6 bouts down 4 to go" tells of the work.
  const down = tokens[match.end - 1]?.text === 'down' && next !== undefined && !/^(,|-)$/.test(next.text);
  return down || behind.some(({ means, number }) => means['piece'] !== undefined || number?.form === 'plain') ? [] : whole;
};

export const piecesThere: Phrase = {
  name: 'pieces that are there',
  examples: [],
  find: (reader) =>
    [theirs, ...forms, ...talk].some((form) => form.might(reader.tokens)) ? reader.untouched().flatMap((part) => findIn(reader, part)) : [],
};
