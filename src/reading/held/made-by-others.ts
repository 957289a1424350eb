// Pieces that somebody of the family makes: "her cousin's making the 10 crowns", "groom's mum is making 10 buttonholes", "the bride's doing her own 4 crowns".

import { type Match, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part, Stretch } from '../text/message.ts';
import { withoutOwner } from '../text/owners.ts';
import { meansAlone } from '../words/vocabulary.ts';

const theirs = pattern(
  '<w:any> (is|are|was|will be)? (doing|making) ((her|his|their) <o:any>|the|about|all|all the)? <count> (<material>)? <piece> (herself|himself|themselves)?',
);
const herself = /^(herself|himself|themselves)$/;
const kin =
  /^((step)?(mother|father)|(mother|father) of the (bride|groom)|(mother|father|sister|brother)-in-law|grandmother|grandfather|aunt|uncle|sister|brother|cousin|friend|niece|daughter)$/;
const couple = /^(bride|groom|couple|client|customer)$/;
const whose = /^(her|his|their|a|bride's|brides|groom's|grooms|mum's|mums|mom's|moms|client's|couple's)$/;

const roleOf = (text: string): string => meansAlone(withoutOwner(text))['role'] ?? withoutOwner(text);

const isOthers = ({ tokens }: Reader, match: Match): boolean => {
  const who = match.kept['w'];
  const role = who?.means['role'] ?? roleOf(who?.text ?? '');
  const own = match.kept['o']?.text === 'own' || tokens.slice(match.start, match.end + 1).some(({ text }) => herself.test(text));
  if (couple.test(role)) return own;
  return kin.test(role) && (own || / of the /.test(role) || whose.test(tokens[match.start - 1]?.text ?? ''));
};

/** From whoever makes them to their kind. */
export const madeByOthers = (reader: Reader, { start, end }: Part): Stretch[] => {
  const { tokens } = reader;
  if (!theirs.might(tokens)) return [];
  for (let index = theirs.next(tokens, start, end); index < end; index = theirs.next(tokens, index + 1, end)) {
    const match = theirs.at(tokens, index, end);
    if (match !== undefined && isOthers(reader, match)) return [{ start: match.start, end: match.end }];
  }
  return [];
};
