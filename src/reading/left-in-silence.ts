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
const clausesOf = (tokens: readonly Token[], places: readonly number[]): number[][] => {
  const clauses: number[][] = [[]];
  for (const place of places) {
    if (apart.test(tokens[place]?.text ?? '') || tokens[place]?.kind === 'line') clauses.push([]);
    else clauses.at(-1)?.push(place);
  }
  return clauses.filter((clause) => clause.length > 0);
};

interface Told {
  readonly numbers: ReadonlySet<number>;
  readonly day: boolean;
}

const toldBy = (facts: readonly Fact[]): Told => {
  const numbers = new Set<number>();
  let day = false;
  const add = (value: unknown): void => {
    if (typeof value === 'number') numbers.add(Math.abs(value));
    else if (typeof value === 'string') {
      if (/^(\d{4}-\d\d-\d\d|\d\d:\d\d)$/.test(value)) {
        day = true;
        for (const part of value.split(/[-:]/))
          numbers
            .add(Number(part))
            .add(Number(part) % 100)
            .add(Number(part) % 12);
      } else if (/^-?[\d.]+$/.test(value)) numbers.add(Math.abs(Number(value)));
    } else if (typeof value === 'object' && value !== null) for (const [key, each] of Object.entries(value)) if (key !== 'words') add(each);
  };
  for (const fact of facts) add(fact);
  return { numbers, day };
};

const amountsOf = ({ number }: Token): readonly number[] =>
  number !== undefined && /^(plain|money)$/.test(number.form)
    ? [number.amount, number.max ?? number.amount, ...(number.or ?? [])].map(Number)
    : [];
const isCounted = (token: Token): boolean => amountsOf(token).some((amount) => amount > 1);
const isDay = ({ means, number }: Token): boolean =>
  means['weekday'] !== undefined || means['month'] !== undefined || number?.form === 'ordinal';

// What one number comes to, alone ("half of them", "plus the celebrant", an hour by the clock) or with another: "9 to 1" is four hours, "90 mins for 9" ten each.
const comesTo = (amount: number, others: readonly number[], { numbers }: Told): boolean =>
  [amount, amount / 2, amount * 2, amount + 1, amount - 1].some((value) => numbers.has(value)) ||
  others.some((other) =>
    [amount + other, Math.abs(amount - other), amount * other, amount / other, other / amount, 12 - amount + other].some((value) =>
      numbers.has(value),
    ),
  );

// "finished 24. correction, 22", "3 wax, not 2", "counted 2 twice", "so 28 good": taken back on purpose, or worked out.
const takesBack = /^(not|instead|rather|was|were|correction|sorry|soz|actually|no|i|meant|should|oops|typo|make|call)$/;
const worksOut = /^(so|ie|making|makes|comes|that's|thats|=|which|meaning)$/;
const aside = /^(twice|double|tables?)$/;

/** The places of the numbers and days that are in none of the facts. */
export const leftInSilence = (tokens: readonly Token[], { facts = [] }: Finding, places: readonly number[]): readonly number[] => {
  if (facts.length === 0 || facts.some(holdsAll)) return [];
  const clauses = clausesOf(tokens, places);
  if (clauses.length < 2) return [];
  const opens = (at: number): string => tokens[clauses[at]?.[0] ?? -1]?.text ?? '';
  if (clauses.some((_, at) => worksOut.test(opens(at))) || places.some((place) => tokens[place]?.text === 'so')) return [];
  const told = toldBy(facts);
  const numbers = places.flatMap((place) => tokens[place]?.number ?? []);
  const amounts = numbers.flatMap(({ amount, max }) => [amount, max ?? amount]).map(Number);
  if (told.numbers.has(numbers.reduce((sum, { amount }) => sum + Number(amount), 0))) return [];
  return clauses.flatMap((clause, at) => {
    if (takesBack.test(opens(at)) || takesBack.test(opens(at + 1)) || clause.some((place) => aside.test(tokens[place]?.text ?? '')))
      return [];
    const counted = clause.filter((place) => isCounted(tokens[place] as Token));
    const days = told.day ? [] : clause.filter((place) => isDay(tokens[place] as Token));
    const isTold = counted.some((place) => amountsOf(tokens[place] as Token).some((amount) => comesTo(amount, amounts, told)));
    return isTold ? [] : [...counted, ...days];
  });
};
