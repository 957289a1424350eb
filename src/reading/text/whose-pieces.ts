// Whose pieces some of them are: in "six of Harriet's buttonholes are done" the name says nothing that "the" would not.

import { formOf } from '../pattern.ts';
import { changed, isCount, type Token } from './token.ts';

const named = formOf(
  'of <word> (first|second|other|dried|fresh|little|<material>)? (wrist|pin|pin-on|flower|hair|small|big)? (<piece>|<role>)',
);
const some = /^(each|all|both|none|half|most|some|one|rest|last|every one|couple|few|pair|dozen|handful|any)$/;
const owner = /^[a-z\u00c0-\u024f-]{2,}('s|s')$/;
const noOwner = /^(it's|that's|there's|here's|what's|who's|he's|she's|let's|how's|where's|today's|yesterday's|tomorrow's|one's)$/;

/** The tokens with a name in the possessive between "of" and a kind read as "the". */
export const withoutOwners = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    if (token.kind !== 'word' || !owner.test(token.text) || noOwner.test(token.text) || Object.keys(token.means).length > 0) return token;
    const [of, count] = [tokens[index - 1], tokens[index - 2]];
    if (of?.text !== 'of' || count === undefined || !(isCount(count) || some.test(count.text))) return token;
    return named.at(tokens, index - 1) === undefined ? token : changed(token, { text: 'the' });
  });
