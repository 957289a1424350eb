// Corrections of a price by a difference: "knock 2 quid off each", "a fiver off the crowns", "bouts are a dollar cheaper now".

import { beginsAt, type Match, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import { isSingle, type Token } from '../text/token.ts';

const sum = '(a|another|an extra)? (<n:money>|<n:plain>)';
// What it is off or on: "each", "every crown", "the bouts", "the price of each comb".
const each =
  '(every (one|piece|<k:piece>)|a piece|<each>|each (one|of (the|them))?|the price|it|them|(the)? <all>|per piece|the each price|the unit price)';
const piece = '(the (unit)? price of)? (the|each|every|all the|all|per|a|our|her|both|those|of the)? (<material>)? <k:piece>';
const target = `(of|off|on|onto|to|from|for){0,2} (${piece} (<each>)?|${each} (<k:piece>)?)`;
const is = "(is|are|'s|should be|to be|will be|now|be|go|goes|going|gone|went|come|coming|have|has|need to go|can go|want|wants){0,2}";
const forms = [
  pattern(
    `(knock|take|drop|cut|reduce|lower|bring|shave|minus|less|come down|discount|down|lose|knocked|chop|trim|put) (it|them|the price|price|that|off|down)? (down)? (by)? (another)? ${sum} (off|down) (${target})?`,
  ),
  pattern(
    `(knock|take|drop|cut|reduce|lower|bring|shave|minus|less|come down|discount|down|lose|knocked) (it|them|the price|price|that|off)? (down)? (by)? (another)? ${sum} (off|down)? (of)? (${each})?`,
  ),
  pattern(
    `(add|adding|another|an extra|extra|a further|put|bump|up|raise|increase|lift|upped|push|stick|whack|chuck|plus) (it|them|the price|price|that|on|another)? (up)? (by)? (another)? ${sum} (on|to|onto|more|up|extra) (${target})?`,
  ),
  pattern(
    `(add|another|an extra|extra|a further|put|bump|up|raise|increase|lift|upped|push|stick|whack|plus) (it|them|the price|price|that|on|another)? (up)? (by)? (another)? ${sum} (on|to|onto|more|up)? (of)? (${each})?`,
  ),
  pattern(
    `(raise|lift|bump|increase|put|push|up|lower|drop|cut|reduce|bring|take|knock|move) (up|down)? (the)? (prices|price|rate)? (of|for|on)? ${piece} (price|prices)? (up|down|back)? by ${sum} (<each>)?`,
  ),
  pattern(
    `(raise|lift|bump|increase|put|push|up|lower|drop|cut|reduce|bring|take|knock|move|whack|jack) ((all|all the|all our|all my|the|our|my)? (prices|price|rate|rates|unit price|unit rate)|everything|all of (them|it)|them all|them|it all|the lot|all|<all>) (up|down|back)? by ${sum} (${each})?`,
  ),
  pattern(`${piece} (price|prices)? ${is} ${sum} (more|less|off|dearer|cheaper|extra|up|down) (${each})?`),
  pattern(`${piece} (price|prices)? ${is} (up|down) (by)? ${sum} (${each})?`),
  pattern(`${sum} (<each>)? (more|less|off|dearer|cheaper|extra|up|down) (${target})?`),
  pattern(`another <n:money> (on|onto) (${target})`),
];

/** "3 more than we said": than what was told before. */
export const thanSaid = pattern(
  "than (what)? (i|we|she|he|you|they|it|that|what) (had|have|'d|'ve|was|were)? (said|told (you|u|her|him|them)|quoted|put|wrote|sent|gave|typed|agreed|had|charged|before|earlier) (you|u|her|him|them)? (before|earlier|down|yesterday|last time|first|originally)?",
);
const lowers = /^(knock|knocked|take|drop|cut|reduce|lower|shave|minus|less|discount|down|lose|chop|trim|off|cheaper|come down)$/;
const raises = /^(add|adding|more|up|raise|increase|lift|upped|bump|dearer|extra|plus|on|onto|push|stick|whack|put|another)$/;
const one = /^(each|every|price|prices|per|rate|unit)$/;

const directionOf = (words: readonly string[]): 1 | -1 => {
  // "put it down by 2", "add 2 less" never happens: what lowers decides.
  if (words.some((word) => /^(off|down|less|cheaper)$/.test(word))) return -1;
  const first = words.find((word) => lowers.test(word) || raises.test(word));
  return first !== undefined && lowers.test(first) ? -1 : 1;
};

// "drop off 8.30 sat 13 march", "pick up 8.30 sat": when the flowers are brought or fetched.
const broughtThen = (tokens: readonly Token[], { start }: Match): boolean => {
  const [before, first, second] = [tokens[start - 1]?.text ?? '', tokens[start]?.text, tokens[start + 1]?.text];
  return (
    (first === 'drop' && second === 'off') || (first === 'up' && /^(pick|picks|picking|set|setting|start|starting|open)$/.test(before))
  );
};

/** A difference in the price, if this place says one; no fact where it is one of two. Only with a currency, "each" or "price" beside it. */
export const priceDifference = (tokens: readonly Token[], index: number, end: number): { match: Match; fact?: Unworded } | undefined => {
  if (!beginsAt(forms, tokens, index)) return undefined;
  for (const form of forms) {
    const match = form.at(tokens, index, end);
    const number = match?.kept['n']?.number;
    if (match === undefined || number === undefined) continue;
    const stretch = tokens.slice(match.start, match.end);
    const words = stretch.map((token) => token.text);
    const named = stretch.some((token) => token.means['each'] !== undefined || one.test(token.text));
    const aimed = match.kept['k'];
    const money = number.form === 'money' || /\.\d/.test(number.amount);
    if (number.form !== 'money' && !named && broughtThen(tokens, match)) continue;
    // "i put 16 each" says what it was.
    if (/^(put|push|plus)$/.test(words[0] ?? '') && !words.some((word) => /^(on|to|onto|up|more|extra|another|by|off|down)$/.test(word)))
      continue;
    const whole = stretch.filter((token) => token.means['all'] !== undefined && token.text !== 'all');
    const all = whole.length > 0;
    // "a pound off everything" is off each of them, "off the lot" off what they come to.
    const ofAll = whole.some(({ text }) => text !== 'everything');
    // "take 2 off the bouts": two fewer; "5 more each": pieces, or pounds.
    if (!money && !named && !all) continue;
    if (
      !money &&
      aimed === undefined &&
      tokens[match.start] === match.kept['n'] &&
      !words.some((word) => /^(dearer|cheaper|off)$/.test(word))
    )
      continue;
    if (
      number.form === 'money' &&
      !named &&
      aimed === undefined &&
      !words.some((word) => /^(off|more|up|down|by|dearer|cheaper|less|knock|extra)$/.test(word))
    )
      continue;
    // "all bunches up 50c": what goods cost.
    if (index > 0 && (tokens[index - 1]?.means['pack'] ?? tokens[index - 1]?.means['ingredient']) !== undefined) continue;
    const next = tokens[match.end];
    if (next?.means['ingredient'] !== undefined || next?.means['pack'] !== undefined) continue;
    // "reduce the rate by 2 an hour": a wage.
    if (/^(an|per|ph|p|\/|hourly|hour|hr)$/.test(next?.text ?? '')) continue;
    // "20 bouts £320 less 10%": what is taken off stands behind.
    if (next?.number?.form === 'percent' && words.at(-1) === 'less') continue;
    // "3 less than the crowns"; in "$5 more each than i said" it is the price that was said.
    const than = next?.text === 'than' ? thanSaid.at(tokens, match.end, end) : undefined;
    if (next?.text === 'than' && (than === undefined || !(named || aimed !== undefined))) continue;
    const stated = than === undefined ? match : { ...match, end: than.end };
    if (!isSingle(number)) return { match: stated };
    return {
      match: stated,
      fact: {
        fact: 'change',
        what: 'price',
        by: directionOf(words) < 0 ? `-${number.amount}` : number.amount,
        ...(ofAll ? { per: 'all' as const } : named || aimed !== undefined ? { per: 'each' as const } : {}),
        ...(number.currency === undefined ? {} : { currency: number.currency }),
        ...(number.symbol === undefined ? {} : { symbol: number.symbol }),
        ...kindOf(aimed),
      },
    };
  }
  return undefined;
};
