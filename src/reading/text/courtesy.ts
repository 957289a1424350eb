// Greetings before a message and thanks behind it: "hi team, 40 bouts at 18 pls x". They say nothing about the order, so nobody reads them.

import { wordList } from '../words/word-list.ts';
import type { Token } from './token.ts';

const greetings = new Set(
  wordList(`
  hi, hii, hiya, hey, heya, heyy, hello, hullo, helo, howdy, yo, gday, g'day, greetings, namaste, howzit, oi, hola, ello
`),
);
const openers = new Set(wordList('ok, okay, okey, oki, kk, right, alright, righto, well, um, umm, er, erm, hmm, ah, oh, aye'));
const times = new Set(wordList('morning, mornin, afternoon, evening'));
const people = new Set(
  wordList(`
  team, guys, folks, there, gang, boss, mate, love, hun, babe, ji, sir, madam, bot, again, peeps, darling, pet
`),
);
// These may also begin what is said: "hi both mums corsages".
const many = new Set(wordList('all, both, everyone, everybody, girls, ladies, lads, crew, chaps'));
const thanks = new Set(
  wordList(`
  x, xx, xxx, xo, thanks, thankyou, thx, tnx, tks, ta, cheers, pls, please, plz, plse, pleease, lol, haha, hehe, tia, ty, tysm
`),
);

const isEnd = (token: Token | undefined): boolean => token !== undefined && (token.kind === 'line' || /^[.!,]$/.test(token.text));
const isBreak = (token: Token | undefined): boolean => isEnd(token) || token?.text === ':' || token?.text === '-';

const afterPeople = (tokens: readonly Token[], index: number): number => {
  let at = index;
  // "hi. There are seven left" begins with what there is.
  const there = (place: number): boolean =>
    tokens[place]?.text === 'there' && /^(are|is|were|was|will|should|have|has)$/.test(tokens[place + 1]?.text ?? '');
  while ((people.has(tokens[at]?.text ?? '') && !there(at)) || (many.has(tokens[at]?.text ?? '') && isBreak(tokens[at + 1]))) at += 1;
  return at;
};

// Where the greeting ends; `index` itself when there is none.
const afterGreeting = (tokens: readonly Token[], index: number): number => {
  const text = tokens[index]?.text ?? '';
  if (greetings.has(text)) return afterPeople(tokens, index + 1);
  const good = text === 'good' ? 1 : 0;
  if (!times.has(tokens[index + good]?.text ?? '')) return index;
  const end = afterPeople(tokens, index + good + 1);
  // "morning all", "good morning", "morning!"; "morning of the 14th" is a time of day.
  return end > index + good + 1 || good === 1 || isBreak(tokens[end]) ? end : index;
};

const opens = (tokens: readonly Token[]): number => {
  let start = 0;
  for (;;) {
    let next = afterGreeting(tokens, start);
    // "ok so 40 bouts", "right, 20 lapels"
    if (next === start && openers.has(tokens[start]?.text ?? '') && (tokens[start + 1]?.text === 'so' || isBreak(tokens[start + 1])))
      next = start + (tokens[start + 1]?.text === 'so' ? 2 : 1);
    if (next === start) return start;
    while (isBreak(tokens[next])) next += 1;
    start = next;
  }
};

// "20 bouts done team": who is spoken to. "2 girls", "the guys" and "for sir" are spoken of.
const speakable = /^(team|guys|folks|gang|boss|mate|hun|babe|darling|peeps)$/;
const spokenOf =
  /^(the|our|my|your|his|her|their|this|that|these|those|for|with|by|of|to|from|and|&|\+|,|or|both|all|other|extra|more|little|flower|bridal|wedding|whole|new|a|an|as|some|few|many|no|is|are|per|each|design|work|floral|groom|brides)$/;
const called = (tokens: readonly Token[], at: number, from: number): boolean => {
  const before = tokens[at - 2];
  if (at - 2 <= from || !speakable.test(tokens[at - 1]?.text ?? '') || before === undefined) return false;
  return before.kind === 'word' ? !spokenOf.test(before.text) : before.number?.form === 'ordinal';
};

const closes = (tokens: readonly Token[], from: number): number => {
  let end = tokens.length;
  for (;;) {
    let at = end;
    while (at > from && isEnd(tokens[at - 1])) at -= 1;
    end = at; // a full stop behind the last word says nothing either
    const you = tokens[at - 1]?.text === 'you' && tokens[at - 2]?.text === 'thank' ? 2 : 0;
    const last = tokens[at - 1];
    const multiplied = last?.text === 'x' && last.glued; // "sundries 2x"
    const words = you > 0 ? you : thanks.has(last?.text ?? '') && !multiplied ? 1 : 0;
    if (words === 0 && called(tokens, at, from)) {
      end = at - 1;
      continue;
    }
    if (words === 0) return end;
    end = at - words;
    while (end > from && tokens[end - 1]?.text === '-') end -= 1;
  }
};

// "9 bouts @ 12, 2 corsages @ 28, ok?" asks nothing but leave; "is 12 each enough, ok?" asks.
const asks =
  /^(is|are|was|can|could|should|shall|would|will|do|does|did|have|has|what|whats|what's|how|hows|which|who|when|where|why|any|anyone|if)$/;
const withoutLeave = (tokens: readonly Token[]): readonly Token[] => {
  const last = tokens.length - 1;
  const asked = tokens[last]?.text === '?' && /^(ok|okay|k|alright)$/.test(tokens[last - 1]?.text ?? '') && isEnd(tokens[last - 2]);
  if (!asked) return tokens;
  const said = tokens.slice(0, last - 2);
  return said.some((token) => token.number !== undefined) && !said.some((token) => token.text === '?' || asks.test(token.text))
    ? said
    : tokens;
};

/** The tokens between a greeting and a thank-you; all of them when nothing else is said. */
export const withoutCourtesy = (given: readonly Token[]): readonly Token[] => {
  const tokens = withoutLeave(given);
  const start = opens(tokens);
  const end = closes(tokens, start);
  const said = tokens.slice(start, end);
  return said.some((token) => token.kind === 'word' || token.kind === 'number') && said.length < tokens.length ? said : tokens;
};
