// A recipe changed in one thing: something left out, swapped, added or made more of, or all of it scaled.

import type { PieceKind } from '../../handbook/pieces.ts';
import { linesIn } from '../goods/recipe-lines.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { ofKind } from '../text/kind-named.ts';
import type { Part, Stretch } from '../text/message.ts';
import { firstWhere, isSingle } from '../text/token.ts';
import { headedBy, trimmed } from './change-stretch.ts';
import { allGoodsNamed, goodsNamed } from './goods-named.ts';
import { isOpenChange } from './open-change.ts';
import { added, addedSoMany, goodsOnly, putIn } from './put-in.ts';
import { who } from './recipe-headings.ts';
import { mayBeEither, ofEach, setTo } from './set-to.ts';

type Change = Extract<Unworded, { fact: 'recipe' }>;

const target = pattern('(in|on|of|from|for|to|into) (the|all the|all|each|every|both|our)? <p:piece>');
const headPiece = pattern('<p:piece> (:|-|,|-)');
const ofThese = pattern(
  '(in|on|from|for|to|into|of) (these|them|those|it|this|this one|these ones|any of (them|these|those)) (please|pls)?',
);
const dropVerb = pattern(
  "(no more|no|drop|lose|skip|leave out|leave off|take out|take off|remove|cut out|cut|ditch|without|omit|scrap|hold|don't use|dont use|dropping|losing|leaving out) (the|any|all the|all|our)?",
);
const dropAround = pattern('(take|leave|cut) (the)? (<a:word>){1,3} (out|off)');
const swapVerb = pattern('(swap|change|switch|replace|swop|exchange|trade|swapping|changing) (out)? (the|all the|all|our)?');
const subVerb = pattern('(sub|substitute|use|put|using) (in)?');
// "no euc, use ruscus instead", "lose the gyp and put wax in"
const useThen = pattern(
  "(,|and|-|;|then|but){1,2} (just|we'll|well|lets|let's|can we|please)? (use|using|do|put in|put|go with|swap in|sub in|have|try) (some|the|more)?",
);
const between = pattern('(for|to|with|by|into|w|w /) (the|some|a)?');
const insteadOf = pattern('(instead of|in place of|rather than|not|to replace|replacing) (the|any)?');
const makeVerb = pattern('(make|have|do|go|want) (it|that|the|them|those|all the)?');
const scaleForms = [
  pattern('(the|this|that|whole)? (recipe|everything) (times|x|by|\\*) <n:amount>'),
  pattern('(scale|multiply|times) (up|down)? (the|this|that|everything)? (recipe)? (up|down)? (by|x|times)? <n:amount>'),
  pattern('<n:amount> (times|x) (the|this|that) recipe'),
];
const scaleWords = pattern('(<k:word>) (up)? (the|this|that) (whole)? recipe');
const scales: Readonly<Record<string, string>> = { double: '2', doubled: '2', halve: '0.5', half: '0.5', triple: '3', treble: '3' };
const bought =
  /^(order|orders|list|stock|buying|bunch|bunches|box|boxes|wrap|wraps|market|basket|left|came|arrived|invoice|bag|bags|packs?|rolls?|spools?|reels?|price|each at)$/;

export const recipeChange = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  if (part.asked || part.end - part.start > 24) return undefined;
  const words = tokens.slice(part.start, part.end);
  if (words.some((token) => token.number?.form === 'money' || bought.test(token.text))) return undefined;
  let { start, end } = trimmed(reader, part);
  const heading = headedBy.at(tokens, start, end);
  start = heading?.end ?? start;
  // "grandad needs a magnet not a pin" is about him, not about the recipe.
  if (
    firstWhere(tokens, start, end, (token) => token.means['role'] !== undefined) === start &&
    secondForm.at(tokens, start, end)?.kept['o']?.text !== 'second'
  )
    return undefined;
  let piece = heading?.kept['p']?.means['piece'] as PieceKind | undefined;
  if (isOpenChange(reader, { start, end })) return { start: part.start, end: part.end, held: true };
  const soMany = addedSoMany(reader, { start, end });
  if (soMany !== undefined) return found(reader, part.start, part.end, [soMany]);
  // "no ruscus in these"
  const these = ofThese.in(tokens, start + 1, end);
  if (these?.end === end) end = these.start;
  const said = target.in(tokens, start, end);
  const head = headPiece.at(tokens, start, end);
  if (said !== undefined && said.end === end) {
    piece = said.kept['p']?.means['piece'] as PieceKind | undefined;
    end = said.start;
  } else if (head !== undefined) {
    piece = head.kept['p']?.means['piece'] as PieceKind | undefined;
    start = head.end;
  }
  const change = changeIn(reader, { start, end }) ?? (piece === undefined ? undefined : putIn(reader, { start, end }));
  if (change === undefined) return mayBeEither(reader, { start, end }) ? { start: part.start, end: part.end, held: true } : undefined;
  return found(reader, part.start, part.end, [{ ...change, ...ofKind(piece) }]);
};

const changeIn = (reader: Reader, stretch: Stretch): Change | undefined =>
  second(reader, stretch) ??
  scaled(reader, stretch) ??
  swapped(reader, stretch) ??
  dropped(reader, stretch) ??
  setTo(reader, stretch) ??
  another(reader, stretch) ??
  added(reader, stretch);

// "groom gets a second focal": two of it for him.
const secondForm = pattern('(the|our|each)? (<r:role>|<p:piece>) (gets|get|has|have|needs|wants|takes) (a)? <o:word> (<any>){1,4}');
const parts = /^(focal|focals|filler|fillers|foliage|line|texture|greenery)$/;
const second = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  const match = secondForm.at(reader.tokens, start, end);
  const order = match?.kept['o'];
  if (match?.end !== end || order?.text !== 'second') return undefined;
  const from = reader.tokens.indexOf(order) + 1;
  const part = end - from === 1 && parts.test(reader.tokens[from]?.text ?? '') ? reader.tokens[from]?.text.replace(/s$/, '') : undefined;
  const ingredient = part ?? goodsNamed(reader, from, end);
  const wearer = who(match.kept['r']);
  const piece = match.kept['p']?.means['piece'] as PieceKind | undefined;
  if (ingredient === undefined) return undefined;
  return {
    fact: 'recipe',
    lines: [{ ingredient, stems: 2, ...(wearer === undefined ? {} : { wearer }) }],
    adds: true,
    ...ofKind(piece),
  };
};

const ofAll = pattern('(recipe|everything)');
const scaled = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  for (const form of scaleForms) {
    const match = form.at(reader.tokens, start, end);
    const scale = match?.kept['n']?.number?.amount;
    if (match?.end === end && scale !== undefined && ofAll.in(reader.tokens, start, end) !== undefined)
      return { fact: 'recipe', lines: [], scale };
  }
  const match = scaleWords.at(reader.tokens, start, end);
  const word = match?.kept['k']?.text ?? '';
  const scale = Object.hasOwn(scales, word) ? scales[word] : undefined;
  return match?.end === end && scale !== undefined ? { fact: 'recipe', lines: [], scale } : undefined;
};

// "no gyp this week": it cannot be had, which is not yet a recipe without it.
const forNow = /^(week|weeks|month|season|market|today|tomorrow|wholesaler|supplier|till|until|stock|left)$/;
const dropped = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  if (reader.tokens.slice(start, end).some((token) => forNow.test(token.text))) return undefined;
  // "no fern this time just rose and gyp" names what stays in.
  if (reader.tokens.slice(start + 1, end).some(({ text }) => /^(just|only)$/.test(text))) return undefined;
  const around = dropAround.at(reader.tokens, start, end);
  const verb = around?.end === end ? around : dropVerb.at(reader.tokens, start, end);
  if (verb === undefined) return undefined;
  // "take one rose out" leaves the others.
  if (verb === around && reader.tokens.slice(start, end).some(({ number, text }) => number !== undefined || /^(an?|one|some)$/.test(text)))
    return undefined;
  const drops = verb === around ? allGoodsNamed(reader, start + 1, end - 1) : allGoodsNamed(reader, verb.end, end);
  return drops === undefined ? undefined : { fact: 'recipe', lines: [], drops };
};

// "swap the statice for limonium"; with a number for the new one, the old goes and the new comes in that number.
const exchange = (reader: Reader, old: Stretch, given: Stretch): Change | undefined => {
  const ingredient = goodsNamed(reader, afterNumber(reader, old), old.end);
  const by = goodsNamed(reader, given.start, given.end);
  if (ingredient === undefined) return undefined;
  if (by !== undefined) return { fact: 'recipe', lines: [], swaps: [{ ingredient, with: by }] };
  const [line, more] = linesIn(reader, given.start, given.end) ?? [];
  if (line?.known !== true || more !== undefined || (line.line.stems === undefined && line.line.length === undefined)) return undefined;
  if (line.line.ingredient === ingredient) return { fact: 'recipe', lines: [line.line], adds: true };
  return { fact: 'recipe', lines: [line.line], adds: true, drops: [ingredient] };
};
const afterNumber = (reader: Reader, { start }: Stretch): number => (reader.tokens[start]?.number?.form === 'plain' ? start + 1 : start);

const swapped = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  const instead = insteadOf.in(reader.tokens, start + 1, end);
  if (instead !== undefined) {
    const from = subVerb.at(reader.tokens, start, end)?.end ?? makeVerb.at(reader.tokens, start, end)?.end ?? start;
    const comma = reader.tokens[instead.start - 1]?.text === ',' ? 1 : 0; // "3 wax per corsage, not 2"
    const given = { start: from, end: instead.start - comma };
    const old = { start: instead.end, end };
    const only = reader.tokens[old.start];
    // "gyp is 9 not 8", "statice 4.80 not 5.20": a price as well as any number of stems.
    const priced = reader.tokens
      .slice(given.start, end)
      .some(({ text, number }) => /^(is|are|was|at)$/.test(text) || (number !== undefined && /[.,]/.test(text)));
    if (priced && only?.number !== undefined) return undefined;
    // "2 bunny tails instead of 3": the same, in another number.
    if (old.end - old.start === 1 && only?.number?.form === 'plain') return lineAnew(reader, given);
    const per = ofEach.in(reader.tokens, given.start, given.end);
    if (per?.end !== given.end) return exchange(reader, old, given);
    const piece = per.kept['p']?.means['piece'] as PieceKind | undefined;
    const change = exchange(reader, old, { start: given.start, end: per.start });
    return change === undefined || piece === undefined || piece === 'unspecified' ? change : { ...change, piece };
  }
  const out = dropVerb.at(reader.tokens, start, end);
  const then = out === undefined ? undefined : useThen.in(reader.tokens, out.end, end);
  if (out !== undefined && then !== undefined) return exchange(reader, { start: out.end, end: then.start }, { start: then.end, end });
  const verb = swapVerb.at(reader.tokens, start, end);
  const join = verb === undefined ? undefined : between.in(reader.tokens, verb.end, end);
  if (verb !== undefined && join !== undefined) return exchange(reader, { start: verb.end, end: join.start }, { start: join.end, end });
  const sub = /^(sub|substitute)$/.test(reader.tokens[start]?.text ?? '') ? subVerb.at(reader.tokens, start, end) : undefined;
  const joined = sub === undefined ? undefined : between.in(reader.tokens, sub.end, end);
  return sub === undefined || joined === undefined
    ? undefined
    : exchange(reader, { start: joined.end, end }, { start: sub.end, end: joined.start });
};

// "2 roses per corsage not 3"
const lineAnew = (reader: Reader, { start, end }: Stretch): Change | undefined => {
  const per = ofEach.in(reader.tokens, start, end);
  const piece = per?.end === end ? (per.kept['p']?.means['piece'] as PieceKind) : undefined;
  const [line, more] = linesIn(reader, start, piece === undefined ? end : (per?.start ?? end)) ?? [];
  // "correction to the rose order: wrist corsages should read 10, not 8" counts pieces.
  const pieces = !goodsOnly(reader, start, piece === undefined ? end : (per?.start ?? end));
  return line?.known === true && more === undefined && !pieces && line.line.stems !== undefined && line.line.stems <= 50
    ? { fact: 'recipe', lines: [line.line], adds: true, ...ofKind(piece) }
    : undefined;
};

// "make the bunny tails 2", "make it 3 bunny tails".
const another = (reader: Reader, stretch: Stretch): Change | undefined => {
  const verb = makeVerb.at(reader.tokens, stretch.start, stretch.end);
  const end = reader.tokens[stretch.end - 1]?.means['each'] === undefined ? stretch.end : stretch.end - 1;
  if (verb === undefined) return undefined;
  const number = reader.tokens[end - 1]?.number;
  // "do roses at 2.50 each" may be what one costs.
  if (number !== undefined && (/[.,]/.test(number.amount) || /^(at|@)$/.test(reader.tokens[end - 2]?.text ?? ''))) return undefined;
  const ingredient = goodsNamed(reader, verb.end, end - 1);
  if (number?.form === 'plain' && isSingle(number) && ingredient !== undefined)
    return { fact: 'recipe', lines: [{ ingredient, stems: Number(number.amount) }], adds: true };
  return lineAnew(reader, { start: verb.end, end });
};
