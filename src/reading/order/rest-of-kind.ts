// A sum with all of its shares but the last counted: "9 corsages, 5 wrist and the rest pin on" is five and four, "12 corsages, half wrist, half pin" six and six.

import type { PieceKind } from '../../handbook/pieces.ts';
import { beginsIn, firstIn, type Match, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { isCount, type Token } from '../text/token.ts';
import { allButMaterial } from './all-but-material.ts';
import { pricedEach, priceEach } from './price-each.ts';

const price = (name: string): string => `((at|@) <${name}:amount> (<each>)?|<${name}:money> (<each>)?|<${name}:plain> <each>)?`;
const kind = '(<piece>|wrists|pin|pins|pinned) (ones|one|style)?';
const on = '(x|on the|on|are|is|for the|to be|as|in|will be|being|want|wants)?';
const link = '(,|;|and|&|\\+|n|then|with|-){0,2}';
const whole = `<w:count> (<material>)? <k:piece> ${price('e')} (\\(|,|:|-|=|as|of which|;|made up of|being)?`;
const share = (count: string): string => `<${count}:count> (of (them|these|those|which|em))? ${on} ${kind} ${price(`${count}p`)}`;
const others = '(all)? (the)? (<r:role>|remainder) (ones)? (of (them|those|these|em))?';
const forms = [
  pattern(`${whole} ${share('a')} ${link} (${share('b')} ${link})? ${others} ${on} (all)? ${kind} ${price('zp')}`),
  pattern(`${whole} ${share('a')} ${link} (${share('b')} ${link})? ${kind} for ${others} ${price('zp')}`),
];
// "9 corsages, all but 4 wrist"
const allBut = pattern(`${whole} (all|everything) (but|bar|except) <a:count> (of (them|these|those|em))? ${on} ${kind} ${price('ap')}`);
const halves = pattern(`${whole} half (of them)? ${on} ${kind} ${link} (the)? (other)? half (of them)? ${on} ${kind}`);
// What is told of some and not counted: "5 wrist and the rest ankle", "mostly wrist, 3 pin on".
const uncounted = [
  pattern(`${whole} ${share('a')} ${link} (${share('b')} ${link})? ${others}`),
  pattern(
    `${whole} (half|most|mostly|mainly|some|a few) (of (them|these|those|em))? ${on} ${kind} (${link} (<count>|<role>|half|some|a few) ${on} ${kind})?`,
  ),
];
const restAlone = pattern(`${others} ${on} (all)? ${kind}`);
const all = [...forms, allBut, halves, ...uncounted, restAlone];

const short = (token: Token | undefined): PieceKind | undefined =>
  /^wrists?$/.test(token?.text ?? '') ? 'wrist corsage' : /^(pins?|pinned)$/.test(token?.text ?? '') ? 'pin corsage' : undefined;
const kindOf = (token: Token | undefined): PieceKind | undefined => (token?.means['piece'] as PieceKind | undefined) ?? short(token);
const amount = (token: Token | undefined): number => Number(token?.number?.amount);
const ofWhole = (whole: PieceKind | undefined, part: PieceKind | undefined): boolean =>
  whole !== undefined && part !== undefined && part !== whole && (whole === 'unspecified' || part.includes(whole));
const saysSome = ({ text, means }: Token): boolean =>
  means['role'] === 'rest' || /^(remainder|but|bar|except|half|most|mostly|mainly|some|a few)$/.test(text);
const isRest = ({ kept }: Match): boolean => kept['r'] === undefined || kept['r'].means['role'] === 'rest';

/** The kinds named in the stretch behind the whole's. */
const kindsIn = (tokens: readonly Token[], { kept, start, end }: Match): PieceKind[] =>
  tokens.slice(tokens.indexOf(kept['k'] as Token, start) + 1, end).flatMap((token) => kindOf(token) ?? []);

interface Part {
  readonly count: number;
  readonly price?: Token | undefined;
}

// What each share counts, the one without a number last; none where they cannot make the whole up.
const partsOf = ({ kept }: Match): Part[] => {
  const { a, b, ap, bp, zp } = kept;
  const shares: Part[] = [{ count: amount(a), price: ap }, ...(b === undefined ? [] : [{ count: amount(b), price: bp }])];
  const left = shares.reduce((rest, { count }) => rest - count, amount(kept['w']));
  return left > 0 ? [...shares, { count: left, price: zp }] : [];
};

const told = (reader: Reader, match: Match, kinds: readonly PieceKind[], parts: readonly Part[]): Finding => {
  const { k, w, e } = match.kept;
  const held = { start: match.start, end: match.end, held: true };
  const whole = kindOf(k);
  if (w?.number?.max !== undefined || parts.length === 0 || kinds.length !== parts.length || new Set(kinds).size !== kinds.length)
    return held;
  if (kinds.some((part) => !(ofWhole(whole, part) || part === whole))) return held;
  const priced = parts.filter(({ price }) => price !== undefined);
  // A price of the whole, or behind the last share alone, is for all.
  const common = e ?? (priced.length === 1 ? parts.at(-1)?.price : undefined);
  if (common === undefined ? priced.length % parts.length !== 0 : e !== undefined && priced.length > 0) return held;
  const facts: Unworded[] = parts.map(({ count, price }, at) => ({
    fact: 'pieces',
    piece: kinds[at] as PieceKind,
    count,
    ...(common === undefined ? pricedEach(price) : {}),
  }));
  if (common?.number !== undefined) facts.push({ fact: 'price', ...priceEach(common.number) });
  const takes = allButMaterial(reader.tokens, match.start, match.end);
  return found(reader, match.start, match.end, facts, takes);
};

/** The shares in place of the whole; held where one of them cannot be counted. */
export const restOfKind = (reader: Reader): Finding | undefined => {
  const { tokens } = reader;
  if (!beginsIn(all, tokens, 0, tokens.length) || !tokens.some(saysSome)) return undefined;
  const shared = firstIn(forms, tokens, 0, tokens.length);
  if (shared !== undefined && isRest(shared) && allFree(reader, shared.start, shared.end)) {
    const kinds = kindsIn(tokens, shared);
    if (kinds.some((kind) => ofWhole(kindOf(shared.kept['k']), kind))) return told(reader, shared, kinds, partsOf(shared));
  }
  const but = allBut.in(tokens, 0, tokens.length);
  if (but !== undefined && allFree(reader, but.start, but.end)) {
    const [part] = kindsIn(tokens, but);
    const whole = kindOf(but.kept['k']);
    if (part !== undefined && whole !== undefined && ofWhole(whole, part)) return told(reader, but, [whole, part], partsOf(but));
  }
  const half = halves.in(tokens, 0, tokens.length);
  if (half !== undefined && allFree(reader, half.start, half.end)) {
    const count = amount(half.kept['w']) / 2;
    const kinds = kindsIn(tokens, half);
    if (kinds.some((kind) => ofWhole(kindOf(half.kept['k']), kind)))
      return told(reader, half, kinds, Number.isInteger(count) ? [{ count }, { count }] : []);
  }
  const some = firstIn(uncounted, tokens, 0, tokens.length);
  const unclear = some !== undefined && kindsIn(tokens, some).some((kind) => ofWhole(kindOf(some.kept['k']), kind)) ? some : undefined;
  // "5 wrist, the rest pin on": of how many?
  const rest = unclear ?? restAlone.in(tokens, 0, tokens.length);
  if (rest === undefined || !isRest(rest) || !allFree(reader, rest.start, rest.end)) return undefined;
  const first = tokens.findIndex((token, index) => isCount(token) && reader.free(index));
  return first < 0 ? undefined : { start: Math.min(first, rest.start), end: rest.end, held: true };
};
