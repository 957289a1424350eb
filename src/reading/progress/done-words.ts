// The words for finished, for begun but not finished, and for what is only intended.

import { wordList } from '../words/word-list.ts';

// "on the finished pile", "in the done box"
const heaps = ['on the finished', 'on the done', 'in the finished', 'in the done', 'on the completed', 'in the completed']
  .flatMap((where) => ['pile', 'heap', 'stack', 'tray', 'rack', 'shelf', 'box', 'crate'].map((heap) => `${where} ${heap}`))
  .join('|');
export const doneWord = `${heaps}|in the boot|in the bakkie|in the ute|loaded up|under the belt|under my belt|under our belt|in the can|on the tray|in the tray|on ice|in the bucket|all set|in the esky|in the chilly bin|in the cold room|done|made|finished|completed|complete|ready|boxed|packed|sorted|in the box|in the fridge|in the cooler|in the chiller|boxed up|finito|in the bag|all done|boarded|on the board|packed up|bagged|good to go|ticked off|wrapped up|off the bench|over and done|in boxes|done and dusted|knocked over|dusted|in box|off my bench|off our bench|off bench|on the rack|in trays|on trays|in the coolroom|in coolroom|in the cool room|in the walk-in|in chiller|in cooler|in fridge|klaar|ho gaya|ho gaye|ho gayi|hogaya|hogaye|dun|finsihed|finshed|fin|finised|compleated|completd|pinned to the board|on boards|up on the board|d0ne|donee|out of the way|out the way|off the list|labelled and boxed|labelled & boxed|labelled n boxed|tagged and bagged|tagged and boxed|labelled and packed|boxed and labelled`;
// "I'm only after finishing": has just finished, in Ireland.
const justAfter = ["i'm", 'im', "we're", "she's", "he's"]
  .flatMap((who) => ['after', 'only after', 'just after'].map((after) => `${who} ${after}`))
  .flatMap((after) => ['finishing', 'making', 'doing', 'boxing'].map((work) => `${after} ${work}`))
  .join('|');
export const didWord = `${justAfter}|made|did|finished|completed|done|knocked out|smashed out|smashed|smashed through|smashed thru|flew thru|ripped through|ripped thru|raced thru|blasted through|blitzed through|banged through|got thru|powered thru|rattled thru|ploughed thru|romped through|whizzed thru|banged out|churned out|got through|boxed|pumped out|turned out|cranked out|knocked up|whipped up|got done|ive made|made up|knocked off|nailed|have made|polished off|rattled through|rattled off|ploughed through|powered through|put together|managed to make|managed to do|managed to finish|managed to complete|managed to get through|managed to box|managed to get|managed|bashed out|hammered out|have done|packed|flew through|blitzed|assembled|maid|mde|built|whizzed through|whacked out|raced through|got up to|finishd|finsihed|finshed|wrapped up`;
export const stageWord =
  'wired|taped|cut|prepped|glued|started|conditioned|stripped|begun|half made|on the go|in progress|half done|sprayed|hung|ribboned|backed|mossed|drying|laid out|part made|part done|partly done|underway|mocked up|stemmed|trimmed|dethorned|bound|hydrated|hydrating';

/** Steps that are told before the last one: "banded and boxed", "wired and done" are finished. */
export const stepBefore =
  'banded|pinned|tied|wrapped|misted|checked|counted|tagged|labelled|carded|sealed|photographed|weighed|inspected|spritzed|tissued|netted|sleeved|steamed|named|sorted|tidied|fixed up|pinned up|bowed';

const works: Readonly<Record<string, string>> = {
  taping: 'taped',
  wiring: 'wired',
  cutting: 'cut',
  prepping: 'prepped',
  prep: 'prepped',
  gluing: 'glued',
  glueing: 'glued',
  conditioning: 'conditioned',
  stripping: 'stripped',
  spraying: 'sprayed',
  ribboning: 'ribboned',
  backing: 'backed',
};
/** The work itself for the step that it is: "taping done for 40". */
export const stageWork = Object.keys(works).join('|');
export const stageOf = (word: string): string => works[word] ?? word;

/** After a bare number these words may follow; any other noun is something else that was counted ("made 3 calls"). */
export const followers = new Set(
  wordList(`
  so, today, now, this, last, yesterday, already, more, of, out, and, but, then, with, incl, including, inc, done, by, before, after,
  since, no, none, without, still, havent, haven't, hasnt, hasn't, in, on, while, ok, tonight, left, lost, broke, spare, spares, to, for, not, though, tho, only, up, plus, too, just, all, am,
  between, grand, yay, woo, lads, guys, girls, folks, altogether, total, overall, at, is, are, was, the, will, still, stopping,
  stopped, packing, going, home, knackered, yet, cos, because, coz, as, if, one, extra, good, nice, lovely, team, boss, off,
  rest, from, during, or, over, till, until, completed, finished, ready, boxed, morning, arvo, afternoon, see, need, needs, gone,
  hands, feet, sore, looking, rough, pls, please, thanks, ta, cheers, x, broken, snapped, pending, remaining, balance, both, myself,
  me, sofar, overnight, tonite, petals, stem, stems, heads, head, wire, dodgy, wonky, will, remake, redo, remaking, redoing, cold, heat, drying, dropped, fell, til, here, there, straight, again, whilst, ta, moving, onto, onwards, next, now, we, i, they, sir, madam, ji, bhai, ee, eh, like
`),
);

/** Before the number these say that it is only wanted or hoped for. */
export const intent = new Set(
  wordList(`
  need, needs, needed, want, wants, will, we'll, i'll, it'll, gonna, hope, hoping, should, must, could, might, can, plan, planning,
  aim, aiming, try, trying, going, please, gotta, expect, expecting, if, can't, cant, would, until, unless, let, let's, lets, reckon,
  target, ill, supposed, meant, wanted, should've, shouldve, shoulda, hoped
`),
);
