// What makes a day the event's: a word for the event, someone marrying, pieces wanted by then, or whoever gives the day.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { askedOnce } from '../text/asked-once.ts';
import { withoutOwner } from '../text/owners.ts';
import { besideOccasions, isOccasion, occasions } from '../words/occasion-words.ts';
import { wordList } from '../words/word-list.ts';
import type { DateRead } from './date-read.ts';
import { occasionNamed } from './occasion-named.ts';

export const leads = new Set([
  ...occasions,
  // "viewing friday" may be of a house, "vigil" of anything.
  ...besideOccasions.filter((word) => !/^(registry|removal|viewing|vigil|bachelor|bucks)$/.test(word)),
  ...wordList(`
  ball, dance, date, bride, needed, wanted, launch, do, show, weddings, wed, wdding, weding, evnt, photos, shoot,
  sometime, marrying, married, bridal, couple, gig, bash, partnership, marry, hitched, happening, renewal, marries, weds, birthdays, ceremonies
`),
]);
// Words that are an event's only as somebody's own: "the service is on saturday", "a dinner tomorrow week".
const mild =
  'brunch|concert|conference|dinner|exhibition|high tea|kitchen tea|tea|long lunch|lunch|mass|opening|opening night|concert|parade|play|polo|service|vows|blessing|registry office|registry|speech day|naming day|sweet sixteen|sweet 16|photos|speeches|job|order|outing|rehearsal dinner|birthday|<ordinal> birthday|competition|pageant|parade|vigil|viewing|church|carnival|ball|cup day lunch|vow renewal';
const own = "(the|a|an|their|her|his|client's|clients|our|big|school|charity|family|memorial|church|gala|garden|mum's|this)";
const forms = [
  pattern(`${own} (<word>)? (${mild}) (is|on|is on|'s|,|:|-|will be|falls)`),
  pattern(`for (a|the|an|their|her|his|this) (<word>)? (${mild})`),
  pattern(`(<ordinal>|memorial|school|charity) (<word>)? (${mild})`),
  // "day after tomorrow, rehearsal dinner, use silks": what it is to be made of makes it a job.
  pattern(`(${mild}) <any>{0,4} (,|-|;) (please|pls|just|so){0,2} (use|using|all|everything|all in) (in)? <material>`),
  pattern(`(use|using) <material> (,|-|;|for) (the|a|her|their)? <any>{0,3} (${mild})`),
  pattern('(client|bride|groom|couple|customer|planner|family|they|she|he) (says|said|confirmed|has confirmed|have confirmed|wants)'),
  pattern(
    "(client's|clients|bride's|brides|groom's|couple's|she's|shes|he's|hes|they're|theyre|planner's|mum's) (now)? (saying|telling (me|us)|adamant|insisting|sure)",
  ),
  pattern(
    "(they|they're|theyre|she|she's|shes|client|bride|couple|we|i|who|all|everyone)? (need|needs|want|wants|required|needing|wanting) (them|these|those|em|' em|it all|all this|this lot|the lot|all of them|everything|flowers)",
  ),
  pattern(
    "(they|couple|client|they're|theyre|they are) (want|wants|get married|tie|going for|picked|chose|settled|after|go for|went for|decided|pick|on the)",
  ),
  occasionNamed,
  pattern('vows (at|@|are|is|from|on|:|-){0,2} (<time>|<plain>|half|quarter|noon|<weekday>|<slashed>)'),
  pattern('(when|day|occasion) (:|-|=)'),
  pattern('(takes|taking|take) place'),
  pattern('(falls|fall) on'),
  pattern('to be ready (by|for|on)?'),
  pattern('big day'),
  // "the order is for saturday", not "order roses saturday"
  pattern('(order|job) (is|for|due|on|date|day)'),
];
const handOver = pattern(
  "(pickup|pick-up|handover|collection|delivery|pickup's|handover's|collection's|delivery's|deliver|deliveries|delivering|delivered|delivers|collect|collecting|collects|collected|(pick|picks|picked|picking) up|(drop|drops|dropped|dropping) off|(hand|hands|handing) over) ((at|by|from|around) <plain>|is|are|on|at|time|date|day|will be|by|for|them|these|it|it all|everything|:|-|,|to|the|from|shop|hotel|studio|venue|church|client|bride|home|lodge|inn|barn|hall|winery|vineyard|club|estate|farm|manor|castle|chapel|marquee|pub|school|resort|pavilion|gallery|homestead|villa|restaurant|now|moved|changed|been|has|pushed|<time>){0,5}",
);
// "handover for the lodge is next tuesday": wherever it goes.
const handedTo = pattern("(handover|hand over|handover's) (for|to|at) (the|our|a)? <word>{1,3} (is|'s|will be|on|at|:|-|,){0,2}");
const handBehind = pattern(
  "(,|-|and|with|for|they|they'll|client|bride|she'll){0,2} (will)? ((pick|picks|picking) up|(drop|drops|dropping) off|(hand|hands|handing) over) (is|it is|at|by|from|time|around|about|<time>)",
);
// "the drop is sat 9am": with its hour beside it.
const dropAhead = pattern('(drop|drop off|drop-off) (time)? (is|:|-|will be|now) (on|at|this)?');
const isDrop = ({ tokens }: Reader, read: DateRead): boolean =>
  tokens.slice(read.end, read.end + 3).some(({ number }) => number?.form === 'time') &&
  [0, 1].some((by) => dropAhead.at(tokens, by, read.start)?.end === read.start);
// "this sat, 11am pick up", "sunday 8am drop" and no more: "sat 11am pick up wire" fetches goods.
const hourThenHand = pattern(
  '(,|-|and|at|@|for|about|around){0,2} <time> (for|client|bride|is|-|,)? ((pick|picks|picking) up|(drop|drops|dropping) off|drop|(hand|hands|handing) over)',
);
const handEnds = /^([,;.!)(-]|at|pls|please|thanks|ta|x)$/;
// "jo could do 10 tomorrow" is no party.
const doing =
  /^(can|could|will|would|should|must|might|may|to|we|i|you|they|he|she|ll|we'll|i'll|gonna|gotta|can't|cant|won't|wont|don't|dont|and|or|who|please|just)$/;

// "service is a week on friday": at the head of the message, with the day right behind it.
const headed = pattern(
  "(mass (is|on|,){0,2}|(the|our|her|his|their)? (church|memorial|carol|school|dawn|funeral)? (service|vows|mass|blessing|committal|burial|speech day|open day|prize night|concert|conference|exhibition|opening night|high tea|kitchen tea|rehearsal dinner) (is|are|'s|will be|now|falls|:|-|,|on|at){1,3}|(the|their|her|his)? (church|chapel|cathedral|mosque|temple|mandir|gurdwara|synagogue|registry|registry office|crem|crematorium) (is|'s|will be|now|:) (on|at|half|quarter|past|to|<time>|<plain>){0,4})",
);

const saysOfEvent = askedOnce(
  (tokens): boolean =>
    anyIn(forms, tokens, 0, tokens.length) ||
    tokens.some(
      (token, index) =>
        token.kind === 'word' &&
        leads.has(withoutOwner(token.text)) &&
        token.means['weekday'] === undefined && // "roses landing weds"
        (token.text !== 'do' || !doing.test(tokens[index - 1]?.text ?? '')),
    ),
);

/** Whether the message says that its day is an event's. */
export const isLed = (reader: Reader, reads: readonly DateRead[] = []): boolean => {
  const { tokens } = reader;
  if (saysOfEvent(tokens)) return true;
  // Handing over is said of many things, so its day must follow at once.
  const handed = (read: DateRead): boolean =>
    [1, 2, 3, 4, 5, 6, 7].some((by) =>
      [handOver, handedTo].some((form) => form.at(tokens, read.start - by, read.start)?.end === read.start),
    );
  const behind = (read: DateRead): boolean =>
    tokens
      .slice(read.end, read.end + 6)
      .some((token) => /^(pickup|pick-up|handover|collection|collect|collecting|delivery|deliver)$/.test(token.text));
  // "sat week, pick up at 11am", but not "friday pick up the milk"
  const picked = (read: DateRead): boolean => {
    if (handBehind.at(tokens, read.end, tokens.length) !== undefined) return true;
    const hour = hourThenHand.at(tokens, read.end, tokens.length);
    const next = tokens[hour?.end ?? 0];
    return hour !== undefined && (next === undefined || next.kind === 'line' || handEnds.test(next.text));
  };
  const head = headed.at(tokens, 0, tokens.length);
  return reads.some((read) => read.start === head?.end || handed(read) || behind(read) || isDrop(reader, read) || picked(read));
};

export const isCompound = askedOnce((tokens): boolean => occasionNamed.in(tokens, 0, tokens.length) !== undefined);

// Words of everyday talk too, and those that happen while the shop is shut for them.
const notTheEvent =
  /^(funeral|memorial|viewing|vigil|removal|races|awards|confirmation|retirement|dedication|civil|registry|festival|expo|engagement|shower|naming|wake|regatta)('s)?$/;
/** Whether the event itself is named. */
export const namesEvent = askedOnce((tokens): boolean =>
  tokens.some(({ text }) => (isOccasion(text) && !notTheEvent.test(text)) || /^(handover|date|date's)$/.test(text)),
);
