// Joins two numbers into a range or a choice, and marks a number as rough: "20-25", "18 or 22", "between 30 and 35", "about 20", "twenty-odd", "30ish".

import { decimal } from '../../values/decimal.ts';
import { formOf } from '../pattern.ts';
import { countsOfColumns } from './count-columns.ts';
import { none } from './means.ts';
import { changed, isSingle, type NumberRead, type Token } from './token.ts';

const months = /^(jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]*$/;
const roughBefore = new Set([
  'about',
  'around',
  'approx',
  'approximately',
  'roughly',
  'circa',
  'abt',
  'nearly',
  'almost',
  '~',
  'c',
  'maybe',
  'say',
  'ca',
]);

const rangeable = (number: NumberRead | undefined): number is NumberRead =>
  isSingle(number) && ['plain', 'money', 'duration', 'length', 'percent', 'weight'].includes(number.form);

// A bare number takes the unit of the other end: "20 to 25 quid", "$20-25", "4-5 hrs".
const sharedForm = (first: NumberRead, second: NumberRead): NumberRead | undefined => {
  if (first.form === second.form && (first.unit ?? '') === (second.unit ?? '')) return { ...second, ...first };
  if (first.form === 'plain') return { ...second, amount: first.amount };
  if (second.form === 'plain' && (first.form === 'money' || first.form === 'percent')) return first;
  return undefined;
};

// "2 maybe 3 crowns", "takes 20, poss 25 mins": the doubt stands between two numbers that lie near each other.
const perhaps = formOf('(,)? (or)? (maybe|poss|possibly|perhaps|might be|could be|may be) (even)?');
const doubtJoins = (tokens: readonly Token[], index: number, next: number): boolean => {
  const [first, second] = [tokens[index]?.number, tokens[next]?.number];
  if (first?.form !== 'plain' || second === undefined) return false;
  const [low, high] = [decimal(first.amount), decimal(second.amount)];
  if (!high.gt(low) || high.gt(low.times(2))) return false;
  const [before, after] = [tokens[index - 1], tokens[next + 1]];
  // "feb 14, maybe 15 bouts" and "bouts at 12, maybe 15 crowns" count another thing; "2, maybe 3 more" and "did 4, maybe 5 tomorrow" come on top.
  if (months.test(before?.text ?? '') || before?.text === '/') return false;
  if (/^(more|extra|spare|spares|another|tomorrow|tmrw|tomoz|later|tonight|by|on|next)$/.test(after?.text ?? '')) return false;
  return !(/^(at|@)$/.test(before?.text ?? '') && after?.kind === 'word') || after?.text === 'each';
};

const linkAt = (tokens: readonly Token[], index: number): { kind: 'to' | 'or' | 'and'; next: number } | undefined => {
  const text = tokens[index]?.text;
  if (text === '-' || text === 'to' || text === 'til' || text === 'till') return { kind: 'to', next: index + 1 };
  if (text === ',' && tokens[index + 1]?.text === 'or') return { kind: 'or', next: index + 2 };
  const doubt = perhaps.at(tokens, index);
  if (doubt !== undefined && doubtJoins(tokens, index - 1, doubt.end)) return { kind: 'or', next: doubt.end };
  if (text === 'or') return { kind: 'or', next: index + 1 };
  if (text === 'and' || text === '&' || text === '+' || text === 'n') return { kind: 'and', next: index + 1 };
  return undefined;
};

// "1-1.5 lakh", "8 to 10k", "1 or 2 dozen": the thousands or the dozens are said once, for both.
const scaled = /(^|[\d ])(k|grand|thousand|lakhs?|lacs?)$/;
const inPence = /\d ?(p|c|cents?|pence|paise)$/;
const inSameUnit = (first: Token, second: Token | undefined): Token => {
  const [low, high] = [first.number, second?.number];
  if (low === undefined || !/^(plain|money)$/.test(low.form) || high === undefined) return first;
  if (high.inDozens === true && low.inDozens !== true && low.form === 'plain') {
    const dozens = decimal(low.amount).times(12);
    return dozens.lt(high.amount) ? changed(first, { number: { ...low, amount: dozens.toFixed(), inDozens: true } }) : first;
  }
  // "50-60p each"
  if (low.form === 'plain' && high.form === 'money' && inPence.test(second?.text ?? '') && decimal(low.amount).gt(high.amount))
    return changed(first, { number: { ...low, amount: decimal(low.amount).dividedBy(100).toFixed() } });
  if (low.worded === true || scaled.test(first.text) || !scaled.test(second?.text ?? '')) return first;
  const times = /(lakhs?|lacs?)$/.test(second?.text ?? '') ? 100_000 : 1000;
  const amount = decimal(low.amount).times(times);
  return decimal(low.amount).lt(times) && amount.lt(high.amount) ? changed(first, { number: { ...low, amount: amount.toFixed() } }) : first;
};

// "18 lapels btw 14 and 17 each": behind a word for tax it is the tax of the Netherlands.
const isBtw = (tokens: readonly Token[], index: number): boolean =>
  tokens[index - 1]?.text === 'btw' &&
  !/^(ex|excl|exclusief|incl|inclusief|inc|in|plus|\+|zonder|met|%|with|and|no|of)$/.test(tokens[index - 2]?.text ?? '');

const joinPair = (tokens: readonly Token[], index: number): { token: Token; next: number } | undefined => {
  const link = linkAt(tokens, index + 1);
  const given = link === undefined ? undefined : tokens[index];
  const first = given === undefined || link === undefined ? undefined : inSameUnit(given, tokens[link.next]);
  if (first === undefined || link === undefined || !rangeable(first.number)) return undefined;
  const between = tokens[index - 1]?.text === 'between' || isBtw(tokens, index);
  if (link.kind === 'and' && !between) return undefined;
  const second = tokens[link.next];
  if (second === undefined || !rangeable(second.number) || months.test(tokens[link.next + 1]?.text ?? '')) return undefined;
  // "crew of 3 - 6 hours each": so many hands, and their hours.
  if (
    tokens[index + 1]?.text === '-' &&
    !tokens[index + 1]?.glued &&
    tokens[index - 1]?.text === 'of' &&
    /^(crew|team|gang|group)$/.test(tokens[index - 2]?.text ?? '')
  )
    return undefined;
  // "bout-6-$15": the number between two dashes counts.
  const [ahead, mid] = [tokens[index - 1], tokens[index + 1]];
  if (ahead?.text === '-' && ahead.glued && first.glued && mid?.text === '-' && second.number.form !== first.number.form) return undefined;
  // "4 - 12 each": a dash with spaces round it separates a count from its price unless both are alike.
  const dash = tokens[index + 1];
  if (dash?.text === '-' && !dash.glued && first.number.form !== second.number.form && first.number.form !== 'plain') return undefined;
  if (dash?.text === '-' && !dash.glued && second.number.form === 'money' && first.number.form === 'plain') return undefined;
  if (
    first.number.form === 'money' &&
    second.number.form === 'money' &&
    (first.number.currency ?? first.number.symbol) !== (second.number.currency ?? second.number.symbol)
  )
    return undefined;
  const form = sharedForm(first.number, second.number);
  if (form === undefined) return undefined;
  const [low, high] = [decimal(first.number.amount), decimal(second.number.amount)];
  // "lapels x 25 - 560 all up": far apart with room round the dash are two numbers.
  if (dash?.text === '-' && !dash.glued && first.number.form === 'plain' && high.gt(low.times(5))) return undefined;
  const { approx: _, ...plain } = form;
  // "£12-50 each": pounds and pence, as some write them; "£15-50" and "budget £10-50" are from the one to the other.
  const pence = first.number.form === 'money' && dash?.text === '-' && dash.glued && /^(50|95|99)$/.test(second.text);
  const spans = tokens.slice(Math.max(0, index - 3), index).some(({ text }) => /^(budgets?|between|from|spend|range|anything)$/.test(text));
  if (pence && !spans && second.glued && /^\D*\d+$/.test(first.text) && high.gt(low.times(4))) {
    const amount = `${first.number.amount}.${second.text}`.replace(/0$/, '');
    return {
      token: changed(first, {
        text: `${first.text}.${second.text}`,
        end: second.end,
        number: { ...plain, form: 'money', amount },
        means: none,
      }),
      next: link.next + 1,
    };
  }
  const number: NumberRead | undefined =
    link.kind === 'or' && form.form !== 'plain'
      ? { ...plain, amount: first.number.amount, or: [first.number.amount, second.number.amount] }
      : high.gt(low)
        ? {
            ...plain,
            amount: first.number.amount,
            max: second.number.amount,
            ...(link.kind === 'or' ? { or: [first.number.amount, second.number.amount] } : {}),
          }
        : undefined;
  if (number === undefined) return undefined;
  const text = `${first.text} ${tokens[index + 1]?.text ?? ''} ${second.text}`;
  return { token: changed(first, { text, end: second.end, number, means: none }), next: link.next + 1 };
};

const roughAfter = (tokens: readonly Token[], index: number): number => {
  const [first, second, third] = [tokens[index]?.text, tokens[index + 1]?.text, tokens[index + 2]?.text];
  if (first === 'odd' || first === 'ish') return index + 1;
  if (first === '-' && (second === 'odd' || second === 'ish')) return index + 2;
  if (first === 'or' && (second === 'so' || second === 'thereabouts')) return index + 2;
  if (first === 'give' && second === 'or' && third === 'take') return index + 3;
  if (first === '+' && tokens[index]?.glued === true && tokens[index + 1]?.glued !== true && !/^(tax|vat|gst|hst|pst)$/.test(second ?? ''))
    return index + 1;
  return index;
};

// "bout 30 buttonholes": before a number and the name of a kind it is "about", not a boutonniere.
const aboutClipped = (before: Token, token: Token, next: Token | undefined): boolean =>
  before.text === 'bout' &&
  token.number?.form === 'plain' &&
  /^(button|lapel|bouts|boutonn|cors|crown|wrist|comb|pieces|bhs)/.test(next?.text ?? '');

/** The tokens with ranges and choices joined and rough numbers marked. */
export const joinRanges = (tokens: readonly Token[]): Token[] => {
  const joined: Token[] = [];
  const columns = countsOfColumns(tokens);
  for (let index = 0; index < tokens.length; ) {
    const pair = columns.has(index) ? undefined : joinPair(tokens, index);
    let token = pair?.token ?? (tokens[index] as Token);
    if (pair !== undefined && isBtw(tokens, index) && /^(and|&|\+|n)$/.test(tokens[index + 1]?.text ?? ''))
      joined[joined.length - 1] = changed(tokens[index - 1] as Token, { text: 'between' });
    index = pair?.next ?? index + 1;
    if (token.number !== undefined && (token.number.form === 'plain' || token.number.form === 'money')) {
      const after = roughAfter(tokens, index);
      const before = joined.at(-1);
      // "it should say 16" is no guess.
      const told = before?.text === 'say' && /^(should|shld|shd|to|must)$/.test(joined.at(-2)?.text ?? '');
      const rough =
        before !== undefined &&
        !told &&
        (roughBefore.has(before.text) || (joined.at(-2)?.number === undefined && aboutClipped(before, token, tokens[index])));
      if (after > index || rough) {
        const end = (tokens[after - 1] ?? token).end;
        token = changed(token, { end: Math.max(end, token.end), number: { ...token.number, approx: true } });
        if (rough && before !== undefined) {
          joined.pop();
          token = changed(token, { start: before.start, glued: before.glued });
        }
        index = after;
      }
    }
    joined.push(token);
  }
  return joined;
};
