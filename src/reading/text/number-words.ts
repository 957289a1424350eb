// Joins number words into one number: "forty five", "a hundred and twenty", "two dozen", "a doz and a half", "half a dozen".
// "one" standing for a thing ("this one") and "a" alone stay words.

import { type Decimal, decimal } from '../../values/decimal.ts';
import { exactParts } from './fractions.ts';
import { ordinalWords } from './ordinal-words.ts';
import { asNumber, changed, firstWhere, type NumberRead, type Token } from './token.ts';
import { articles, beforeThing, isDozen, lakh, scaleOf, tensAndUnits, value } from './worded-numbers.ts';

interface Joined {
  readonly amount: Decimal;
  readonly length: number;
  readonly dozen: boolean;
  readonly approx: boolean;
}

const isAnd = (token: Token | undefined): boolean => /^(and|&|\+|n)$/.test(token?.text ?? '');

const andHalf = (tokens: readonly Token[], index: number): number => {
  if (!isAnd(tokens[index])) return 0;
  const article = articles.has(tokens[index + 1]?.text ?? '') ? 1 : 0;
  return tokens[index + 1 + article]?.text === 'half' ? 2 + article : 0;
};

const dozenFrom = (tokens: readonly Token[], index: number, amount: Decimal, approx: boolean): Joined => {
  const half = andHalf(tokens, index);
  const more = tokens[index + 1];
  const plusUnits =
    half === 0 && tokens[index]?.text === 'and'
      ? (value(more) ?? (more?.number?.form === 'plain' ? Number(more.number.amount) : undefined))
      : undefined;
  const dozen = amount.times(12);
  if (half > 0) return { amount: dozen.plus(6), length: index + half, dozen: true, approx };
  if (plusUnits !== undefined && plusUnits > 0 && plusUnits < 12 && Number.isInteger(plusUnits)) {
    return { amount: dozen.plus(plusUnits), length: index + 2, dozen: true, approx };
  }
  return { amount: dozen, length: index, dozen: true, approx };
};

// "couple from the open day", "the couple want": two people, and no count of pieces.
const tellsOfPeople =
  /^(from|for|at|in|on|with|who|who's|whos|is|are|was|were|has|have|had|want|wants|wanted|need|needs|said|say|says|would|will|can|came|come|coming|getting|get|got|just|now|to|that|rang|called|call|booked|moved|changed|cancelled|confirmed|asked|ask|asking|happy|like|liked|love|loved|and|or|but|,|\.|:|;|\?|!|-|\))?$/;

// "score of lapels for the lunch": twenty; "the score of the match" is none.
const isScoreOf = (tokens: readonly Token[], index: number): boolean => {
  const [before, next, thing] = [tokens[index - 1], tokens[index + 1], tokens[index + 2]];
  if (tokens[index]?.text !== 'score' || next?.text !== 'of' || thing?.kind !== 'word' || /^(the|a|our|this|that)$/.test(thing.text))
    return false;
  return (
    before === undefined ||
    before.kind !== 'word' ||
    /^(need|needs|want|wants|order|ordering|quote|about|and|do|doing|for|another)$/.test(before.text)
  );
};

const openers = new Set([...articles, 'score', 'half', 'couple', 'pair', 'trio', 'baker', "baker's", 'bakers', 'hundred']);
const mayOpen = (token: Token): boolean => openers.has(token.text) || isDozen(token) || value(token) !== undefined;

const priced = (before: Token | undefined): boolean => /^(@|at)$/.test(before?.text ?? '') || priceSign.test(before?.text ?? '');
const inHours = /^(hours?|hrs?)$/;
const halfOf = /^(1\/2|½)$/; // "1/2 doz corsages"
const priceSign = /^[$£€₹¥]$|^(r|rs|zar|inr|eur|gbp|usd|aud|nzd|cad)$/;
// A leading numeral, number word, "a", "half" or "a couple", before dozen or a scale.
const head = (tokens: readonly Token[], start: number): { amount: Decimal; next: number; worded: boolean; approx: boolean } | undefined => {
  const token = tokens[start];
  if (token === undefined || (token.number === undefined && !mayOpen(token))) return undefined;
  if (token.number !== undefined && halfOf.test(token.text) && isDozen(tokens[start + 1]))
    return { amount: decimal('0.5'), next: start + 1, worded: true, approx: false };
  const share = tokens[start + 1]?.text ?? '';
  const part = Object.hasOwn(exactParts, share) ? exactParts[share] : undefined; // "2 constructor dozen" has none
  // "2 1/2 doz bouts"; "$24 1/2 doz" is a price, then six.
  if (part !== undefined && /^[1-9]$/.test(token.text) && isDozen(tokens[start + 2]) && !priced(tokens[start - 1]))
    return { amount: decimal(token.text).plus(part), next: start + 2, worded: true, approx: false };
  if (token.number?.form === 'plain') {
    // "2 and a half hours"
    const half = andHalf(tokens, start + 1);
    const next = tokens[start + 1 + half]; // "me 4 hrs, junior 2 and a half"
    const ends = next === undefined || next.kind === 'line' || /^(,|;|\.|!|max|tops|only)$/.test(next.text);
    if (
      half > 0 &&
      (/^(hours?|hrs?|days?|weeks?|dozen|doz|quid|pounds?|euros?|dollars?|bucks|rand|rands|rupees)$/.test(next?.text ?? '') ||
        (ends && tokens.some(({ text }) => inHours.test(text))))
    )
      return { amount: decimal(token.number.amount).plus('0.5'), next: start + 1 + half, worded: true, approx: false };
    if (!isDozen(tokens[start + 1]) && scaleOf(tokens[start + 1]) === undefined) return undefined;
    return { amount: decimal(token.number.amount), next: start + 1, worded: false, approx: false };
  }
  if (token.text === 'half') {
    const article = articles.has(tokens[start + 1]?.text ?? '') ? 1 : 0;
    const many = tokens[start + 1 + article]; // "half a lakh"
    return isDozen(many) || scaleOf(many) === lakh || many?.text === 'grand' || many?.text === 'score'
      ? { amount: decimal('0.5'), next: start + 1 + article, worded: true, approx: false }
      : undefined;
  }
  const article = articles.has(token.text) ? 1 : 0;
  if (tokens[start + article]?.text === 'couple') {
    const of = tokens[start + article + 1]?.text === 'of' ? 1 : 0;
    if (of === 0 && tellsOfPeople.test(tokens[start + article + 1]?.text ?? '')) return undefined;
    return { amount: decimal(2), next: start + article + 1 + of, worded: true, approx: true };
  }
  if (
    tokens[start + article]?.text === 'pair' &&
    tokens[start + article + 1]?.text === 'of' &&
    tokens[start + article + 2]?.text !== 'hands'
  ) {
    return { amount: decimal(2), next: start + article + 2, worded: true, approx: false };
  }
  // "trio of hair combs"
  if (tokens[start + article]?.text === 'trio' && tokens[start + article + 1]?.text === 'of')
    return { amount: decimal(3), next: start + article + 2, worded: true, approx: false };
  // a baker's dozen is thirteen
  if (/^(baker|baker's|bakers)$/.test(tokens[start + article]?.text ?? '') && isDozen(tokens[start + article + 1]))
    return { amount: decimal(13), next: start + article + 2, worded: true, approx: false };
  if (article === 1) {
    if (tokens[start + 1]?.text === 'half' && (isDozen(tokens[start + 2]) || scaleOf(tokens[start + 2]) === lakh))
      return { amount: decimal('0.5'), next: start + 2, worded: true, approx: false };
    return isDozen(tokens[start + 1]) || scaleOf(tokens[start + 1]) !== undefined
      ? { amount: decimal(1), next: start + 1, worded: true, approx: false }
      : undefined;
  }
  if (isDozen(token) || token.text === 'hundred' || isScoreOf(tokens, start))
    return { amount: decimal(1), next: start, worded: true, approx: false };
  const ten = tensAndUnits(tokens, start);
  if (ten === undefined) return undefined;
  const half = andHalf(tokens, ten.next);
  if (half > 0) return { amount: decimal(ten.amount).plus('0.5'), next: ten.next + half, worded: true, approx: false };
  return { amount: decimal(ten.amount), next: ten.next, worded: true, approx: false };
};

// "eight hundred (and fifty)" or "fifty", behind a thousand or a hundred.
const below = (tokens: readonly Token[], start: number, scale: number): ReturnType<typeof tensAndUnits> => {
  const first = tensAndUnits(tokens, start);
  if (first === undefined || scale < 1000 || !/^hundreds?$/.test(tokens[first.next]?.text ?? '')) return first;
  const and = isAnd(tokens[first.next + 1]) ? 1 : 0;
  const rest = tensAndUnits(tokens, first.next + 1 + and);
  return { amount: first.amount * 100 + (rest?.amount ?? 0), next: rest?.next ?? first.next + 1 };
};

// "1 lakh 20 thousand", "a lakh and 50k": the thousands said behind.
const thousandsBehind = (tokens: readonly Token[], index: number): { amount: Decimal; next: number } | undefined => {
  const from = index + (isAnd(tokens[index]) ? 1 : 0);
  const first = head(tokens, from);
  if (first === undefined || scaleOf(tokens[first.next]) !== 1000) return undefined;
  return { amount: first.amount.times(1000), next: first.next + 1 };
};

// "budget 8 to 10 k": elsewhere a k that stands alone may be an ok.
const ofBudget = (tokens: readonly Token[], start: number): boolean =>
  firstWhere(tokens, start - 6, start, ({ text }) => /^(budget|bugdet|spend|total)$/.test(text)) >= 0;

const join = (tokens: readonly Token[], start: number): (Joined & { worded: boolean }) | undefined => {
  const first = head(tokens, start);
  if (first === undefined) return undefined;
  const next = first.next;
  // "$24 doz" is a price for twelve, not 288.
  if (!first.worded && priceSign.test(tokens[start - 1]?.text ?? '') && (scaleOf(tokens[next]) ?? 0) < 1000) return undefined;
  if (isDozen(tokens[next])) return { ...dozenFrom(tokens, next + 1, first.amount, first.approx), worded: first.worded };
  const scale = scaleOf(tokens[next]);
  // "by a score of 24 to 20": no twenty.
  if (tokens[next]?.text === 'score' && tokens[next + 1]?.text === 'of' && tokens[next + 2]?.number !== undefined) return undefined;
  const gluedK = tokens[next]?.text !== 'k' || tokens[next]?.glued === true || ofBudget(tokens, start);
  if (scale !== undefined && gluedK && !(tokens[next]?.text === 'score' && !first.worded)) {
    const and = isAnd(tokens[next + 1]) ? 1 : 0;
    const rest = scale >= 100 && first.worded ? below(tokens, next + 1 + and, scale) : undefined;
    const amount = first.amount.times(scale);
    const thousands = scale === lakh ? thousandsBehind(tokens, next + 1) : undefined;
    if (thousands !== undefined)
      return { amount: amount.plus(thousands.amount), length: thousands.next, dozen: false, approx: first.approx, worded: first.worded };
    return rest === undefined
      ? { amount, length: next + 1, dozen: false, approx: first.approx, worded: first.worded }
      : { amount: amount.plus(rest.amount), length: rest.next, dozen: false, approx: first.approx, worded: true };
  }
  if (!first.worded) return undefined;
  return { amount: first.amount, length: next, dozen: false, approx: first.approx, worded: true };
};

// "only the one broke, not 2", "just the one corsage broke": a number, where "the one that broke" is a piece.
const befell =
  /^(broke|broken|snapped|cracked|died|wilted|drooped|bent|dropped|smashed|squashed|crushed|ruined|binned|damaged|failed|fell|lost|dud)$/;
const finished = /^(done|made|finished|boxed|wired|taped|left)$/;
const onlyOne = (tokens: readonly Token[], index: number): boolean => {
  const [next = '', later = ''] = tokens.slice(index + 1, index + 3).map(({ text }) => text);
  const told = befell.test(next) || befell.test(later) || finished.test(next);
  return told && tokens[index - 1]?.text === 'the' && /^(only|just)$/.test(tokens[index - 2]?.text ?? '');
};

/** The tokens with every number in words joined into one number token. */
export const joinNumberWords = (tokens: readonly Token[]): Token[] => {
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const token = tokens[index] as Token;
    const before = joined.at(-1);
    const nth = token.kind === 'word' ? ordinalWords(tokens, index) : undefined;
    if (nth !== undefined) {
      const last = tokens[nth.next - 1] as Token;
      const day = String(nth.day);
      joined.push(changed(token, { kind: 'number', text: day, end: last.end, number: { form: 'ordinal', amount: day, worded: true } }));
      index = nth.next;
      continue;
    }
    const thing = token.text === 'one' && before?.kind === 'word' && beforeThing.has(before.text) && !onlyOne(tokens, index);
    const found = thing ? undefined : join(tokens, index);
    if (found === undefined || found.length <= index) {
      joined.push(token);
      index += 1;
      continue;
    }
    const number: NumberRead = {
      form: 'plain',
      amount: found.amount.toFixed(),
      ...(found.approx ? { approx: true } : {}),
      ...(found.worded ? { worded: true } : {}),
      ...(found.dozen ? { inDozens: true } : {}),
    };
    joined.push(asNumber(tokens, index, found.length, number));
    index = found.length;
  }
  return joined;
};
