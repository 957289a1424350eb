// How much is bought beyond the recipes of this event: "allow 10% spare on everything", "order 10% extra", "15% spare on statice".

import { itemName, knowsItem } from '../goods/item-name.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isSingle } from '../text/token.ts';

const lead =
  "(ok|okay|and|so|,|please|pls|can we|can you|could you|we|i|lets|let's|should|to|want|wants|usually|for this one|for this event|on this one|this one|just|-){0,4}";
const bought =
  '(order|ordering|buy|buying|get|getting|allow|allowing|have|include|plan|factor in|build in|need|budget|use|with|put in|go with|make it|do|add|adding)';
const sure = '(order|ordering|buy|buying|get|getting|allow|allowing)';
const over =
  '(spare|spares|wastage|waste|breakage|for spares|for wastage|for waste|for breakage|for breakages|as spare|as spares|for spare|over as spare|contingency)';
const all =
  '((on|of|for|across|in)? (all|every)? (of)? (the|our|my)? (everything|stems|stem|flowers|goods|it all|all of it|all of them|the lot|<all>|each|orders|order|this order|materials|top))';
const tail = '(please|pls|thanks|then|,|for this one|for this event|for this|this time|to be safe|in case|just in case|too|as well){0,3}';
/** A spare by its name, or what is ordered more of: "add 10% extra" alone may be a price. */
const ofAll = [
  pattern(`${lead} ${bought}? (about|an|a|another)? <n:percent> (extra)? ${over} ${all}? ${tail}`),
  pattern(`${lead} ${sure} (about|an|a|another)? <n:percent> (extra|over|more|on top|above|over the top) ${all}? ${tail}`),
  pattern(
    `${lead} ${bought}? (about|an|a|another)? <n:percent> (extra|more) (of)? (all)? (the)? (stems|flowers|stems and all|goods|materials) ${tail}`,
  ),
  pattern(
    `${lead} (the)? (spare|spares|wastage|waste|breakage|spare rate) (is|are|at|of|to|:|=|should be|on everything|for everything|on stems|on the stems){0,2} <n:percent> ${all}? ${tail}`,
  ),
];
const ofOne = [
  pattern(
    `${lead} ${bought}? (about|an|a|another)? <n:percent> (extra)? ${over} (on|for|of) (the|our|all the)? <word>{1,3} ((and|,|&) (the)? <word>{1,2}){0,3}`,
  ),
  pattern(
    `${lead} ${sure} (about|an|a|another)? <n:percent> (extra|more|over) (on|of|for)? (the|our)? <word>{1,3} ((and|,|&) (the)? <word>{1,2}){0,3}`,
  ),
  pattern(
    `(the|and)? <word>{1,3} ((and|,|&) (the)? <word>{1,2}){0,3} (at|with|:|-|needs|wants|has|gets|,)? (about|a)? <n:percent> (extra)? ${over}`,
  ),
];

/** The goods named, each by itself: "statice and the gyp". */
const goodsIn = (reader: Reader, start: number, end: number): readonly string[] | undefined => {
  const { tokens, context } = reader;
  const names: string[] = [];
  let from = start;
  for (let index = start; index <= end; index++) {
    const known = index < end && tokens[index]?.means['ingredient'] !== undefined;
    if (index < end && !/^(and|,|&|n|\+)$/.test(tokens[index]?.text ?? '')) continue;
    const goods = tokens
      .slice(from, index)
      .filter(({ means, number }) => number === undefined && (means['ingredient'] !== undefined || known));
    const name = goods.length > 0 && knowsItem(goods, context.items) ? itemName(goods, true) : undefined;
    if (name === undefined) return undefined;
    names.push(name);
    from = index + 1;
  }
  return names;
};

const toldIn = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const { tokens } = reader;
  if (asked || end - start > 16) return undefined;
  const percent = firstWhere(tokens, start, end, ({ number }) => number?.form === 'percent');
  const number = tokens[percent]?.number;
  if (percent < 0 || !isSingle(number)) return undefined;
  if (tokens.slice(start, end).some(({ means }) => means['piece'] !== undefined && means['piece'] !== 'unspecified')) return undefined;
  const rule = { fact: 'rule' as const, what: 'spare' as const, to: number.amount };
  for (const form of ofAll) if (form.at(tokens, start, end)?.end === end) return found(reader, start, end, [rule]);
  for (const form of ofOne) {
    if (form.at(tokens, start, end)?.end !== end) continue;
    const behind = tokens.slice(percent, end).some(({ means }) => means['ingredient'] !== undefined);
    const names = behind ? goodsIn(reader, percent + 1, end) : goodsIn(reader, start, percent);
    if (names !== undefined)
      return found(
        reader,
        start,
        end,
        names.map((item) => ({ ...rule, item })),
      );
  }
  return undefined;
};

export const spareTold: Phrase = {
  name: 'spare stems',
  examples: ['allow 10% spare on everything', '15% spare on statice'],
  find: (reader): Finding[] =>
    reader
      .untouched()
      .slice(0, 20)
      .flatMap((part) => toldIn(reader, part) ?? []),
};
