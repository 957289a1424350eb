// Pieces named without a number that are one: "flower crown for the bride 85", "6 bouts at 12 and crown at 60".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import { none, tagsOf } from '../text/means.ts';
import type { Mention } from './mention.ts';
import { goesOn } from './more-of-the-kind.ts';

// "6 bouts at 12 and crown at 60": one, named alone and priced in a list of counted kinds.
const priceBehind = pattern('(for (the|our)? <role>)? ((at|@|:|-)? <money>|(at|@) <plain>|<plain> (<each>|,))');
export const oneInList = (reader: Reader, before: Mention | undefined, index: number, last: number): boolean => {
  const { tokens } = reader;
  const name = tokens[last]?.text ?? 's';
  // "and the big comb @ 38"
  let at = index - 1;
  while (
    at > index - 3 &&
    tokens[at]?.kind === 'word' &&
    tagsOf(tokens[at]?.means ?? none).length === 0 &&
    !/^(and|n|plus|w|with|for|at|of)$/.test(tokens[at]?.text ?? '')
  )
    at -= 1;
  if (at < index - 1 && tokens[at + 1]?.text !== 'the') return false;
  if (before?.countIndex === undefined || /s$/.test(name) || !/^(,|and|&|\+|n|plus|w|with)$/.test(tokens[at]?.text ?? '')) return false;
  const price = priceBehind.at(tokens, last + 1, tokens.length);
  // "9 bh plus an arch, bh £11 ea": what each of those costs.
  const again = before.kind === tokens[last]?.means['piece'] && tokens[price?.end ?? 0]?.means['each'] !== undefined;
  return price !== undefined && !again && goesOn(reader, before, index);
};
// "flower crown for the bride 85": one, when one person wears it.
const one =
  /^(groom|bride|mum|mom|mam|dad|father|mother|best man|bestman|granny|gran|nan|grandad|grandpa|grandma|officiant|celebrant|priest|maid of honour|maid of honor|moh|mob|mog|fob|fog|mother of the bride|mother of the groom|father of the bride|father of the groom|birthday girl|ring bearer|flower girl|pageboy|page boy|usher|bridesmaid|groomsman)$/;
export const forOne = (reader: Reader, index: number, end: number): boolean => {
  const close = reader.tokens[end - 1]?.text === ')' ? 2 : 1;
  return (
    !/s$/.test(reader.tokens[index]?.text ?? 's') &&
    one.test(reader.tokens[end - close]?.text ?? '') &&
    reader.tokens[index - 1]?.text !== 'per'
  );
};
