// "no, 18 altogether" after pieces and a price: so many made so far, so many pieces, or the price of the lot? A number that small may be
// any of them, so it is asked; money, a word of price or a number too large for pieces leaves no doubt.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Fact } from '../fact.ts';
import type { Finding, Reader } from '../phrase.ts';
import type { Ask, Choice } from '../reading.ts';
import { ofKind } from '../text/kind-named.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import { isCount, type Token } from '../text/token.ts';
import { soMany } from '../words/kind-words.ts';

export const mostPieces = 99; // a bare number above it is what the lot costs

/** Words that sum pieces as well as money; "31 for the lot" is a price. */
export const sums = /^(all told|all up|in total|in all|altogether|all together|overall|total|grand total|ttl|tot)$/;

const ofPrice =
  /^(price|prices|priced|pricing|quote|quoted|quotes|cost|costs|costing|charge|charged|charging|pay|paying|pays|paid|spend|spending|budget|bill|invoice|deal|sum|amount|fee|grand total)$/;

export const askOfSum = (count: number, words: string, kind?: PieceKind): Ask => {
  const piece = ofKind(kind);
  const choices: Choice[] = [
    { words: `${count} made so far`, facts: [{ fact: 'made', count, total: true, ...piece, words }] },
    { words: soMany(count), facts: [{ fact: 'change', what: 'count', to: count, ...piece, words }] },
  ];
  const price: Fact = { fact: 'change', what: 'price', to: String(count), per: 'all', words };
  if (kind === undefined) choices.push({ words: `${count} for all of it`, facts: [price] });
  return { about: 'count', why: 'which number', words, choices };
};

const tellsMoney = (token: Token): boolean => token.number?.form === 'money' || tellsOfTax(token) || ofPrice.test(token.text);

/** The finding, or a question where its one new price for all of it may be a number of pieces. */
export const soManyInAll = (reader: Reader, finding: Finding): Finding => {
  const [fact, another] = finding.facts ?? [];
  if (fact?.fact !== 'change' || fact.what !== 'price' || fact.per !== 'all' || another !== undefined) return finding;
  const { start, end } = finding;
  const stretch = reader.tokens.slice(start, end);
  const number = stretch.find((token) => isCount(token) && token.number?.amount === fact.to);
  if (number === undefined || fact.piece !== undefined || Number(fact.to) > mostPieces) return finding;
  if (stretch.some(tellsMoney) || !stretch.some(({ text }) => sums.test(text))) return finding;
  return { start, end, asks: [askOfSum(Number(fact.to), reader.words(start, end))] };
};
