// Marks each word with what it stands for, the longest known name first: "wrist corsages" is one piece word, not "wrist" and "corsages".

import { meansAlone, namesFrom, namesOfSeveral, ofNames } from '../words/vocabulary.ts';
import { type Means, meansOf, none, type Tag } from './means.ts';
import { nearestWord } from './nearest-word.ts';
import { changed, type Token, textOf } from './token.ts';

const longestName = (tokens: readonly Token[], start: number): { length: number; means: Means } | undefined => {
  const word = (tokens[start] as Token).text;
  let length = 0;
  let said: Partial<Record<Tag, string>> = {};
  for (const entry of namesOfSeveral(word, tokens[start + 1]?.text ?? '')) {
    if (entry.words.length < length) break;
    const isSaid = entry.words.every(
      (each, offset) => offset === 0 || (tokens[start + offset]?.text === each && tokens[start + offset]?.number === undefined),
    );
    if (!isSaid) continue;
    length = entry.words.length;
    said = { [entry.tag]: entry.value, ...said };
  }
  if (length > 0) return { length, means: meansOf(said) };
  const own = meansAlone(word);
  return own === none ? undefined : { length: 1, means: own };
};

type Found = ReturnType<typeof longestName>;
// "groom father of the bride": two people, and not the groom's father.
const untangled = (tokens: readonly Token[], index: number, found: Found): Found => {
  // "statice 10 stem wrap 4.80" comes in wraps of ten; "stem wrap" alone is a roll of it.
  if (found?.length === 2 && /^stem (wrap|wire)$/.test(found.means['ingredient'] ?? '') && tokens[index - 1]?.number?.form === 'plain')
    return { length: 1, means: meansOf({ pack: 'stem' }) };
  if (found === undefined || found.length !== 2 || found.means['role'] === undefined || tokens[index + 2]?.text !== 'of') return found;
  if ((longestName(tokens, index + 1)?.length ?? 0) < 3) return found;
  const own = namesFrom((tokens[index] as Token).text).find((entry) => entry.words.length === 1 && entry.tag === 'role');
  return own === undefined ? found : { length: 1, means: meansOf({ role: own.value }) };
};

export const nameWords = (tokens: readonly Token[]): Token[] => {
  const named: Token[] = [];
  for (let index = 0; index < tokens.length; ) {
    const token = tokens[index] as Token;
    if (token.number !== undefined || token.kind === 'line') {
      named.push(token);
      index += 1;
      continue;
    }
    const found = untangled(tokens, index, longestName(tokens, index));
    if (found !== undefined) {
      const last = tokens[index + found.length - 1] as Token;
      const text = textOf(tokens, index, index + found.length);
      named.push(changed(token, { text, end: last.end, means: found.means }));
      index += found.length;
      continue;
    }
    // "ribbon's in", "corsage's done"
    const bare =
      token.text.endsWith("'s") && /^[a-z]{3,}'s$/.test(token.text)
        ? namesFrom(token.text.slice(0, -2)).filter(
            (entry) => entry.words.length === 1 && /^(ingredient|piece|taxName|everyday)$/.test(entry.tag),
          )
        : [];
    if (bare.length > 0) {
      named.push(changed(token, { means: ofNames(bare) }));
      index += 1;
      continue;
    }
    const slip = token.kind === 'word' ? nearestWord(token.text) : [];
    const means = slip.length === 0 ? none : ofNames(slip);
    named.push(slip.length === 0 ? token : changed(token, { means, guessed: slip[0]?.words[0] ?? '' }));
    index += 1;
  }
  return named;
};
