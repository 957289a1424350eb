// How old those are who wear them: "two crowns for the girls who are four and seven", "flower girls aged 4 and 7". An age counts nothing and prices nothing.

import { formOf } from '../pattern.ts';
import { changed, type Token } from './token.ts';

const opens = /^(who|who's|whos|who're|aged|age|ages|they're|theyre|they)$/;
const kin =
  '(<role>|<owner>|kids|kid|child|children|daughters|daughter|nieces|niece|nephews|nephew|sons|son|twins|sisters|sister|brothers|brother|grandkids|cousins|cousin|girls|girl|boys|boy|lads|lasses|bairns|littlies|toddlers)';
const told = formOf(`${kin} (,|-|\\()? (both|all)? (aged|ages|age|who are aged|who is aged) (just|only|about|around|:)?`);
const who = formOf(`${kin} (,|-|\\()? (who are|who is|who's|whos|who're) (both|all|only|just|about|now)?`);
const they = formOf(`${kin} (,|-|\\() (they're|theyre|they are) (both|all|only|just|about|now)?`);

const joins = /^(,|and|&|n|\/|or)$/;
// What may stand behind the last of them.
const ends = /^(,|\.|;|\)|\(|-|!|\?|years|yrs|yr|year|respectively|please|pls|thanks|with|for|on|so|but|in|at|plus|i|we|can|could)$/;
const ofAge = (token: Token | undefined, most: number): token is Token =>
  token?.number?.form === 'plain' &&
  Number(token.number.max ?? token.number.or?.at(-1) ?? token.number.amount) <= most &&
  Number(token.number.amount) > 0;
const closes = (token: Token | undefined): boolean => token === undefined || token.kind === 'line' || ends.test(token.text);

// "who are 4 and 6 bouts": one of them counts, so none is taken for an age.
const agesAt = (tokens: readonly Token[], from: number, most: number, bare = false): readonly number[] => {
  const ages: number[] = [];
  for (let at = from; ofAge(tokens[at], most); ) {
    ages.push(at);
    let next = at + 1;
    while (next < at + 3 && joins.test(tokens[next]?.text ?? '')) next += 1;
    // "aged 5 7 n 8": with nothing between, where all of them are ages.
    if (next === at + 1 && bare && ofAge(tokens[next], most)) {
      at = next;
      continue;
    }
    const [another, behind] = [tokens[next], tokens[next + 1]];
    if (next > at + 1 && ofAge(another, most) && (closes(behind) || joins.test(behind?.text ?? ''))) at = next;
    else if (next > at + 1 && another?.number !== undefined) return tokens[at + 1]?.text === ',' ? ages : [];
    else return closes(tokens[at + 1]) || (next > at + 1 && tokens[next]?.number === undefined) ? ages : [];
  }
  return [];
};

const young = 17;
const small = 10; // "the girls, they're 14 and 16" may price them
const oldest = 104;
const agesBehind = (tokens: readonly Token[], index: number): readonly number[] => {
  const [aged, are, short] = [told.at(tokens, index), who.at(tokens, index), they.at(tokens, index)];
  if (aged !== undefined) return agesAt(tokens, aged.end, oldest, true);
  if (are !== undefined) return agesAt(tokens, are.end, young);
  const ages = short === undefined ? [] : agesAt(tokens, short.end, small);
  return ages.length > 1 ? ages : []; // "the girls, they're 6": how old or how many
};

/** The tokens with ages told as numbers that count nothing. */
export const withAges = (tokens: readonly Token[]): readonly Token[] => {
  if (!tokens.some(({ text }) => opens.test(text))) return tokens;
  const ages = new Set(tokens.flatMap((_, index) => agesBehind(tokens, index)));
  if (ages.size === 0) return tokens;
  return tokens.map((token, index) =>
    ages.has(index)
      ? changed(token, { number: { form: 'code', amount: '', ...(token.number?.worded === true ? { worded: true } : {}) } })
      : token,
  );
};
