// Whether the words around a finished count leave it one: "box 3 packed", "8 corsages done 7 bouts done", "30 done 10 to go".

import { isA, type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isCount, type Token } from '../text/token.ts';
import { isUnlisted } from '../words/other-things.ts';
import { followers, stageWord } from './done-words.ts';

// "we did 200 last year" is another job.
const otherJob = pattern('(last|previous) (year|time|week|month|season|wedding|one|event|summer|spring|winter|autumn|christmas|job)');

// "box 3 packed", "crown no 2 done": a number that names one thing.
const labels =
  /^(no|number|parcel|parcels|episode|stop|box|table|tray|crate|batch|round|week|day|order|job|bay|van|page|step|stage|phase|part|event|wedding|room|shelf|bucket|bill|bills|rent|invoice|gun|fan|bulb|drill|printer)$/;
// "6 corsages in box 2"
const boxes = /^(box|tray|crate|table|bay|van|batch|bucket|shelf|rack)$/;
export const isNamed = (tokens: readonly Token[], index: number): boolean =>
  boxes.test(tokens[index - 1]?.text ?? '') && tokens[index - 2]?.text !== 'the';
const inBox = ({ tokens }: Reader, match: Match): boolean => {
  const number = match.kept['n'];
  return number !== undefined && isNamed(tokens, tokens.indexOf(number, match.start));
};
const named = ({ tokens }: Reader, match: Match): boolean =>
  tokens[match.start]?.number !== undefined && labels.test(tokens[match.start - 1]?.text ?? '');

const otherFate =
  /^(snapped|broke|broken|wrecked|lost|dropped|ruined|binned|cracked|dead|damaged|crushed|squashed|wilted|pending|outstanding|remaining|spare|spares|still|short)$/;

// "18 of teh 30 done", "15 pf 30 done": the second number is the whole, whatever the word between them is.
const ofWord = /^(of|out|outta|outa|off|from|out of)$/;
const article = /^(the|our|all|those|these|my|them|a)$/;
/** Where the first number stands, if the count of the match is such a whole. */
export const ofUnknown = ({ tokens }: Reader, match: Match): number | undefined => {
  const number = match.kept['m'] === undefined && match.kept['s'] === undefined ? match.kept['n'] : undefined;
  if (number === undefined) return undefined;
  const at = tokens.indexOf(number, match.start);
  let first = at - 1;
  while (first > at - 4 && tokens[first]?.kind === 'word' && tokens[first]?.number === undefined) first -= 1;
  const word = tokens[first + 1];
  if (first < at - 3 || first === at - 1 || !isCount(tokens[first]) || word === undefined) return undefined;
  const unknown = isUnlisted(word) && word.text.length < 5 && (first === at - 2 || article.test(tokens[at - 1]?.text ?? ''));
  return unknown || ofWord.test(word.text) ? first : undefined;
};

// "almost done just 2 crowns left": the count is what is left; "done, left for lunch" tells of the maker.
const isLeft = pattern(
  '(left|balance|remaining|pending|outstanding|baki|to (go|do|make|tape|wire|glue|box|ribbon|wrap|pack|build|assemble|label|bow|back|pin|finish|trim|start)|still to (go|do|make)|more to (go|do|make)) (now|tho|though|,|then|yay|woo|so far)?',
);
const leftBehind = ({ tokens }: Reader, match: Match): boolean => {
  const rest = isLeft.at(tokens, match.end, tokens.length);
  if (rest === undefined || match.start === match.end - 1) return false;
  const last = tokens[match.end - 1];
  const next = tokens[rest.end];
  return (
    (last?.number !== undefined || last?.means['piece'] !== undefined || /^(nos|pcs|more)$/.test(last?.text ?? '')) &&
    next?.number === undefined &&
    !/^(for|the|at|on|early|over|off)$/.test(next?.text ?? '')
  );
};

// "snapped 3 stems", "3 broken stems": none of the pieces.
const stems = /^(stem|stems|sprig|sprigs|petal|petals|leaf|leaves|bunch|bunches|pin|pins|vase|vases|snips|bucket|buckets|wires)$/;
export const ofStems = ({ tokens }: Reader, match: Match): boolean =>
  stems.test(tokens[match.end]?.text ?? '') || tokens[match.end]?.means['ingredient'] !== undefined;

// "6 of the 9 crowns are wired": begun, not finished.
const begun = pattern(`(are|is|now|all|been|have been){0,2} (${stageWord})`);
const onlyBegun = ({ tokens }: Reader, match: Match): boolean =>
  (match.kept['m'] !== undefined || match.kept['s'] !== undefined) && begun.at(tokens, match.end, tokens.length) !== undefined;

// "2 of the 14 were last weeks", "used 40 of the 50 stems": what became of them is another matter.
const isOf = /^(is|are|were|now|all|have been|has been|been|just|already|got|'s|get|fully|nearly|both|and|as)$/;
const otherShare = (reader: Reader, match: Match): boolean => {
  if (match.kept['m'] === undefined) return false;
  const [last, next] = [reader.tokens[match.end - 1], reader.tokens[match.end]];
  if (last?.number !== undefined && ofStems(reader, match)) return true;
  // "3 of the 12 i made are for the display"
  if (/^(i|we|i've|ive|we've|weve)$/.test(next?.text ?? '') && /^(made|did|have)$/.test(reader.tokens[match.end + 1]?.text ?? ''))
    return true;
  return /^(is|are|were)$/.test(last?.text ?? '') && next?.kind === 'word' && next.number === undefined && !isOf.test(next.text);
};

// "we lost 3-1 last night": a game, and no pieces.
const isScore = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.text === '-' &&
  tokens[index]?.glued === true &&
  tokens[index + 1]?.glued === true &&
  isCount(tokens[index + 1]) &&
  tokens[index + 2]?.means['piece'] === undefined;

// "v day pre-orders: 40 so far": what is booked, and nothing made.
const takings =
  /^(orders|preorders|pre-orders|order|preorder|bookings|rsvps|rsvp|replies|tickets|enquiries|inquiries|quotes|sales|sold|signups|sign-ups|names|votes|likes|followers|donations|deposits|weddings|events|leads|interest)$/;
const ofTakings = (tokens: readonly Token[], start: number): boolean =>
  [1, 2, 3].some(
    (by) =>
      takings.test(tokens[start - by]?.text ?? '') &&
      tokens.slice(start - by + 1, start).every(({ text }) => /^(:|-|,|are|at|is|now|we|we're|we've|have|got|in|so|far)$/.test(text)),
  );

// "thirty-one of the boutonnieres made" are not all of them.
const someOfThem = ({ tokens }: Reader, { start, end, kept }: Match): boolean => {
  if ((kept['n'] ?? kept['m'] ?? kept['s'] ?? kept['f']) !== undefined) return false;
  // "finished all twelve corsages": the twelve are told.
  if (tokens[end - 1]?.text === 'all' && isCount(tokens[end])) return true;
  let at = tokens[start]?.text === 'of' ? start : start - 1;
  while (at > start - 3 && article.test(tokens[at]?.text ?? '')) at -= 1;
  return tokens[at]?.text === 'of' && isCount(tokens[at - 1]);
};

// "halfway through 13 crowns, 12 bouts done": half of the crowns, and not of everything.
const throughSome = pattern('(through|thru|into) (the|our|my|those|these|all|about)? <count>');

// "last corsages done were for the smiths", "last bout in the box broke", "last bout done tomorrow": nothing that finishes them all.
const lastPiece = pattern('(the|our|my)? (very)? (last|final) (<material>)? <piece>');
const endsLast = /^(now|too|already|finally|yay|woo|woohoo|phew|thanks|ta|and|n|so|then|but|lads|girls|guys|team|x|xx|today)$/;
const saysMoreOfLast = ({ tokens }: Reader, { start, end }: Match): boolean => {
  const next = tokens[end];
  return (
    next !== undefined &&
    (next.kind === 'word' || next.kind === 'number') &&
    !endsLast.test(next.text) &&
    lastPiece.at(tokens, start, end) !== undefined
  );
};

/** False where its number belongs to what follows, or names one thing, or tells of another job. */
const takesGoods = pattern(
  '(get|gets|getting|got|need|needs|want|wants|have|has|take|takes) (a|an|the|some|extra|more|no|white|blue|green)? (<ingredient>|ribbon|ribbons|pins)',
);
export const acceptsAfter = (reader: Reader, match: Match): boolean => {
  if (
    named(reader, match) ||
    inBox(reader, match) ||
    onlyBegun(reader, match) ||
    otherShare(reader, match) ||
    leftBehind(reader, match) ||
    reader.tokens[match.end]?.text === 'each'
  )
    return false;
  if (someOfThem(reader, match) || saysMoreOfLast(reader, match)) return false;
  if (throughSome.at(reader.tokens, match.end - 1, reader.tokens.length) !== undefined) return false;
  // "6 of the 12 bouts get ribbon" tells what goes into some.
  if ([match.end, match.end - 1].some((index) => takesGoods.at(reader.tokens, index, reader.tokens.length) !== undefined)) return false;
  // "not one of the crowns broke"
  if (reader.tokens[match.start - 1]?.text === 'not' && reader.tokens[match.start]?.number?.amount === '1') return false;
  if (isScore(reader.tokens, match.end) || ofTakings(reader.tokens, match.start)) return false;
  if ([match.end, match.end - 1].some((index) => otherJob.at(reader.tokens, index, reader.tokens.length) !== undefined)) return false;
  // "8 corsages done 7 bouts done": the second number counts the kind behind it.
  // "22 buttonholes done 1 snapped": the last number belongs to what follows.
  if (
    reader.tokens[match.end - 1]?.number !== undefined &&
    otherFate.test(reader.tokens[match.end]?.text ?? '') &&
    reader.tokens[match.end + 1]?.number === undefined
  )
    return false;
  const numbered = reader.tokens[match.end - 1]?.number !== undefined && reader.tokens[match.end]?.means['piece'] !== undefined;
  if (numbered && match.kept['p'] !== undefined && match.kept['n'] === reader.tokens[match.end - 1]) return false;
  // "30 done 10 to go": the second number is what is left.
  if (
    /^(to|left|more)$/.test(reader.tokens[match.end]?.text ?? '') &&
    reader.tokens[match.end - 1]?.number !== undefined &&
    /^(go|do|make|left)?$/.test(reader.tokens[match.end + 1]?.text ?? '')
  )
    return false;
  const next = reader.tokens[match.end];
  const last = reader.tokens[match.end - 1];
  // "bouts done - 3 broke": the number belongs to what follows.
  const marked = /^(-|:|=|x|,)$/.test(reader.tokens[match.end - 2]?.text ?? '') && last?.number !== undefined;
  if (marked && match.kept['p'] !== undefined && next?.kind === 'word') return false;
  if (next === undefined || next.kind !== 'word' || match.kept['p'] !== undefined || last?.number === undefined) return true;
  return followers.has(next.text) || isA(next, 'material') || isA(next, 'weekday');
};
