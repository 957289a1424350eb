// What a reply means while a question of ours is open: a bare "45", "each", "the first one", "friday". A message that says something
// else is read as usual; numbers without a unit never bind outside an open question.

import { parseDay } from '../values/day.ts';
import { plainWords, saidInOrder, wordsIn, wordsOf } from './answer-words.ts';
import { answered } from './answered.ts';
import { asksInstead } from './asks-instead.ts';
import { betweenEnds } from './between-ends.ts';
import { dateAt } from './dates/date-forms.ts';
import { dayAnswered } from './day-denied.ts';
import type { Fact } from './fact.ts';
import { packHolds } from './goods/pack-holds.ts';
import { kindsAnswered, numberPutRight } from './kinds-answered.ts';
import { amountSaid } from './order/price-each.ts';
import type { Ask, Choice, OpenQuestion, Reading, ReadingContext } from './reading.ts';
import { type Message, openMessage } from './text/message.ts';
import { isCount, type Token } from './text/token.ts';
import { triedTaken } from './tried-taken.ts';
import { nameOf } from './wearers/role-counts.ts';
import { wordList } from './words/word-list.ts';
import { accepted } from './yes-or-no.ts';

const longestAnswer = 12;
const fillers = new Set(
  wordList(`
  the, between, it, it's, its, is, that, that's, thats, yes, yep, yeah, ok, okay, please, pls, just, a, an, of, them, all, one, for,
  on, in, at, about, ta, thanks, sorry, oh, we, want, need, make, i, think, would, be, go, with, lets, let's, only, meant, mean, to,
  say, around, they, x, no, aye, k, sure, right, correct, total, altogether, pieces, this, should, bride, says, said, date, event,
  wedding, flowers, flower, everything, going, are
`),
);
const places: readonly (readonly [RegExp, number])[] = [
  [/^(first|1st|former|1)$/, 0],
  [/^(second|2nd|2)$/, 1],
  [/^(third|3rd|3)$/, 2],
  [/^(last|latter)$/, -1],
];

const reading = (facts: readonly Fact[]): Reading => ({ facts, unread: [], asks: [], problems: [] });
const words = (tokens: readonly Token[]): Token[] => tokens.filter((token) => token.kind !== 'sign' && token.kind !== 'line');
const telling = (tokens: readonly Token[]): Token[] =>
  words(tokens).filter((token) => token.number !== undefined || (!fillers.has(token.text) && token.text !== ''));

// "each", "for all", "the first one", "saturday", or the choice's own words.
const chosen = (message: Message, { why, choices }: Ask, context: ReadingContext): Choice | undefined => {
  const own = wordsOf(message.tokens).join(' ');
  const [same, another] = choices.filter(({ words }) => plainWords(words).join(' ') === own);
  if (same !== undefined && another === undefined) return same;
  const said = telling(message.tokens);
  const saidWords = said.flatMap((token) => wordsIn(token).filter((word) => token.number !== undefined || !fillers.has(word)));
  const [only, second] = said;
  if (only !== undefined && second === undefined) {
    const place = places.find(([form]) => form.test(only.text));
    const asNumber = isCount(only) && choices.some((choice) => plainWords(choice.words).includes(only.number?.amount ?? ''));
    if (place !== undefined && !asNumber) return choices.at(place[1]);
  }
  if (saidWords.length === 0) {
    const all = message.tokens.some((token) => /(^| )all$/.test(token.text))
      ? choices.filter((choice) => plainWords(choice.words).includes('all') || plainWords(choice.words).includes('for all'))
      : message.tokens.some((token) => /(^| )total$/.test(token.text))
        ? choices.filter((choice) => plainWords(choice.words).includes('total'))
        : [];
    const counted = choices.filter((choice) => plainWords(choice.words).includes('pieces'));
    const pieces = all.length === 0 && message.tokens.some(({ text }) => text === 'pieces') ? counted : [];
    return all.length === 1 ? all[0] : pieces.length === 1 ? pieces[0] : undefined;
  }
  const dated = choices.filter((choice) =>
    choice.facts.some((fact) => 'date' in fact || ('to' in fact && /^\d{4}-/.test(String(fact.to)))),
  );
  if (dated.length > 0 && why !== 'low or high')
    return dayAnswered(message.clean.original, dated, dayIn, () => byDate(message, dated, context));
  const matching = choices.filter((choice) => saidWords.every((word) => matches(word, choice)));
  const [match, other] = matching.length > 1 ? matching.filter((choice) => saidInOrder(saidWords, choice.words)) : matching;
  return other === undefined ? match : undefined;
};

const matches = (word: string, choice: Choice): boolean => {
  const own = plainWords(choice.words);
  if (own.includes(word)) return true;
  return own.some((each) => each.startsWith(word) && word.length >= 3) || choice.facts.some((fact) => Object.values(fact).includes(word));
};

const dayIn = (choice: Choice): string | undefined =>
  choice.facts.flatMap((fact) =>
    'date' in fact && typeof fact.date === 'string' ? [fact.date] : fact.fact === 'change' && fact.what === 'date' ? [String(fact.to)] : [],
  )[0];

const byDate = (message: Message, choices: readonly Choice[], context: ReadingContext): Choice | undefined => {
  for (let index = 0; index < message.tokens.length; index++) {
    const read = dateAt(message.tokens, index, context);
    if (read === undefined) continue;
    const fits = choices.filter((choice) => read.days.some((day) => day === dayIn(choice)));
    if (fits.length === 1) return fits[0];
  }
  const [month] = message.tokens.flatMap((token) => token.means['month'] ?? []);
  const [weekday] = message.tokens.flatMap((token) => token.means['weekday'] ?? []);
  const [number] = message.tokens.flatMap((token) =>
    token.number?.form === 'plain' || token.number?.form === 'ordinal' ? [token.number.amount] : [],
  );
  const fits = choices.filter((choice) => {
    const day = dayIn(choice) ?? '';
    if (month !== undefined) return Number(day.slice(5, 7)) === Number(month);
    if (number !== undefined) return Number(day.slice(8)) === Number(number);
    return (
      weekday !== undefined &&
      choice.words.startsWith(message.tokens.find((token) => token.means['weekday'] !== undefined)?.text.slice(0, 3) ?? '?')
    );
  });
  return fits.length === 1 ? fits[0] : undefined;
};

/** "The saturday" of two Saturdays offered, "march" of two days in it: asked again with those alone. */
const fewerDays = (message: Message, ask: Ask): Ask | undefined => {
  const [only, second] = telling(message.tokens);
  if (only === undefined || second !== undefined) return undefined;
  const [weekday, month] = [only.means['weekday'], only.means['month']];
  const fits = ask.choices.filter((choice) => {
    const day = parseDay(dayIn(choice) ?? '');
    if (day === undefined) return false;
    return month === undefined
      ? weekday !== undefined && choice.words.toLowerCase().startsWith(only.text.slice(0, 3))
      : Number(day.slice(5, 7)) === Number(month);
  });
  return fits.length < 2 ? undefined : { ...ask, words: message.clean.original.trim(), choices: fits };
};

const withWords = (fact: object, text: string): Fact => ({ ...fact, words: text.trim() }) as Fact;

const putsRight = /^\W*(no|nope|sorry|soz|oops|whoops|wait|actually)\b/i;
// One number and nothing else of weight answers "how many?" or "how much?".
const missing = (message: Message, open: Extract<OpenQuestion, { kind: 'missing' }>, context: ReadingContext): Fact | undefined => {
  const said = telling(message.tokens);
  const [only, second] = said;
  const own = message.clean.original;
  if (only === undefined) return undefined;
  // "8 boys" behind "How many buttonholes?"
  const worn = open.piece === undefined || said.length > 2 ? undefined : second?.means['role'];
  if (open.about === 'count' && (second === undefined || (worn !== undefined && worn !== 'rest')) && isCount(only)) {
    const piece = open.piece ?? (context.pieces.length === 1 ? (context.pieces[0] ?? 'unspecified') : 'unspecified');
    const number = only.number;
    return withWords(
      {
        fact: 'pieces',
        piece,
        count: Number(number?.amount),
        ...(number?.max === undefined ? {} : { countMax: Number(number.max) }),
        ...(number?.approx === true ? { approx: true } : {}),
        ...(worn === undefined ? {} : { wearer: nameOf(worn, Number(number?.amount)) }),
      },
      own,
    );
  }
  if (
    open.about === 'price' &&
    said.slice(1).every(({ means }) => means['all'] !== undefined || means['each'] !== undefined) &&
    (only.number?.form === 'plain' || only.number?.form === 'money')
  ) {
    const per = message.tokens.some((token) => token.means['all'] !== undefined) ? 'all' : 'each';
    // "no, 18 altogether" puts something right, and answers nothing.
    if (per === 'all' && only.number.form === 'plain' && putsRight.test(own)) return undefined;
    return withWords({ fact: 'price', ...amountSaid(only.number), per }, own);
  }
  // "both", "a mix" to "dried, fresh or mixed?"
  if (
    open.about === 'material' &&
    said.every(({ text }) => /^(both|mix|mixture|bit|each)$/.test(text)) &&
    said.some(({ text }) => /^(both|mix|mixture)$/.test(text))
  )
    return withWords({ fact: 'material', material: 'mixed' }, own);
  if (open.about === 'material' && second === undefined && only.means['material'] !== undefined)
    return withWords({ fact: 'material', material: only.means['material'] }, own);
  if (open.about === 'piece' && second === undefined && only.means['piece'] !== undefined && only.means['piece'] !== 'unspecified') {
    return withWords({ fact: 'change', what: 'piece', to: only.means['piece'], from: 'unspecified', piece: 'unspecified' }, own);
  }
  return undefined;
};

/** The reading of a message that answers our open question; undefined when it does not. */
export const answerOpenQuestion = (text: string, context: ReadingContext): Reading | undefined => {
  const { open } = context;
  if (open === undefined || text.length > 200) return undefined;
  const message = openMessage(text);
  if (message.tokens.length === 0 || message.tokens.length > longestAnswer || asksInstead(message)) return undefined;
  const taken = open.tried === undefined ? undefined : triedTaken(message, open.tried);
  if (taken !== undefined) return reading(taken);
  if (open.kind === 'choice') {
    const said = telling(message.tokens);
    const between = betweenEnds(said, open.ask);
    if (between !== undefined) return reading(between);
    const kinds = kindsAnswered(said, text.trim(), open.ask);
    if (kinds !== undefined) return kinds;
    const right = numberPutRight(said, text.trim(), open.ask);
    if (right !== undefined) return { ...reading([]), asks: [right] };
    const choice = accepted(message, open.ask) ?? chosen(message, open.ask, context);
    if (choice !== undefined) return reading(choice.facts);
    const fewer = fewerDays(message, open.ask);
    return fewer === undefined ? undefined : { ...reading([]), asks: [fewer] };
  }
  const fact = open.kind === 'missing' ? missing(message, open, context) : open.kind === 'pack' ? packHolds(message, open) : undefined;
  return fact === undefined ? undefined : answered(fact);
};
