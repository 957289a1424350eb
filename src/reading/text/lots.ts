// So many lots of so many are one count: "three lots of 8 hair flowers" is 24. Sets and boxes may be sold or counted as such, and stay as they are.

import { formOf } from '../pattern.ts';
import { asNumber, type Token } from './token.ts';

const lots = formOf('<n:plain> (lots|batches|groups|rounds) of <m:plain> (<material>|dried|fresh|more|small|big|<unlisted>)? <p:piece>');
const priced = formOf(
  '(,|-|:|\\()? (at|@|for|is|=)? <a:amount> (,)? (<e:each>|(a|an|per|each|the|for each|for a|/) (lot|batch|group|round))',
);
const byLot = /^(lot|batch|group|round)$/;
const leastOfMany = 6; // from so much a piece on, the price may be of the whole lot: common practice, no source

const isOpen = (tokens: readonly Token[], end: number, many: number): boolean => {
  const price = priced.at(tokens, end);
  if (price === undefined) return false;
  return (
    byLot.test(tokens[price.end - 1]?.text ?? '') ||
    byLot.test(tokens[price.end]?.text ?? '') ||
    Number(price.kept['a']?.number?.amount) / many >= leastOfMany
  );
};

const isWhole = (token: Token | undefined): boolean =>
  token?.number !== undefined && token.number.max === undefined && /^([2-9]|[1-9]\d{1,2})$/.test(token.number.amount);

/** The tokens with lots and how many are in each as one number, where a price behind them is of one piece. */
export const joinLots = (tokens: readonly Token[]): Token[] => {
  const joined: Token[] = [];
  for (let index = 0; index < tokens.length; index++) {
    const here = tokens[index] as Token;
    const match = here.number === undefined ? undefined : lots.at(tokens, index);
    const [n, m] = [match?.kept['n'], match?.kept['m']];
    const many = Number(m?.number?.amount);
    if (match === undefined || !isWhole(n) || !isWhole(m) || isOpen(tokens, match.end, many)) {
      joined.push(here);
      continue;
    }
    joined.push(asNumber(tokens, index, index + 4, { form: 'plain', amount: String(Number(n?.number?.amount) * many) }));
    index += 3;
  }
  return joined;
};
