// Points that belong to a short form and end no sentence: "22 nos. crowns", "approx. 20", "10 in. ribbon".

import { goodsByLength } from '../words/measure-words.ts';
import { paper } from './papers.ts';
import { changed, type Token } from './token.ts';
import { value } from './worded-numbers.ts';

const always = /^(nos|approx|incl|excl)$/;
const taxWord = /^(vat|gst|tax|hst|pst|qst)$/;
const leadsOn = /^(at|for|each|per|on|in|of|and|price|prices|rate|rates|total|amount|but|or|delivery)$/;
const measure = /^(in|ins|cm|cms|mm|ft|yd|yds|mtr|mtrs)$/;

// "10 in. of satin ribbon"; in "ribbon 30 cm. groom has two" the sentence ends.
const measuresGoods = (tokens: readonly Token[], index: number): boolean => {
  if (tokens[index - 1]?.number === undefined && value(tokens[index - 1]) === undefined) return false;
  return [2, 3, 4].some(
    (by) =>
      tokens.slice(index + 2, index + by + 1).every(({ kind }) => kind === 'word') && goodsByLength.test(tokens[index + by]?.text ?? ''),
  );
};

// "invoice no. 60231": the number of a paper.
const isPaper = (before: Token | undefined, word: Token | undefined, next: Token | undefined): boolean =>
  word?.text === 'no' && paper.test(before?.text ?? '') && next?.number !== undefined;

// "how many nos. balance", "22 no. crowns": the point belongs to the short form.
const shortForm = (tokens: readonly Token[], index: number): boolean => {
  const [before, word, point, next] = [tokens[index - 1], tokens[index], tokens[index + 1], tokens[index + 2]];
  if (point?.text !== '.' || !point.glued) return false;
  if (isPaper(before, word, next)) return true;
  if (next?.kind !== 'word') return false;
  if (measure.test(word?.text ?? '')) return measuresGoods(tokens, index);
  return always.test(word?.text ?? '') || (word?.text === 'no' && before?.number !== undefined);
};

// "roll of 30 yd .  1.60": the last of a row of points that leads to the price.
const leads = (tokens: readonly Token[], index: number): boolean => {
  const [before, point, next] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  return (
    point?.text === '.' &&
    !point.glued &&
    before !== undefined &&
    before.kind !== 'line' &&
    next?.glued === false &&
    /^\d+[.,]\d{2}$/.test(next.text)
  );
};
const withLeads = (tokens: readonly Token[]): readonly Token[] =>
  tokens.some((_, index) => leads(tokens, index))
    ? tokens.map((token, index) => (leads(tokens, index) ? changed(token, { text: ',' }) : token))
    : tokens;

// "R85 each, VAT incl. phone 082 555 0148": all is said of the tax, and the sentence ends.
const endsOfTax = (tokens: readonly Token[], index: number): boolean => {
  const [name, basis, point, next] = [tokens[index - 2], tokens[index - 1], tokens[index], tokens[index + 1]];
  if (point?.text !== '.' || !point.glued || next?.kind !== 'word' || next.glued || leadsOn.test(next.text)) return false;
  return taxWord.test(name?.text ?? '') && /^(incl|inc|excl|ex)$/.test(basis?.text ?? '');
};
const withTaxEnded = (tokens: readonly Token[]): readonly Token[] =>
  tokens.some((_, index) => endsOfTax(tokens, index))
    ? tokens.map((token, index) => (endsOfTax(tokens, index) ? changed(token, { text: ';' }) : token))
    : tokens;

export const withoutShortPoints = (given: readonly Token[]): readonly Token[] => {
  const tokens = withTaxEnded(withLeads(given));
  if (!tokens.some((token, index) => token.text === '.' && shortForm(tokens, index - 1))) return tokens;
  return tokens
    .map((token, index) =>
      token.text === 'no' && shortForm(tokens, index) && tokens[index + 2]?.number === undefined ? changed(token, { text: 'nos' }) : token,
    )
    .filter((token, index) => token.text !== '.' || !shortForm(tokens, index - 1));
};
