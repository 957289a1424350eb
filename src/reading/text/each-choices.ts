// One of two prices, each with its own "each": "12 each or 15 each w the orchid", "28 each or 32 with pearls". Both are kept, as in "12 or 15 each".

import { formOf, type Match } from '../pattern.ts';
import { asNumber, changed, isNumber, type NumberRead, type Token } from './token.ts';

const form = formOf('<a:amount> <e:each> (,|-)? or (at|@|maybe|possibly|say)? <b:amount> (<f:each>)?');
// What a second price without "each" goes on with; "14 each or 150 for the lot" are two totals.
const why = /^(with|w|w\/|if|using|incl|including|inc|without)$/;
const ofMaterial = formOf('<any>{0,3} <material>'); // "$18 each or $21 each if dried": two materials, and neither is picked
// "£8 each with foliage or £10 each with ribbon": what makes the difference, where it is no tax, no kind and no material.
const told = formOf(
  '<a:amount> <e:each> (with|w|w /|w/|using|if|plus|no|without) <word>{1,4} (,|-|;)? or (at|@|for|maybe|say)? <b:amount> <f:each>',
);
const ofElse = ['material', 'piece', 'taxName', 'taxWord', 'included', 'onTop', 'role', 'owner'];
// "price it for her at $10 each and at $15 each": to choose from, where one kind alone is named.
const both = formOf('<a:amount> (<e:each>)? (,|-)? (and|&|n|then) (also|again|then|once)? (at|@)? <b:amount> <f:each>');
const priced = formOf(
  '(price|quote|cost|priced|quoted|work|show|try|do|offer|give|both) (it|them|em|that|this|these|those|her|him|me|the|client|bride|up|out|both|two|ways|prices|options|versions|for|a|an|,|:|-|twice|once){0,6} (at|@)?',
);
// "price at 12 then 15 inc gst", "quote 12 and again at 15": the second is no "each" further from being a price.
const bare = formOf('<a:amount> (,)? (and again|then|then again|and then|and also|again) (at|@)? <b:amount>');
// "show her the R45 and the R60 version": one of the two is to be picked.
const which = '(version|versions|option|options|one|ones|idea|ideas|look|looks|design|designs|tier|tiers|style|styles)';
const hints = new Set(which.slice(1, -1).split('|'));
const versions = formOf(`<a:amount> ${which}? (,|-)? (and|&|n|or|then) (the|a|an|also|at){0,2} <b:amount> ${which}`);
const closes = (token: Token | undefined): boolean =>
  token === undefined ||
  token.kind !== 'word' ||
  ['included', 'onTop', 'taxName', 'taxWord', 'material'].some((tag) => token.means[tag] !== undefined);
const reach = 8;
const muchMore = 3;
const leastPrice = 5; // "2 each or 3 each for the ushers" counts pieces

const isPricedTwice = (tokens: readonly Token[], index: number): boolean => {
  for (let start = Math.max(0, index - reach); start < index; start++)
    if (priced.at(tokens, start, index)?.end === index) return new Set(tokens.flatMap(({ means }) => means['piece'] ?? [])).size === 1;
  return false;
};
const formAt = (tokens: readonly Token[], index: number): Match | undefined => {
  if (!isNumber(tokens[index], 'plain', 'money')) return undefined; // all begin with an amount
  const plain = form.at(tokens, index, tokens.length);
  if (plain !== undefined) return plain;
  const because = told.at(tokens, index, tokens.length);
  if (because !== undefined) {
    const stretch = tokens.slice(because.start + 2, because.end - 1);
    return stretch.some(({ means }) => ofElse.some((tag) => means[tag] !== undefined)) ? undefined : because;
  }
  const twice = both.at(tokens, index, tokens.length);
  if (twice !== undefined) return isPricedTwice(tokens, index) ? twice : undefined;
  const picked = versions.at(tokens, index, tokens.length);
  if (picked !== undefined) return isPricedTwice(tokens, index) ? picked : undefined;
  const again = bare.at(tokens, index, tokens.length);
  return again !== undefined && closes(tokens[again.end]) && isPricedTwice(tokens, index) ? again : undefined;
};

const bothOf = (tokens: readonly Token[], index: number): { match: Match; number: NumberRead; own: boolean } | undefined => {
  const match = formAt(tokens, index);
  if (match === undefined) return undefined;
  const [low, high] = [match.kept['a']?.number, match.kept['b']?.number];
  if (low === undefined || high === undefined) return undefined;
  if ([low, high].some(({ max, or }) => max !== undefined || or !== undefined)) return undefined;
  if (low.currency !== undefined && high.currency !== undefined && low.currency !== high.currency) return undefined;
  const own = match.kept['f'] !== undefined;
  if (ofMaterial.at(tokens, match.end, tokens.length) !== undefined) return undefined;
  if (!own && match.kept['e'] !== undefined && !why.test(tokens[match.end]?.text ?? '')) return undefined;
  const [one, other] = [Number(low.amount), Number(high.amount)];
  if (low.form === 'plain' && Math.min(one, other) < leastPrice) return undefined;
  if (one === other || Math.max(one, other) > muchMore * Math.min(one, other)) return undefined;
  const { approx: _, worded: __, ...said } = low.form === 'money' ? low : high;
  return { match, number: { ...said, amount: low.amount, or: [low.amount, high.amount] }, own };
};

/** The tokens with such pairs as one number, and one "each" behind it. */
export const joinEachChoices = (tokens: readonly Token[]): readonly Token[] => {
  const hinted = ({ text, means }: Token): boolean =>
    means['each'] !== undefined || text === 'then' || text.endsWith('again') || hints.has(text);
  if (!tokens.some(hinted)) return tokens;
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const both = bothOf(tokens, index);
    if (both === undefined) {
      joined.push(tokens[index] as Token);
      index += 1;
      continue;
    }
    const { match, number, own } = both;
    const last = tokens[match.end - 1] as Token;
    joined.push(asNumber(tokens, index, match.end - (own ? 1 : 0), number));
    const each = match.kept['e'];
    if (own) joined.push(last);
    else if (each !== undefined) joined.push(changed(each, { start: last.end, end: last.end }));
    index = match.end;
  }
  return joined;
};
