// One recipe in a stretch of words: whose it is, for which piece and how many, and its lines.

import type { PieceKind } from '../../handbook/pieces.ts';
import { eachSaid } from '../goods/each-price.ts';
import { type Line, linesIn } from '../goods/recipe-lines.ts';
import { firstIn, type Match } from '../pattern.ts';
import type { Reader, Unworded } from '../phrase.ts';
import type { Stretch } from '../text/message.ts';
import { namesTax } from '../text/of-tax.ts';
import { placesIn } from '../text/places-in.ts';
import { stretchesBetween } from '../text/stretches-between.ts';
import type { Token } from '../text/token.ts';
import { isOneAmongSeveral } from './in-one.ts';
import { paceBeside } from './minutes-beside.ts';
import { onPiece, tooMany } from './on-piece.ts';
import {
  countsGoods,
  countsOfElse,
  endsWithPiece,
  firstWord,
  forPiece,
  forSome,
  forWearer,
  heading,
  inPiece,
  namedBefore,
  oneMore,
  ownStart,
  people,
  perEach,
  perPiece,
  plainHeading,
  roleHeading,
  sameAs,
  takenOut,
  thatsThe,
  who,
} from './recipe-headings.ts';
import { kindOf, priced } from './yields.ts';

const nobuying =
  /^(order|ordered|ordering|buy|bought|buying|need|needs|left|got|get|arrived|came|want|short|received|delivered|delivery|in stock|stock|missing|dead|add|drop|swap|lost|sold|are|need)$/;

// "cut 20 ribbons for the corsages", "stripped 40 roses for the bouts": work on a heap of them, not what goes into one.
const worked =
  /^(cut|cutting|stripped|stripping|conditioned|conditioning|prepped|prepping|trimmed|trimming|hung|hanging|tied|tying|sprayed|counted|sorted|bundled|unpacked|dethorned|washed|ironed|pressed|picked)$/;

// "per lapel piece" is one word for each.
const perWord = (each: Match | undefined, tokens: readonly Token[]): { piece?: PieceKind } =>
  each !== undefined && /lapel/.test(tokens[each.start]?.text ?? '') ? { piece: 'buttonhole' } : {};

// "40 roses for the 40 bouts" is the whole batch; "1 rose, 2 wax for the 40 bouts" and "1 rose each" is what goes into one.
const batchOf = (
  tokens: readonly Token[],
  { start, end }: Stretch,
  some: Match | undefined,
  lines: readonly Line[],
): number | undefined => {
  const pieces = some === undefined ? undefined : Number(some.kept['n']?.number?.amount);
  if (some === undefined || pieces === undefined || pieces <= 1) return pieces;
  if (tokens.slice(some.start, some.end).some(({ text }) => text === 'every')) return pieces;
  const every = tokens.slice(start, end).some((token) => token.means['each'] !== undefined);
  return every || lines.every(({ line }) => line.stems !== undefined && line.stems < pieces) ? undefined : pieces;
};

export interface StretchRead {
  readonly fact: Unworded;
  readonly wearer: boolean;
  readonly pace?: Unworded; // how long one takes
}

// What goes in is known by its name, by the studio's price list, or by being told of each piece.
const namesGoods = ({ tokens, context }: Reader, start: number, end: number): boolean =>
  context.items.length > 0 ||
  tokens.slice(start, end).some(({ means, text }) => means['ingredient'] !== undefined || /^(recipe|stem|stems|flowers)$/.test(text)) ||
  perPiece.in(tokens, start, end) !== undefined;

export const readStretch = (reader: Reader, { start, end }: Stretch, titled = false): StretchRead | undefined => {
  const { tokens } = reader;
  const taxed = tokens.slice(start, end).some(namesTax);
  if (
    (!titled && !namesGoods(reader, start, end)) ||
    taxed ||
    /^(price|either)$/.test(eachSaid(tokens, start, end) ?? '') ||
    priced(reader, start, end) ||
    oneMore.in(tokens, start, end) !== undefined ||
    takenOut.at(tokens, start, end) !== undefined ||
    firstIn(countsOfElse, tokens, start, end) !== undefined
  )
    return undefined;
  // In "a corsage is made of 3 roses" nobody has made one.
  const madeOf = (at: number): boolean => tokens[at]?.text === 'made' && /^(up|of|from|with)$/.test(tokens[at + 1]?.text ?? '');
  // "bouts: 9 done / corsages: 2 done" tells of work.
  if (
    tokens
      .slice(start, end)
      .some(
        (token, at) => !madeOf(start + at) && /^(done|made|finished|ready|sorted|boxed|broke|broken|snapped|not|instead)$/.test(token.text),
      )
  )
    return undefined;
  if (
    tokens
      .slice(start, start + 3)
      .some((token) => token.kind === 'word' && token.means['ingredient'] === undefined && worked.test(token.text))
  )
    return undefined;
  const own = ownStart(reader, { start, end });
  const first = firstWord(tokens, start, end);
  const named = tokens[first]?.text === 'recipe' ? plainHeading(reader, first, end) : undefined;
  const head = named ?? heading.at(tokens, Math.max(first, own), end) ?? plainHeading(reader, first, end);
  const bought = tokens.slice(head?.end ?? start, end).some((token) => token.kind === 'word' && nobuying.test(token.text));
  const per = perPiece.in(tokens, start, end);
  // "1 rose 1 wax per bout, 5 mins per bout"
  const more = per === undefined ? undefined : perPiece.in(tokens, per.end, end);
  const again = more?.kept['p']?.means['piece'] === per?.kept['p']?.means['piece'] ? more : undefined;
  const each = perEach.in(tokens, start, end);
  const some = forSome.in(tokens, start, end);
  const on = onPiece(tokens, first, end);
  const forOne = thatsThe.in(tokens, start, end) ?? forPiece.in(tokens, start, end) ?? on;
  const within = inPiece.in(tokens, start, end);
  const last = endsWithPiece.in(tokens, start + 1, end);
  const atEnd = last?.end === end && !(tokens[last.start]?.text === ',' && /s$/.test(last.kept['p']?.text ?? ''));
  const ending = head === undefined && per === undefined && some === undefined && atEnd ? last : undefined;
  const role = roleHeading.at(tokens, own, end);
  const behind = forWearer.in(tokens, start, end);
  const whose = behind?.end === end ? behind : undefined;
  const cuts = [
    whose,
    per,
    again,
    head?.kept['r'] === undefined ? head : undefined,
    some,
    per === undefined && some === undefined ? forOne : undefined,
    ending,
    each,
  ].filter((match) => match !== undefined);
  const removed = new Set(cuts.flatMap(placesIn));
  for (let index = start; index < first; index++) removed.add(index);
  const roleName =
    head?.kept['r'] ??
    whose?.kept['r'] ??
    (role !== undefined && role.end < end && countsGoods(reader, role.end, end) ? role.kept['r'] : undefined);
  const from =
    roleName === undefined || roleName === whose?.kept['r'] ? start : ((head?.kept['r'] === undefined ? role?.end : head.end) ?? start);
  const parts = stretchesBetween(tokens, { start: from, end }, (_, index) => removed.has(index));
  // "groom 2 roses, and his brothers say 1": another's flowers are not his.
  const besideWearer = roleName === undefined ? [] : parts.flatMap((part) => tokens.slice(part.start, part.end));
  if (besideWearer.some((token) => token !== roleName && (token.means['role'] ?? token.means['owner']) !== undefined)) return undefined;
  const lines: Line[] = [];
  for (const part of parts) {
    const read = linesIn(reader, part.start, part.end);
    if (read === undefined) return undefined;
    lines.push(...read);
  }
  if (on !== undefined && on === forOne && tooMany(lines)) return undefined;
  // "groomsmen x5 1 rose each": those who wear it are no flower.
  if (lines.some(({ line }) => people.has(line.ingredient))) return undefined;
  if (isOneAmongSeveral(tokens, { start, end }, per, lines)) return undefined;
  // Stems without a name come last.
  lines.sort((a, b) => Number(a.line.ingredient === 'stem') - Number(b.line.ingredient === 'stem'));
  const known = lines.filter((line) => line.known);
  const strong =
    (per !== undefined ||
      head !== undefined ||
      roleName !== undefined ||
      some !== undefined ||
      each !== undefined ||
      forOne !== undefined ||
      (ending !== undefined &&
        (known.length === lines.length || (known.length > 1 && lines.every(({ line }) => line.stems !== undefined))) &&
        known.some(({ line }) => (line.stems ?? 99) <= 30))) &&
    known.length >= 1;
  const plain =
    known.length >= 2 &&
    known.length === lines.length &&
    lines.every((line) => (line.line.stems ?? 99) <= 12 || line.line.length !== undefined) &&
    !bought;
  const recipeWord = titled || /^recipe$/.test(tokens[start]?.text ?? '');
  const perUnknown =
    per !== undefined &&
    lines.length >= 2 &&
    !bought &&
    lines.every((line) => line.line.stems !== undefined || line.line.length !== undefined);
  if (!(strong && (!bought || per !== undefined || each !== undefined)) && !plain && !recipeWord && !perUnknown) return undefined;
  if (lines.length === 0) return undefined;
  // "paid for the corsage ribbon" counts nothing.
  if (
    forOne !== undefined &&
    head === undefined &&
    per === undefined &&
    lines.every(({ line }) => line.stems === undefined && line.length === undefined)
  )
    return undefined;
  const wearer = who(roleName, roleName === undefined ? undefined : tokens[tokens.indexOf(roleName) + 1]);
  const others = namedBefore(tokens, start, own).flatMap((token) => who(token) ?? []);
  const twin = sameAs.at(tokens, start, end);
  const wearers =
    twin === undefined ? (wearer === undefined ? [] : [...others, wearer]) : [who(twin.kept['r']) ?? '', who(twin.kept['s']) ?? ''];
  const pieces = batchOf(tokens, { start, end }, some, lines);
  const kind = {
    ...perWord(each, tokens),
    ...kindOf(per ?? (head?.kept['p'] === undefined ? undefined : head) ?? some ?? forOne ?? ending ?? within),
  };
  const pace = wearers.length > 0 || pieces !== undefined ? undefined : paceBeside(tokens, start, end, kind.piece);
  return {
    wearer: wearers.length > 0,
    ...(pace === undefined ? {} : { pace }),
    fact: {
      fact: 'recipe',
      lines:
        wearers.length === 0
          ? lines.map((line) => line.line)
          : wearers.flatMap((who) => lines.map((line) => ({ ...line.line, wearer: who }))),
      ...kind,
      ...(pieces === undefined ? {} : { pieces }),
    },
  };
};
