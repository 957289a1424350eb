// Whose pieces some of them are: in "six of Harriet's buttonholes are done" the name says nothing that "the" would not.

import { formOf } from '../pattern.ts';
import { namesFrom } from '../words/vocabulary.ts';
import { meansOf, none, tagsOf } from './means.ts';
import { changed, isCount, type Token } from './token.ts';

const named = formOf(
  'of <word> (first|second|other|dried|fresh|little|<material>)? (wrist|pin|pin-on|flower|hair|small|big)? (<piece>|<role>)',
);
const some = /^(each|all|both|none|half|most|some|one|rest|last|every one|couple|few|pair|dozen|handful|any)$/;
const owner = /^[a-z\u00c0-\u024f-]{2,}('s|s')$/;
const noOwner = /^(it's|that's|there's|here's|what's|who's|he's|she's|let's|how's|where's|today's|yesterday's|tomorrow's|one's)$/;

// "nan's corsage 30, mum's corsage 35": hers, as "the bride's crown" is the bride's; "mum's coming at 2" is no piece.
const hers = formOf('<word> (<material>)? (wrist|pin|hair|flower|own)? (<piece>|one <amount>|one (at|@) <amount>)');
const roleOf = (word: string): string | undefined =>
  namesFrom(word).find((entry) => entry.words.length === 1 && entry.tag === 'role' && !/s$/.test(word))?.value;
const asOwner = (tokens: readonly Token[], index: number): Token | undefined => {
  const token = tokens[index] as Token;
  if (tokens[index - 1]?.text === 'of') return undefined;
  const role =
    token.kind === 'word' && token.means === none && token.text.endsWith("'s") && /^[a-z]{2,}'s$/.test(token.text)
      ? roleOf(token.text.slice(0, -2))
      : undefined;
  return role === undefined || hers.at(tokens, index) === undefined ? undefined : changed(token, { means: meansOf({ owner: role }) });
};

/** The tokens with a name in the possessive between "of" and a kind read as "the". */
export const withoutOwners = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    const own = asOwner(tokens, index);
    if (own !== undefined) return own;
    if (
      token.kind !== 'word' ||
      !token.text.includes("'") ||
      !owner.test(token.text) ||
      noOwner.test(token.text) ||
      tagsOf(token.means).length > 0
    )
      return token;
    const [of, count] = [tokens[index - 1], tokens[index - 2]];
    if (of?.text !== 'of' || count === undefined || !(isCount(count) || some.test(count.text))) return token;
    return named.at(tokens, index - 1) === undefined ? token : changed(token, { text: 'the' });
  });
