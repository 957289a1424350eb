// Counted pieces of which a clause behind says that they were made: "oh plus 7 more lapels, did them while the kettle boiled". They are no order and no change.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { didWord } from '../progress/done-words.ts';
import { amountOf } from '../progress/made-facts.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';

const more = '(more|extra|of the|other|further)? (<material>)?';
const made = pattern(
  `(oh|and|plus|also|another|ok|so|then|there's|theres|the|about|\\+|,){0,4} <n:count> ${more} <p:piece> ((and|,|&|n|plus){0,2} <m:count> ${more} <q:piece>)? (,|-|and|which|\\(){0,2} (i|we|i've|we've|ive|weve|she|he|they|she's|he's|mum|mom|mam|dad|nan|gran|aunty|(the|our)? <bench>|(the|our)? (girls|lads|team|temps|crew)|<w:unlisted>)? (has|have)? (just|already|also|quickly|only|even|literally)? (${didWord}|knocked|smashed|banged|churned|whipped|bashed|hammered) (them|those|these|em|that lot) (out|all|both|up|off|too|as well|already|together){0,2}`,
);
// "24 lapels, thats all of them done"
const whole = pattern(
  `(ok|so|right|the|,){0,2} <n:count> (<material>)? <p:piece> (,|-)? (and)? (that's|thats|that is|which is) (all (of (them|em|those))?|them all|the lot|every (last)? one|<all>|em all) (now)? (done|made|finished|boxed|complete|sorted|ready) (now|today|woo|yay|finally|at last|lads|team|,|!){0,2}`,
);

// "that's the whole order done, 24 bouts plus 2 spares in the fridge"
const wholeFirst = pattern(
  "(ok|so|right|just|well|,){0,2} (that's|thats|that is|we've|we have|i've|finally)?((the|this)? (whole|full|entire|complete) (order|lot|job|thing|batch|set)|the lot|everything|everything's|(the|this)? <all>|all|all of (it|them)) (is|are|now|has been|have been|'s|all){0,2} (done|made|finished|complete|completed|boxed|ready|packed|sorted|boxed up) (now|today|,|-|:|\\(|that's|thats|so){1,3} <n:count> (<material>)? <p:piece> ((and|,|&|n|plus|\\+){1,2} <m:count> (<material>)? <q:piece>)? ((plus|with|and|incl|including|,|\\+){1,2} (a|<s:count>) (spare|spares|extra|extras))?",
);
const wholeCounted = (reader: Reader, part: Part): Finding | undefined => {
  const match = wholeFirst.at(reader.tokens, part.start, part.end);
  if (match === undefined) return undefined;
  const { n, m, p, q, s } = match.kept;
  const spare = s === undefined ? (/^(spare|extra)$/.test(reader.tokens[match.end - 1]?.text ?? '') ? 1 : undefined) : amountOf(s);
  const unsure = [n, m, s].some((token) => isRangeOrChoice(token?.number));
  // Spares beside two kinds are of either.
  if (unsure || (m !== undefined && spare !== undefined) || !remarkOnly(reader.tokens, match.end, part.end)) return undefined;
  const spares = spare === undefined ? {} : { spares: spare };
  const facts: Unworded[] = [{ fact: 'made', count: amountOf(n), ...kindOf(p), ...spares }];
  if (m !== undefined) facts.push({ fact: 'made', count: amountOf(m), ...kindOf(q) });
  return found(reader, part.start, part.end, [...facts, { fact: 'made', all: true }]);
};

// "did the mums' corsages, 2 of them", "finished the crowns, all 4 of them"
const ofThem = pattern(
  `(ok|so|right|just|i|we|i've|we've|ive|weve|,){0,3} (${didWord}) (all|the|my|our|her|his){0,2} (<owner>|<role>|<any>)? (')? <p:piece> (,|-|\\(){0,1} (<l:word>)? (<n:count>|<b:word>) of (them|those|em) (\\))? (now|so far|today|done){0,1}`,
);
const ofThose = (reader: Reader, part: Part): Finding | undefined => {
  const match = ofThem.at(reader.tokens, part.start, part.end);
  const { n, b, l, p } = match?.kept ?? {};
  if (match?.end !== part.end || p === undefined || (l !== undefined && l.text !== 'all')) return undefined;
  if (n === undefined ? b?.text !== 'both' : n.number?.max !== undefined) return undefined;
  const count = n === undefined ? 2 : amountOf(n);
  return found(reader, part.start, part.end, [{ fact: 'made', count, ...(l === undefined ? {} : { all: true as const }), ...kindOf(p) }]);
};

// When they were made is a remark; how, for whom or at what price is another matter.
const when =
  /^(while|whilst|when|over|on|in|all|boxed|ready|before|after|during|at|as|this|last|yesterday|between|earlier|today|tonight|just|first|early|late|straight|waiting|since|lol|haha|\)|,|-|!)$/;
const another =
  /^(wrong|wrongly|badly|not|never|year|month|week|wedding|instead|but|for|another|other|shop|studio|each|need|needs|order|add|with|from)$/;

const remarkOnly = (tokens: readonly Token[], start: number, end: number): boolean => {
  if (start < end && !when.test(tokens[start]?.text ?? '')) return false;
  for (let index = start; index < end; index++) {
    const { number, means, text } = tokens[index] as Token;
    const waiting = text === 'for' && tokens[index - 1]?.text === 'waiting';
    if (
      means['piece'] !== undefined ||
      (another.test(text) && !waiting) ||
      (number !== undefined && number.form !== 'time' && number.form !== 'duration')
    )
      return false;
  }
  return true;
};

const findIn = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  if (part.asked) return [];
  const lot = whole.at(tokens, part.start, part.end);
  if (lot?.end === part.end && lot.kept['n']?.number?.max === undefined)
    return [found(reader, part.start, part.end, [{ fact: 'made', count: amountOf(lot.kept['n']), all: true, ...kindOf(lot.kept['p']) }])];
  const those = ofThose(reader, part) ?? wholeCounted(reader, part);
  if (those !== undefined) return [those];
  const match = made.at(tokens, part.start, part.end);
  if (match === undefined) return [];
  // "12 bouts, we did them at 14 each" prices them.
  for (let index = match.end; index < part.end; index++)
    if (tokens[index]?.number?.form === 'money' || tokens[index]?.means['each'] !== undefined) return [];
  const { n, m, p, q } = match.kept;
  const unsure = [n, m].some((token) => isRangeOrChoice(token?.number));
  if (unsure || !remarkOnly(tokens, match.end, part.end)) return [{ start: part.start, end: part.end, held: true }];
  const facts: Unworded[] = [{ fact: 'made', count: amountOf(n), ...kindOf(p) }];
  if (m !== undefined) facts.push({ fact: 'made', count: amountOf(m), ...kindOf(q) });
  return [found(reader, part.start, part.end, facts)];
};

export const madeBehind: Phrase = {
  name: 'made, said behind',
  examples: [],
  find: (reader) =>
    made.might(reader.tokens) || ofThem.might(reader.tokens) || whole.might(reader.tokens) || wholeFirst.might(reader.tokens)
      ? reader.untouched().flatMap((part) => findIn(reader, part))
      : [],
};
