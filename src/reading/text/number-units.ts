// Joins a number with the unit or currency beside it: "£8.25", "19 euro", "R3 250", "450p", "18,500/-", "30cm", "7 mins", "4:30 pm", "27th".

import { decimal } from '../../values/decimal.ts';
import { beforeDollar, codesAfter, codesBefore, dollarWords, notes, signs } from '../words/currency-words.ts';
import { durations, lengths, onlyGlued, weights } from '../words/measure-words.ts';
import { clockTime } from './clock-words.ts';
import { tidyAmount } from './numeral.ts';
import { oneOf, pence, type WithUnit, wordedPrice, wordedTotal } from './spoken-prices.ts';
import { asNumber, changed, type NumberRead, type Token } from './token.ts';

const look = <T>(table: Readonly<Record<string, T>>, key: string | undefined): T | undefined =>
  key !== undefined && Object.hasOwn(table, key) ? table[key] : undefined;

type Unit = WithUnit;

const money = (number: NumberRead, currency: string | undefined, symbol?: string): NumberRead => {
  const { unit: _, ...rest } = number;
  return { ...rest, form: 'money', ...(currency === undefined ? {} : { currency }), ...(symbol === undefined ? {} : { symbol }) };
};

const hundredth = (number: NumberRead): NumberRead => ({ ...number, amount: decimal(number.amount).dividedBy(100).toFixed() });

const ordinal = (tokens: readonly Token[], index: number): Unit | undefined => {
  const [token, suffix] = [tokens[index], tokens[index + 1]];
  if (token?.number?.form !== 'plain' || !/^\d{1,2}$/.test(token.text) || suffix?.glued !== true || !/^(st|nd|rd|th)$/.test(suffix.text))
    return undefined;
  return { number: { ...token.number, form: 'ordinal' }, next: index + 2 };
};

const party =
  /^(groom|grooms|bride|bm|fob|fog|mob|mog|ushers?|dads?|mums?|moms?|nans?|grans?|grandads?|uncles?|brothers?|attendants?|bridesmaids?|celebrant|officiant|stepdad|page|ring|maid|flower|best|father|mother|wearers|bouts?|lapels?|buttonholes?|boutonnieres?|bhs?)$/;
const unitAfter = (tokens: readonly Token[], index: number): Unit | undefined => {
  const number = tokens[index]?.number;
  const unit = tokens[index + 1];
  if (number === undefined || number.form !== 'plain' || unit === undefined) return undefined;
  const text = unit.text;
  const next = index + 2;
  if (text === '%' || text === 'percent' || text === 'pct' || (text === 'pc' && unit.glued && tokens[index + 2]?.text !== '@')) {
    return text === 'pc' ? undefined : { number: { ...number, form: 'percent' }, next };
  }
  if (text === 'per' && tokens[index + 2]?.text === 'cent') return { number: { ...number, form: 'percent' }, next: index + 3 };
  if (text === '/' && tokens[index + 2]?.text === '-' && tokens[index + 2]?.glued === true)
    return { number: money(number, undefined), next: index + 3 };
  if (text === '°' || ((text === 'f' || text === 'c') && unit.glued && number.worded !== true && text === 'f') || /^degrees?$/.test(text)) {
    const letter = tokens[next]?.text;
    return { number: { ...number, form: 'temperature' }, next: letter === 'c' || letter === 'f' ? next + 1 : next };
  }
  // "9,50 € a piece": a sign with a number behind it belongs to that number.
  const own = unit.glued || tokens[next]?.number === undefined;
  if (text === '$' && own) return { number: money(number, undefined, '$'), next };
  if (unit.kind === 'sign' && look(signs, text) !== undefined && own) return { number: money(number, signs[text]), next };
  if (unit.kind !== 'word' && text !== '"') return undefined;
  // "24 in of ribbon", but "24 in all"
  const inches = text === 'in' && tokens[next]?.text === 'of';
  if (onlyGlued.has(text) && !unit.glued && !inches) return undefined;
  if (dollarWords.has(text)) return { number: money(number, undefined, text.startsWith('dollar') ? '$' : undefined), next };
  // "bunch of 20 Rs 180": the code belongs to the number behind it.
  const packed = !own && /^(of|x)$/.test(tokens[index - 1]?.text ?? '') && look(codesBefore, text) !== undefined;
  if (look(codesAfter, text) !== undefined && !packed) return { number: money(number, codesAfter[text]), next };
  if (text === 'p' || text === 'pence' || text === 'pee') return { number: money(hundredth(number), 'GBP'), next };
  // "18e", "18e, 30e"; "1e5" and "14ex" are none
  if (text === 'e' && unit.glued && (tokens[next]?.glued !== true || /^(line|sign)$/.test(tokens[next]?.kind ?? '')))
    return { number: money(number, 'EUR'), next };
  if (text === 'cents' || text === 'cent' || (text === 'c' && unit.glued)) return { number: money(hundredth(number), undefined), next };
  const duration = look(durations, text);
  if (duration !== undefined && duration !== '') return { number: { ...number, form: 'duration', unit: duration }, next };
  const length = look(lengths, text);
  if (length !== undefined) return { number: { ...number, form: 'length', unit: length }, next };
  // "groom, 3 gm, fob": groomsmen
  if (/^gms?$/.test(text) && !unit.glued && Number(number.amount) <= 15 && tokens.some((each) => party.test(each.text))) return undefined;
  const weight = look(weights, text);
  if (weight !== undefined) return { number: { ...number, form: 'weight', unit: weight }, next };
  return undefined;
};

// A currency before the number: "$12", "nz$19", "r65", "rs. 500", "eur 8,50".
const currencyBefore = (tokens: readonly Token[], index: number): Unit | undefined => {
  const first = tokens[index];
  if (first === undefined || first.number !== undefined) return undefined;
  const numberAt = (at: number): NumberRead | undefined => {
    const read = tokens[at]?.number?.form === 'plain' ? tokens[at]?.number : undefined;
    // "R2.400", "€1.250": no price has three places behind its point.
    return read !== undefined && /^[1-9]\d{0,2}\.\d{3}$/.test(tokens[at]?.text ?? '')
      ? { ...read, amount: (tokens[at]?.text ?? '').replace('.', '') }
      : read;
  };
  if (first.text === '$' || look(signs, first.text) !== undefined) {
    const number = numberAt(index + 1);
    if (number === undefined) return undefined;
    const letters = tokens[index + 2];
    const code = look(codesAfter, letters?.text);
    if (first.text === '$') {
      if (code !== undefined && /^(usd|aud|nzd|cad)$/.test(letters?.text ?? '')) return { number: money(number, code), next: index + 3 };
      return { number: money(number, undefined, '$'), next: index + 2 };
    }
    return { number: money(number, signs[first.text]), next: index + 2 };
  }
  if (first.kind !== 'word') return undefined;
  const dollar = tokens[index + 1];
  if (dollar?.text === '$' && dollar.glued && look(beforeDollar, first.text) !== undefined) {
    const number = numberAt(index + 2);
    return number === undefined ? undefined : { number: money(number, beforeDollar[first.text]), next: index + 3 };
  }
  const code = look(codesBefore, first.text);
  if (code === undefined) return undefined;
  const dot = dollar?.text === '.' && dollar.glued ? 1 : 0;
  // "Rs.120": the point belongs to the abbreviation.
  const point = /^[.](\d{2,4})$/.exec(dollar?.text ?? '');
  if (first.text === 'rs' && dollar?.glued === true && point !== null)
    return { number: money({ form: 'plain', amount: point[1] ?? '' }, code), next: index + 2 };
  const number = numberAt(index + 1 + dot);
  if (number === undefined || (first.text === 'r' && tokens[index + 1]?.glued !== true && number.worded === true)) return undefined;
  return { number: money(number, code), next: index + 2 + dot };
};

const spacedThousands = (tokens: readonly Token[], index: number): { amount: string; next: number } | undefined => {
  const [head, tail] = [tokens[index], tokens[index + 1]];
  if (head?.number?.form !== 'plain' || tail?.number?.form !== 'plain' || !/^\d{1,3}$/.test(head.text) || tail.glued) return undefined;
  if (!/^\d{3}([.,]\d{2})?$/.test(tail.text)) return undefined;
  // "R5 600 twenty buttonholes": after a currency the group still belongs to it.
  if (tokens[index + 2]?.number !== undefined && look(codesBefore, tokens[index - 1]?.text ?? '') === undefined) return undefined;
  if (tokens[index + 2]?.glued === true && tokens[index + 2]?.kind === 'word') return undefined; // "$32 100g"
  return { amount: tidyAmount(head.text + tail.text.replace(',', '.')), next: index + 2 };
};

// After "R3" or before "for the lot", a group of three digits goes on with the same number.
const totalAhead = /^(total|altogether|all|for|in|incl?|inclusive|ex|excl|plus|zar|rand|rands|euros?|eur)$/;
const joinThousands = (tokens: readonly Token[]): Token[] => {
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; index++) {
    const token = tokens[index] as Token;
    const found = spacedThousands(tokens, index);
    if (found === undefined) {
      joined.push(token);
      continue;
    }
    const before = tokens[index - 1];
    const marked =
      before !== undefined &&
      (before.text === '$' ||
        look(signs, before.text) !== undefined ||
        look(codesBefore, before.text) !== undefined ||
        /^(total|budget|totals?)$/.test(before.text));
    // "lapels x 25 560 all up": a count, then a total.
    const apart = before?.text === 'x' || before?.text === 'qty';
    if (!apart && (marked || totalAhead.test(tokens[found.next]?.text ?? ''))) {
      const tail = tokens[index + 1] as Token;
      joined.push(changed(token, { text: `${token.text} ${tail.text}`, end: tail.end, number: { form: 'plain', amount: found.amount } }));
      index = found.next - 1;
    } else joined.push(token);
  }
  return joined;
};

const gluedLetters = /^(x|nr|pk|ct|s|ea|each|pp|pcs?|nos?|k|odd|ish|am|pm|per|doz|bh|bhs|pc|ex|of|to|on|at|or|by|r)$/;

// "bay9", "4b", "a12": letters and digits in one word are somebody's code.
const isCode = (tokens: readonly Token[], index: number): boolean => {
  const [before, token, after] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  if (token?.number === undefined || token.number.worded === true) return false;
  if (token.glued && before?.kind === 'word' && before.text !== 'x' && !/^(bh|bhs|bouts?|rs|r|ea|at|for)$/.test(before.text)) return true;
  return after?.glued === true && after.kind === 'word' && after.text.length <= 2 && !gluedLetters.test(after.text);
};

// All that may begin an amount and is no number yet: "a dollar fifty", "tenner", "£", "rs", and what stands behind "another".
const moreOf = new Set(['another', 'extra']);
const opensMoney = new Set(['$', 'a', 'one', ...[notes, signs, codesBefore, beforeDollar].flatMap((table) => Object.keys(table))]);

/** The tokens with units and currencies joined to their numbers, and codes marked as such. */
export const joinUnits = (given: readonly Token[]): Token[] => {
  const tokens = joinThousands(given);
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const token = tokens[index] as Token;
    if (token.number === undefined && !opensMoney.has(token.text) && !moreOf.has(tokens[index - 1]?.text ?? '')) {
      joined.push(token);
      index += 1;
      continue;
    }
    const note = token.kind === 'word' ? look(notes, token.text) : undefined;
    const plain: Unit | undefined =
      note !== undefined
        ? { number: { form: 'money', amount: note }, next: index + 1 }
        : (oneOf(tokens, index) ??
          wordedPrice(tokens, index) ??
          wordedTotal(tokens, index) ??
          currencyBefore(tokens, index) ??
          clockTime(tokens, index) ??
          ordinal(tokens, index) ??
          unitAfter(tokens, index));
    const unit = plain === undefined ? undefined : pence(tokens, plain);
    if (unit !== undefined) {
      // "£3.50 p" never happens; "£450 /-" does: swallow the trailing mark.
      joined.push(asNumber(tokens, index, unit.next, unit.number));
      // "€85,-" has no cents.
      const [mark, dash] = [tokens[unit.next], tokens[unit.next + 1]];
      const whole = mark?.text === '/' || (mark?.text === ',' && mark.glued && dash?.glued === true);
      const slash = whole && dash?.text === '-' && tokens[unit.next + 2]?.glued !== true && unit.number.form === 'money';
      index = slash ? unit.next + 2 : unit.next;
      continue;
    }
    joined.push(isCode(tokens, index) ? changed(token, { number: { form: 'code', amount: '' } }) : token);
    index += 1;
  }
  return joined;
};
