// Orders and notes in a question's clothes: "could you put down 12 bouts?", "can we make that 30", "mind adding 3 corsages?". What is asked for is said
// plainly by what stays when the asking goes, so it is read as that, and its question mark as a full stop.

import { formOf } from '../pattern.ts';
import { none } from './means.ts';
import { gerunds } from './plain-verbs.ts';
import { isEnd } from './sentence-end.ts';
import { changed, type Token } from './token.ts';

const courtesy = '(please|pls|plz|plse|kindly|possibly|just|quickly|also|then|maybe|perhaps|,){0,3}';
const you = "(you|u|ya|ye|yous|yas|y'all)";

// Who is asked, and how: each leaves the verb next.
const ofYou = formOf(
  `((would|are|will) ${you} (be)? able to|(i'd|we'd|i would|we would) (like|love) (to|you to)?|(would|do) ${you} mind|mind|(can|could|cn|cld|would|will|wont|won't|couldnt|couldn't) ${you}|(any|is there any) (chance|way|possibility) (of|${you} (can|could|would|might)?)|(could|can|may|might) i (ask|get|trouble) ${you} to|(wondering|hoping|wonder) (if)? ${you} (could|can|would|might)|(i|we) (need|want|would like) ${you} to|(would it be|is it) (ok|okay|possible|alright|cool) (for ${you})? to) ${courtesy}`,
);
const ofUs = formOf(
  `((mind|ok|okay|alright|cool|fine) if (we|i)|(can|could|cn|cld|may|might) (we|i)|(would it be|is it) (ok|okay|possible|alright|cool) (for us|for me|if (we|i))? (to)?|(any|is there any) (chance|way|possibility) (we|i|of us) (can|could|might)?) ${courtesy}`,
);
const ofAnyone = formOf(`((can|could|would|will) (someone|somebody|anyone|anybody|one of you)) ${courtesy}`);

const figure = '(price|prices|pricing|quote|quotes|cost|costs|costing|costings|figure|figures|number|numbers|estimate|ballpark|idea)';
const sums = `((a|the)? (price|quote|cost|costing) (for|on)|(get|have|see|do|send) (me|us|her|him|them)? (up)? (a|your|the|some|your best)? (quick|rough|ballpark|proper|full)? ${figure} (up|together)? (for|on)|(price|prcie|quote|cost) (up|out|me|us|on|for){0,2}|(work out|calculate|give (me|us) (a|an|some)? (quick|rough|ballpark)? (of)? ${figure} (for|on|of))|(work|knock|whip|draw|write|run|tot|mock|do|draft|put|pull|sort|prepare|prep|make|throw) (me|us|them|her|him)? (up|out|together|through)? (a|the|some|your)? (quick|rough|ballpark|proper|full)? ${figure} (up|together|out)? (for|on)|(work|knock|run|tot|figure|price|cost|quote|ballpark|estimate|draft) (me|us)? (up|out|through)? (the)? <count> <any>{0,3} <piece>)`;
const noting = '(log|note|jot|record|enter|pencil|tick|mark|update|book|write)';
const downIn = '((put|pop|stick|get) (me|us|them|her|him)? (down|in) (for)?|(put|pop|stick) (<any>){0,2} <count> <any>{1,4} (down|in|on))';
const it = '(it|that|this|them|these|those|each|everything|us)';
const things = `(the|our|my|those|all|all the)? (<piece>|price|prices|count|number|numbers|order|total|date|day|event|wedding|quantity|qty)`;
const altering =
  '(change|amend|alter|correct|revise|adjust|switch|swap|bump|up|raise|lift|increase|lower|reduce|cut|trim|drop|take|bring|move|shift|push|set|put)';
// "can we change the 4 pin corsages to wrist ones?"
const swapping =
  '(change|switch|swap|make|convert|turn|exchange|replace) (the|our|my|those|all|all the|both|her|their)? (<count>)? (of (the|those|our))? (<material>)? <piece> (to|for|into|with|over to)? (a|the|some)? (<count>)? (<material>)? <piece>';
const more = '(add|chuck in|throw in|tack on|stick on|include|knock off|take off|take out|remove|lose|double|halve|cancel)';
const undoing = '(undo|scrap|scratch|ignore|forget|delete|take back|strike|bin|cancel) (that|it|this|the last|my last|last|what)';

/** What is asked of whoever notes the orders down: nothing of it can be a question. */
const asksYou = formOf(
  `(${sums}|${noting}|${downIn}|${altering}|${more}|${undoing}|make ${it}|make (the|all|all the) <any>|have ${it}|order <count> <any>{0,2} <piece>|(say|call) ${it}? <number>)`,
);
/** "can we do 22?" tries a figure; these change or note one. */
const asksUs = formOf(
  `((say|call) ${it}? <number> (<each>|<any>)? (instead|rather|not)|(get|have) (a|the|your|some) (price|prices|quote|costing) (by <word>{1,4})? (for|on)|(get|have) (some|a)? (price|prices|pricing|quotes|figures) (by <word>{1,4})? (for|on) (about)? <count>|${noting} (down|in)? <any>|${downIn} <any>|${altering} (${it}|${things}) <any>|${swapping}|${more} (on|in|another|a|an|one|<count>|the)|${undoing}|make ${it} (all)? (to|up to|down to|<upTo>|an even|<number>|<material>|<tax>|<included>|<onTop>)|order <count> (<any>){0,2} <piece>)`,
);
const asksAnyone = formOf(
  `(${noting}|put down) (down|off|in|that)? (the|all|all the|we|i|they|we've|i've)? (done|made|did)? (<count>|<piece>)`,
);

// "note that 2 crowns snapped": what is to be noted is told.
const notes = formOf(
  "(note|log|record|(jot|note|put|mark) down|remember) that (<count>|we|i|it|it's|the|there|they|she|he|we've|i've|<word> <any> <any>)",
);

/** "can I have 20 bouts please", "could we get 12 lapels at 14?": how many are wanted. */
const asksFor = formOf('(have|get|order|book|grab) (us|me)? (another|about|around)? <count> (<any>){0,2} <piece>');
const politely = new Set('please pls plz plse thanks thx ta cheers at @ each'.split(' '));
const made = new Set('done made finished ready out through thru boxed wired there together sorted in on'.split(' '));

// "can we drop it to 14 and still make money", "could you add 20 by friday": whether it can be done is what is asked.
const weighed = new Set(
  'still by before afford ever even if without enough how what whats when why which who whether realistically fit time squeeze instance'.split(
    ' ',
  ),
);
const asks = new Set('how what whats when why which who whether if'.split(' '));

const leads = new Set(
  'so and also ok okay hey hi sorry oh actually please pls right then but oops whoops um er wait no just , -'.split(' '),
);

const wants = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  const asked = ofUs.at(tokens, start, end);
  const match = asked === undefined ? undefined : asksFor.at(tokens, asked.end, end);
  if (match === undefined) return undefined;
  const rest = tokens.slice(match.end, end);
  // "can i get 20 bouts priced by friday"
  if (/^(priced|quoted|costed)$/.test(rest[0]?.text ?? '') && rest[1]?.text === 'by') return match.start + 1;
  if (rest.some(({ text }) => weighed.has(text) || made.has(text))) return undefined;
  const verb = tokens[match.start]?.text ?? '';
  if (/^(get|grab)$/.test(verb) && !tokens.slice(start, end + 1).some(({ text, number }) => politely.has(text) || number?.form === 'money'))
    return undefined;
  return match.start + 1;
};

// "can that be thirty", "could the bouts be 30 instead of 25", "can the date be moved to the 14th": said of the thing itself.
const passive = formOf(
  `(can|could|cld|may) (${it}|they|${things}) (please|pls|just|possibly){0,2} be ((changed|moved|made|bumped|dropped|switched|swapped|set|updated|pushed|brought) (up|down|back|forward|over)? to <any>|<number> <any>{0,5} (instead|rather|not) <any>)`,
);
const lastly = formOf(`can (${it}|they|${things}) be <amount> (<each>|<piece>)?`);
const ofTheThing = (tokens: readonly Token[], start: number, end: number): readonly Token[] | undefined => {
  const last = lastly.at(tokens, start, end);
  const match = last?.end === end ? last : passive.at(tokens, start, end);
  if (match === undefined || tokens.slice(start, end).some(({ text }) => weighed.has(text))) return undefined;
  const at = tokens.findIndex((token, index) => index > start && token.text === 'be');
  const be = tokens[at] as Token;
  const to: readonly Token[] = tokens[at + 1]?.number === undefined ? [changed(be, { text: 'is' })] : [changed(be, { text: 'should' }), be];
  return [...tokens.slice(start + 1, at), ...to, ...tokens.slice(at + 1, end)];
};

const pricing = formOf(
  '(have|get|see|do|send) (me|us)? (a|the|your|some)? (price|prices|pricing|quote|quotes|figures|costing) (by <word>{1,4})? (for|on)',
);
const priceWord = /^(price|prices|pricing|quote|quotes|figures|costing)$/;
// "can i get a price for 20 bouts by friday": the day is that of the price, and nobody asks whether it can be done.
const priceByDay = (tokens: readonly Token[], start: number, end: number): boolean => {
  const match = pricing.at(tokens, start, end);
  if (match === undefined || tokens[match.end]?.number === undefined) return false;
  return !tokens.slice(match.end, end).some(({ text }) => text !== 'by' && weighed.has(text));
};

const askings = [
  [ofYou, asksYou, asks],
  [ofAnyone, asksAnyone, asks],
  [ofUs, asksUs, weighed],
] as const;
// Where the asking ends and what is asked for begins; nothing when the sentence asks for nothing.
const askedFor = (tokens: readonly Token[], start: number, end: number): number | undefined => {
  const says = (words: ReadonlySet<string>, from: number): boolean => tokens.slice(from, end).some((token) => words.has(token.text));
  for (const [opening, wanted, unless] of askings) {
    const match = opening.at(tokens, start, end);
    if (match === undefined || wanted.at(tokens, match.end, end) === undefined) continue;
    if (!says(unless, match.end) || (unless === weighed && priceByDay(tokens, match.end, end))) return match.end;
  }
  return wants(tokens, start, end);
};

// "could you put together 20 bouts?" is "could you do 20 bouts?", and nothing made.
const makes = /^(put|throw|pull|knock|whip) (up|together)$/;
const withDoing = (tokens: readonly Token[], start: number, end: number): readonly Token[] | undefined => {
  const from = ofYou.at(tokens, start, end)?.end ?? end;
  const [verb, second] = [tokens[from], tokens[from + 1]];
  const width = makes.test(verb?.text ?? '') ? 1 : makes.test(`${verb?.text} ${second?.text}`) ? 2 : 0; // a phrase the trade knows is one token
  const to = from + width + (/^(the|those|another|about)$/.test(tokens[from + width]?.text ?? '') ? 1 : 0);
  if (verb === undefined || width === 0 || tokens[to]?.number === undefined) return undefined;
  return [...tokens.slice(start, from), changed(verb, { text: 'do', means: none }), ...tokens.slice(from + width, end)];
};

const withoutNoting = (told: readonly Token[]): readonly Token[] => {
  const priced = pricing.at(told, 0, told.length);
  // "send me a quote for 20 bouts by friday": the word for the price stays, as it tells what the day is of.
  if (priced !== undefined)
    return told.slice(told.some(({ text }) => text === 'by') ? told.findIndex(({ text }) => priceWord.test(text)) : priced.end);
  const match = notes.at(told, 0, told.length);
  return match === undefined ? told : told.slice(told.findIndex(({ text }) => text === 'that') + 1);
};

/** The tokens without the asking, and with a full stop for the question mark behind what was asked for. */
export const withoutAsking = (given: readonly Token[]): readonly Token[] => {
  if (
    !given.some(
      (token) =>
        token.text === 'mind' ||
        /^(can|cn|cld|could|may|might|would|will|any|is|are|ok|okay|fine|i'd|we'd|wondering|hoping|need|want|note|log|record|jot|put|mark|remember)/.test(
          token.text,
        ),
    )
  )
    return given;
  const tokens = given.map((token) => {
    const plain = Object.hasOwn(gerunds, token.text) ? gerunds[token.text] : undefined;
    return plain === undefined ? token : changed(token, { text: plain });
  });
  const kept: Token[] = [];
  for (let start = 0; start < given.length; ) {
    let end = start;
    while (!isEnd(given, end)) end += 1;
    let at = start;
    while (at < end && leads.has(given[at]?.text ?? '') && given[at + 1]?.text !== 'if') at += 1;
    const doing = withDoing(tokens, at, end);
    const from = doing === undefined ? askedFor(tokens, at, end) : undefined;
    const told = from === undefined ? ofTheThing(given, at, end) : [tokens[from] as Token, ...given.slice(from + 1, end)];
    const mark = given[end];
    if (told === undefined && notes.at(given, at, end) !== undefined) {
      kept.push(...given.slice(start, at), ...withoutNoting(given.slice(at, end)));
      if (mark !== undefined) kept.push(mark);
      start = end + 1;
      continue;
    }
    if (told === undefined) {
      kept.push(...given.slice(start, at), ...(doing ?? given.slice(at, end)));
      if (mark !== undefined) kept.push(mark);
      start = end + 1;
      continue;
    }
    kept.push(...withoutNoting(told));
    start = end + 1;
    if (mark !== undefined) kept.push(mark.text === '?' ? changed(mark, { text: '.' }) : mark);
    while (given[start]?.text === '?') start += 1;
  }
  return kept;
};
