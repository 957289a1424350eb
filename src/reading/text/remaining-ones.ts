// "20 crowns, 5 at £40 and the remaining 15 £32", "10 dried and the remaining 20 fresh": the others of an order, and none left to make.

import { formOf } from '../pattern.ts';
import { none } from './means.ts';
import { changed, type Token } from './token.ts';

const others = formOf('the remaining <count> (of them)? (are|to be|in|is)? (<money>|(at|@) <plain>|<plain> <each>|<material>)');

export const withOthers = (tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) =>
    token.text === 'remaining' && tokens.slice(0, index - 1).some(({ number }) => number !== undefined) && others.at(tokens, index - 1)
      ? changed(token, { text: 'other', means: none })
      : token,
  );
