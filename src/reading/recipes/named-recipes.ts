// Recipes with a name: saved under it, used again by it, or one kind's recipe used for another.

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindNamed } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { otherMatterEnd } from '../text/other-matters.ts';

const saveForms = [
  pattern(
    '(please|pls|ok|can you|could you|,){0,2} (save|keep|store|remember|file) (that|this|the|our|it|these|my)? (<p:piece>)? (recipe|recipes) (as|under|called|named|for) (the|our|a)?',
  ),
  pattern('(please|pls|ok|can you|could you|,){0,2} (call|name) (that|this|the|our) (<p:piece>)? recipe (the)?'),
];
const saveBefore = pattern(
  '(please|pls|ok|can you|could you|,){0,2} (save|keep|store|remember|file) (that|this|it|these) (as|under) (the|our|my)?',
);
const likeForms = [
  pattern(
    '(the|our)? <p:piece> (are|is|get|gets|use|uses|have|has|with|:|-|on)? (the|our|exactly|exact|made to){0,2} same (recipe|recipes|flowers|ingredients|stems|mix) (as|as in|as for|like) (the|in the|for the|our)? <q:piece>',
  ),
  pattern(
    '(use|do)? (the)? same (recipe|flowers|ingredients|mix) (for|in|on) (the|our)? <p:piece> (as|as in|as for|as on) (the|our|in the|for the)? <q:piece>',
  ),
  pattern('(the|our)? <p:piece> (use|uses|get|gets|have|has|to|with|on|:|-) (the|same|the same|our)? <q:piece> recipe'),
  pattern('(use)? (the|our)? <q:piece> recipe (for|on|in) (the|our)? <p:piece> (too|as well|also)?'),
];
const likeAlone = pattern('(the|use the)? same recipe (as|as for|as in) (the|our)? <q:piece>');
const borrowed = pattern(
  '(ok|so|just|,|please)? (the|use|copy|using|do)? (the)? (same|use|copy) (the)? (recipe|recipes) (as|from|of) (the|for|our|for the|we did for the|we used for the)?',
);
const useNamed = pattern(
  '(ok|so|just|,|please|let\'s|lets)? (use|using|same|do|go with|with|copy|take|reuse) (the|our|that)? (")? (<n:word>){1,4} (")? recipe',
);
const namedFor = pattern('(the|our)? (")? (<n:word>){1,4} (")? recipe (for|on) (the|our|these|those)? <p:piece>');
const target = pattern('(for|on|in) (the|our|all the|these|those)? <p:piece>');
const notName =
  /^(the|a|an|new|this|that|which|what|same|old|next|first|your|my|whole|any|no|buttonhole|recipe|send|show|print|need|is|save|card|double|halve|half|his|her|their)$/;

const named = (piece: PieceKind | undefined): { piece?: PieceKind } => (piece === undefined ? {} : { piece });

/** The words of a name without quotation marks, a leading article and a trailing "recipe" or "please". */
export const nameSaid = (reader: Reader, start: number, end: number): string | undefined => {
  let [from, to] = [start, end];
  while (from < to && /^("|'|the|a|our|-|:)$/.test(reader.tokens[from]?.text ?? '')) from += 1;
  while (to > from && /^("|'|recipe|please|pls|thanks|ta|,|again|too|:|-)$/.test(reader.tokens[to - 1]?.text ?? '')) to -= 1;
  if (to - from < 1 || to - from > 6) return undefined;
  return reader.words(from, to);
};

export const namedRecipe = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const { start, end } = part;
  const one = (fact: Unworded): Finding => found(reader, start, end, [fact]);
  for (const form of likeForms) {
    const match = form.at(tokens, start, end);
    const [piece, like] = [kindNamed(match?.kept['p']), kindNamed(match?.kept['q'])];
    if (match !== undefined && match.end >= end - 1 && piece !== undefined && like !== undefined && piece !== like)
      return one({ fact: 'recipe', lines: [], piece, like });
  }
  const alone = likeAlone.at(tokens, start, end);
  const like = kindNamed(alone?.kept['q']);
  if (alone !== undefined && alone.end >= end - 1 && like !== undefined) return one({ fact: 'recipe', lines: [], like });
  const saved = savedAt(reader, part);
  if (saved !== undefined) return saved;
  const copied = borrowed.at(tokens, start, end);
  if (copied !== undefined) {
    const [to, piece] = withoutTarget(reader, copied.end, end);
    const name = nameSaid(reader, copied.end, to);
    // "same recipe as the 90 we did": an old job, and no name.
    const oldJob = otherMatterEnd(tokens, start) !== undefined;
    if (name !== undefined && !oldJob) return one({ fact: 'recipe', lines: [], name, ...named(piece) });
  }
  return usedAgain(reader, part, useNamed.at(tokens, start, end)) ?? usedAgain(reader, part, namedFor.at(tokens, start, end));
};

const whenWanted =
  /^(next|later|future|another|other|again|reuse|reference|tomorrow|next (time|year|week|month|season|one|wedding|event|order|job|party|bride)|another (time|day|one|wedding|event|job)|future (use|reference|weddings|events|orders|ones|jobs)|later (on|use)|the (future|next|rest|others|team|record|girls|others)|good|ever|now|me|us|you|them|her|him|everyone|everybody|all|safe ?keeping|(a|any) (later|future|other|repeat) (date|time|order|wedding)s?|repeat (orders|order)|when|if|so|that|this)\b/i;
const savedAt = (reader: Reader, { start, end }: Part): Finding | undefined => {
  const form = firstAt(saveForms, reader.tokens, start, end);
  const before = form === undefined && reader.tokens[end - 1]?.text === 'recipe' ? saveBefore.at(reader.tokens, start, end) : undefined;
  const match = form ?? before;
  const name = match === undefined ? undefined : nameSaid(reader, match.end, end);
  if (match === undefined || name === undefined) return undefined;
  // "remember the recipe for next time": when it is wanted again, and no name.
  if (whenWanted.test(name)) return { start, end, held: true };
  return found(reader, start, end, [{ fact: 'recipe', lines: [], name, saves: true, ...named(kindNamed(match.kept['p'])) }]);
};

const usedAgain = (reader: Reader, { start, end }: Part, match: Match | undefined): Finding | undefined => {
  if (match === undefined) return undefined;
  let from = match.start;
  let to = from;
  while (to < match.end && reader.tokens[to]?.text !== 'recipe') to += 1;
  while (
    from < to &&
    /^(ok|so|just|,|please|let's|lets|use|using|same|do|go|with|copy|take|reuse|the|our|that|")$/.test(reader.tokens[from]?.text ?? '')
  )
    from += 1;
  const words = reader.tokens.slice(from, to).filter((token) => token.text !== '"');
  const whose = words.some(
    (token) =>
      token.number !== undefined || token.means['piece'] !== undefined || token.means['role'] !== undefined || notName.test(token.text),
  );
  const [rest, piece] = withoutTarget(reader, to + 1, end);
  if (words.length === 0 || whose || rest - (to + 1) > 1) return undefined;
  const name = nameSaid(reader, from, to);
  return name === undefined ? undefined : found(reader, start, end, [{ fact: 'recipe', lines: [], name, ...named(piece) }]);
};

const withoutTarget = (reader: Reader, start: number, end: number): [number, PieceKind | undefined] => {
  const match = target.in(reader.tokens, start, end);
  return match === undefined || match.end < end - 1 ? [end, undefined] : [match.start, kindNamed(match.kept['p'])];
};
