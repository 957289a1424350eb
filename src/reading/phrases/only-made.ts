// "only 8 made", "we only got 8 done": not more than that so far. With an apology it puts right what was said; "sorry, 8 made" is asked about.

import type { Fact } from '../fact.ts';
import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { countedTwice } from '../progress/counted-twice.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import { amountOf } from '../progress/made-facts.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, isSingle } from '../text/token.ts';

const sorry =
  '((sorry|soz|apologies|my bad|apologise|so sorry|really sorry|oops|whoops|ah|oh|no|but|ok|so|guys|boss|unfortunately|,|-){0,4})';
const who = "(i|we|i've|we've|ive|weve|she|he|they|have|has|there's|theres|it's|its|there are|had){0,2}";
const some = '(<n:count>|the one|one) (of them|of those|nos|no|pcs)? (<material>)? (<p:piece>)?';
// "didn't get to 20, only 16 lapels made": the number that was not reached is none of what is made.
const short =
  "(i|we|she|he|they)? (didn't|didnt|did not|never|couldn't|couldnt|haven't|havent) (quite|even|really)? (get|got|make|made|reach|reached|hit|manage|managed|do|done|finish|finished) (to|up to|as far as|all)? (the|our|my)? <count> (<q:piece>)? (today|yet|tonight|in the end|sorry|after all)? (,|-|but|so|\\.){0,2}";
// "wire shortage so only 9 made"
const why = '((<any>){1,4} so)';
const forms = [
  `(${short}|${why})? ${sorry} ${who} (only|just) ${some} (are|is|were|was|have been|got|been|actually|now){0,2} (${doneWord}) (so far|now|yet|as of now)?`,
  `(${short})? ${sorry} ${who} only (${didWord}|got|had) ${some} (${doneWord})? (so far|now|yet|as of now)?`,
  `${short} ${sorry} ${who} (only|just)? (${some} (are|is|were|was|have been|got|been|actually|now){0,2} (${doneWord})|(${didWord}) ${some} (${doneWord})?) (so far|now|yet|as of now)?`,
].map((source) => pattern(source));
// "counted again, its 22 done", "two more than i thought, 18 done": what there is in all.
const counted = pattern(
  `(ok|so|right|just|i|we|i've|,|-){0,3} (counted again|counted up|counted them (all)?|counted|recounted|had a count|did a count|count is|the count is|by my count|lost count but|(<count>|a few|one|a couple) (more|fewer|less) than (i|we) (thought|said|reckoned)) (,|-|:|and|so|now){0,2} ${who} (about|actually|now){0,1} ${some} (are|is|all|been)? (${doneWord}) (now|so far|in all|in total)?`,
);
const sorryWord = /^(sorry|soz|apologies|my bad|apologise|so sorry|really sorry|oops|whoops)$/;
// "only 8 made it through the night": what is still good.
const survived = pattern('(only|just) <count> (<material>)? (<piece>)? made (it|the)');
const remark = pattern('(,|-|cos|because|coz|as|since|\\()');
const otherwise =
  /^(not|counted|miscounted|counting|count|wrong|mistake|mistyped|said|put|actually|instead|typo|meant|twice|dud|duds|broke|broken|snapped|left|go|more|today|tonight|yesterday)$/;

// A remark behind it, with nothing in it that counts.
const closes = (reader: Reader, end: number, part: Part): boolean =>
  end === part.end ||
  (remark.at(reader.tokens, end, part.end) !== undefined &&
    reader.tokens
      .slice(end, part.end)
      .every(({ number, means, text }) => number === undefined && means['piece'] === undefined && !otherwise.test(text)));

// "sorry, 8 made": late with it, or putting right what was said.
const eitherWay = pattern(
  `(sorry|soz|apologies|apologise) (guys|team|all|boss|,|-|:){0,2} ${some} (are|is|now|all|been){0,2} (${doneWord}) (now|,|!){0,2}`,
);
// "actually made 5 today" behind "made 6 today": five more, or five and not six.
const actually = pattern(
  `(oh|ah|no|nope|wait|ok|,){0,2} actually (,|-|:)? (i|we)? ((${didWord}) ${some}|${some} (are|is|now|all|been){0,2} (${doneWord})) (today|now|so far|tonight|this morning|,|!){0,2}`,
);
// "12 bouts actually done"
const reallyDone = pattern(
  `${some} (are|is|now|all|been){0,2} actually (all|now)? (${doneWord}) (today|now|so far|tonight|this morning|,|!){0,2}`,
);
const askWhich = (reader: Reader, part: Part): Finding | undefined => {
  const match = firstAt([eitherWay, actually, reallyDone], reader.tokens, part.start, part.end);
  const number = match?.kept['n']?.number;
  if (match?.end !== part.end || !isSingle(number)) return undefined;
  const words = reader.words(part.start, part.end);
  const [count, kind] = [amountOf(match.kept['n']), kindOf(match.kept['p'])];
  const choices: { words: string; facts: Fact[] }[] = [
    { words: `${count} in all`, facts: [{ fact: 'change', what: 'made', to: count, ...kind, words }] },
    { words: `${count} more made`, facts: [{ fact: 'made', count, ...kind, words }] },
  ];
  return { start: part.start, end: part.end, asks: [{ about: 'count', why: 'which number', words, choices }] };
};

// "didn't get near the combs, just 10 bouts": what was made instead.
const instead = pattern(
  "(sorry|ok|so|,){0,2} (i|we)? (didn't|didnt|did not|haven't|havent|never|couldn't|couldnt) (even|really)? (get|got|manage|managed|touch|touched|finish|finished|start|started|do|done|make|made|reach) (near|to|round to|onto|on to|any of|any|started on)? (the|any|our)? (<material>)? <piece> (today|yet|tonight|in the end|at all)? (,|-|but|so){0,2} ((only|just|but) (did|made|got|managed)? <n:count> (<material>)? <p:piece> (done|made|tho|though|instead|today)?|<n:count> (<material>)? <p:piece> (tho|though|instead))",
);
// "should've had 30 done by now, only at 21": what was hoped for is none of what is made.
const behind = pattern(
  "(we|i|ok|so)? (should have|should've|shouldve|shoulda|was meant to|were meant to|were supposed to|was supposed to|wanted to|hoped to) (have|had|be|been|got)? (done|made|at|on|to)? <count> (<piece>)? (done|made|finished|boxed)? (by now|by (<time>|lunch|tea|noon|today|tonight)|today|already)? (,|-|but|and|;){0,2} (we're|i'm|im|we|i|we've|ive|i've|have)? (only|just|still)? (only|just)? (at|on|got|have|made|did|done|managed) (to)? <n:count> (<p:piece>)? (done|made|finished|boxed)? (so far|now|sofar)?",
);
const findIn = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  if (part.asked) return [];
  const good = survived.in(tokens, part.start, part.end);
  if (good !== undefined) return [{ start: part.start, end: part.end, held: true }];
  const either = askWhich(reader, part);
  if (either !== undefined) return [either];
  const whole = counted.at(tokens, part.start, part.end);
  if (whole?.end === part.end && whole.kept['n']?.number?.max === undefined)
    return [
      found(reader, part.start, part.end, [{ fact: 'made', count: amountOf(whole.kept['n']), total: true, ...kindOf(whole.kept['p']) }]),
    ];
  const fewer = behind.at(tokens, part.start, part.end);
  if (fewer?.end === part.end && fewer.kept['n']?.number?.max === undefined)
    return [
      found(reader, part.start, part.end, [{ fact: 'made', count: amountOf(fewer.kept['n']), total: true, ...kindOf(fewer.kept['p']) }]),
    ];
  const other = instead.at(tokens, part.start, part.end);
  if (other?.end === part.end && other.kept['n']?.number?.max === undefined)
    return [found(reader, part.start, part.end, [{ fact: 'made', count: amountOf(other.kept['n']), ...kindOf(other.kept['p']) }])];
  for (const form of forms) {
    const match = form.at(tokens, part.start, part.end);
    const number = match?.kept['n']?.number;
    if (match === undefined || isRangeOrChoice(number)) continue;
    const count = match.kept['n'] === undefined ? 1 : amountOf(match.kept['n']);
    const words = tokens.slice(match.start, match.end).map(({ text }) => text);
    if (!closes(reader, match.end, part)) continue;
    const apology = words.some((word) => sorryWord.test(word));
    const { p, q } = match.kept;
    const kind = kindOf(p ?? q);
    const others = p !== undefined && q !== undefined && kindOf(p).piece !== kindOf(q).piece; // "didn't reach 20 bouts, only 4 corsages made"
    return [
      found(reader, part.start, part.end, [
        apology
          ? { fact: 'change', what: 'made', to: count, ...kind }
          : { fact: 'made', count, ...(others ? {} : { total: true as const }), ...kind },
      ]),
    ];
  }
  return [];
};

export const onlyMade: Phrase = {
  name: 'only so many made',
  examples: [],
  find: (reader) => {
    const twice = countedTwice(reader);
    if (twice.length > 0) return twice;
    return [...forms, survived, eitherWay, actually, reallyDone, instead, counted, behind].some((form) => form.might(reader.tokens))
      ? reader.untouched().flatMap((part) => findIn(reader, part))
      : [];
  },
};
