// Divides a correction into what is meant now and what was said before: "14 not 40", "from 12 to 15", "not dried, fresh".

import { notRegistered } from '../order/not-registered.ts';
import { firstIn, pattern } from '../pattern.ts';
import { namesTax } from '../text/of-tax.ts';
import { firstWhere, type Token, textOf } from '../text/token.ts';
import { hadListed } from './had-listed.ts';
import { comparable, type Zones } from './two-zones.ts';
import { wasAndNow, wasSupposed } from './was-then-now.ts';

const notNow = pattern(
  "(not|instead of|rather than|isn't|isnt|wasn't|wasnt|aren't|arent|never|no longer|as opposed to|and not|was|were|used to be|down from|up from|in place of|ain't|earlier (i|we) (said|told|wrote|put|quoted|gave)|before (i|we) (said|told)|previously|(i|we) (told|said|quoted) (earlier|before)|earlier it was|was told)",
);
const saidMeant = pattern(
  "(said|put|typed|wrote|told|quoted|logged|entered|recorded|counted|noted|sent) <any> <any>{0,9} ((meant|mean|should|shouldve|should've|shoulda|shld)|(but|,|-|and) (its|it's|it is|it|actually|only|really|make|really|(it)? was (only|just|really|actually|more like)) (is|was|only|actually|should|be|it)?) <any>",
);
// "I told you 2pm, they've brought it forward to 1pm", "said 2pm, now says 1.30", "I had 2pm down, its 1pm"
const moved = '(moved|brought|pushed|put|changed|upped|bumped|shifted|dropped|raised|cut|lowered|knocked|taken)';
const saidMoved = [
  `(said|put|typed|wrote|told|quoted|noted|thought|gave) <any> <any>{0,6} (but|,|-|and) <any>{1,3} ${moved} (it|that|us|them|things|everything) (forward|back|up|down|out|on|right)? (to|<upTo>|up to|down to) <any>`,
  "(said|told|quoted|noted|thought) <any> <any>{0,6} (but|,|-|and) (she|he|they|bride|client|couple|it|planner|church|venue)? now (says|say|wants|want|its|it's|is|reckons|saying|at|for)? (<time>|<amount>)",
  `(had|have|got|thought) (it|that|us|them|you)? (was|were|down|is|at|for|as|in){0,2} <time> <any>{0,4} (but|,|-|and) (its|it's|it is|it|actually|<any>{1,2} ${moved}) <any>`,
].map((source) => pattern(source));
const fromTo = pattern('(from) <a:any> <any>{0,3} to');
// "tax not included" takes nothing back.
const taxNegated = (tokens: readonly Token[], index: number): boolean => {
  // "tax 8.25% not yet included"
  const rated = tokens[index - 1]?.number?.form === 'percent';
  const yet = tokens[index + 1]?.text === 'yet' ? 1 : 0;
  const [before, next, after] = [tokens[rated ? index - 2 : index - 1], tokens[index + 1 + yet], tokens[index + 2 + yet]];
  const taxOrIs = (token: Token | undefined): boolean => namesTax(token) || token?.text === 'is';
  if (taxOrIs(next) && /^(charged|applicable)$/.test(after?.text ?? '')) return true;
  if (notRegistered.at(tokens, index, tokens.length) !== undefined) return true; // "we're not vat registered"
  if (/^(counting|allowing|adding)$/.test(next?.text ?? '')) return tokens.slice(index + 2, index + 5).some(taxOrIs);
  // "plus gst not incl" says both.
  const said = tokens
    .slice(Math.max(0, index - 3), index)
    .some((token) => token.means['onTop'] !== undefined || /^(plus|\+|ex|top|extra|added)$/.test(token.text));
  return !said && next?.means['included'] !== undefined && (taxOrIs(before) || taxOrIs(after));
};

const butNow = /^(,|but|so|-|\.|;|it's|its|should|now|make|->|>|\()$/;
// "wedding 14 march, no make that 21 march": within one sentence the later words win.
const turning = pattern(
  "(no (,|make|wait|sorry|its|it's|that's|thats|(ex|excl|exc|inc|incl))|sorry|actually|wait|correction|oops|scratch that|i mean|make that)",
);
// "preserved actually, not dried": what follows is what was said before.
const near = 4; // words: "12 bouts actually done, not 15"
const negatedNext = (tokens: readonly Token[], index: number): boolean => {
  const stop = firstWhere(tokens, index, index + near, (token) => token.text === 'not' || comparable(token));
  return tokens[stop]?.text === 'not';
};

const turnsAt = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  for (let index = turning.next(tokens, start + 1, end); index < end; index = turning.next(tokens, index + 1, end)) {
    const turned = turning.at(tokens, index, end);
    if (turned === undefined || tokens[index - 1]?.text === 'or' || negatedNext(tokens, turned.end)) continue;
    if (tokens.slice(start, index).some(comparable) && tokens.slice(index, end).some(comparable)) return index;
  }
  return undefined;
};

// "14 combs was a typo, it's 19"; "13 made should be 30": a word after the first number says that it was wrong.
const wasWrong = pattern(
  "(was|is|were|are) (all|just)? (wrong|a typo|my typo|a mistake|my mistake|incorrect|an error|mistyped|a slip|not right|(the|our|my|your)? (old|previous|original|last|earlier) (price|count|number|one|figure|total|quote|rate|cost|time|date|day)) (,|-|:)? (and|its|it's|it is)?",
);
const shouldBe = pattern(
  "(,|-)? (but)? (that)? (should|shoulda|shouldve|should've|ought to|was meant to|were meant to|is meant to|was supposed to|were supposed to|is supposed to) (have|of)? (be|been|read|say|have been|have read|to be)?",
);
// "bouts 12, i meant 14"
const iMeant = pattern("(,|-|sorry|oops|no|,){0,3} (i|we) (meant|mean|meant to say|meant to put) (to say|to put|its|it's|it is)?");
// "2pm i told you, its now 1pm"
const iTold = pattern(
  "(is what)? (i|we|you|they) (told|said|had|gave) (you|u|ya|them|her|him)? (before|earlier|originally|down)? (,|-|but|;|and){1,2} (it|it's|its|now|is|has|been|they|they've|moved|changed){1,4}",
);
const corrected = (tokens: readonly Token[], start: number, end: number): Zones | undefined => {
  const match =
    wasWrong.in(tokens, start + 1, end) ??
    shouldBe.in(tokens, start + 1, end) ??
    iMeant.in(tokens, start + 1, end) ??
    iTold.in(tokens, start + 1, end);
  if (match === undefined) return undefined;
  const numbers = (from: number, to: number): number =>
    tokens.slice(from, to).filter(({ number }) => number?.form === 'plain' || number?.form === 'money' || number?.form === 'time').length;
  if (
    numbers(start, match.start) !== 1 ||
    numbers(match.end, end) !== 1 ||
    tokens.slice(match.end, end).some((token) => token.text === 'not')
  )
    return undefined;
  return { old: [[start, match.start]], fresh: [[match.end, end]] };
};

// "should be £11.50 each sorry, i put 15.10": what one said is told last.
const iSaid = pattern(
  "((sorry|,|-|but|not|and)? (i|we|i'd|id|we'd) (only|wrongly|accidentally|mistakenly|must have|had)? (said|put|typed|wrote|written|noted|noted down|quoted|had|logged|entered|sent)|(,|-|and) (wrongly|accidentally|mistakenly|by mistake)? (typed|put|wrote|told|entered|logged|mistyped|said) (wrongly|wrong|by mistake|in error)?|(,|-|and) (earlier|previously|formerly|prev) (it was|was|it)?) (down|it as|it at|that as|as|in)? (<n:amount>|<included>|<onTop>|<material>)",
);
// "only made 9 sorry, told you 10 before": said before it was put right.
const toldYou = pattern(
  "(sorry|soz|,|-|but|not|and|;|oops){0,3} (i|we|i'd|id|we'd)? (had)? (told|said|gave|said to|sent|texted) (you|u|ye|ya|them|her|him|everyone|yous)? (it was|that|it|about)? (<n:amount>|<n:time>) (done|made|finished|<piece>)? (before|earlier|previously|yesterday|this morning|last time|already|last night|first)",
);
// "i said inc before": when, and no basis.
const earlier = /^(before|b4)$/;
const toldBefore = (tokens: readonly Token[], start: number, end: number): Zones | undefined => {
  const said = toldYou.in(tokens, start + 1, end) ?? iSaid.in(tokens, start + 1, end);
  if (said === undefined) return undefined;
  const tags = said.kept['n'] === undefined ? ['included', 'onTop', 'material'] : [];
  const alike = (token: Token): boolean =>
    tags.length > 0 ? tags.some((tag) => token.means[tag] !== undefined) : /^(plain|money|time)$/.test(token.number?.form ?? '');
  if (
    !tokens.slice(start, said.start).some(alike) ||
    tokens.slice(said.end, end).some((token) => alike(token) && !earlier.test(token.text))
  )
    return undefined;
  return { fresh: [[start, said.start]], old: [[said.start, end]] };
};

// "said 16 done but 2 were from yesterday's order, so 14": the first number is taken back, the last is meant, what stands between says why.
const saidSo = pattern(
  "(said|put|told|logged|wrote|typed) (you|her|him|them)? <n:count> <any>{1,12} (so|leaves|makes it|makes) (its|it's|only|really|just|that's)? <m:count> (done|made|finished|really|now|in all)?",
);
const saidAndSo = (tokens: readonly Token[], start: number, end: number): Zones | undefined => {
  const match = saidSo.in(tokens, start, end);
  const [said, meant] = [match?.kept['n'], match?.kept['m']];
  if (match?.end !== end || said === undefined || meant === undefined) return undefined;
  return { old: [[match.start, tokens.indexOf(said, match.start) + 1]], fresh: [[tokens.lastIndexOf(meant, end - 1), end]] };
};

// "7 guys plus the groom, tax not in": a plus is of the tax only where that stands behind it.
const tellsBasis = (token: Token, next: Token | undefined): boolean =>
  token.means['included'] !== undefined ||
  (token.means['onTop'] !== undefined && (!/^(plus|\+)$/.test(token.text) || namesTax(next) || next?.number?.form === 'percent'));

// "VAT is included, not on top": a basis in words that mean one only beside another.
const otherBasis = (tokens: readonly Token[], start: number, index: number, from: number, to: number): boolean =>
  /^(on top|in|extra|added|added on|outside|inside|(with|without|after|before|in|on top of)( it| tax| that)?)$/.test(
    textOf(tokens, from, to),
  ) && tokens.slice(start, index).some((token, at) => tellsBasis(token, tokens[start + at + 1]));

// Several ask for the zones of the same stretch one after another.
let last: { readonly tokens: readonly Token[]; readonly start: number; readonly end: number; readonly zones: Zones } | undefined;

/** The zones of a stretch. Without "not", "from" or "instead of" everything is meant now. */
export const zonesOf = (tokens: readonly Token[], start: number, end: number): Zones => {
  if (last?.tokens !== tokens || last.start !== start || last.end !== end)
    last = { tokens, start, end, zones: hadListed(tokens, start, end) ?? divided(tokens, start, end) };
  return last.zones;
};

const divided = (tokens: readonly Token[], start: number, end: number): Zones => {
  const change = fromTo.in(tokens, start, end);
  if (change !== undefined) {
    return {
      old: [[change.start + 1, change.end - 1]],
      fresh: [
        [start, change.start],
        [change.end, end],
      ],
    };
  }
  const arrow = firstWhere(tokens, start + 1, end - 1, (token, index) => token.text === '>' && tokens.slice(start, index).some(comparable));
  if (arrow > 0 && tokens.slice(arrow, end).some(comparable)) return { old: [[start, arrow]], fresh: [[arrow + 1, end]] };
  const said = saidMeant.in(tokens, start, end) ?? firstIn(saidMoved, tokens, start, end);
  const meant =
    said === undefined ? -1 : firstWhere(tokens, said.start + 2, said.end, (token) => /^(meant|mean|should|but|,|-)$/.test(token.text));
  if (said !== undefined && tokens.slice(said.start + 1, meant).some(comparable)) {
    return {
      old: [[said.start + 1, meant]],
      fresh: [
        [start, said.start],
        [meant + 1, end],
      ],
    };
  }
  const told = saidAndSo(tokens, start, end) ?? toldBefore(tokens, start, end) ?? corrected(tokens, start, end);
  if (told !== undefined) return told;
  const turn = turnsAt(tokens, start, end);
  if (turn !== undefined) return { old: [[start, turn]], fresh: [[turn, end]] };
  const turned = wasAndNow(tokens, start, end);
  if (turned !== undefined) return turned;
  return takenBack(tokens, start, start, end) ?? { fresh: [[start, end]], old: [] };
};

// "corsages 6 not 4, and they're $36 each not $34": each "not" takes back what stands behind it.
const takenBack = (tokens: readonly Token[], start: number, from: number, end: number): Zones | undefined => {
  for (let index = notNow.next(tokens, from, end); index < end; index = notNow.next(tokens, index + 1, end)) {
    const match = notNow.at(tokens, index, end);
    if (match === undefined) continue;
    // "bouts up from 12 to 16, £14 each": the span tells both what it was and what it is.
    if (/^(up|down)$/.test(tokens[index]?.text ?? '') && tokens[match.end]?.number?.max !== undefined) continue;
    if (/^(sure|certain|decided|a|an|any|even|quite|much|many)$/.test(tokens[match.end]?.text ?? '')) continue;
    if (wasSupposed.at(tokens, index, end) !== undefined || taxNegated(tokens, index)) continue;
    const verb = /^(was|were)$/.test(tokens[index]?.text ?? '');
    if (verb && (index <= start + 1 || !/^(,|\(|-|it)$/.test(tokens[index - 1]?.text ?? ''))) continue;
    let stop = match.end;
    while (stop < end && (!butNow.test(tokens[stop]?.text ?? '') || stop === match.end)) stop += 1;
    if (!tokens.slice(match.end, stop).some(comparable) && !otherBasis(tokens, start, index, match.end, stop)) continue; // "not sure yet"
    const rest = takenBack(tokens, stop, stop, end) ?? { old: [], fresh: [[stop, end]] };
    return { old: [[match.end, stop], ...rest.old], fresh: [[start, index], ...rest.fresh] };
  }
  return undefined;
};
