// Everything a person can get wrong, as codes with the data their sentence needs. The sentences are in reply/words; a code without one does not compile.

export interface ProblemData {
  // reading
  'message-empty': Record<string, never>;
  'message-too-long': { characters: number; most: number };
  'date-does-not-exist': { words: string };
  'date-is-past': { date: string; words?: string }; // words: as somebody said it
  'another-event': { date: string; words: string }; // "same again for 6 march" where this one has its day
  'count-not-positive': { words: string };
  'count-too-large': { count: string; most: number };
  'other-currency': { said: string; studio: string };
  // pricing
  'price-not-positive': { amount: string };
  'price-too-large': { amount: string };
  'price-below-smallest-coin': { amount: string; smallest: string };
  'rate-out-of-range': { what: 'tax' | 'labour' | 'spare'; rate: string };
  'multiple-not-positive': { what: 'stems' | 'sundries'; multiple: string };
  'sundries-use-up-price': { sundries: string; room: string; piece: string };
  'nothing-to-price': Record<string, never>;
  'price-missing': { pieces: readonly string[] };
  'price-finer-than-coin': { amount: string; smallest: string };
  'total-below-line-prices': { total: string; lines: string };
  'budget-below-one-piece': { budget: string; each: string };
  'currency-unknown': { currency: string };
  'tax-rate-unknown': { region: string };
  'tax-depends-on-material': { region: string; mixed: boolean; rates: readonly { material: string; rate: string }[] };
  'rule-not-understood': { what: string; to: string };
  'ladder-not-a-range': { from: string; to: string; step: string };
  // buying
  'pack-size-not-positive': { item: string; size: string };
  'pack-price-negative': { item: string; price: string };
  'pack-price-uneven': { item: string; price: string; packs: number; per: string }; // the price of several does not come out for one
  'price-list-empty': Record<string, never>;
  'price-list-not-text': Record<string, never>; // bytes that are not UTF-8
  'price-list-quote-open': { line: number }; // a quotation mark opened here and not closed properly
  'price-list-columns-missing': { missing: readonly string[]; seen: readonly string[] }; // seen: the headings found
  'price-list-column-twice': { column: string; headings: readonly string[] };
  'price-list-rows-wrong': { rows: number; faults: readonly RowFault[] }; // rows: all rows read; nothing was imported
  'recipe-not-known': { name: string; nearest: readonly string[] };
  'no-recipe-yet': Record<string, never>;
  'not-in-recipe': { ingredient: string; known: readonly string[] };
  'recipe-scale-not-positive': { by: string };
  'pack-without-price': { item: string; size: number; per?: string }; // what it holds is said, and no price was ever
  'item-priced-twice': { item: string; prices: readonly string[] }; // one message, two prices for one item
  'nothing-fits': { least: string | undefined; budget: string }; // least: stems budget of one piece the cheapest recipe needs
  'too-few-ingredients': { listed: number; wanted: number };
  'file-unreadable': { why: 'too large' | 'not a list' | 'unavailable' }; // a dropped list that could not be had
  // thread
  'members-only': Record<string, never>; // a guest's word on what the whole studio goes by
  'nothing-to-undo': Record<string, never>;
  'nothing-ordered': Record<string, never>;
  'only-so-many': { count: number; piece: string; ordered: number };
  'no-such-piece': { piece: string; known: readonly string[] };
  'no-such-wearer': { wearer: string; known: readonly string[] }; // as the list of wearers has them
  // review
  'review-before-event': { date: string };
  'nothing-recorded': { date?: string }; // neither spending, time nor leftovers were told
}

/** One cell of an imported price list that cannot stand. `line` counts as a text editor does, from 1. */
export interface RowFault {
  readonly line: number;
  readonly column: string;
  readonly why: RowFaultReason;
  readonly value: string;
  readonly other?: number; // the line of the first row with this name
}

export type RowFaultReason =
  | 'empty'
  | 'not a number'
  | 'number unclear' // 1,250: a thousand or one and a quarter
  | 'negative'
  | 'zero pack size'
  | 'not a whole number'
  | 'percent out of range'
  | 'other currency'
  | 'unit unknown'
  | 'length unit missing' // a spool of 8, of what?
  | 'units disagree'
  | 'role unknown'
  | 'name twice'
  | 'name too long'
  | 'too many cells';

export type ProblemCode = keyof ProblemData;
export type Problem = { [C in ProblemCode]: { readonly code: C; readonly data: ProblemData[C] } }[ProblemCode];
