// One person's own piece at its own price, behind those of the others: "6 BHs at 12 plus the groom's, his is 18", "…, groom's at 18".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import { goesOn } from './more-of-the-kind.ts';

const own = pattern(
  "(,|and|&|+|plus|;|with|but|then|except|n) (the|a|an)? ((<e:owner>|<e:role>) (and|&|n|\\+) (the)?)? (<o:owner>|<o:role>) (one|ones|own)? (,|-|:|\\()? (his|hers|theirs|that|which|that's|it's|one|this)? (one)? (is|at|@|=|gets|goes|comes in at|to be|costs){0,2} (an|a)? <n:amount> (one|each|\\))?",
);
const many = /(s|men|folk)$/;

/** The further line, if this place begins one: one piece of the kind before. */
export const ownPiece = (reader: Reader, before: Mention | undefined, index: number): { mention: Mention; end: number } | undefined => {
  const { tokens } = reader;
  if (before?.countIndex === undefined || before.countIndex >= index) return undefined;
  const match = own.at(tokens, index, tokens.length);
  const [owner, price] = [match?.kept['o'], match?.kept['n']];
  if (match === undefined || owner === undefined || price?.number === undefined || !goesOn(reader, before, index)) return undefined;
  const also = match.kept['e']; // "groom and best man at 16": two
  if (also !== undefined && many.test(also.text) && also.means['owner'] === undefined) return undefined;
  const [at, priceIndex] = [tokens.indexOf(owner, index), tokens.indexOf(price, index)];
  const wearer = owner.means['owner'] ?? owner.means['role'];
  // "plus the grooms at 16": the apostrophe nobody typed.
  const his = /^(grooms|brides)$/.test(owner.text) && tokens[at - 1]?.text === 'the';
  if (
    wearer === undefined ||
    wearer === 'rest' || // how many they are is not said
    (owner.means['owner'] === undefined && !his && many.test(owner.text)) ||
    !reader.free(at) ||
    !reader.free(priceIndex)
  )
    return undefined;
  const next = tokens[match.end];
  if (next?.means['piece'] !== undefined || next?.means['role'] !== undefined || next?.means['each'] !== undefined) return undefined;
  if (price.number.max !== undefined || (price.number.form === 'plain' && Number(price.number.amount) < 5)) return undefined;
  // A price that says so itself is found with the others.
  const told =
    price.number.form === 'money' ||
    /^(at|@)$/.test(tokens[priceIndex - 1]?.text ?? '') ||
    tokens[priceIndex + 1]?.means['each'] !== undefined;
  const last = tokens[at + 1]?.text === 'one' ? at + 1 : at; // "the groom's one": a number that prices nothing
  const mention: Mention = {
    index: at,
    last,
    start: at,
    end: last + 1,
    kind: before.kind,
    exact: also === undefined ? 1 : 2,
    countIndex: last,
    ...(also === undefined ? { wearer } : {}),
  };
  return { mention: told || priceIndex === last + 1 ? mention : { ...mention, priceIndex }, end: priceIndex };
};
