// A sentence that tells of the work and of nothing else, in any order of its words: "so four of the finished bouts are broken, 6 crowns to go".

import { strongMarkers } from '../changes/change-words.ts';
import { anyIn, pattern } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { wordList } from '../words/word-list.ts';
import { withKindBegun } from './begun-then-finished.ts';
import { besideDone } from './beside-done.ts';
import { didWord, doneWord, intent, stageWord, stageWork } from './done-words.ts';
import { withWholeOfLast } from './last-of-all.ts';
import { goneWrong, lossVerb, moreGoneWrong, stageIn, stillToDo } from './losses.ts';
import { tellsOfOrder } from './order-beside-loss.ts';
import { withoutShare } from './share-beside.ts';
import { wholeBehind } from './whole-ahead.ts';
import { workEvents } from './work-events.ts';
import { kindFirst } from './work-forms.ts';
import { workGroups } from './work-groups.ts';
import type { Group } from './work-together.ts';

const breaks = /^(,|-|;|but|so|because|cos|coz)$/;
// In a remark these make the work doubtful, wished for or another's.
const doubts =
  /^(if|unless|when|once|until|till|til|hope|hopefully|hoping|think|maybe|perhaps|possibly|probably|guess|reckon|sure|right|true|correct|none|nothing|wrong|wrongly|actually|correction|meant|typo|miscounted|mistyped|misread|recounted|recount|counted|mistake|error|scrap|ignore|undo|year|instead|rather|except|bar|nearly|almost|supposed|should|would|could|might|each|order|ordered|add|quote)$/;
// Nor does one tell of more work: "one fell apart, rebuilt it".
const wordsOf = (lists: readonly string[]): ReadonlySet<string> =>
  new Set(lists.flatMap((list) => list.split('|')).filter((word) => !/ /.test(word)));
const working = wordsOf([doneWord, didWord, stageWord, 'remade|redid|rebuilt|rewired|redone|replaced|fixed|remaking']);
const losing = wordsOf([goneWrong, lossVerb]);
const speaks = ({ number, means, text }: Token, ofLoss: boolean): boolean =>
  number !== undefined || means['piece'] !== undefined || doubts.test(text) || working.has(text) || (!ofLoss && losing.has(text));

// One of these stands in every sentence about the work: most messages have none and need no closer look.
const cues = new Set(
  [
    doneWord,
    didWord,
    stageWord,
    stageWork,
    goneWrong,
    moreGoneWrong,
    lossVerb,
    stillToDo,
    'remade|redid|rebuilt|rewired|redone|replaced|remaking',
  ]
    .flatMap((list) => list.split('|'))
    .flatMap((entry) =>
      entry.includes(' ') ? entry.split(' ').filter((word) => word.length > 3 && !/^(only|just)$/.test(word)) : [entry],
    ),
);
const otherCue = new Set(
  wordList(
    `none, nothing, no, nil, nada, zero, zilch, not, never, half, halfway, third, thirds, quarter, quarters, way, down, left, go, spare, spares, again, re, missing, short, waiting, balance, remaining, outstanding, pending, sitting, currently, we're, were, i'm, im, that's, thats, makes, brings, takes, gets, puts, stopped, stopping, ran, tally, progress, total, now, far, yet, good, usable, sound, intact, salvageable, begun, touched, haven't, havent, hasn't, hasnt, didn't, didnt, aren't, arent, isn't, isnt, ain't, aint, won't, wont, all told, all up, up to, upto, smoko, lunchtime, in all, in total, nobody, nobody's, nobodys, noone, noones, noone's, soul`,
  ),
);
const speaksOfWork = (tokens: readonly Token[], { start, end }: Pick<Part, 'start' | 'end'>): boolean => {
  for (let index = start; index < end; index++) {
    const token = tokens[index] as Token;
    // "at 7 of 12"
    const share = token.text === 'of' && tokens[index - 1]?.number !== undefined && tokens[index + 1]?.number !== undefined;
    if (share || cues.has(token.text) || otherCue.has(token.text) || token.number?.form === 'percent' || token.number?.form === 'slashed')
      return true;
  }
  return false;
};

const parts = (tokens: readonly Token[], index: number): boolean =>
  (tokens[index]?.text === 'before' &&
    /^(we|i|they|the)$/.test(tokens[index + 1]?.text ?? '') &&
    tokens[index - 1]?.number !== undefined) ||
  tokens[index]?.kind === 'line' ||
  (breaks.test(tokens[index]?.text ?? '') && !/^(far|good)$/.test(tokens[index + 1]?.text ?? ''));

// Words around what is told that say nothing of it: "roses are being fiddly, 12 bouts done, off for lunch".
const within = (tokens: readonly Token[], part: Part, ofLoss: boolean): { start: number; end: number } => {
  let { start, end } = part;
  for (let index = part.start; index < part.end; index++) {
    const token = tokens[index] as Token;
    if (speaks(token, ofLoss) || intent.has(token.text) || /^(all|every|everything|lot|rest|both)$/.test(token.text)) break;
    if (parts(tokens, index)) start = index + 1;
  }
  for (let index = part.end - 1; index > start; index--) {
    const token = tokens[index] as Token;
    if (speaks(token, ofLoss)) break;
    if (parts(tokens, index)) end = index;
  }
  return { start, end };
};

// "did 12 today, that makes 30": the thirty hold the twelve.
const withoutHandful = (groups: readonly Group[]): readonly Group[] => {
  const whole = groups.findLast((group) => group.reach)?.facts[0];
  if (whole?.fact !== 'made') return groups;
  const dropped: Unworded[] = [];
  const kept = groups.filter(({ reach, facts: [fact, second] }) => {
    const handful =
      fact?.fact === 'made' && second === undefined && fact.of === undefined && fact.stage === undefined && fact.remade !== true;
    const keeps = reach === true || !handful || (whole.piece !== undefined && fact.piece !== undefined && fact.piece !== whole.piece);
    if (!keeps) dropped.push(fact);
    return keeps;
  });
  const [piece, other] = new Set(dropped.flatMap((fact) => (fact.fact === 'made' && fact.piece !== undefined ? [fact.piece] : [])));
  if (piece === undefined || other !== undefined || whole.piece !== undefined) return kept;
  return kept.map((group) => (group.reach ? { ...group, facts: group.facts.map((fact) => ({ ...fact, piece }) as Unworded) } : group));
};

// "10 bouts this morning and 5 this arvo": fifteen.
const added = (group: Group): Group => {
  const [first, ...more] = group.facts;
  const plain = (fact: Unworded): boolean =>
    fact.fact === 'made' &&
    Object.keys(fact).every((key) => /^(fact|count|piece)$/.test(key)) &&
    first?.fact === 'made' &&
    fact.piece === first.piece;
  // "24 of the 32 before lunch and 5 since": twenty-nine of them.
  const of = first?.fact === 'made' && first.fraction === undefined && first.remade !== true ? first.of : undefined;
  if (first?.fact !== 'made' || more.length === 0 || !(of === undefined ? group.facts : more).every(plain)) return group;
  const count = group.facts.reduce((sum, fact) => sum + (fact.fact === 'made' ? (fact.count ?? 0) : 0), 0);
  if (of !== undefined && (count > of || first.all === true)) return group;
  return { ...group, facts: [{ ...first, count, ...(count === of ? { all: true as const } : {}) }] };
};

// "done so far:" heads all there is.
const doneSoFar = pattern(
  '(<any>){0,2} (done|made|finished|completed|boxed|ready) (so far|sofar|to date|up to now|till now|until now|by now|as of now)',
);
const sorry = /^(mistake|mistakes|sorry|oops|whoops|ooops|woops|soz|apologies)$/;
// "12 actually done" may put right what was said; in "12 wired but only 5 actually done" it does not.
const mayPutRight = (words: readonly Token[], groups: readonly Group[]): boolean =>
  words.some(({ text }) => text === 'actually') && (groups.length === 1 || !words.some(({ text }) => /^(but|only|just)$/.test(text)));
const saysMade = (fact: Unworded): boolean => fact.fact === 'made' && fact.remade !== true && fact.count !== 0;
const now = /^(now|so far|sofar|today)$/;
const read = (reader: Reader, start: number, end: number, from = start): readonly Group[] | undefined => {
  const { tokens } = reader;
  const readings = (kindFirst.might(tokens) ? [false, true] : [false]).flatMap((kindsFirst) => {
    const told = workEvents(reader, start, end, kindsFirst);
    if (told === undefined) return [];
    const events = besideDone(tokens, told);
    const soFar = events.some((event) => event.told === 'whole' && event.soft !== true) || doneSoFar.at(tokens, start, end) !== undefined;
    const groups = workGroups(events, {
      stageOf: (event) => stageIn(tokens, { ...event, kept: {} }),
      line: (event) => tokens[event.start]?.kind === 'line' || tokens[event.start]?.text === ';',
      colon: (event) => /^[:\-–—]/.test(reader.words(event.start, event.start + 1)) || tokens[event.start]?.kind === 'line',
      countFirst: tokens[start]?.number !== undefined,
      soFar: soFar || tokens.slice(start, end).some((token) => now.test(token.text)),
    });
    if (groups === undefined) return [];
    // "sorry, 12 done" may correct; in "oops dropped 2, 9 made" it is the loss one is sorry for.
    const facts = groups.flatMap((group) => group.facts);
    const correcting = facts.some(saysMade) && !facts.some(({ fact }) => fact === 'broke');
    if (correcting && tokens.slice(from, end).some((token) => sorry.test(token.text))) return [];
    if (mayPutRight(tokens.slice(start, end), groups) || wholeBehind(tokens, start, end) !== undefined) return [];
    const total = soFar ? { total: true as const } : {};
    return [
      withoutShare(withoutHandful(withWholeOfLast(tokens, withKindBegun(tokens, groups.map(added))))).map((group) => ({
        ...group,
        facts: group.facts.map((fact) =>
          fact.fact === 'made' && fact.count !== undefined && fact.stage === undefined && fact.all !== true && fact.remade !== true
            ? ({ ...fact, ...total } as Unworded)
            : fact,
        ),
      })),
    ];
  });
  const [one, other] = readings;
  const same = other === undefined || JSON.stringify(one?.map(({ facts }) => facts)) === JSON.stringify(other.map(({ facts }) => facts));
  return same ? one : undefined;
};

// The words between two groups belong to the first, so that nobody reads them again.
const covering = (groups: readonly Group[], start: number, end: number): readonly Group[] =>
  groups.map((group, at) => ({ ...group, start: at === 0 ? start : group.start, end: groups[at + 1]?.start ?? end }));

/** What a sentence tells of the work, when every word of it is understood; words around it may be a remark. */
export const workClauses = (reader: Reader, part: Part): readonly Group[] => {
  if (
    part.asked ||
    part.end - part.start > 60 ||
    !speaksOfWork(reader.tokens, part) ||
    tellsOfOrder(reader, part) ||
    anyIn(strongMarkers, reader.tokens, part.start, part.end)
  )
    return [];
  const told = within(reader.tokens, part, false);
  const tries = [part, { start: part.start, end: told.end }, { start: told.start, end: part.end }, told];
  for (const [at, { start, end }] of tries.entries()) {
    if (tries.slice(0, at).some((tried) => tried.start === start && tried.end === end)) continue;
    const groups = read(reader, start, end, part.start);
    if (groups !== undefined) return covering(groups, start, end);
  }
  // "tossed 3 lapels, too wilted": a loss and why.
  const lost = within(reader.tokens, part, true);
  const groups = lost.end === part.end ? undefined : read(reader, part.start, lost.end);
  return groups?.every(({ facts }) => facts.every((fact) => fact.fact === 'broke')) === true ? covering(groups, part.start, lost.end) : [];
};

/** The sentences of a message, those on lines one after another taken together where they read so. */
export const workTold = (reader: Reader): readonly Group[] => {
  const parts = reader.untouched().slice(0, 40);
  const groups: Group[] = [];
  for (let index = 0; index < parts.length; index++) {
    const part = parts[index] as Part;
    let last = index;
    const goesOn = (next: Part | undefined): next is Part =>
      next !== undefined &&
      linesApart(reader.tokens, parts[last] as Part, next) &&
      (next.end - next.start < 4 || speaksOfWork(reader.tokens, next));
    while (speaksOfWork(reader.tokens, part) && last < index + 8 && goesOn(parts[last + 1])) last += 1;
    const run = last > index ? workClauses(reader, { ...part, end: (parts[last] as Part).end }) : [];
    if (run.length > 0) index = last;
    groups.push(...(run.length > 0 ? run : workClauses(reader, part)));
  }
  return groups;
};

const linesApart = (tokens: readonly Token[], part: Part, next: Part): boolean =>
  !next.asked && tokens.slice(part.end, next.start).every((token) => token.kind === 'line' || token.text === ';');
