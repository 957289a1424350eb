// Everything a person can get wrong, as codes with the data their sentence needs. The sentences are in reply/words; a code without one does not compile.

export interface ProblemData {
  // reading
  'message-empty': Record<string, never>;
  'message-too-long': { characters: number; most: number };
  'date-does-not-exist': { words: string };
  'date-is-past': { date: string };
  'weekday-disagrees': { words: string; date: string; weekday: string };
  'count-not-positive': { words: string };
  'count-too-large': { count: string; most: number };
  'other-currency': { said: string; studio: string };
  // pricing
  'price-not-positive': { amount: string };
  'price-too-large': { amount: string };
  'price-below-smallest-coin': { amount: string; smallest: string };
  'rate-out-of-range': { what: 'tax' | 'labour'; rate: string };
  'multiple-not-positive': { what: 'stems' | 'sundries'; multiple: string };
  'sundries-use-up-price': { sundries: string; room: string; piece: string };
  'nothing-to-price': Record<string, never>;
  // thread
  'nothing-to-undo': Record<string, never>;
  'no-such-piece': { piece: string; known: readonly string[] };
  'made-more-than-ordered': { piece: string; made: number; ordered: number };
  // planning
  'window-already-closed': { step: string; date: string };
  'bench-has-no-hours': Record<string, never>;
}

export type ProblemCode = keyof ProblemData;
export type Problem = { [C in ProblemCode]: { readonly code: C; readonly data: ProblemData[C] } }[ProblemCode];
