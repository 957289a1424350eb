// Talk in which nothing of ours is named and much else is: "kittens free to a good home, 4 left". Its numbers are held.

import { onlyUs } from '../crew/only-us.ts';
import { dateAt } from '../dates/date-forms.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { opensTitle } from '../phrases/event-title.ts';
import { withoutOwner } from '../text/owners.ts';
import { isNameless, type Token } from '../text/token.ts';
import { usualWords } from '../words/usual-words.ts';

const ourTags = ['piece', 'ingredient', 'material', 'taxName', 'taxWord', 'role', 'other', 'budget'];
const fewest = 2;
const leastShare = 0.25;

const isStrange = (token: Token): boolean =>
  token.kind === 'word' &&
  token.number === undefined &&
  (isNameless(token) || token.means['everyday'] !== undefined) &&
  token.text.length > 2 &&
  !usualWords.has(token.text) &&
  !usualWords.has(withoutOwner(token.text));

// "goldfish died, 3 left": of something.
const someLeft = pattern('(,|-|.) (only|just|still)? <count> (left|short|over|remaining)');
const tookTime = pattern('<word> took <duration>');
// "Thandi 6 hrs, Lerato 3 hrs", "sal 6hrs, me 3hrs": people at the bench, where each is written as a name is or the writer is among them.
const hoursOfEach = pattern('(<v:word> (:|-)? <duration> (,|and|&|n|\\+|<line>){1,2}){1,5} <w:word> (:|-)? <duration>');
const namesHours = ({ tokens, words }: Reader): boolean => {
  if (hoursOfEach.at(tokens, 0, tokens.length)?.end !== tokens.length) return false;
  if (tokens.some(({ text }) => /^(me|i|myself)$/.test(text))) return true;
  return tokens.every((token, at) => token.kind !== 'word' || /^(and|&|n)$/.test(token.text) || /^\p{Lu}/u.test(words(at, at + 1)));
};
const hasLeft = pattern('<word> (is|has|was|are|have) (only|just|still|about)? <count> (short|left|over|down)');
// "16 glued, drying on the rack" is work all the same.
const worked = pattern(
  '(<count> (of them)? (more|done|made|broke|broken|snapped|dropped|crushed|squashed|ruined|damaged|finished|glued|wired|taped|boxed|(left)? (to go|to do|to make|to finish|to box))|(did|made|broke|snapped|dropped|lost|binned|crushed|squashed|ruined|finished|wired|taped|glued|boxed) (another|about)? <count>|<count> (ho|klaar))',
);

// "3 of us, 2 doing 5 hrs and the other doing 2", "we have anna for 6 hrs and beth for 4", "i pump out 15 an hour easy" tell of the bench.
const someone = '(<unlisted>|me|myself)';
const ofHands = [
  '<count> <bench> (on|in|at the bench|tomorrow|today|<weekday>)? (,|-|:|;) <any>{0,5} <duration>',
  `(we|i|we've|weve|i've|ive) (have|got|have got|'ve got)? ${someone} for <duration> (and|&|n|\\+|plus|,){1,2} ${someone} for (<duration>|<count>)`,
  "(i|we|she|he|i'd|she'd|he'd) (can|could|will|usually|normally|always|easily|probably|prob|do|would){0,2} (knock|knocks|bang|bangs|churn|churns|crank|cranks|smash|smashes|pump|pumps|turn|turns|bash|whip|whips|rattle|do|does|make|makes|get|gets|manage|manages) (out|up|off|through)? (about|around|roughly|like|maybe|at least)? <count> (of them)? (an|per|/|a|every|in an|p) (hour|hr|h)",
].map((source) => pattern(source));

/** Whether the message is made of words that no order needs, and names no day and nothing of the trade. */
export const isStrangeTalk = (reader: Reader): boolean => {
  const { tokens } = reader;
  const words = tokens.filter((token) => token.kind === 'word' && token.number === undefined);
  const strange = words.filter(isStrange).length;
  const few = someLeft.in(tokens, 0, tokens.length) ?? tookTime.in(tokens, 0, tokens.length) ?? hasLeft.in(tokens, 0, tokens.length);
  if (few === undefined ? strange < fewest || strange < words.length * leastShare : strange === 0) return false;
  if (namesHours(reader) || opensTitle(reader) || words.some(({ text }) => text === 'wearing' || text === 'wearers' || text === 'wear'))
    return false;
  if (worked.in(tokens, 0, tokens.length) !== undefined || ofHands.some((form) => form.in(tokens, 0, tokens.length) !== undefined))
    return false;
  if (tokens.some((token) => ourTags.some((tag) => token.means[tag] !== undefined && token.means[tag] !== 'rest'))) return false;
  if (tokens.some((token) => token.means['month'] !== undefined)) return false;
  // "Aoife's out sick so there's only two of us now"
  if (reader.untouched().some((part) => onlyUs(reader, part) !== undefined)) return false;
  return !tokens.some((_, index) => dateAt(tokens, index, reader.context) !== undefined);
};
