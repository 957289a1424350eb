// The currency a price list gives once, at its head: "PRICE SHEET ($)", a column headed "£", "all prices in rand".

import type { FactOf } from '../fact.ts';
import type { Finding } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import { codesAfter, signs } from '../words/currency-words.ts';

type Money = Pick<FactOf<'pack'>, 'currency' | 'symbol'>;

const moneyAt = (tokens: readonly Token[], index: number): Money | undefined => {
  const [before, { text } = { text: '' }, next] = [tokens[index - 1], tokens[index], tokens[index + 1]];
  if (next?.number !== undefined) return undefined;
  if (text === '$') return { symbol: text };
  const currency = Object.hasOwn(signs, text) ? signs[text] : undefined;
  if (currency !== undefined) return { currency };
  const code = Object.hasOwn(codesAfter, text) ? codesAfter[text] : undefined;
  // "Wholesale list EUR" closes its line.
  if (code !== undefined && /^[a-z]{3}$/.test(text) && next?.kind === 'line') return { currency: code };
  return code !== undefined && /^(in|\(|price|prices|:)$/.test(before?.text ?? '') ? { currency: code } : undefined;
};

/** The goods in the currency of the list's head, where none of them names its own. */
export const withListCurrency = (tokens: readonly Token[], findings: readonly Finding[]): readonly Finding[] => {
  const packs = findings.flatMap(({ facts }) => facts ?? []).filter((fact) => fact.fact === 'pack');
  if (packs.length < 2 || packs.some(({ currency, symbol }) => (currency ?? symbol) !== undefined)) return findings;
  const first = Math.min(...findings.filter(({ facts }) => facts !== undefined).map(({ start }) => start));
  let money: Money | undefined;
  for (let index = 0; index < first && money === undefined; index++) money = moneyAt(tokens, index);
  if (money === undefined) return findings;
  return findings.map((finding) =>
    finding.facts === undefined
      ? finding
      : { ...finding, facts: finding.facts.map((fact) => (fact.fact === 'pack' ? { ...fact, ...money } : fact)) },
  );
};
