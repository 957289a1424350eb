// Words as thumbs write them: "shd", "nt", "wk". Each becomes the word it stands for, so that no phrase needs to know the short form.

import { remembered } from '../../values/remembered.ts';
import { formOf } from '../pattern.ts';
import { isKnownWord } from '../words/vocabulary.ts';
import { unclipped } from './clipped-words.ts';
import { fullWords } from './short-words.ts';
import { isSlip } from './slip-told.ts';
import { slipOf } from './slips.ts';
import { heardAsInc, taxApart } from './tax-as-one.ts';
import { changed, type Token } from './token.ts';

const asked = /^(the|these|those|they|we|you|u|our|my|all|both|there|any|bouts|bhs|lapels|crowns|corsages|buttonholes|combs|pcs|things)$/;
// "bouts r done": an r that belongs to no amount of rand.
const isAre = (tokens: readonly Token[], index: number): boolean => {
  if (tokens[index]?.text !== 'r') return false;
  const [before, next] = [tokens[index - 1], tokens[index + 1]];
  if (next === undefined || next.glued) return false;
  // "r the bouts dried or fresh": it opens what is asked.
  if (before === undefined || before.kind === 'line' || /^[.,;?!]$/.test(before.text)) return asked.test(next.text);
  if (before.kind !== 'word') return false;
  // "BHs r 3 now"
  const counts =
    next.number?.form === 'plain' &&
    /s$/.test(before.text) &&
    /^(now|done|made|left|finished|ready|all|in)$/.test(tokens[index + 2]?.text ?? '');
  // "roses r £14 a bunch"
  const sign = /^[£$€₹]$/.test(next.text);
  return next.kind === 'word' || counts || sign || areAt(tokens, index);
};

// "bouts r 13.50, corsages r 30": a price told of a kind that no number counts, in a message with no rand in it.
const bareMany = /^(?!(?:is|as|us|was|has|its|this|plus|yes|cos)$)[a-z]+s$/;
const closes = /^(,|\.|;|\)|each|ea|apiece|and|n|&|\+|plus|inc|incl|ex|excl|a|per|now|pp|pc)$/;
const inRand = (tokens: readonly Token[]): boolean =>
  tokens.some(({ text }, index) => /^(zar|rand|rands)$/.test(text) || (text === 'r' && tokens[index + 1]?.glued === true));
const areAt = (tokens: readonly Token[], index: number): boolean => {
  const [owner, before, next, after] = [tokens[index - 2], tokens[index - 1], tokens[index + 1], tokens[index + 2]];
  if (next?.number?.form !== 'plain' || !bareMany.test(before?.text ?? '') || owner?.number !== undefined) return false;
  return (after === undefined || after.kind === 'line' || closes.test(after.text)) && !inRand(tokens);
};

// "$34 b4 tax": a letter and a figure that are one word.
const isBefore = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.text === 'b' && tokens[index + 1]?.text === '4' && tokens[index + 1]?.glued === true && tokens[index + 2]?.glued !== true;

// "40cm raffia p/piece": by the piece.
const isPer = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.text === 'p' &&
  tokens[index + 1]?.text === '/' &&
  tokens[index + 1]?.glued === true &&
  /^(piece|pc|pce|bout|bh|buttonhole|corsage|lapel|crown|head|person|unit|stem)$/.test(tokens[index + 2]?.text ?? '');

// "9xbouts": the sign and the word behind it were typed as one.
const timesWord = (tokens: readonly Token[], index: number): boolean => {
  const token = tokens[index];
  return (
    token?.kind === 'word' &&
    token.glued &&
    tokens[index - 1]?.number?.form === 'plain' &&
    /^x[a-z]{2,}$/.test(token.text) &&
    isKnownWord(token.text.slice(1))
  );
};

// "G, BM, 2 ushers": one letter in a list of those who wear them.
const wearer = /^(groom|bride|bm|bms|gm|gms|fob|fog|mob|mog|best|groomsm[ae]n|ushers?|bridesmaids?|dads?|mums?|moms?|fathers?|mothers?)$/;
const inList = /^(,|&|\+|and|plus|\/|-|:|x|n|\(|\))$/;
const letterFor = (tokens: readonly Token[], index: number): string | undefined => {
  const token = tokens[index];
  if (token === undefined || (token.text !== 'g' && token.text !== 'b')) return undefined;
  const [before, next] = [tokens[index - 1], tokens[index + 1]];
  if (token.glued && before?.kind !== 'sign') return undefined;
  const opens = before === undefined || before.kind === 'line' || inList.test(before.text) || /^[1x]$/.test(before.text);
  if (!opens || (next !== undefined && next.kind !== 'line' && !inList.test(next.text))) return undefined;
  return tokens.some((each) => wearer.test(each.text)) ? (token.text === 'g' ? 'groom' : 'bride') : undefined;
};

// "bout half of em done", "so bout a third done": about, where a share stands behind it and no piece can.
const opensShare = formOf(
  'bout ((half|halfway) (of|the|done|way|there|finished|them|through|thru)|(a|one|two|three) (third|quarter|thirds|quarters))',
);
const beforeShare = /^(,|so|ok|we're|were|i'm|im|now|only|just|done|with|that's|thats|-|\.)$/;
const ofShare = (tokens: readonly Token[], index: number): boolean =>
  tokens[index]?.text === 'of' && /^(half|thirds?|quarters?|most|some|all)$/.test(tokens[index - 1]?.text ?? '');
const isAbout = (tokens: readonly Token[], index: number): boolean => {
  const before = tokens[index - 1];
  return (
    tokens[index]?.text === 'bout' &&
    (before === undefined || before.kind === 'line' || beforeShare.test(before.text)) &&
    opensShare.at(tokens, index) !== undefined
  );
};

// The word that was meant by a slip of the thumb.
const meantBy = remembered((text) => (Object.hasOwn(fullWords, text) ? fullWords[text] : (slipOf(text) ?? unclipped(text))));

// "pushed bk a wk": elsewhere it may be a book.
const moves = /^(pushed|push|put|moved|move|shifted|bumped|brought|bring|set|go|goes|going|gone|came|come|knocked|slid)$/;
const placed = /^(we're|were|we|i'm|im|us|now|back|sitting|currently|you're)$/;
export const writtenOut = (given: readonly Token[]): readonly Token[] => {
  const tokens: Token[] = [];
  for (let index = 0; index < given.length; index++) {
    const token = given[index] as Token;
    const parted = taxApart(token);
    if (parted !== undefined) tokens.push(...parted);
    else if (isBefore(given, index) || isPer(given, index)) {
      tokens.push(changed(token, { text: token.text === 'b' ? 'before' : 'per', end: (given[index + 1] as Token).end }));
      index += 1;
    } else if (isSlip(given, index)) {
      tokens.push(changed(token, { text: 'typo', end: (given[index + 1] as Token).end }));
      index += 1;
    } else if (token.text === 'of' && given[index + 1]?.text === 'course') {
      // "and of course the groom": no course that somebody takes
      tokens.push(changed(token, { text: 'of course', end: (given[index + 1] as Token).end }));
      index += 1;
    } else if (timesWord(given, index)) {
      const at = token.start + 1;
      tokens.push(changed(token, { text: 'x', end: at }), changed(token, { text: token.text.slice(1), start: at, glued: true }));
    } else if (token.text.endsWith("'ve") && /^(what|who|how|where)'ve$/.test(token.text)) {
      const at = token.end - 3;
      tokens.push(changed(token, { text: token.text.slice(0, -3), end: at }), changed(token, { text: 'have', start: at, glued: true }));
    } else tokens.push(token);
  }
  return tokens.map((token, index) => {
    // "we're @ 27 now", "back @ 2"
    if (token.text === '@' && placed.test(tokens[index - 1]?.text ?? '')) return changed(token, { kind: 'word', text: 'at' });
    if (token.kind !== 'word') return token;
    const letter = letterFor(tokens, index);
    if (letter !== undefined) return changed(token, { text: letter });
    if (heardAsInc(token, tokens[index + 1])) return changed(token, { text: 'inc' });
    if (token.text === 'bk' && moves.test(tokens[index - 1]?.text ?? '')) return changed(token, { text: 'back' });
    if (isAre(tokens, index)) return changed(token, { text: 'are' });
    // "she'll no pay mair": not
    if (token.text === 'no' && /^[a-z]+'ll$/.test(tokens[index - 1]?.text ?? '') && tokens[index + 1]?.kind === 'word')
      return changed(token, { text: 'not' });
    // "the 31st o june"
    if ((token.text === 'o' || token.text === "o'") && /^(st|nd|rd|th)$/.test(tokens[index - 1]?.text ?? ''))
      return changed(token, { text: 'of' });
    if (token.text === 'n' && tokens[index + 1]?.text === 'a' && tokens[index + 2]?.text === 'half') return changed(token, { text: 'and' });
    // "ten days from now": nothing has changed by it.
    if (token.text === 'now' && tokens[index - 1]?.text === 'from' && tokens[index + 1]?.text !== 'on')
      return changed(token, { text: 'today' });
    // "45 buttonholes for now": no change either.
    if (token.text === 'now' && tokens[index - 1]?.text === 'for') return changed(token, { text: 'moment' });
    if (isAbout(tokens, index)) return changed(token, { text: 'about' });
    if (token.text === 'em' && ofShare(tokens, index - 1)) return changed(token, { text: 'them' });
    const text = meantBy(token.text);
    return text === undefined ? token : changed(token, { text });
  });
};
