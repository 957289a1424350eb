// Prices as they are spoken: "eleven fifty each", "nine pounds fifty".

import { formOf } from '../pattern.ts';
import { codesAfter, dollarWords } from '../words/currency-words.ts';
import { tidyAmount } from './numeral.ts';
import type { NumberRead, Token } from './token.ts';

export interface WithUnit {
  readonly number: NumberRead;
  readonly next: number; // first token after the unit
}

// "eleven fifty each", "at eight fifty plus vat": a price in words. Two bare numbers side by side are a price only beside the words for one.
const priceAhead = /^(at|@|price|priced|quoted|charge|charging)$/;
const priceBehind = /^(plus|\+|inc|incl|ex|excl|each|,|\.|vat|gst|tax|incl\.|inc\.)$/;
const differs = formOf(
  '((more|extra|less|off|cheaper|dearer) (per|each|on|off|a|for|every|the|from|<piece>)|(to|onto|on|off) (each|every|all|the price))',
);
// "one bout eighteen fifty": a price right behind the piece that was counted.
const pieceWord =
  /^(bouts?|bhs?|lapels?|buttonholes?|boutonn?ieres?|boutonni.res?|corsages?|crowns?|halos?|combs?|flowers?|pieces?|pins?)$/;
const pieceBehindCount = (tokens: readonly Token[], index: number): boolean =>
  pieceWord.test(tokens[index - 1]?.text ?? '') &&
  [2, 3].some((back) => tokens[index - back]?.number?.form === 'plain' || /^(a|an|the)$/.test(tokens[index - back]?.text ?? ''));

export const wordedPrice = (tokens: readonly Token[], index: number): WithUnit | undefined => {
  // "fifteen-fifty each" is a price; "fifteen-twenty each" a range
  const dash = tokens[index + 1]?.text === '-' && tokens[index + 1]?.glued === true && tokens[index + 2]?.glued === true ? 1 : 0;
  const before = tokens[index - 1];
  const [whole, cents, after] = [tokens[index]?.number, tokens[index + 1 + dash]?.number, tokens[index + 2 + dash]];
  if (
    whole?.form !== 'plain' ||
    cents?.form !== 'plain' ||
    whole.worded !== true ||
    cents.worded !== true ||
    !/^\d{2}$/.test(cents.amount) ||
    !/^\d{1,2}$/.test(whole.amount) ||
    (dash === 1 && !(/^(25|50|75|95|99)$/.test(cents.amount) && Number(cents.amount) > 2 * Number(whole.amount)))
  )
    return undefined;
  const behind = after !== undefined && /^(each|ea|apiece|per|pp|pc|a|\/)$/.test(after.text);
  const between =
    priceAhead.test(tokens[index - 1]?.text ?? '') && (after === undefined || after.kind === 'line' || priceBehind.test(after.text));
  // "buttonholes x11, twelve fifty, all inc VAT": nobody says twelve and then fifty for anything else.
  const usual =
    /^(25|50|75|95|99)$/.test(cents.amount) &&
    (Number(whole.amount) <= 20 || Number(whole.amount) % 10 !== 0) &&
    (/^[,:-]$/.test(before?.text ?? '') ||
      before?.kind === 'line' ||
      (before?.kind === 'word' && pieceBehindCount(tokens, index)) ||
      (before?.number !== undefined && tokens[index - 2]?.text === 'x')) &&
    (after === undefined || after.kind === 'line' || priceBehind.test(after.text));
  // "two fifty more per crown", "add two fifty to each"
  const more = /^(25|50|75|95|99)$/.test(cents.amount) && Number(whole.amount) <= 20 && differs.at(tokens, index + 2 + dash) !== undefined;
  return behind || between || usual || more
    ? { number: { form: 'money', amount: tidyAmount(`${whole.amount}.${cents.amount}`) }, next: index + 2 + dash }
    : undefined;
};

// "two eighty all in", "six forty the lot": hundreds, as a total is said; "nine fifty all in" may be the price of one with its tax.
const ofAll = /^(altogether|total|overall)$/;
const twoOfAll = /^(all up|all told|the lot|in total|in all|for everything|for all|for both|all together)$/;
const withAll = /^all in$/;
// "one fifty lapels"
const ofPieces =
  /^(bouts|bhs|lapels?|buttonholes|boutonn?ieres|boutonni.res|corsages|wrist|pin|crowns|combs|halos|pieces|pcs|nos|dried|fresh|hair)$/;
export const wordedTotal = (tokens: readonly Token[], index: number): WithUnit | undefined => {
  const [hundreds, rest] = [tokens[index]?.number, tokens[index + 1]?.number];
  if (hundreds?.worded !== true || rest?.worded !== true || hundreds.form !== 'plain' || rest.form !== 'plain') return undefined;
  if (!/^[1-9]$/.test(hundreds.amount) || !/^[1-9]\d$/.test(rest.amount) || (tokens[index - 1]?.number?.worded ?? false)) return undefined;
  const from = index + (tokens[index + 2]?.text === ',' ? 3 : 2);
  const [first, second] = [tokens[from]?.text ?? '', tokens[from + 1]?.text ?? ''];
  const behind = `${first} ${second}`;
  const isTotal =
    ofAll.test(first) || twoOfAll.test(behind) || (first === 'for' && twoOfAll.test(`${second} ${tokens[from + 2]?.text ?? ''}`));
  const next = index + 2;
  const counts = from === next && ofPieces.test(first);
  if (counts) return { number: { form: 'plain', amount: `${hundreds.amount}${rest.amount}`, worded: true }, next };
  if (!isTotal && !withAll.test(behind)) return undefined;
  if (!isTotal && Number(hundreds.amount) > 4) return undefined;
  return { number: { form: 'plain', amount: `${hundreds.amount}${rest.amount}`, worded: true }, next };
};

const oneUnit = /^(dollar|buck|quid|pound|euro|rand)$/;
const aUnit = formOf(
  '(a|one) <any> (off|more|less|extra|cheaper|dearer|up|down|each|per|on to|onto|on (the|each|every|all|top)|to (the|each|every|all)|a (<piece>|pop|piece))',
);

/** "a dollar fifty", "a quid off": one of its kind. */
export const oneOf = (tokens: readonly Token[], index: number): WithUnit | undefined => {
  const more = /^(another|extra)$/.test(tokens[index - 1]?.text ?? '');
  const at = more ? index : index + 1;
  const [unit, cents] = [tokens[at], tokens[at + 1]];
  if ((!more && !/^(a|one)$/.test(tokens[index]?.text ?? '')) || unit?.kind !== 'word' || !oneUnit.test(unit.text)) return undefined;
  const spoken = cents?.number?.form === 'plain' && /^\d{2}$/.test(cents.number.amount);
  const by = more || /^(by|up|down)$/.test(tokens[index - 1]?.text ?? '');
  if (!spoken && !by && aUnit.at(tokens, index) === undefined) return undefined;
  const currency = Object.hasOwn(codesAfter, unit.text) ? codesAfter[unit.text] : undefined;
  const amount = spoken ? tidyAmount(`1.${cents.number?.amount ?? ''}`) : '1';
  const named = currency === undefined ? (unit.text === 'dollar' ? { symbol: '$' } : {}) : { currency };
  return { number: { form: 'money', amount, ...named }, next: at + (spoken ? 2 : 1) };
};

/** "nine pounds fifty", "9 pounds 50": the pence said after the pounds. */
export const pence = (tokens: readonly Token[], unit: WithUnit): WithUnit => {
  const [last, more, after] = [tokens[unit.next - 1], tokens[unit.next], tokens[unit.next + 1]];
  if (
    unit.number.form !== 'money' ||
    last?.kind !== 'word' ||
    more?.number?.form !== 'plain' ||
    !/^\d{2}$/.test(more.number.amount) ||
    unit.number.amount.includes('.')
  )
    return unit;
  const spoken = Object.hasOwn(codesAfter, last.text) || dollarWords.has(last.text);
  if (
    !spoken ||
    (after !== undefined &&
      after.kind !== 'line' &&
      !/^(each|ea|a|an|per|pp|pc|inc|incl|plus|\+|,|\.|ex|the|apiece|for|now|today|from|and|all|in|on|wrap|bunch|box|roll|pack|including|included|inclusive|excluding|excluded|exclusive|excl|gst|vat|hst|tax|taxes|please|pls|with|without|before|or|to|max|maximum|tops|if|so|as|but|then|dried|fresh|preserved|silk|at|per|thanks|total|no|not)$/.test(
        after.text,
      ))
  )
    return unit;
  return { number: { ...unit.number, amount: tidyAmount(`${unit.number.amount}.${more.number.amount}`) }, next: unit.next + 1 };
};
