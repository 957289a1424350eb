// One person's own piece at its own price, behind those of the others: "6 BHs at 12 plus the groom's, his is 18", "…, groom's at 18".

import { pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Mention } from './mention.ts';
import { goesOn, sharesOut } from './more-of-the-kind.ts';
import { describes } from './told-by-size.ts';

const own = pattern(
  "(,|and|&|+|plus|;|with|but|then|except|n) (the|a|an)? ((<e:owner>|<e:role>) (and|&|n|\\+) (the)?)? (<o:owner>|<o:role>) (one|ones|own)? (separate|separately|apart|extra|besides|on top|on its own|by itself|on his own)? (,|-|:|\\()? (his|hers|theirs|that|which|that's|it's|one|this)? (one)? (is|at|@|=|gets|goes|comes in at|to be|costs){0,2} (an|a)? <n:amount> (one|each|\\))?",
);
const many = /(s|men|folk)$/;

// "plus a bigger one for the groom at £14", "and another for dad, £11"
const further = pattern(
  '(,|and|&|+|plus|;|with|but|then|n) (a|an|one|another|1) ((third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh) (,)? (slightly|much|bit|little|tad|more)? (<d:word>)? (,)?|(slightly|much|bit|little|tad|more)? (<d:word>)? (one|1|version)?) (for (the|our|her|his|my)? (<o:owner>|<o:role>))? (,|-|:|\\()? (is|at|@|for|costs|:|=|-){0,2} (an|a)? <n:amount>',
);
const nths = ['third', 'fourth', 'fifth', 'sixth', 'seventh', 'eighth', 'ninth', 'tenth', 'eleventh'];
const beforePrice = /^(is|at|@|for|costs|:|=|-|,|\(|an|a)$/;
const onePiece = (reader: Reader, before: Mention, index: number): { mention: Mention; end: number } | undefined => {
  const { tokens } = reader;
  const match = further.at(tokens, index, tokens.length);
  const { d, o, n } = match?.kept ?? {};
  if (match === undefined || n?.number === undefined || n.number.max !== undefined || !goesOn(reader, before, index)) return undefined;
  const priceIndex = match.end - 1;
  const said = tokens.slice(index + 1, priceIndex).map(({ text }) => text);
  // "four at £25 and a fifth for her mother at £32": one more than there were.
  const nth = nths.indexOf(said[1] ?? '');
  if (nth >= 0 && nth + 3 !== Number(before.count?.number?.amount) + 1) return undefined;
  const another = nth >= 0 || said[0] === 'another' || said.includes('one') || said.includes('version') || said.includes('1');
  if (
    d === undefined || nth >= 0
      ? !(nth >= 0 || said[0] === 'another' || (another && o !== undefined))
      : !(describes(d, false) && (another || o !== undefined))
  )
    return undefined;
  let last = priceIndex - 1;
  while (last > index && beforePrice.test(tokens[last]?.text ?? '')) last -= 1;
  const marked = n.number.form === 'money' || /^(at|@|for)$/.test(tokens[priceIndex - 1]?.text ?? '');
  if (last === index || (!marked && (o === undefined || Number(n.number.amount) < 5)) || !reader.free(priceIndex)) return undefined;
  const next = tokens[match.end];
  if (next?.means['piece'] !== undefined || next?.means['role'] !== undefined || next?.means['other'] !== undefined) return undefined;
  const wearer = o?.means['owner'] ?? o?.means['role'];
  if (o !== undefined && (wearer === 'rest' || (o.means['owner'] === undefined && many.test(o.text)))) return undefined;
  const own = { index: last, last, start: index + 1, end: last + 1, kind: before.kind, exact: 1, countIndex: last };
  const mention: Mention = { ...own, ...(wearer === undefined ? {} : { wearer }) };
  return { mention: n.number.form === 'money' ? mention : { ...mention, priceIndex }, end: priceIndex };
};

/** The further line, if this place begins one: one piece of the kind before. */
export const ownPiece = (reader: Reader, before: Mention | undefined, index: number): { mention: Mention; end: number } | undefined => {
  const { tokens } = reader;
  if (before?.countIndex === undefined || before.countIndex >= index || sharesOut(tokens, before, index + 1)) return undefined;
  const one = onePiece(reader, before, index);
  if (one !== undefined) return one;
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
