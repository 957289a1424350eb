// The pieces a message is cut into. A number is read once, with its unit, and every phrase uses that reading.

import { type Means, none, tagsOf } from './means.ts';

export type NumberForm =
  | 'plain'
  | 'money'
  | 'percent'
  | 'duration'
  | 'length'
  | 'weight'
  | 'temperature'
  | 'time'
  | 'ordinal'
  | 'slashed' // 3/4, 14/3/27, 40/40: a date or "of"
  | 'code'; // a phone number, an order number: never a count or a price

export interface NumberRead {
  readonly form: NumberForm;
  readonly amount: string; // exact decimal text; '' for times, slashed forms and codes
  readonly max?: string; // "20 to 25"
  readonly or?: readonly string[]; // "18 or 22"
  readonly approx?: true;
  readonly unit?: string; // cm, min, g…
  readonly currency?: string;
  readonly symbol?: string;
  readonly parts?: readonly number[]; // slashed: as typed, left to right; time: hour, minute
  readonly vague?: 'time of day'; // a clock time that may be morning or afternoon
  readonly worded?: true; // typed in letters: "forty"
  readonly inDozens?: true;
}

export interface Token {
  readonly kind: 'word' | 'number' | 'sign' | 'line';
  readonly text: string;
  readonly start: number; // in the clean text
  readonly end: number;
  readonly glued: boolean; // no space before it
  readonly number: NumberRead | undefined;
  readonly means: Means;
  readonly guessed: string | undefined; // the trade word this slip was taken for
}

export const isNumber = (token: Token | undefined, ...forms: readonly NumberForm[]): boolean =>
  token?.number !== undefined && forms.includes(token.number.form);

const isWhole = (amount: string): boolean => {
  for (let at = 0; at < amount.length; at++) if (!(amount.charCodeAt(at) >= 48 && amount.charCodeAt(at) <= 57)) return false;
  return amount.length >= 1 && amount.length <= 5;
};
/** A whole number of things: no unit, no fraction. */
export const isCount = (token: Token | undefined): boolean =>
  token?.number?.form === 'plain' && isWhole(token.number.amount) && (token.text.length < 4 || !/[.,]\d{2}$/.test(token.text));

export const meaning = (token: Token | undefined, tag: string): string | undefined => token?.means[tag];

/** One number: no range and no choice between two. */
export const isSingle = (number: NumberRead | undefined): number is NumberRead =>
  number !== undefined && number.max === undefined && number.or === undefined;
/** A number from one to another, or one of several. */
export const isRangeOrChoice = (number: NumberRead | undefined): boolean => number !== undefined && !isSingle(number);

/** Of a rough number, "about 7", that it is one. */
export const roughly = (token: Token | undefined): { readonly approx?: true } => (token?.number?.approx === true ? { approx: true } : {});

/** What a token is made of; it has no number, no meaning and no guess where none is given. */
export type Cut = Pick<Token, 'kind' | 'text' | 'start' | 'end' | 'glued'> & Partial<Token>;

/** A token. All are made here, every field in its place: tokens of one shape are looked at soonest, and reading a message is looking at tokens. */
export const cut = ({ kind, text, start, end, glued, number, means, guessed }: Cut): Token => ({
  kind,
  text,
  start,
  end,
  glued,
  number,
  means: means ?? none,
  guessed,
});

/** The token with what is given in place of its own. */
export const changed = (token: Token, given: Partial<Token>): Token =>
  cut({
    kind: given.kind ?? token.kind,
    text: given.text ?? token.text,
    start: given.start ?? token.start,
    end: given.end ?? token.end,
    glued: given.glued ?? token.glued,
    number: given.number ?? token.number,
    means: given.means ?? token.means,
    guessed: given.guessed ?? token.guessed,
  });

/** The words of a stretch of tokens, a space between them. */
export const textOf = (tokens: readonly Token[], start: number, end: number): string => {
  let text = start < end ? (tokens[start]?.text ?? '') : '';
  for (let index = start + 1; index < end; index++) text += ` ${tokens[index]?.text ?? ''}`;
  return text;
};

/** One number for a stretch of tokens. */
export const asNumber = (tokens: readonly Token[], start: number, end: number, number: NumberRead): Token => {
  const [first, last] = [tokens[start] as Token, tokens[end - 1] as Token];
  return cut({ kind: 'number', text: textOf(tokens, start, end), start: first.start, end: last.end, glued: first.glued, number });
};

/** A token the vocabulary says nothing of. */
export const isNameless = ({ means }: Token): boolean => means === none || tagsOf(means).length === 0;

/** The first token in a stretch that passes, or -1. A stretch is looked through alone, however long the message. */
export const firstWhere = (
  tokens: readonly Token[],
  start: number,
  end: number,
  passes: (token: Token, index: number) => boolean,
): number => {
  for (let index = start; index < end; index++) {
    const token = tokens[index];
    if (token !== undefined && passes(token, index)) return index;
  }
  return -1;
};
