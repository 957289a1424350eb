// Who wears them in a word nobody knows: "groom, one piker, 2 dads", "3 pikers". Counted and among wearers that are known it is one of them, as typed.

import { firstWhere, isCount, isNameless, type Token } from '../text/token.ts';
import { usualWords } from '../words/usual-words.ts';
import { wordList } from '../words/word-list.ts';
import { fillers } from './wearer-words.ts';

// Counted beside wearers, and worn by nobody.
const things = new Set(
  wordList(`
  candle, chair, balloon, sign, ring, hat, tie, dress, dresses, suit, shoe, lantern, seat, row, car, mask, fan, menu, gift,
  present, bottle, glass, glasses, candlestick, ribbon, tent, marquee, tealight, photo, name, flag, banner, drink, meal, starter, dessert,
  invite, invitation, programme, program, hanger, robe, bracelet, necklace, earring, watch, cufflink, sock, belt, bow, scarf, shawl,
  lap, level, stair, window, door, mile, point, goal, percent, version, option, choice, note, colour, color, shade, spray, stage,
  gum, leaf, leaves, sheet, reason, call, visit, trip, try, attempt, question, problem, issue, change, stop, night, guest book, baraat, barat, procession, entourage, lineup
`).flatMap((one) => (one.endsWith('s') ? [one] : [one, `${one}s`])),
);

/** Whether the word may be what somebody is called: no list knows it, and it is no thing and none of the usual words. */
export const isStranger = (token: Token | undefined): token is Token =>
  token !== undefined &&
  token.kind === 'word' &&
  token.number === undefined &&
  token.guessed === undefined &&
  /^\p{L}[\p{L}-]{2,}$/u.test(token.text) &&
  !/(ing|ed|ly)$/.test(token.text) &&
  isNameless(token) &&
  !usualWords.has(token.text) &&
  !fillers.test(token.text) &&
  !things.has(token.text);

const ends = /^(,|and|&|n|plus|\+|then|\/|;)$/;
const whose = /^(a|an|the|his|her|their|our)$/;

/** Whether a stranger stands in the list, counted or alone: "groom, piker, 4 ushers". Without them it would count too few. */
export const listsStranger = (tokens: readonly Token[], start: number, end: number): boolean =>
  firstWhere(tokens, start, end, (token, at) => {
    const next = tokens[at + 1];
    const before = tokens[at - 1];
    const closes = at + 1 >= end || next?.kind === 'line' || ends.test(next?.text ?? '');
    const opens =
      at === start || isCount(before) || before?.kind === 'line' || ends.test(before?.text ?? '') || whose.test(before?.text ?? '');
    return closes && opens && isStranger(token);
  }) >= 0;
