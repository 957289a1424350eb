// What a phrase took and told nothing of: "go back to 12, 3 of us sat 9 to 1" is of hands, and the twelve is in none of its facts.
// A clause whose numbers or day are nowhere in what was read is named as unread, like one that nobody took.

import type { Fact } from './fact.ts';
import type { Finding } from './phrase.ts';
import type { Token } from './text/token.ts';

const apart = /^[,;.]$/;
// "another batch of 6 done, 18 now": the whole holds what came to it.
const holdsAll = (fact: Fact): boolean =>
  fact.fact === 'question' ||
  fact.fact === 'undo' ||
  (fact.fact === 'made' && fact.total === true) ||
  (fact.fact === 'price' && fact.coversOther === true);

// Where the clauses stand among what was taken.
const clausesAmong = (tokens: readonly Token[], places: readonly number[]): number[][] => {
  const clauses: number[][] = [[]];
  for (const place of places) {
    if (apart.test(tokens[place]?.text ?? '') || tokens[place]?.kind === 'line') clauses.push([]);
    else clauses.at(-1)?.push(place);
  }
  return clauses.filter((clause) => clause.length > 0);
};

interface Told {
  readonly numbers: ReadonlySet<number>;
  readonly ofDays: ReadonlySet<number>; // years, months, days, hours and minutes
  readonly day: boolean;
}

const toldBy = (facts: readonly Fact[]): Told => {
  const [numbers, ofDays] = [new Set<number>(), new Set<number>()];
  let day = false;
  const add = (value: unknown): void => {
    if (typeof value === 'number') numbers.add(Math.abs(value));
    else if (typeof value === 'string') {
      const [year, month, date] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(value)?.slice(1).map(Number) ?? [];
      const [hour, minute] = /^(\d\d):(\d\d)$/.exec(value)?.slice(1).map(Number) ?? [];
      if (year !== undefined || hour !== undefined) {
        day = true;
        for (const part of [year, (year ?? 0) % 100, month, date, hour, (hour ?? 0) % 12, minute, ((hour ?? 0) % 12) + (minute ?? 0) / 100])
          if (part !== undefined) ofDays.add(part);
      } else if (/^-?[\d.]+$/.test(value)) numbers.add(Math.abs(Number(value)));
    } else if (typeof value === 'object' && value !== null) for (const [key, each] of Object.entries(value)) if (key !== 'words') add(each);
  };
  for (const fact of facts) add(fact);
  return { numbers, ofDays, day };
};

const amountsOf = ({ number }: Token): readonly number[] =>
  number !== undefined && /^(plain|money)$/.test(number.form)
    ? [number.amount, number.max ?? number.amount, ...(number.or ?? [])].map(Number)
    : [];
const isCounted = (token: Token): boolean => amountsOf(token).some((amount) => amount > 1);
const isDay = ({ means, number }: Token): boolean =>
  means['weekday'] !== undefined || means['month'] !== undefined || number?.form === 'ordinal';

// What one number comes to, alone ("half of them", "plus the celebrant") or with another: "90 mins for 9" are ten each.
const comesTo = (amount: number, others: readonly number[], { numbers }: Told): boolean =>
  [amount / 2, amount * 2, amount + 1, amount - 1].some((value) => numbers.has(value)) ||
  others.some((other) =>
    [amount + other, Math.abs(amount - other), amount * other, amount / other, other / amount].some((value) => numbers.has(value)),
  );

// "finished 24. correction, 22", "3 wax, not 2", "counted 2 twice", "so 28 good": taken back on purpose, or worked out.
const old = /^(not|instead|rather|was|were)$/;
const takesBack = /^(not|instead|rather|was|were|correction|sorry|soz|actually|no|i|meant|should|oops|typo|make|call)$/;
const worksOut = /^(so|ie|making|makes|comes|that's|thats|=|which|meaning)$/;
const counting = new Set<Fact['fact']>(['pieces', 'price', 'tax', 'made', 'left', 'broke', 'wearers']);
const isCount = (fact: Fact): boolean =>
  counting.has(fact.fact) || (fact.fact === 'change' && fact.what !== 'date' && fact.what !== 'time');
// "9 til 1": their hours are in the facts, the clock is not.
const isSpan = (tokens: readonly Token[], place: number): boolean =>
  tokens[place]?.number?.max !== undefined ||
  (tokens[place]?.number !== undefined && [place - 1, place + 1].some((at) => /^(to|til|till|until|-)$/.test(tokens[at]?.text ?? '')));
const aside = /^(twice|double|tables?|was|were)$/;

/** The places of the numbers and days that are in none of the facts, told or asked about. */
export const leftInSilence = (tokens: readonly Token[], finding: Finding, places: readonly number[]): readonly number[] => {
  const facts = [...(finding.facts ?? []), ...(finding.asks ?? []).flatMap(({ choices }) => choices.flatMap((choice) => choice.facts))];
  if (facts.length === 0 || facts.some(holdsAll)) return [];
  const clauses = clausesAmong(tokens, places);
  if (clauses.length < 2) return [];
  const opens = (at: number): string => tokens[clauses[at]?.[0] ?? -1]?.text ?? '';
  const counts = facts.every(isCount);
  if (counts && (clauses.some((_, at) => worksOut.test(opens(at))) || places.some((place) => tokens[place]?.text === 'so'))) return [];
  const told = toldBy(facts);
  const hands = facts.some(({ fact }) => fact === 'crew');
  const numbers = places.flatMap((place) => tokens[place]?.number ?? []);
  const amounts = numbers.flatMap(({ amount, max }) => [amount, max ?? amount]).map(Number);
  if (told.numbers.has(numbers.reduce((sum, { amount }) => sum + Number(amount), 0))) return [];
  // A number divided by itself comes to one, which tells nothing of it.
  const beside = (amount: number): readonly number[] => (numbers.length > 1 ? amounts.filter((each) => each !== amount) : amounts);
  const isToldOrCome = (amount: number): boolean =>
    told.numbers.has(amount) || told.ofDays.has(amount) || comesTo(amount, beside(amount), told);
  return clauses.flatMap((clause, at) => {
    const meant = counts && (takesBack.test(opens(at + 1)) || clause.some((place) => aside.test(tokens[place]?.text ?? '')));
    if (meant || old.test(opens(at)) || (hands && clause.some((place) => isSpan(tokens, place)))) return [];
    const counted = clause.filter((place) => isCounted(tokens[place] as Token));
    const days = told.day ? [] : clause.filter((place) => isDay(tokens[place] as Token));
    const isTold = counted.some((place) => amountsOf(tokens[place] as Token).some(isToldOrCome));
    return isTold ? [] : [...counted, ...days];
  });
};
