// A message ready for the phrases: its tokens, the parts it falls into, and what earlier phrases have already taken.

import { withAges } from './ages.ts';
import { withApostrophes, withShortIs } from './apostrophes.ts';
import { withoutAsides } from './asides.ts';
import { withAskedBehind } from './asked-behind.ts';
import { boxesAsGoods } from './boxes-as-goods.ts';
import { type CleanText, cleanText, ownWords } from './clean-text.ts';
import { withClientFlowers } from './client-flowers.ts';
import { withCountsLess } from './count-less.ts';
import { withSparesCounted } from './counts-with-spares.ts';
import { withoutCourtesy } from './courtesy.ts';
import { withDroppedOff } from './dropped-off.ts';
import { joinEachChoices } from './each-choices.ts';
import { withFoamFlowers } from './foam-flowers.ts';
import { withFormLines } from './form-lines.ts';
import { joinHourWords } from './hour-words.ts';
import { joinHoursAndMinutes } from './hours-and-minutes.ts';
import { withHoursOfWork } from './hours-of-work.ts';
import { withOpenQuestions } from './inner-questions.ts';
import { withKindBehind } from './kind-behind.ts';
import { withNoughts } from './letter-noughts.ts';
import { lex } from './lex.ts';
import { joinLots } from './lots.ts';
import { mountsAsGoods } from './mounts-as-goods.ts';
import { nameWords } from './name-words.ts';
import { joinRanges } from './number-ranges.ts';
import { joinUnits } from './number-units.ts';
import { joinNumberWords } from './number-words.ts';
import { withOpenPer } from './open-per.ts';
import { withKindMeant } from './other-kind-meant.ts';
import { withMattersApart } from './other-matters.ts';
import { withOwnNumbers } from './own-number.ts';
import { withOwnShortWords } from './own-short-words.ts';
import { packed } from './packed.ts';
import { splitPricedStrokes } from './priced-strokes.ts';
import { withOthers } from './remaining-ones.ts';
import { withoutAsking } from './requests.ts';
import { joinSecondCounts } from './second-counts.ts';
import { isEnd } from './sentence-end.ts';
import { withoutShortPoints } from './short-points.ts';
import { writtenOut } from './shorthand.ts';
import { withPackForEach } from './so-many-in-each.ts';
import { withSoldBy } from './sold-by.ts';
import { changed, type Token } from './token.ts';
import { withQuestionsApart } from './told-then-asked.ts';
import { withTurns } from './turns.ts';
import { withoutUnchanged } from './unchanged.ts';
import { withoutOwners } from './whose-pieces.ts';

/** Tokens from `start` up to `end`. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** A sentence or a line. */
export interface Part extends Stretch {
  readonly asked: boolean; // ends with a question mark
}

export interface Message {
  readonly clean: CleanText;
  readonly tokens: readonly Token[];
  readonly parts: readonly Part[];
  /** The person's own words for a stretch of tokens. */
  words(start: number, end: number): string;
}

const listNumber = (tokens: readonly Token[], index: number): boolean => {
  const [token, mark] = [tokens[index], tokens[index + 1]];
  const lineStart = index === 0 || tokens[index - 1]?.kind === 'line';
  return (
    lineStart &&
    token?.number?.form === 'plain' &&
    /^\d{1,2}$/.test(token.text) &&
    (mark?.text === ')' || mark?.text === '.') &&
    mark.glued &&
    tokens[index + 2]?.glued === false
  );
};

// "*30* bouts", "_dried_": marks of bold and italic go; "~20~" was struck out, so its words go too. A lone star ("*45") corrects, so only pairs count.
const emphasis = new Set('*_~');
const withoutEmphasis = (tokens: readonly Token[]): Token[] => {
  const dropped = new Set<number>();
  for (let index = 0; index < tokens.length; index++) {
    const mark = tokens[index] as Token;
    if (!emphasis.has(mark.text) || dropped.has(index) || tokens[index + 1]?.glued !== true) continue;
    if (mark.glued && tokens[index - 1]?.kind !== 'sign') continue;
    for (let end = index + 2; end < tokens.length && end <= index + 12 && tokens[end]?.kind !== 'line'; end++) {
      if (tokens[end]?.text !== mark.text || tokens[end]?.glued !== true) continue;
      if (tokens[end + 1]?.glued === true && tokens[end + 1]?.kind !== 'sign') continue;
      for (let at = mark.text === '~' ? index : end; at <= end; at++) dropped.add(at);
      dropped.add(index);
      break;
    }
  }
  if (dropped.size === 0) return [...tokens];
  return tokens.flatMap((token, index) =>
    dropped.has(index) ? [] : dropped.has(index - 1) ? [changed(token, { glued: token.kind === 'sign' && token.glued })] : [token],
  );
};

// "A) Buttonhole", "B) Corsage": the letters of a list.
const listLetter = (tokens: readonly Token[], index: number): boolean =>
  (index === 0 || tokens[index - 1]?.kind === 'line') &&
  /^[a-h]$/.test(tokens[index]?.text ?? '') &&
  tokens[index + 1]?.text === ')' &&
  tokens[index + 1]?.glued === true;

// "1. … \n 2. …": the numbers of a list are nobody's count. Bullets and letters likewise.
const withoutListMarks = (tokens: readonly Token[]): Token[] => {
  const marks = tokens.filter((_, index) => listNumber(tokens, index)).length;
  const letters = tokens.filter((_, index) => listLetter(tokens, index)).length;
  return tokens.filter((token, index) => {
    if (letters >= 2 && (listLetter(tokens, index) || (index > 0 && listLetter(tokens, index - 1)))) return false;
    const lineStart = index === 0 || tokens[index - 1]?.kind === 'line';
    if (marks >= 2 && (listNumber(tokens, index) || (index > 0 && listNumber(tokens, index - 1)))) return false;
    return !(lineStart && (token.text === '-' || token.text === '*' || token.text === '>') && tokens[index + 1]?.glued === false);
  });
};

const partsOf = (tokens: readonly Token[]): Part[] => {
  const parts: Part[] = [];
  let start = 0;
  for (let index = 0; index < tokens.length; index++) {
    if (!isEnd(tokens, index)) continue;
    if (index > start) parts.push({ start, end: index, asked: tokens[index]?.text === '?' });
    start = index + 1;
  }
  if (start < tokens.length) parts.push({ start, end: tokens.length, asked: false });
  return parts;
};

// What is done to the tokens, in this order: each stage relies on those before it.
const stages: readonly ((tokens: readonly Token[]) => readonly Token[])[] = [
  withNoughts,
  withoutEmphasis,
  withoutListMarks,
  withoutShortPoints,
  withOwnShortWords,
  withShortIs,
  withoutCourtesy,
  withoutAsides,
  withTurns,
  withQuestionsApart,
  writtenOut,
  withApostrophes,
  joinNumberWords,
  splitPricedStrokes,
  joinHourWords,
  joinUnits,
  joinHoursAndMinutes,
  withOwnNumbers,
  joinRanges,
  nameWords,
  withFoamFlowers,
  withHoursOfWork,
  withFormLines,
  withAges,
  withDroppedOff,
  withSoldBy,
  withPackForEach,
  withOpenPer,
  withCountsLess,
  withSparesCounted,
  joinLots,
  boxesAsGoods,
  mountsAsGoods,
  withoutOwners,
  withKindMeant,
  withKindBehind,
  withOthers,
  joinEachChoices,
  joinSecondCounts,
  withMattersApart,
  withoutUnchanged,
  withoutAsking,
  withAskedBehind,
  withOpenQuestions,
];

// "R 13.50" is rand; "bouts r 13.50" may say what they are.
const withRand = (clean: CleanText, tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    const next = tokens[index + 1];
    const isRand = token.text === 'r' && next?.number !== undefined && !next.glued && clean.original[clean.at[token.start] ?? 0] === 'R';
    return isRand ? changed(token, { text: 'zar' }) : token;
  });

// Most stages find nothing to do and give back what they were given.
const after = (stage: (tokens: readonly Token[]) => readonly Token[], tokens: readonly Token[]): readonly Token[] => {
  const next = stage(tokens);
  return next === tokens ? tokens : packed(next);
};

export const readTokens = (clean: CleanText): readonly Token[] =>
  packed(
    withClientFlowers(
      clean,
      stages.reduce<readonly Token[]>((tokens, stage) => after(stage, tokens), packed(withRand(clean, lex(clean.text)))),
    ),
  );

/** A message of these tokens: as it was typed, or with some of them left out. */
export const messageOf = (clean: CleanText, tokens: readonly Token[]): Message => ({
  clean,
  tokens,
  parts: partsOf(tokens),
  words: (start, end) => {
    const [first, last] = [tokens[start], tokens[end - 1]];
    return first === undefined || last === undefined ? '' : ownWords(clean, first.start, last.end);
  },
});

export const openMessage = (text: string): Message => {
  const clean = cleanText(text);
  return messageOf(clean, readTokens(clean));
};
