// Whether a number is what goods cost. Without a currency or pence only "12 a bunch", "now 12" and "12 each" are prices.

import { isHourBeforeDay, isHourBehindDay } from '../dates/hours-no-prices.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import type { Token } from '../text/token.ts';
import { boxedAt } from './boxed.ts';
import { eachSaid } from './each-price.ts';

// "sat week picking up roses at 8": when they are fetched.
const fetched = pattern(
  '((pick|picking|picks|picked) up|collect|collecting|fetch|fetching|grab|grabbing|meet|meeting|unload|unloading) (the|our|my|some|all|all the)? (<count>)? (<pack>)? (of)? <ingredient> (<word>)? (at|@)',
);
// "bus leaves hotel 1.15"
const departs = pattern(
  '(bus|coach|train|taxi|cab|van|car|cars|ferry|boat|minibus|shuttle|limo|courier|driver|truck|ute|bakkie|flight|plane|bride|groom|couple|party|everyone|team|she|he|it) leaves',
);
const isHourToFetch = (tokens: readonly Token[], index: number): boolean =>
  /^(at|@)$/.test(tokens[index - 1]?.text ?? '') &&
  /^(\d|1[0-2])$/.test(tokens[index]?.text ?? '') &&
  !/^(a|an|per|each|ea|apiece|\/)$/.test(tokens[index + 1]?.text ?? '') &&
  fetched.in(tokens, Math.max(0, index - 9), index)?.end === index;

const trimmed = pattern('(head|heads|bloom|blooms|stem|stems|leaf|leaves|tip|tips|bud|buds|sprig|sprigs|branch|branches)');

// "be here fri 7.30 for the eucalyptus drop off": when somebody is wanted.
const meets = pattern(
  '((be|come|you|u|someone|somebody|team|all|wait) (here|in|there|around)|meet (me|us|up)|see (you|u)) (at|by|from|on|for|about|here|in|there|<weekday>|tomorrow|tmrw|tmr|today){0,4}',
);
const isHourToMeet = (tokens: readonly Token[], index: number): boolean =>
  /^(1[0-2]|0?[1-9])[.][0-5]\d$/.test(tokens[index]?.text ?? '') &&
  /^(for|as|to|,|on|sharp|start)$/.test(tokens[index + 1]?.text ?? '') &&
  meets.in(tokens, Math.max(0, index - 6), index)?.end === index;

export const isPrice = (reader: Reader, index: number, pack: boolean, known: boolean): boolean => {
  const token = reader.tokens[index];
  if (token?.number === undefined || !reader.free(index)) return false;
  // "-4": no price is below nothing.
  if (reader.tokens[index - 1]?.text === '-' && token.glued && reader.tokens[index - 1]?.glued === false) return false;
  if (token.number.form === 'money') return true;
  if (token.number.form !== 'plain' || token.number.inDozens === true) return false;
  const [before, after] = [reader.tokens[index - 1], reader.tokens[index + 1]];
  // "snip it to one head", "strip down to 3 leaves": how much is left of it.
  if (before?.text === 'to' && trimmed.at(reader.tokens, index + 1, reader.tokens.length) !== undefined) return false;
  // "water tanker at 4 today", "popping in tomorrow at 3 to look at ribbons": an hour.
  if (isHourBehindDay(reader.tokens, index) || isHourBeforeDay(reader.tokens, index) || isHourToFetch(reader.tokens, index)) return false;
  if (isHourToMeet(reader.tokens, index)) return false;
  if (departs.in(reader.tokens, 0, index) !== undefined) return false;
  // "need one each" counts.
  if (token.text === 'one' && after?.means['each'] !== undefined && !/^(at|@)$/.test(before?.text ?? '')) return false;
  // "tape 2 rolls" says how many.
  if (after?.means['pack'] !== undefined && (/[^s]s$/.test(after.text) || token.number.amount === '1')) return false;
  const boxed = [1, 2, 3, 4, 0]
    .map((by) => boxedAt(reader.tokens, index - by))
    .find((found) => found !== undefined && index <= found.price);
  if (boxed !== undefined && index >= boxed.start) return known && boxed.price === index;
  // "wire 0.71 x 10in": a gauge.
  if (after?.text === 'x' && reader.tokens[index + 2]?.number?.form === 'length') return false;
  if (known && after?.means['each'] !== undefined) {
    const part = reader.message.parts.find((each) => each.start <= index && index < each.end);
    if (part !== undefined && eachSaid(reader.tokens, part.start, part.end) === 'price') return true;
  }
  const decimals = /^\d+[.,]\d{2}$/.test(token.text);
  // "gum x2, rose x1 each" counts.
  if (before?.text === 'x' && token.glued && !decimals) return false;
  if (decimals && (pack || known)) return true;
  // "wheat 5 each + vat": what is taxed is a price.
  const perPack =
    after !== undefined &&
    ((/^(a|an|per|\/|the)$/.test(after.text) && reader.tokens[index + 2]?.means['pack'] !== undefined) ||
      (after.means['pack'] !== undefined && after.means['pack'] !== 'stem' && before?.means['ingredient'] !== undefined) ||
      (after.means['each'] !== undefined && (pack || (known && reader.tokens.slice(index + 2, index + 5).some(tellsOfTax)))));
  const behindPack =
    (closesPrice(after) || after?.text === 'plus') &&
    known &&
    before?.means['pack'] !== undefined &&
    reader.tokens[index - 2]?.number?.form === 'length';
  // "gyp 8, roses 22, euc 9.50 a bunch": a number right behind a name, in a list that has a sure price.
  const listed =
    known &&
    before?.means['ingredient'] !== undefined &&
    (after === undefined || /^(,|and|&)$/.test(after.text) || after.kind === 'line') &&
    sure(reader, index);
  // "statice 9 inc vat a bunch of 10": a number right behind a name, with a pack said after it.
  const beside = pack && known && before?.means['ingredient'] !== undefined && closesPrice(after) && !restSized(reader, index);
  // "a wrap of gyp is 11 inc gst"
  const told = known && pack && /^(is|are)$/.test(before?.text ?? '') && closesPrice(after);
  // "wheat's gone up to 7", "gyp up to 7"
  // "moss 12 for 500g now"
  const measured =
    known &&
    after?.text === 'for' &&
    before?.means['ingredient'] !== undefined &&
    /^(length|weight)$/.test(reader.tokens[index + 2]?.number?.form ?? '');
  const dearer = known && /^(up|down) ?to$/.test(before?.text ?? '') && nameBefore.test(reader.tokens, index);
  return (
    (known || pack) &&
    (beside ||
      listed ||
      dearer ||
      measured ||
      behindPack ||
      perPack ||
      told ||
      /^(at|@|now|to)$/.test(before?.text ?? '') ||
      (known && token.number.max !== undefined && countsGoods.at(reader.tokens, index + 1, reader.tokens.length) === undefined))
  );
};

// "used 20 or 22 roses": how many, and no price.
const countsGoods = pattern('(x|of|more|extra|stems|stem|sprigs|heads|<material>){0,2} <ingredient>');

const nameBefore = {
  test: (tokens: readonly Token[], index: number): boolean => rises.in(tokens, Math.max(0, index - 5), index)?.end === index,
};
const rises = pattern('<ingredient> (has|have|is|are|just|now){0,2} (gone|went|going|come)? <upTo>');

const closesPrice = (after: Token | undefined): boolean =>
  after === undefined ||
  after.means['included'] !== undefined ||
  after.means['onTop'] !== undefined ||
  after.means['taxName'] !== undefined ||
  /^(,|\(|\/|\+|per|a|an|the|inc|ex|for|now)$/.test(after.text);
// "pins 50 a box £6": another price further on, so this number is the size.
const restSized = (reader: Reader, index: number): boolean => {
  const part = reader.message.parts.find((each) => each.start <= index && index < each.end);
  const rest = reader.tokens.slice(index + 1, part?.end ?? index);
  const next = rest.findIndex((token) => token.text === ',' || token.text === 'and');
  return rest.slice(0, next < 0 ? rest.length : next).some((token) => token.number?.form === 'money' || /^\d+[.,]\d{2}$/.test(token.text));
};

const sure = (reader: Reader, index: number): boolean => {
  const part = reader.message.parts.find((each) => each.start <= index && index < each.end);
  return reader.tokens
    .slice(part?.start ?? index, part?.end ?? index)
    .some(
      (token, at) =>
        token.number?.form === 'money' ||
        /^\d+[.,]\d{2}$/.test(token.text) ||
        (token.number?.form === 'plain' && aPack.at(reader.tokens, (part?.start ?? index) + at + 1, reader.tokens.length) !== undefined),
    );
};
const aPack = pattern('(a|per|/) <pack>');

// "statice 4 for 20": four for twenty, or twenty for four; without a currency, pence or a unit nothing says which.
const eitherWay = pattern('<a:plain> for <b:plain>');
const sized = /^(stem|stems|pc|pcs|piece|pieces|pins|heads|sheets|rolls|sticks|blooms|nos|ct|quid|euro|euros|rand)$/;
export const pricedEitherWay = (tokens: readonly Token[], start: number, end: number): boolean => {
  const match = eitherWay.in(tokens, start, end);
  const whole = (token: Token | undefined): boolean => /^\d+$/.test(token?.text ?? '');
  const next = tokens[match?.end ?? end];
  return (
    match !== undefined &&
    whole(match.kept['a']) &&
    whole(match.kept['b']) &&
    (match.end >= end || (!sized.test(next?.text ?? '') && next?.means['pack'] === undefined))
  );
};
