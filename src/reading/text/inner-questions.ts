// Questions inside a sentence: "could you tell me how many are left", "they're asking if we can do 30 by Friday", "any idea what the total is".
// What is asked is read as if it were asked outright: "how many are left?", "can we do 30 by Friday?".

import { formOf, type Match } from '../pattern.ts';
import { namesTax } from './of-tax.ts';
import { isEnd } from './sentence-end.ts';
import { changed, cut, type Token } from './token.ts';

const kind = '(please|pls|plz|kindly|just|possibly|also){0,2}';
const who = '(you|u|ya|ye|anyone|someone|anybody|somebody)';
const opening = formOf(
  `((can|could|cld|would|will) ${who} ${kind} ((tell|remind|show) (me|us)?|let (me|us) know|check|confirm|see|find out|work out)|(please|pls|plz|kindly|just)? ((tell|remind) (me|us)|let (me|us) know)|(do|does|did) (${who}|we) (know|remember|recall|happen to know)|(anyone|anybody|someone) (know|knows|remember)|(any|got any|have you any) (idea|ideas|clue)|(i|we) (was|am|were|are|do|just|really){0,2} (wondering|wonder|need to know|need to find out|need to check|want to know|would like to know|like to know|have to know|forget|forgot|can't remember|cant remember)|i'd (like|love) to know|(just|was)? (wondering|curious)|(need|want|like) to know|(the)? (they're|theyre|she's|shes|he's|hes|they|she|he|we|client|client's|clients|customer|bride|bride's|groom|planner|planner's|mum|mother|couple|venue|hotel) (is|are|was|were|keeps|just|also){0,2} (asking|asked|asks|ask|wants to know|want to know|wondering|wonders|wanted to know) (me|us)?)`,
);
// "dunno if gst is in that 15": what tax is in it; of other things it may tell as much as ask.
const unsure = formOf("(dunno|not sure|unsure|can't say|cant say|no idea|not certain|haven't a clue) (if|whether)");
const asking = /^(what|whats|what's|how|when|which|who|who's|whos|whose|where|why|if|whether)$/;
// "let me know when 12 are done", "let me know if you need 12 more": asked of people, for later.
const forLater = formOf(
  "(when|if|once) (you|u|<number>|they|she|he|it|it's|anything|anyone|there|theres|ready|done|finished|the <any>{1,2} (arrive|arrives|are done|is done|are ready|come|comes))",
);
const told = /^(let|tell)$/;

// "they want to know the price for 22"
const asksFor = /^(price|prices|cost|total|rate|date|day|time|count|number|stem|stems|budget|margin|labour|damage|latest|recipe)$/;

const contracted: Readonly<Record<string, readonly [string, string]>> = {
  "it's": ['is', 'it'],
  its: ['is', 'it'],
  "that's": ['is', 'that'],
  thats: ['is', 'that'],
  "they're": ['are', 'they'],
  theyre: ['are', 'they'],
  "we're": ['are', 'we'],
  "we'll": ['will', 'we'],
  "it'll": ['will', 'it'],
  "i'll": ['will', 'i'],
  "she's": ['is', 'she'],
  "he's": ['is', 'he'],
  "there's": ['is', 'there'],
  theres: ['is', 'there'],
};
const pronoun = /^(we|i|you|they|she|he|it|that|this|these|those|there)$/;
const auxiliary = /^(can|could|will|would|are|is|was|were|do|does|did|have|has|should|shall)$/;

const leads = new Set(
  'so and also ok okay hey hi sorry oh actually please pls right then but um er well just quick question morning , - :'.split(' '),
);
const longest = 40;

// "if we can do 8" is "can we do 8"; "whether the price includes vat" is "does the price include vat".
const outright = (said: readonly Token[]): readonly Token[] => {
  const [first, subject, verb] = said;
  if (first !== undefined && /^(the|our|my|their)$/.test(first.text))
    return [changed(first, { text: 'what', end: first.start }), changed(first, { text: 'is', end: first.start }), ...said];
  if (first === undefined || subject === undefined || !/^(if|whether)$/.test(first.text)) return said;
  const short = Object.hasOwn(contracted, subject.text) ? contracted[subject.text] : undefined;
  if (short !== undefined) return [changed(first, { text: short[0] }), changed(subject, { text: short[1] }), ...said.slice(2)];
  if (!pronoun.test(subject.text)) return [changed(first, { text: 'does' }), ...said.slice(1)];
  if (verb !== undefined && auxiliary.test(verb.text)) return [changed(first, { text: verb.text }), subject, ...said.slice(3)];
  return [changed(first, { text: /ed$|^(said|went|had|made|got)$/.test(verb?.text ?? '') ? 'did' : 'do' }), ...said.slice(1)];
};

const unsureOfTax = (tokens: readonly Token[], start: number, end: number): Match | undefined => {
  const match = unsure.at(tokens, start, end);
  const taxed = tokens.slice(start, end).some(namesTax);
  return match !== undefined && taxed ? { ...match, end: match.end - 1 } : undefined;
};

const named = (tokens: readonly Token[], from: number): boolean =>
  /^(the|our|my|their)$/.test(tokens[from]?.text ?? '') &&
  tokens.slice(from - 1, from).some(({ text }) => text === 'know') &&
  asksFor.test(tokens[from + 1]?.text ?? '');

/** The tokens with inner questions asked outright. */
export const withOpenQuestions = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some((token) => asking.test(token.text) || token.text === 'know')) return tokens;
  const kept: Token[] = [];
  for (let start = 0; start < tokens.length; ) {
    let end = start;
    while (!isEnd(tokens, end)) end += 1;
    let at = start;
    while (at < end && leads.has(tokens[at]?.text ?? '')) at += 1;
    const match = end - start > longest ? undefined : (opening.at(tokens, at, end) ?? unsureOfTax(tokens, at, end));
    const from = match?.end ?? end;
    const mark = tokens[end];
    const later = told.test(tokens[at]?.text ?? '') && forLater.at(tokens, from, end) !== undefined;
    if (match === undefined || end - from < 2 || later || !(asking.test(tokens[from]?.text ?? '') || named(tokens, from))) {
      kept.push(...tokens.slice(start, mark === undefined ? end : end + 1));
    } else {
      const last = tokens[end - 1] as Token;
      kept.push(...outright(tokens.slice(from, end)));
      kept.push(cut({ kind: 'sign', text: '?', start: last.end, end: last.end, glued: true }));
      if (mark?.kind === 'line') kept.push(mark);
    }
    start = end + 1;
  }
  return kept;
};
