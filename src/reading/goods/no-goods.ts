// What speaks of money and is no price of goods: wages, bills, orders of pieces, and people with a plant's name.

import { otherThings } from '../held/more-signs.ts';
import { firstIn, formOf, pattern } from '../pattern.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { anyOccasion, occasions } from '../words/occasion-words.ts';
import { sundryHeads } from '../words/piece-words.ts';
import { wordList } from '../words/word-list.ts';
import { openShare } from './open-share.ts';
import { sellersVan } from './sellers-van.ts';

// "we sell roses at 3.50": what others pay us.
const weSell = pattern('(we|i|us) (sell|charge|retail|bill|sold|charged)');
const recipeWords = pattern('(each one|each piece|per <piece>|recipe|each <piece>)');
const talk =
  /^(could|would|might|it'll|they'll|we'll|it's|they're|we're|coming|arriving|landing|arrive|arrives|landed|collecting|collect|dropping|order|orders|short|missing|came|bay|lunch|coffee|coffees|rent|invoice|parking|petrol|diesel|van|van hire|wage|wages|bill|insurance|salary|ticket|tickets|fine|deposit|rates|phone|electric|gas|hoover|cake|pizza|sandwiches|milk|loan|tip|biscuits|delivery|courier|freight|fee|callout|fuel|spent|spend|ended|paid|owes|owe|refund|refunded|tea|teas|takeaway|kitty|raffle|float|till|hours|hour|hr|ph|budget|stopping|stopped)$/;

// "two helpers sat - 9 to 1", "labour 600 a day - 3 persons": hands and their hours.
const handsAtWork = /^(helpers?|labou?r|casuals?|freelancers?|ppl|people|staff|(.+ )?of us)$/;

// "can someone feed the meter, its 2 quid till 4"
const parking = pattern('(feed|feeding|pay|top up) the (meter|parking|ticket machine)');

/** "7 for the lads at 11" prices no goods. */
const forPeople = pattern('for (the|our|my|his|her) (<role>|<owner>|<bench>)');

// "rose left at 4.30", "poppy is in at 9": somebody with a plant's name.
const leaving = pattern('leaves (here)? (at|around|about|before|after|by) (<plain>|<time>)');
const someone = pattern(
  "(<ingredient>) (is|was|will|has|'s)? (be)? (left|leaves|starts|arrives|leaving|back|finishes|meeting|starting|finishing|off|in|out|here|coming|comes|due|called|rang|owes) (here|in|back|today)? (at|me|by|around|about|from|on)?",
);
// "22 pieces, 14.50 each", "16 pieces types tbc $22 each": an order whose kinds nobody has named yet.
const someOrder = pattern(
  '<count> (pieces|pcs|of them|items) (<material>)? (types|type|kinds|kind|mix|mixed|assorted|tbc|tba|unsure|yet|not|decided|known|,){0,5} (,|-|@|at)? (<amount> <each>|<each> <amount>)',
);
// "16 pieces for the Okafor naming do, £13 each": whose they are, and no goods of that name.
const forSomebody = pattern(
  `<count> (of them|ones)? (<material>)? (<piece> (<material>)? for (the|a|an|our|my|her|his|their|this) <filler>|for (the|a|an|our|my|her|his|their|this) <word>{0,3} (${anyOccasion}|do|dos|thing|bash|job|gig|shindig|ball|dinner|lunch|breakfast|launch|show|meal|service))`,
);
// "gala wants 50 pcs", "sixty pieces for Dana": who has asked for them, or whose they are, sells nothing.
const nosOf = '(about|around|roughly|maybe|say|some|another|abt){0,2} <count> (<material>)? (pieces|pcs|pc|items|nos|units|pins|of them)';
const askedFor = pattern(
  `((want|wants|wanted|wanting|need|needs|needed|ordered|orders|ordering|after|like|take|takes|taking|booked|having|we|she|they|he) ${nosOf}|(asked|asking|asks|looking) (for|at) ${nosOf}|${nosOf} (<all>)? for (the|a|an|our|my|her|his|their|this)? <unlisted>)`,
);
/** Whether these words tell what somebody has asked for, and price no goods. */
const isAskedFor = (reader: Reader, start: number, end: number): boolean => askedFor.in(reader.tokens, start, end) !== undefined;
const forName = pattern('(for|to|from) (the|our|my|her|his|their|a|an)?');
/** "50 pins for the Okafor do": a name no list knows behind "for" is who they are for. Behind a price it may be goods: "£4 for magnets". */
const isForName = ({ tokens }: Reader, start: number): boolean =>
  [start - 1, start - 2].some(
    (at) => forName.at(tokens, at, start)?.end === start && tokens[at - 1]?.number?.form !== 'money' && tokens[at - 1]?.text !== 'price',
  );
// "50 pins for the Okafor do, £2 each": pins that are bought, or pin corsages.
const somePins = pattern(
  '(<count> pins for (the|our|my|her|his|their|a|an)? <unlisted>|(wants|needs|ordered|wanted|is after) (about|around)? <count> pins)',
);
export const pinsFor = ({ tokens }: Reader, { start, end }: Part): Finding | undefined =>
  somePins.in(tokens, start, end) === undefined ? undefined : { start, end, held: true };
/** Whether a name that no list knows is somebody's, by the words around it. */
export const isSomeones = (reader: Reader, start: number, end: number, name: number): boolean =>
  forPeople.in(reader.tokens, start, end) !== undefined || isAskedFor(reader, start, end) || isForName(reader, name);
const someones = new Set([
  ...occasions,
  ...wordList('ball, do, hotel, school, club, committee, office, church, company, team, choir, college'),
]);
// "16 pieces, types tbc, $22 each"
const somePieces = pattern('(about|say)? <count> <piece> (<material>)? (,|-|at|@|:|/)');
// "corsage wristlets, box of 24, $31.20": sold by the box, and no number of them before the name.
const soldBoxed = pattern(
  '<piece> <piece> (,|-|:)? ((a|per)? <pack> (of|x|/)? <count>|<count> (-)? <pack>) (,|-|:|for|at|@)? <p:amount> (<included>|<onTop>|<tax>|plus|\\+|,){0,3}',
);
const boxedBehind = pattern(
  '<piece> <piece> (,|-|:)? <p:amount> (a|per|for|/|for a|,|-)? (<pack> (of|x|/)? <count>|<count> (-)? <pack>) (<included>|<onTop>|<tax>|plus|\\+|,){0,3}',
);
const boxed = ({ tokens }: Reader, start: number, end: number): boolean => {
  const match = firstIn([soldBoxed, boxedBehind], tokens, start, end);
  return (
    match !== undefined &&
    (match.kept['p']?.number?.form === 'money' || /[.,]\d\d$/.test(match.kept['p']?.text ?? '')) &&
    (match.start === start || (match.start - 1 === start && tokens[start]?.number === undefined)) &&
    match.end === end
  );
};
const wearable = (reader: Reader, start: number, end: number): boolean =>
  !boxed(reader, start, end) &&
  (somePieces.at(reader.tokens, start, end) !== undefined ||
    reader.tokens.slice(start, end).some((token, offset) => {
      if (token.means['piece'] === undefined || token.means['piece'] === 'unspecified' || token.means['ingredient'] !== undefined)
        return false;
      return !sundryHeads.has(reader.tokens[start + offset + 1]?.text ?? '');
    }));

// "statice pick up at 9 fri": when it is fetched, and not what it costs.
const fetchedAt = pattern(
  '<ingredient> (pick up|pickup|pick|pick ups|collection|collect|drop|drop off|dropoff|run|arrival|market run|hand over|handover) (up|off)? (at|from|by|for|around|about|is at|is)? <plain> (am|pm|ish|sharp|on|this|next){0,2} (<weekday>|tomorrow|tmrw|today|<month>|<ordinal>)',
);

const selling = formOf(
  '(now|only|just)? (doing|selling|charging|letting|asking|offering) ((me|us)? (have|take)? (it|them|those|these|that)? (go)? (for|at) <amount>|<money>|<amount> ((a|per|/) <pack>|<each>))',
);
/** Whether a part that speaks of money prices no goods. */
export const noGoods = (reader: Reader, { start, end }: Part, known: boolean): boolean => {
  const tokens = reader.tokens.slice(start, end);
  if (tokens.length > 120 || wearable(reader, start, end)) return true;
  // "ranunculus coming in at 1.10 a stem" is a price.
  const comes = (at: number): boolean => tokens[at + 1]?.text === 'in' && tokens[at + 2]?.text === 'at';
  // "todays rates: rose 18": the market's, where a flower is named.
  const marketRates = (at: number): boolean => known && tokens[at]?.text === 'rates';
  const least = (at: number): boolean => tokens[at]?.text === 'order' && /^(min|minimum)$/.test(tokens[at - 1]?.text ?? '');
  // "ruscus was 15, they're doing it for 11.80"
  const sells = (at: number): boolean => known && tokens[at]?.text === "they're" && selling.at(tokens, at + 1) !== undefined;
  const ofSeller = ({ text }: Token): boolean => text === 'van' && known && sellersVan(reader.tokens, start, end) !== undefined;
  if (
    tokens.some(
      (token, at) =>
        (token.kind === 'word' &&
          talk.test(token.text) &&
          !comes(at) &&
          !least(at) &&
          !marketRates(at) &&
          !sells(at) &&
          !ofSeller(token)) ||
        token.means['other'] !== undefined,
    )
  )
    return true;
  if (weSell.in(reader.tokens, start, end) !== undefined || fetchedAt.in(reader.tokens, start, end) !== undefined) return true;
  if (
    [recipeWords, openShare].some((form) => form.in(reader.tokens, start, end) !== undefined) ||
    tokens.some(({ text }) => handsAtWork.test(text))
  )
    return true;
  const leaves = tokens.some((token, at) => token.text === 'leaves' && leaving.at(reader.tokens, start + at, end) !== undefined);
  if ((leaves || someone.at(reader.tokens, start, end) !== undefined) && !tokens.some((token) => token.means['pack'] !== undefined))
    return true;
  if (known) return false;
  // "team of 4 sat from 9 to 1": hands and their hours.
  if (tokens.some((token) => token.means['bench'] !== undefined || /^(crew|team|roster|shift)$/.test(token.text))) return true;
  // "lauren's in tues 9-3, kim weds 9-12": days and hours of people.
  if (tokens.some(({ means }) => means['weekday'] !== undefined) && !tokens.some(({ number }) => number?.form === 'money')) return true;
  return (
    tokens.some((token) => token.means['month'] !== undefined || someones.has(token.text)) ||
    isAskedFor(reader, start, end) ||
    someOrder.at(reader.tokens, start, end) !== undefined ||
    forSomebody.in(reader.tokens, start, end) !== undefined ||
    otherThings.in(reader.tokens, start, end) !== undefined ||
    parking.in(reader.tokens, start, end) !== undefined
  );
};
