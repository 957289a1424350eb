// All patterns by number, and under each word and kind the patterns it could open and the needs it meets: what one look at a message asks for.

/** Words and kinds of which a token is one. */
export interface Either {
  readonly words: ReadonlySet<string>;
  readonly kinds: ReadonlySet<string>;
}

/** What is known of a pattern before it is tried. */
export interface Looks {
  /** What a match may begin with. */
  readonly opening: Either;
  /** What a match cannot do without in the line it begins in. */
  readonly needs: readonly Either[];
  /** The most tokens a match can take. */
  readonly reach: number;
}

type Numbers = Map<string, number[]>;
interface ByKey {
  readonly words: Numbers;
  readonly kinds: Numbers;
}
export const needsBy: ByKey = { words: new Map(), kinds: new Map() };
export const openingsBy: ByKey = { words: new Map(), kinds: new Map() };
/** Patterns by their number. */
export const all: Looks[] = [];
/** The first need of each pattern, and of the one after the last. */
export const firstNeed: number[] = [0];

const register = (either: Either, number: number, by: ByKey): void => {
  for (const list of ['words', 'kinds'] as const)
    for (const key of either[list]) {
      const numbers = by[list].get(key);
      if (numbers === undefined) by[list].set(key, [number]);
      else numbers.push(number);
    }
};

/** A pattern's number among all patterns, by which a message's places know it. */
export const numbered = (looks: Looks): number => {
  const number = all.length;
  const first = firstNeed[number] as number;
  all.push(looks);
  register(looks.opening, number, openingsBy);
  for (const [at, need] of looks.needs.entries()) register(need, first + at, needsBy);
  firstNeed.push(first + looks.needs.length);
  return number;
};
