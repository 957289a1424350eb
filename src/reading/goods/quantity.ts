// How much of an ingredient: stems, a share of a stem, or a length. A third has no last digit, so it stays one stem for three pieces.

import { isSingle, type Token } from '../text/token.ts';
import { goodsByLength, lengths } from '../words/measure-words.ts';
import { portionWords } from '../words/trade-words.ts';
import { measureSaid } from './measures-said.ts';

export interface Quantity {
  readonly stems?: number;
  readonly makes?: number; // the stems are for this many pieces
  readonly length?: number;
  readonly unit?: string;
  readonly next: number; // first token behind it
}

const thirdsAndQuarters: Readonly<Record<string, number>> = { third: 3, thirds: 3, quarter: 4, quarters: 4, half: 2, halves: 2 };

const share = (over: number, under: number): { stems: number; makes?: number } =>
  under === 3 ? { stems: over, makes: 3 } : { stems: over / under };

// "of a stem of": what stands between a share and the name.
const pastPortion = (tokens: readonly Token[], index: number): number => {
  let next = index;
  while (/^(a|an|one|each)$/.test(tokens[next]?.text ?? '') || portionWords.has(tokens[next]?.text ?? '')) next += 1;
  return next;
};

const underOf = (token: Token | undefined): number | undefined => {
  if (token?.number?.form === 'ordinal' && token.number.worded === true && token.number.amount === '3') return 3;
  return token === undefined || token.number !== undefined || !Object.hasOwn(thirdsAndQuarters, token.text)
    ? undefined
    : thirdsAndQuarters[token.text];
};

// "a third of a stem of", "two thirds of a stem", "three quarters of a stem", "half a stem", "1/3".
const fraction = (tokens: readonly Token[], index: number): Quantity | undefined => {
  const token = tokens[index];
  const parts = token?.number?.form === 'slashed' ? token.number.parts : undefined;
  if (parts !== undefined) {
    const [over = 0, under = 0, more] = parts;
    // "3/4 spray roses" are three or four.
    const next = tokens[index + 1];
    if (next?.means['ingredient'] !== undefined && /s$/.test(next.text) && next.text !== next.means['ingredient']) return undefined;
    return more === undefined && over > 0 && under > over && under <= 4
      ? { ...share(over, under), next: pastPortion(tokens, index + 1) }
      : undefined;
  }
  if (token?.text === '⅓' || token?.text === '⅔') return { ...share(token.text === '⅓' ? 1 : 2, 3), next: pastPortion(tokens, index + 1) };
  const article = /^(a|an)$/.test(token?.text ?? '') ? 1 : 0;
  const alone = underOf(tokens[index + article]);
  if (
    alone !== undefined &&
    Object.hasOwn(thirdsAndQuarters, tokens[index + article]?.text ?? '') === false &&
    !/^(of|stem|a)$/.test(tokens[index + article + 1]?.text ?? '')
  )
    return undefined;
  if (alone !== undefined) return { ...share(1, alone), next: pastPortion(tokens, index + article + 1) };
  const over = token?.number?.form === 'plain' ? Number(token.number.amount) : undefined;
  const under = underOf(tokens[index + 1]);
  if (over === undefined || under === undefined || over >= under || tokens[index + 1]?.text === 'half') return undefined;
  return { ...share(over, under), next: pastPortion(tokens, index + 2) };
};

// "half a metre of ribbon"; "half a stem in each" measures nothing.
const { in: _, ...spelled } = lengths;
const measures: Readonly<Record<string, string>> = { ...spelled, bunch: 'bunch' };
const measured = (tokens: readonly Token[], share: Quantity): Quantity | undefined => {
  const word = tokens[share.next]?.text ?? '';
  if (share.stems === undefined || share.makes !== undefined || !Object.hasOwn(measures, word)) return undefined;
  const next = share.next + (tokens[share.next + 1]?.text === 'of' ? 2 : 1);
  return { length: share.stems, unit: measures[word] ?? '', next };
};

// "30cm of 6mm ribbon": the second length is how wide it is.
const pastWidth = (tokens: readonly Token[], index: number): number => {
  const of = /^(of|x)$/.test(tokens[index]?.text ?? '') ? 1 : 0;
  const width = tokens[index + of]?.number;
  return width?.form === 'length' && tokens[index + of + 1]?.kind === 'word' ? index + of + 1 : index;
};

// "18 in ribbon", "20 in of floral wire": goods that are sold by length stand behind "in" where inches are meant.
export const soldByLength = (token: Token | undefined): boolean => goodsByLength.test(token?.means['ingredient'] ?? token?.text ?? '');
const inches = (tokens: readonly Token[], index: number): Quantity | undefined => {
  if (tokens[index + 1]?.text !== 'in') return undefined;
  const next = tokens[index + 2]?.text === 'of' ? index + 3 : index + 2;
  const goods = [0, 1, 2].map((beside) => tokens[next + beside]);
  const at = goods.findIndex((token) => soldByLength(token));
  const plain = goods.slice(0, Math.max(0, at)).every((token) => token?.kind === 'word' && token.means['piece'] === undefined);
  return at < 0 || !plain ? undefined : { length: Number(tokens[index]?.number?.amount), unit: 'in', next };
};

// "2.50 of stems per bout" is money: nobody counts stems to the penny.
const inPence = (tokens: readonly Token[], index: number): boolean => {
  const [token, of, stems] = [tokens[index], tokens[index + 1], tokens[index + 2]];
  if (!/^[1-9]\d*\.\d\d$/.test(token?.text ?? '')) return false;
  return of?.text === 'of' && /^(stems|stem|flowers|foliage)$/.test(stems?.text ?? '');
};

/** A quantity that begins here. */
export const quantity = (tokens: readonly Token[], index: number): Quantity | undefined => {
  const token = tokens[index];
  const number = token?.number;
  if (token === undefined) return undefined;
  const part = fraction(tokens, index);
  if (part !== undefined) return measured(tokens, part) ?? part;
  const said = measureSaid(tokens, index);
  if (said !== undefined) return said;
  if (inPence(tokens, index)) return undefined;
  if (number?.form === 'plain' && isSingle(number) && Number(number.amount) <= 500) {
    const long = inches(tokens, index);
    if (long !== undefined) return long;
    // "2 and a half stems"
    if (tokens[index + 1]?.text === 'and' && tokens[index + 2]?.text === 'a' && tokens[index + 3]?.text === 'half')
      return { stems: Number(number.amount) + 0.5, next: index + 4 };
    // "1 bunch of gyp" is no single stem: kept in bunches, to be asked about where it has to be costed.
    if (/^(bunch|bunches)$/.test(tokens[index + 1]?.text ?? '')) {
      const of = tokens[index + 2]?.text === 'of' && tokens[index + 3]?.number === undefined ? 1 : 0;
      return { length: Number(number.amount), unit: 'bunch', next: index + 2 + of };
    }
    // "2 x roses", "2 nos roses", "1 no rose"
    const unit = number.amount === '1' ? /^(x|nos|no)$/ : /^(x|nos)$/;
    const named = tokens[index + 2]?.kind === 'word' || tokens[index + 1]?.text === 'x';
    const x = named && unit.test(tokens[index + 1]?.text ?? '') ? 1 : 0;
    return { stems: Number(number.amount), next: index + 1 + x };
  }
  if ((number?.form === 'length' || number?.form === 'weight') && isSingle(number))
    return { length: Number(number.amount), unit: number.unit ?? '', next: pastWidth(tokens, index + 1) };
  if (/^(sprig|stem|head|bloom|floret|stalk|snip|tuft|wisp)$/.test(token.text) && tokens[index + 1]?.text === 'of')
    return { stems: 1, next: index + 2 };
  if (
    /^(a|an|single)$/.test(token.text) &&
    tokens[index + 1]?.kind === 'word' &&
    tokens[index + 1]?.means['pack'] !== 'bunch' &&
    tokens[index + 1]?.means['piece'] === undefined &&
    !/^(hour|hr|minute|min|day|week)$/.test(tokens[index + 1]?.text ?? '')
  )
    return { stems: 1, next: index + 1 };
  return undefined;
};
