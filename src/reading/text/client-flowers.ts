// Somebody or a place called like a flower: in "Correction to the Bell quote", "Fern says ten" and "on the Lotus Lawns" nobody speaks of stems.

import { formOf } from '../pattern.ts';
import { occasions } from '../words/occasion-words.ts';
import type { CleanText } from './clean-text.ts';
import { none } from './means.ts';
import { changed, type Token } from './token.ts';

const named = formOf(`<f:ingredient> (quote|job|booking|enquiry|inquiry|do|couple|family|${occasions.join('|')})`);
const before = /^(the|re|for|on|to|with|from)$/;
// "the rose barn": a place however it is written; "Willow Room", "Lavender Farm": with both capitals.
const place = formOf('<f:ingredient> (barn|hall|hotel|manor|chapel|lodge|inn|lawns|lawn|estate|ballroom|pavilion|marquee)');
const placeNamed = formOf(
  '<f:ingredient> (house|room|rooms|suite|farm|court|cottage|church|park|club|terrace|grove|villa|castle|abbey|cafe|bar|arms|resort|vineyard|winery|courtyard|yard|street|road|lane|avenue|drive|hill|valley|creek|bay|beach|island|school|college|studio|studios|quay|wharf|mill|works|centre|center)',
);

// "Fern says ten for the groomsmen", "Rose wants 5 corsages": no flower speaks, and none wears another.
const speaks = formOf(
  "<f:ingredient> ((says|said|rang|reckons|thinks|texted|emailed|phoned|agreed|promised|mentioned|told|messaged|asked|reckoned)|(has|'s)? (asked|rung|called|said|agreed|emailed|texted) (for|me|us|to|if|that)|(wants|needs|is having|would like|has|ordered|is after|gets) <count> (<material>)? (wrist|pin)? <piece>)",
);
const isCapital = (clean: CleanText, token: Token | undefined): boolean =>
  token !== undefined && /^[A-Z][a-z]/.test(clean.original.slice(clean.at[token.start] ?? 0).slice(0, 2));

/** The tokens without a flower's meaning where what stands behind makes it a name. */
export const withClientFlowers = (clean: CleanText, tokens: readonly Token[]): readonly Token[] =>
  tokens.map((token, index) => {
    if (token.means['ingredient'] === undefined || token.text.includes(' ')) return token;
    const [capital, next] = [isCapital(clean, token), tokens[index + 1]];
    const isClient = capital && before.test(tokens[index - 1]?.text ?? '') && named.at(tokens, index, tokens.length) !== undefined;
    const isPlace =
      place.at(tokens, index, tokens.length) !== undefined ||
      (capital && isCapital(clean, next) && placeNamed.at(tokens, index, tokens.length) !== undefined);
    const isSomeone = !/[^s]s$/.test(token.text) && speaks.at(tokens, index, tokens.length) !== undefined;
    return isClient || isPlace || isSomeone ? changed(token, { means: none }) : token;
  });
