// "bride cut the flower girls so no crowns now", "no page boys so no buttonholes": who would have worn them is gone, so none of that kind are wanted.

import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { pieceIn } from '../progress/made-facts.ts';
import type { Part } from '../text/message.ts';

const gone =
  /^(no|without|cut|dropped|out|axed|scrapped|cancelled|canceled|ditched|removed|nixed|uninvited|not|isn't|isnt|aren't|arent|won't|wont)$/;
// "so no crowns made yet" is work: nothing but these stands behind.
const none = pattern(
  "(,|-)? so (there's|theres|it's|its|we need|we want|need|want|then|that's|thats)? (no|zero) (<material>)? <p:piece> (now|after all|anymore|any more|any longer|then|needed|wanted|either){0,2} (please|pls|sorry|,){0,2}",
);

export const noneThen = (reader: Reader, { start, end, asked }: Part): Finding | undefined => {
  const { tokens } = reader;
  if (asked || !none.might(tokens)) return undefined;
  const match = none.in(tokens, start, end);
  const piece = match?.kept['p'];
  if (match === undefined || match.end < end || piece === undefined) return undefined;
  // "gran's not coming so no corsage" may be one of several.
  const { piece: kind } = pieceIn(match);
  if (kind === undefined || !/s$/.test(piece.text)) return undefined;
  const before = tokens.slice(start, match.start);
  const wearer = before.some(({ means }) => means['role'] !== undefined);
  const plain = before.every(
    ({ number, means }) => number === undefined && means['piece'] === undefined && means['ingredient'] === undefined,
  );
  if (!wearer || !plain || before.length > 12 || !before.some(({ text }) => gone.test(text))) return undefined;
  return found(reader, start, end, [{ fact: 'change', what: 'count', to: 0, piece: kind }]);
};
