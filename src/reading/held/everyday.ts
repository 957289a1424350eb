// Talk of everyday things: "aprons 14 each from the uniform place", "van's 12 short". The clause that names them is held, and what it goes on with.

import { onlyUs } from '../crew/only-us.ts';
import { opensWithNamedOccasion } from '../dates/named-occasion.ts';
import { occasionNamed } from '../dates/occasion-named.ts';
import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { askedOnce } from '../text/asked-once.ts';
import type { Part, Stretch } from '../text/message.ts';
import { firstWhere, type Token } from '../text/token.ts';
import { tellsOfNone } from '../wearers/heads-named.ts';
import { isOccasion } from '../words/occasion-words.ts';
import { clausesOf } from './clauses.ts';
import { isSaleDay } from './sale-days.ts';

const ourTags = ['piece', 'ingredient', 'material', 'other'];
const event =
  /^(events|weddings|ball|handover|pickup|date|do|bride|bride's|groom|groom's|client|couple|dinner|lunch do|brunch|supper|collects|collect|collecting|collected|delivers|deliver|order|quote|stems|stem|bench|tax)$/;
const work =
  /^(did|made|make|done|finished|complete|completed|wired|taped|boxed|ready|left|go|remaining|broke|broken|snapped|dropped|lost|ruined|crushed|squashed|binned|knocked|damaged|wilted|died|cracked|melted|bent|smashed|wrecked|froze|drooped)$/;
// "12 done before lunch", "20 in the van": when or where, not what.
const times = /^(before|after|by|till|until|since|over|during|then)$/;
const places = /^(before|after|by|till|until|since|over|at|to|then|in|into|on|onto|from|off|for|during|with|near|of)$/;
const counted = pattern('<count> (of)? (more|new|big|other|spare|<unlisted>){0,2} <everyday>');
const subject = pattern(
  '(the|our|my|all|all the)? <everyday> (<unlisted>)? (is|are|was|were|all|been|has|have|got|now|nearly|<count>){0,3}',
);
const spentOn = pattern('(lost|left|dropped|made|paid) <count> (on|in|at|with) (the|my|a)? <e:everyday>');
// "dropped two on the floor", "lost 2 in the cold room": where pieces come to harm.
const harmful =
  /^(floor|fridge|van|car|cold room|cool room|coolroom|cooler|freezer|chiller|boot|shelf|truck|ute|bakkie|heat|heating|sun|rain|draught|heater)$/;

// Said of other people, other money and other things, whatever it is called. Held when no piece of ours is named.
const talk = [
  // "13 people in the wedding" are those who wear flowers.
  '<count> (people|of us|guests|adults|kids) (at|for) (the|a|my|his|her|our) (party|wedding|pub|game|cinema|table|reception|funeral)',
  '<count> (people|of us|guests|adults|kids) in (the|a|my|his|her|our) (pub|game|cinema|table|reception|funeral)',
  '<count> (people|of us|guests|adults|kids) (are|were|all|so far|all told){0,2} (going|coming|invited|turned up|showed up|rsvp|signed up|booked in|booked on)',
  "(i'm|im|i am|she's|he's) (in|out|here|around|working|back|about) (on|all day)? <weekday>",
  '<bench> (starts|starting|joins|joining|begins|leaves|leaving) (on|from)? (the)? (<weekday>|<plain>|<ordinal>|<slashed>|<month>)',
  '(hayfever|pain|headache|day|rating|review|score|food|service|movie|film|meal|holiday) (is|was|:|,)? <count> out of <count>',
  '(interviewing|invited|feeding|seating) <number>',
  // "we lost 3-1 last night"
  '(lost|won|drew|beat|beaten|thrashed|thumped|hammered|tied) (us|them|it|the <unlisted>|<unlisted>)? (by)? <count> - <count>',
  // "its minus 22 out": cold, and nothing lost.
  "(its|it's|it is|it was|was|is|at|reading|reads|says|showing|hit|hits|hitting|to|like|felt|about|only|still|around|set|<everyday>) (about|around|a|only|still|now|a balmy|a chilly){0,1} minus <count>",
  'minus <count> (out|outside|out there|outdoors|with (the)? (wind|windchill)|windchill|degrees|overnight|celsius|in the (shop|shed|van|cooler|coolroom|cool room|fridge|freezer|studio|garage|yard|chiller))',
  '(ran|run|jogged|walked|cycled|swam|hiked|drove|driven) <number>',
  '(chip|pitch|chuck|put|throw) in <number>',
  '(spent|blew|won|wasted|lost <money>) (<count>)? (on|at|in) (the|a|my|his|her)? <unlisted>',
  '<things> (are|is|at|for|cost|costs|were|was|now|@){0,2} <amount> (each|ea|a pop|apiece|a head|per person)',
  '<things> (are|is|all|now|been|have){0,3} (done|made|finished|ready|complete|boxed|packed|left)',
].map((source) => pattern(source));

const isOurs = (token: Token): boolean =>
  ourTags.some((tag) => token.means[tag] !== undefined) || event.test(token.text) || isOccasion(token.text);
const among = (tokens: readonly Token[], { start, end }: Stretch, test: (token: Token) => boolean): boolean =>
  tokens.slice(start, end).some(test);

// Whether the everyday thing only says when or where.
const anchored = (tokens: readonly Token[], { start }: Stretch, at: number, by: RegExp): boolean => {
  const before = /^(the|my|our|a|his|her|their|your)$/.test(tokens[at - 1]?.text ?? '') ? at - 2 : at - 1;
  return before >= start && by.test(tokens[before]?.text ?? '');
};

// "snow queen 12 a bunch": flowers, whatever they are called.
const sold = pattern('<everyday> (<unlisted>)? (are|is|at|@|:|-|,){0,1} <amount> (a|per|/|p) (bunch|bunches|bn|stem|bundle|wrap)');
const isEveryday = (tokens: readonly Token[], clause: Stretch): boolean => {
  const at = firstWhere(tokens, clause.start, clause.end, (token) => token.means['everyday'] !== undefined);
  const ours = (token: Token, index: number): boolean =>
    isOurs(token) && !(token.text === 'order' && tokens[clause.start + index - 1]?.means['everyday'] !== undefined); // "lunch order"
  if (at < 0 || tokens.slice(clause.start, clause.end).some(ours) || occasionNamed.in(tokens, clause.start, clause.end) !== undefined)
    return false;
  if (tellsOfNone(tokens, clause.start, clause.end)) return false;
  if (anchored(tokens, clause, at, times) || sold.in(tokens, clause.start, clause.end) !== undefined) return false;
  if (!among(tokens, clause, (token) => work.test(token.text))) return true;
  const spent = spentOn.in(tokens, clause.start, clause.end)?.kept['e'];
  if ((spent !== undefined && !harmful.test(spent.text)) || counted.in(tokens, clause.start, clause.end) !== undefined) return true;
  const told = subject.in(tokens, clause.start, clause.end);
  const next = tokens[told?.end ?? clause.end]?.text ?? '';
  return (
    told !== undefined &&
    told.start <= clause.start + 1 &&
    !anchored(tokens, clause, at, places) &&
    !/^(broke|knocked|snapped|dropped)$/.test(next)
  );
};

const besidePrice =
  /^(at|for|plus|and|or|so|about|around|all|up|total|the|lot|a|head|pp|per|only|just|is|that's|thats|it's|its|they're|with|on|top|tax)$/;
const isPriceOnly = (tokens: readonly Token[], { start, end }: Stretch): boolean => {
  const words = tokens.slice(start, end);
  return (
    words.some(({ number }) => number !== undefined) &&
    words.every(
      ({ number, kind, means, text }) =>
        number !== undefined ||
        kind !== 'word' ||
        besidePrice.test(text) ||
        ['each', 'taxName', 'taxWord', 'included', 'onTop', 'all'].some((tag) => means[tag] !== undefined),
    )
  );
};

const tellsOfOurs = askedOnce((tokens): boolean => tokens.some((token) => isOurs(token) || work.test(token.text)));
const namesOurs = askedOnce((tokens): boolean => tokens.some((token) => ourTags.some((tag) => token.means[tag] !== undefined)));
const ofOrder = pattern('(<piece>|<ingredient>)');
const everyday = pattern('<everyday>');
/** The stretches that tell of everyday things. */
export const everydayStretches = (reader: Reader, part: Part): Stretch[] => {
  const { tokens } = reader;
  const other = ofOrder.might(tokens) ? undefined : firstIn(talk, tokens, part.start, part.end);
  if (other !== undefined) return [part];
  if (everyday.in(tokens, part.start, part.end) === undefined) return [];
  if (onlyUs(reader, part) !== undefined) return [];
  const clauses = clausesOf(reader, part);
  if (opensWithNamedOccasion(reader)) return [];
  const alone = !tellsOfOurs(tokens);
  const named = namesOurs(tokens);
  const held: Stretch[] = [];
  for (let index = 0; index < clauses.length; index++) {
    const clause = clauses[index] as Stretch;
    if (!isEveryday(tokens, clause) || isSaleDay(reader, clause)) continue;
    let { end } = clause;
    // "staff pizza: 3 large, $18 each incl tax": what they cost, where no piece is named.
    const counts = among(tokens, clause, ({ number }) => number !== undefined);
    if (!named && counts)
      while (clauses[index + 1] !== undefined && isPriceOnly(tokens, clauses[index + 1] as Stretch)) end = clauses[++index]?.end ?? end;
    while (alone && clauses[index + 1] !== undefined) end = clauses[++index]?.end ?? end;
    held.push({ start: clause.start, end });
  }
  return held;
};
