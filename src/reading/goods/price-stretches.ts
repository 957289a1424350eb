// A price list in one sentence, cut into its items.

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { isNameless } from '../text/token.ts';
import { knowsItem } from './item-name.ts';

// "$24 / 25 roses": so many for the price.
const beforeSize = ({ tokens }: Reader, index: number): boolean =>
  tokens[index - 1]?.number?.form === 'money' && tokens[index + 1]?.number?.form === 'plain' && tokens[index + 2]?.kind === 'word';

const wasOnce = pattern('<ingredient> (was|were|used to be|used to cost) <amount>');

// Items are set apart by commas, "and" or lines; a stretch without a price belongs to the one before or after it.
export const stretches = (reader: Reader, start: number, end: number, isPriceAt: (index: number) => boolean): Stretch[] => {
  const cuts: Stretch[] = [];
  let from = start;
  for (let index = start; index <= end; index++) {
    const token = reader.tokens[index];
    // "ruscus 55/bunch gyp 140/bunch": with a price said, another name begins another item.
    const dash = token?.text === '-' && !token.glued && reader.tokens[index + 1]?.glued !== true;
    const next = index > from && index < end && (dash || token?.means['ingredient'] !== undefined);
    const before = next ? reader.tokens.slice(from, index) : [];
    if (before.some((each) => each.means['ingredient'] !== undefined) && before.some((_, at) => isPriceAt(from + at))) {
      cuts.push({ start: from, end: index });
      from = dash ? index + 1 : index;
      continue;
    }
    if (
      index === end ||
      (token !== undefined && (/^(,|and|&|;)$/.test(token.text) || (token.text === '/' && !token.glued && !beforeSize(reader, index))))
    ) {
      if (index > from) cuts.push({ start: from, end: index });
      from = index + 1;
    }
  }
  const hasPrice = (cut: Stretch): boolean => reader.tokens.slice(cut.start, cut.end).some((_, at) => isPriceAt(cut.start + at));
  const named = (cut: Stretch): boolean =>
    reader.tokens
      .slice(cut.start, cut.end)
      .some(
        (token) =>
          token.kind === 'word' &&
          (token.means['ingredient'] !== undefined || isNameless(token)) &&
          !/^(gone|up|down|to|from|a|an|the|was|now|per|of|for|to|dry|x|ph|were|been|had|before|previously|used|old|price|cost|time|week|month|be|they|it|last|is|are|now|they're|theyre|he's|she's|we|i|he|she|doing|does|do|selling|sells|sell|letting|lets|let|charging|charges|asking|offering|paying|pay|getting|get|them|those|these|me|us|go|got|have|has|just|only|today|this|last|year|its|it's|month|season|atm|yesterday)$/.test(
            token.text,
          ),
      );
  // "ruscus was 15, gyp 11.80 a bunch": what the one cost once, and what the other costs.
  const goodsIn = ({ start, end }: Stretch): readonly string[] =>
    reader.tokens.slice(start, end).flatMap(({ means }) => means['ingredient'] ?? []);
  const toldBefore = ({ start, end }: Stretch): boolean => wasOnce.in(reader.tokens, start, end) !== undefined;
  const namesOther = (before: Stretch, cut: Stretch): boolean => {
    const [own, others] = [goodsIn(before), goodsIn(cut)];
    return own.length > 0 && others.length > 0 && !others.some((name) => own.includes(name));
  };
  const joined: Stretch[] = [];
  for (const cut of cuts) {
    const before = joined.at(-1);
    if (before !== undefined && toldBefore(before) && namesOther(before, cut)) joined.push(cut);
    else if (before !== undefined && (!hasPrice(before) || !named(cut))) joined[joined.length - 1] = { start: before.start, end: cut.end };
    else if (before !== undefined && !hasPrice(cut) && !knowsItem(reader.tokens.slice(cut.start, cut.end), reader.context.items))
      joined[joined.length - 1] = { start: before.start, end: cut.end };
    else joined.push(cut);
  }
  return joined;
};
