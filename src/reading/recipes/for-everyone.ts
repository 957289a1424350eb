// What goes into every one beside the shares of single wearers: "groom has 2 roses, others 1 rose, all 1 ruscus", "…, 1 ruscus in all".

import type { RecipeLineFact } from '../fact.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';

const everyone =
  '(they all|all of them|all|everyone|everybody|every one|everyone in|every one of them|each and every one|each one of them)';
const ahead = pattern(
  `(,|;|\\.|-|and|plus|&|\\+|then|but){0,3} ${everyone} (of them|too|also)? (get|gets|has|have|having|take|takes|with|in|on|:|-|=|a)?`,
);
const behind = pattern(
  '((in|for|on|to|into) (all|everyone|everybody|every one|each and every one)|in all|for all|<all>) (of them|the men|of these)?',
);
const parted = /^(,|;|and|plus|&|\+)$/;
// "all else", "all the ushers": not everybody.
const some = /^(else|but|except|bar|apart|the|other|others|ushers)$/;

interface Common extends Stretch {
  readonly lines: readonly RecipeLineFact[];
}

const linesOf = (reader: Reader, start: number, end: number): readonly RecipeLineFact[] | undefined => {
  const lines = linesIn(reader, start, end);
  const counted = lines?.every(({ known, line }) => known && (line.stems ?? line.length) !== undefined) === true;
  const named = reader.tokens.slice(start, end).some(({ means }) => means['role'] !== undefined || means['owner'] !== undefined);
  return lines !== undefined && lines.length > 0 && counted && !named ? lines.map(({ line }) => line) : undefined;
};

/** The stretch up to the end of the part that says so; what goes into each is known and counted. */
export const forEveryone = (reader: Reader, { start, end }: Stretch): Common | undefined => {
  const { tokens } = reader;
  for (let index = ahead.next(tokens, start, end); index < end; index = ahead.next(tokens, index + 1, end)) {
    const match = ahead.at(tokens, index, end);
    const before = tokens[index - 1];
    const opens = index === start || parted.test(tokens[index]?.text ?? '') || tokens[index]?.kind !== 'word' || before?.kind === 'line';
    if (match === undefined || !opens || some.test(tokens[match.end]?.text ?? '')) continue;
    const lines = linesOf(reader, match.end, end);
    if (lines !== undefined) return { start: index, end, lines };
  }
  const tail = behind.in(tokens, start, end);
  if (tail?.end !== end) return undefined;
  let from = tail.start;
  while (from > start && !parted.test(tokens[from - 1]?.text ?? '')) from -= 1;
  const lines = from > start ? linesOf(reader, from, tail.start) : undefined;
  return lines === undefined ? undefined : { start: from - 1, end, lines };
};
