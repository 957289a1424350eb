// What a question's numbers mean, by what it asks: a price to try, a ladder's ends, people away, the days of a week.

import { addDays, weekdayOf, weekdays } from '../../values/day.ts';
import { firstIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { isRangeOrChoice, isSingle, type NumberRead } from '../text/token.ts';
import { differsIn } from './by-how-many.ts';
import { countForSum } from './count-for-sum.ts';
import { type details, oldNumbers } from './question-details.ts';

type Details = ReturnType<typeof details>;
type Fields = Readonly<Record<string, unknown>>;

const stepForm = pattern('(by|in|step|steps|in steps of|steps of|every) (steps of|ones of)? <n:amount>');
const chargeForm = pattern(
  '(charge|charged|charging|price|priced|pricing|quote|quoted|sell|sold|ask|asked|each|ea|apiece|dropped|upped|raised|at|cheap|dear|steep|pricey|expensive|undercharging|overcharging|(too (much|low|high)|fair|reasonable) for (a|an|one|each) <piece>)',
);
const bought = pattern('(ordered|bought|order everything|buy everything)');
const everyEvent = pattern(
  '(everything|<all>|all|every|whole|all the|every one of) (the|our|open)? (events|weddings|jobs|orders|event|bench|week)?',
);

// "what if it's just me on the 12 corsages": the number is of the pieces.
const onlyOne = pattern(
  '((only|just) (me|myself|you|one of us)|(on|by) (my|your) (own|tod)|by (myself|yourself)|single handed|single - handed|alone|solo)',
);
const saysOne = ({ tokens }: Reader, start: number, end: number): boolean => {
  const one = onlyOne.in(tokens, start, end);
  return one !== undefined && !/^(and|&|n|\+|plus|with)$/.test(tokens[one.end]?.text ?? '');
};

const week = 7;

/** Undefined where it could only be answered for one end of a range. */
export const shaped = (reader: Reader, start: number, end: number, asks: string, fields: Details): Fields | undefined => {
  switch (asks) {
    case 'away':
    case 'withHands': {
      const people = peopleAway(reader, start, end) ?? fields.people;
      // "what if 2 or 3 of us are off"
      if (people === undefined && fields.numberMax !== undefined) return undefined;
      const told = asks === 'withHands' && saysOne(reader, start, end) ? undefined : fields.number;
      return { ...fields, number: undefined, people: people ?? told ?? 1 };
    }
    case 'ladder':
      return ladder(reader, start, end, fields);
    case 'countFor': {
      const told = countFor(reader, start, end);
      return told && { ...fields, ...told };
    }
    case 'priceFor':
      return { ...fields, ...(keptForStems(reader, start, end, fields) ?? {}) };
    case 'price':
    case 'total':
      return { ...fields, differs: differsIn(reader, start, end, fields.number), ...(paidForAll(reader, start, end) ?? {}) };
    case 'whatIf':
      return whatIf(reader, start, end, fields);
    case 'due':
    case 'hands':
      return { ...fields, ...daysNamed(reader, start, end) };
    case 'fits':
      return { ...fields, ...lastDayNamed(reader, start, end, fields) };
    case 'buying':
      // "is everything ordered" asks of this event.
      return everyEvent.in(reader.tokens, start, end) === undefined || bought.in(reader.tokens, start, end) !== undefined
        ? fields
        : { ...fields, all: true };
    default:
      return fields;
  }
};

const whatIf = (reader: Reader, start: number, end: number, fields: Details): Fields | undefined => {
  const stems = stemsTried(reader, start, end, fields);
  if (stems === 'unsure') return undefined;
  if (stems !== undefined) return stems;
  const differs = differsIn(reader, start, end, fields.number);
  const sum = countForSum(reader.tokens, start, end);
  if (sum !== undefined && differs === undefined) return { ...fields, ...sum };
  return { ...fields, differs, ...(totalTried(reader, start, end) ?? priceTried(reader, start, end, fields) ?? {}) };
};

// "what if both of us are away", "me and jo are off".
const both = pattern('(both|me (and|&) <word>|<word> (and|&) (me|i)|the two of us)');
const peopleAway = (reader: Reader, start: number, end: number): number | undefined =>
  both.in(reader.tokens, start, end) === undefined ? undefined : 2;

// "try 20 to 30 by 2", "compare 18 and 22", "should we charge 16 or 18".
const ladder = (reader: Reader, start: number, end: number, fields: Details): Fields => {
  const step = stepForm.in(reader.tokens, start, end)?.kept['n']?.number?.amount;
  const amounts = reader.tokens
    .slice(start, end)
    .flatMap((token) => (token.number?.form === 'plain' || token.number?.form === 'money' ? [token.number] : []));
  const [first, second] = amounts;
  const amountMax = first?.max ?? first?.or?.at(-1) ?? (step === undefined ? second?.amount : undefined);
  return {
    ...fields,
    ...(first === undefined || amountMax === undefined ? {} : { amount: first.amount, amountMax }),
    ...(step === undefined ? {} : { step }),
  };
};

// "how many at 25 for 600": 25 is the price each, 600 what there is to spend.
const countFor = (
  reader: Reader,
  start: number,
  end: number,
): { amount: string | undefined; amountMax: string | undefined; number: undefined } | undefined => {
  let each: NumberRead | undefined;
  let budget: NumberRead | undefined;
  for (let index = start; index < end; index++) {
    const number = reader.tokens[index]?.number;
    if (number === undefined || (number.form !== 'money' && number.form !== 'plain')) continue;
    // "how many could one get for 500"
    if (reader.tokens[index]?.text === 'one' && /^(can|could|would|will|does|might)$/.test(reader.tokens[index - 1]?.text ?? '')) continue;
    const priced =
      /^(at|@)$/.test(reader.tokens[index - 1]?.text ?? '') ||
      reader.tokens[index + 1]?.means['each'] !== undefined ||
      reader.tokens[index + 1]?.text === 'per';
    if (priced) each ??= number;
    else budget ??= number;
  }
  if ([each, budget].some((number) => isRangeOrChoice(number))) return undefined;
  return { amount: each?.amount, amountMax: budget?.amount, number: undefined };
};

// "what if i charged 16": the only number is the price to try.
const priceTried = (reader: Reader, start: number, end: number, fields: Details): Fields | undefined => {
  if (chargeForm.in(reader.tokens, start, end) === undefined || fields.number === undefined) return undefined;
  const old = oldNumbers(reader, start, end);
  const numbers = reader.tokens
    .slice(start, end)
    .filter((token, at) => (token.number?.form === 'plain' || token.number?.form === 'money') && !old.has(start + at));
  const [only] = numbers;
  return numbers.length === 1 && isSingle(only?.number) ? { number: undefined, amount: only.number.amount } : undefined;
};

// "what if i use 2 roses each", "3 stems of statice": how many go in, not what they cost.
const stemsForm = pattern('<n:count> (x)? (stems|stem|sprigs|sprig|heads|bits)? (of)? (<word>)? <ingredient>');
// "can we do 2 stems each instead of 3": of whatever goes in.
const unnamedStems = pattern('<n:count> (stems|stem|sprigs|heads|bits) (<each>|in <each>|a (piece|bout|crown|corsage))');
const stemsTried = (reader: Reader, start: number, end: number, fields: Details): Fields | 'unsure' | undefined => {
  const many = (fields.item === undefined ? unnamedStems : stemsForm).in(reader.tokens, start, end)?.kept['n']?.number;
  if (many === undefined) return undefined;
  // "what if i use 2 or 3 roses"
  return isSingle(many) ? { ...fields, number: undefined, amount: undefined, stems: Number(many.amount) } : 'unsure';
};

// "what should i charge to keep 4 for stems": money, not a number of pieces.
const keepForm = pattern(
  '<n:plain> (each|a piece|apiece)? (for|on|to spend on|left for) (the)? (stems|flowers|stem|flower|ingredients|materials)',
);
const keptForStems = (reader: Reader, start: number, end: number, { number, amount }: Details): Fields | undefined => {
  const kept = amount === undefined ? keepForm.in(reader.tokens, start, end)?.kept['n']?.number : undefined;
  return !isSingle(kept) ? undefined : { amount: kept.amount, ...(number === Number(kept.amount) ? { number: undefined } : {}) };
};

// "can we do it for 400 all in", "could we do the lot for 400": what all of them come to.
const totalForms = [
  pattern(
    '(it|the (lot|job|order|wedding|whole thing|whole lot|whole order|whole job)|everything|all of it|all of them) for (about|around|only|just)? <a:amount>',
  ),
  pattern('<a:amount> (<all>)'),
];
const totalTried = (reader: Reader, start: number, end: number): Fields | undefined => {
  const match = firstIn(totalForms, reader.tokens, start, end);
  const amount = match?.kept['a']?.number;
  const behind = reader.tokens[match?.end ?? end];
  if (!isSingle(amount) || behind?.means['piece'] !== undefined || behind?.means['each'] !== undefined) return undefined;
  return { number: undefined, amount: amount.amount, per: 'all' };
};

// "what would each be if they only pay 300 total": no number of pieces.
const paying = pattern(
  '(pay|pays|paid|paying|spend|spends|offer|offers|offered|budget (is|of|was)?) (us|me)? (only|just|about|around)? <amount>',
);
const paidForAll = (reader: Reader, start: number, end: number): Fields | undefined =>
  paying.in(reader.tokens, start, end) === undefined ? undefined : totalTried(reader, start, end);

const weekForm = pattern('(this|next|the|coming|rest of the|all) (coming)? (week|wk)');
const weekendForm = pattern('(this|next|the|coming)? (weekend)');
const nextForm = pattern('next (week|wk|weekend)');

// "this week" is today and the six after it; "next week" begins on Monday.
const daysNamed = (reader: Reader, start: number, end: number): Fields => {
  const { today } = reader.context;
  // "todays list"
  const own = reader.tokens.slice(start, end).find(({ text }) => /^(today|tonight|tomorrow|tmrw)'?s$/.test(text));
  if (own !== undefined) return { date: own.text.startsWith('tod') || own.text.startsWith('ton') ? today : addDays(today, 1) };
  const next = nextForm.in(reader.tokens, start, end) !== undefined;
  const ahead = weekdays.indexOf(weekdayOf(today));
  if (weekForm.in(reader.tokens, start, end) !== undefined) return { date: next ? addDays(today, week - ahead) : today, number: week };
  if (weekendForm.in(reader.tokens, start, end) === undefined) return {};
  const sunday = ahead === 6;
  const saturday = addDays(today, 5 - ahead);
  return next ? { date: addDays(saturday, week), number: 2 } : sunday ? { date: today, number: 1 } : { date: saturday, number: 2 };
};

// Work that must fit in a week is ready by its last day.
const lastDayNamed = (reader: Reader, start: number, end: number, fields: Details): Fields => {
  if (fields.date !== undefined) return {};
  const { date, number } = daysNamed(reader, start, end);
  return typeof date === 'string' && typeof number === 'number' ? { date: addDays(date as typeof reader.context.today, number - 1) } : {};
};
