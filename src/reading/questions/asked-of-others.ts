// Questions in which nothing of ours is named and something else is: "how much is a taxi", "what time do you finish", "can I leave at 4".

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { withoutOwner } from '../text/owners.ts';
import { isNameless, type Token } from '../text/token.ts';
import { isOtherThings } from '../words/other-things.ts';
import { wordList } from '../words/word-list.ts';

const pointers = /^(a|an|the|those|these|my|your|his|her|its|our|their)$/;
// What may stand behind "the" in a question about an order, though no list of the trade has it.
const joining =
  /^(just|only|me|us|for|to|in|on|at|of|and|or|are|is|be|do|can|will|would|all|now|then|too|also|already|still|left|done|again|yet|up|out|off|so|by|with|from|if|when|we|i|they|you|that|very|absolute|there|here|ready|over|round|need|needs|needed|go|going|meant|supposed|before|after|until|till|finished|boxed|delivered|wanted)$/;
const familiar = new Set(
  wordList(`
  price, prices, pricing, rate, cost, quote, figure, figures, number, numbers, amount, sum, wedding, weddings, event, events, gala, ball, formal,
  prom, party, do, dance, function, ceremony, reception, handover, pickup, collection, delivery, client, clients, couple, customer, planner,
  venue, deposit, job, jobs, order, orders, one, ones, day, days, date, dates, time, week, weekend, month, morning, afternoon, evening,
  biggest, largest, sleeps, rundown, update, start, deadline, latest, earliest, last, first, next, other, big, small, whole, full, entire, same, new, current, right, rest, end,
  money, margin, profit, markup, labour, labor, wholesale, wholesaler, market, cut, damage, spend, difference, bench, board, boards,
  list, lists, calendar, plan, schedule, diary, book, card, sheet, flowers, stems, foliage, working, workings, maths, sums, breakdown,
  details, actual, real, final, summary, story, score, count, tally, total, totals, recipe, mix, bit, way, own, max, maximum, minimum, least, most, cheapest,
  lowest, bill, buying, shopping, flower, stem, wholesale, recap, invoice, formula, family, best, best man, wearers, people, hands, hour, hr, pace, usual, making, wiring, taping, drying, cutoff,
  make, turnaround, look, dried, cooler, fridge, coolroom, magnets, shed, workshop, garage, storeroom, store, door, hotel, church, marquee, studio, studio's, team, chance, lads
`),
);
const named =
  /^(wedding|weddings|event|job|order|party|gala|do|ball|prom|formal|function|dance|ceremony|reception|one|ones|quote|flowers|florals|batch|stems|pieces)$/;

const personal = [
  '(when|what time|what day|how late|how early) (are|do|did|will|is|does|r) (you|she|he|u|everyone|everybody|<unlisted>) <any>{0,2} (start|starting|finish|finishing|back|home|in|off|free|leave|leaving|landing|land|go|going|get in|getting in|start work|knock off|eat|eating|coming|arrive|arriving|shut|close|open)',
  '(can|could|may|shall|should) (i|he|she) (leave (at|by|early|now)|go|finish|borrow|pop|nip|swap|knock off|head|park|clock off|skip|sit|sleep)',
  '(when|what time) (do|does|is|will|did) (the)? <unlisted>{1,2} (go|close|shut|open|arrive|come|finish|end|leave|land|collect|go back|get in|get here)',
  '(can|could|may|shall) (i|he|she) (start|begin|finish|come in|be in|get in|stop) (at|by|after|before|around) (half|quarter)? <number>',
  "(seen|see|borrowed|borrow|taken|took|moved|has|have|where is|wheres|where's|got) (the|my|our|a) ladder",
  'how many (likes|views|comments|shares|times)',
  '(how far|how long) <any>{0,3} (drive|walk|trip|journey|queue|wait|flight)',
  'how far (away|off|out)? (are|r) (you|u|they|ya|ye)',
  'how (old|tall|heavy|hot|cold|deep)',
  'how many hours (have|has|did|do|are) (you|u|she|he|i) <any>{0,3} (this week|last week|today|got|work|worked|working|in)',
  'why (is|are|was) (it|there|he|she|everyone|everything) (so|always|no|still|never) <any>{0,8}',
  'why (is|are) there <any>{0,8}',
].map((source) => pattern(source));

// "the hallam-vey wedding", "the o'neill do": where a name of several parts ends.
const pastName = (tokens: readonly Token[], index: number): number => {
  let last = index;
  while (/^[-'/&]$/.test(tokens[last + 1]?.text ?? '') && tokens[last + 2]?.kind === 'word') last += 2;
  return last;
};

const strange = (token: Token | undefined, test: (token: Token) => boolean): boolean =>
  token !== undefined && test(token) && !familiar.has(token.text);

const orderEnds = pattern('(order|ordering|orders) (cut off|cut - off)');

/** Whether the question is about other things or other people. */
export const askedOfOthers = (reader: Reader, start: number, end: number): boolean => {
  const { tokens } = reader;
  if (anyIn(personal, tokens, start, end) && orderEnds.in(tokens, start, end) === undefined) return true;
  for (let index = start; index < end - 1; index++) {
    const next = tokens[index + 1];
    // "how many weddings", and not "how many miles"
    if (tokens[index]?.text === 'how' && next?.text === 'many' && strange(tokens[index + 2], isOtherThings)) return true;
    if (!pointers.test(tokens[index]?.text ?? '') || next?.kind !== 'word' || next.number !== undefined) continue;
    if (!isNameless(next) || joining.test(next.text) || familiar.has(withoutOwner(next.text))) continue;
    if (
      !tokens
        .slice(index + 2, Math.min(end, pastName(tokens, index + 1) + 3))
        .some((token) => named.test(token.text) || token.means['piece'] !== undefined)
    )
      return true;
  }
  return false;
};
