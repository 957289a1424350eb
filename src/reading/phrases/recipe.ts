// What goes into a piece: "3 bunny tails, 1 statice, half a stem eucalyptus each", "groom: 2 roses. rest: 1 rose", "3 stems makes 2 bouts".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { RecipeLineFact } from '../fact.ts';
import { type Line, linesIn, quantity, separates } from '../goods/recipe-lines.ts';
import { type Match, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { isCount, type Token } from '../text/token.ts';
import { roles } from '../words/people-words.ts';

const perPiece = pattern(
  '(<each>|per|for each|for every|in each|each|for a|for an|a|an|in a|in every|into each|every|for one|for 1|to a|/) <p:piece> (has|gets|have|needs|takes|uses|is|contains|:|=|-|,)? ',
);
const perEach = pattern('(<each>|each one|for each)');
const heading = pattern(
  '(<p:piece>|recipe|<r:role>) (recipe|each|for the <event>)? (<p:piece>|<r:role>)? (:|=|-|gets|has|have|is|takes|needs|uses|get|contains|wants|will have|to have|are|recipe:)',
);
const forPiece = pattern('for (the|our)? <p:piece>');
const forSome = pattern('for (the|all|all the)? <n:count> (<material>)? <p:piece>');
const roleHeading = pattern('(the)? (<r:role>|<r:owner>) (:|=|-|gets|has|have|get|,)? (:)?');
const yieldForms = [
  pattern(
    '<n:amount> (<any>)? (stem|stems|<ingredient>|bunch|bunches) (of)? (<ingredient>)? (<word>)? (make|makes|made|does|do|will do|will make|is|are|=|gives|give|for|gets|get|covers|cover|yields|yield|enough for|gives us|gets us|per|into|goes into) (about|us)? <m:count> (<p:piece>)',
  ),
  pattern('<m:count> (<p:piece>) (from|out of|per|to|off|outta|for) (each|every|a|one|the)? (<n:amount>)? (stem|stems)'),
  pattern('(a|one|each) stem (makes|does|is|gives|covers|for|do|will do) <m:count> (<p:piece>)?'),
];
const stemCount = pattern(
  '(<n:amount>|half a) (<ingredient>)? (stem|stems) (in|per|each|a|for|to|/|go in|goes in|of flowers)? (each|a|every|per|an)? (<each>|<p:piece>)',
);
const sameAs = pattern('(the)? <r:role> (is|gets|has)? (the)? same as (the)? <s:role>');
const stemsIn = pattern('<p:piece> (needs|takes|has|have|get|gets|uses|use|take|need|is) (about|around)? <n:amount> stems (<each>)?');
const nobuying =
  /^(order|ordered|ordering|buy|bought|buying|need|needs|left|got|get|arrived|came|want|short|received|delivered|delivery|in stock|stock|missing|dead|add|drop|swap|lost|sold|are|need)$/;

// "buttonhole recipe 1 rose …", "wrist corsage 4 spray rose 2 stems …": the piece stands before its list without a colon.
const pieceFirst = pattern('(<p:piece>) (recipe)?');
const plainHeading = (reader: Reader, start: number, end: number): Match | undefined => {
  const match = pieceFirst.at(reader.tokens, start, end);
  if (match === undefined || quantity(reader.tokens, match.end) === undefined) return undefined;
  const lines = linesIn(reader, match.end, end) ?? [];
  return lines.filter((line) => line.known).length >= 2 ? match : undefined;
};
const firstWord = (tokens: readonly Token[], start: number, end: number): number => {
  let first = start;
  while (
    first < end &&
    (/^(the|each|a|an|ok|so|for|my|our|this)$/.test(tokens[first]?.text ?? '') ||
      (tokens[first]?.means['piece'] !== undefined && tokens[first + 1]?.means['piece'] !== undefined))
  )
    first += 1;
  return first;
};

// "dads" are the fathers, "the groom's" the groom.
const who = (token: Token | undefined): string | undefined => {
  const one = token?.means['role'] ?? token?.means['owner'];
  const role = roles.find((each) => each.one === one);
  return role !== undefined && token?.means['owner'] === undefined && /(s|men)$/.test(token?.text ?? '') ? role.many : one;
};

const priced = (reader: Reader, start: number, end: number): boolean =>
  reader.tokens.slice(start, end).some((token) => token.number?.form === 'money' || token.means['other'] !== undefined);

const kindOf = (match: Match | undefined): { piece?: PieceKind } => {
  const kind = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  return kind === undefined || kind === 'unspecified' ? {} : { piece: kind };
};

const yields = (reader: Reader, start: number, end: number): Finding | undefined => {
  for (const form of yieldForms) {
    const match = form.in(reader.tokens, start, end);
    if (match === undefined) continue;
    const item = reader.tokens.slice(match.start, match.end).find((token) => token.means['ingredient'] !== undefined)?.means['ingredient'];
    const stems = Number(match.kept['n']?.number?.amount ?? '1');
    const pieces = Number(match.kept['m']?.number?.amount);
    const line = { ingredient: item ?? 'stem', stems };
    return found(reader, match.start, match.end, [{ fact: 'recipe', lines: [line], pieces, ...kindOf(match) }]);
  }
  const each = stemsIn.in(reader.tokens, start, end) ?? stemCount.in(reader.tokens, start, end);
  if (each === undefined || linesIn(reader, start, each.start)?.some((line) => line.known) === true) return undefined;
  const counted = reader.tokens.slice(start, end).filter((token) => isCount(token)).length;
  if (counted > 1) return undefined;
  return found(reader, each.start, each.end, [
    {
      fact: 'recipe',
      lines: [{ ingredient: 'stem', stems: Number(each.kept['n']?.number?.amount ?? '0.5') }],
      ...pieceNear(reader, each, start, end),
    },
  ]);
};

const pieceNear = (reader: Reader, match: Match, start: number, end: number): { piece?: PieceKind } => {
  const own = kindOf(match);
  if (own.piece !== undefined) return own;
  const kind = reader.tokens.slice(start, end).find((token) => token.means['piece'] !== undefined && token.means['piece'] !== 'unspecified')
    ?.means['piece'] as PieceKind | undefined;
  return kind === undefined ? {} : { piece: kind };
};

interface Stretch {
  readonly start: number;
  readonly end: number;
}

const readStretch = (reader: Reader, { start, end }: Stretch): { fact: Unworded; wearer: boolean } | undefined => {
  const { tokens } = reader;
  if (priced(reader, start, end)) return undefined;

  const first = firstWord(tokens, start, end);
  const head = heading.at(tokens, first, end) ?? plainHeading(reader, first, end);
  const bought = tokens.slice(head?.end ?? start, end).some((token) => token.kind === 'word' && nobuying.test(token.text));
  const per = perPiece.in(tokens, start, end);
  const each = perEach.in(tokens, start, end);
  const some = forSome.in(tokens, start, end);
  const forOne = forPiece.in(tokens, start, end);
  const role = roleHeading.at(tokens, start, end);
  const cuts = [
    per,
    head?.kept['r'] === undefined ? head : undefined,
    some,
    per === undefined && some === undefined ? forOne : undefined,
    each,
  ].filter((match) => match !== undefined);
  const removed = new Set(cuts.flatMap((match) => Array.from({ length: match.end - match.start }, (_, at) => match.start + at)));
  for (let index = start; index < first; index++) removed.add(index);
  const roleName =
    head?.kept['r'] ?? (role !== undefined && role.end < end && quantity(tokens, role.end) !== undefined ? role.kept['r'] : undefined);
  const from = roleName === undefined ? start : ((head?.kept['r'] === undefined ? role?.end : head.end) ?? start);
  const parts: Stretch[] = [];
  let open = from;
  for (let index = from; index <= end; index++) {
    if (index === end || removed.has(index)) {
      if (index > open) parts.push({ start: open, end: index });
      open = index + 1;
    }
  }
  const lines: Line[] = [];
  for (const part of parts) {
    const read = linesIn(reader, part.start, part.end);
    if (read === undefined) return undefined;
    lines.push(...read);
  }
  const known = lines.filter((line) => line.known);
  const strong =
    (per !== undefined ||
      head !== undefined ||
      roleName !== undefined ||
      some !== undefined ||
      each !== undefined ||
      forOne !== undefined) &&
    known.length >= 1;
  const plain =
    known.length >= 2 &&
    known.length === lines.length &&
    lines.every((line) => (line.line.stems ?? 99) <= 12 || line.line.length !== undefined) &&
    !bought;
  const recipeWord = /^recipe$/.test(tokens[start]?.text ?? '');
  const perUnknown =
    per !== undefined &&
    lines.length >= 2 &&
    !bought &&
    lines.every((line) => line.line.stems !== undefined || line.line.length !== undefined);
  if (!(strong && (!bought || per !== undefined || each !== undefined)) && !plain && !recipeWord && !perUnknown) return undefined;
  if (lines.length === 0) return undefined;
  const wearer = who(roleName);
  const twin = sameAs.at(tokens, start, end);
  const wearers = twin === undefined ? (wearer === undefined ? [] : [wearer]) : [who(twin.kept['r']) ?? '', who(twin.kept['s']) ?? ''];
  const pieces = some === undefined ? undefined : Number(some.kept['n']?.number?.amount);
  return {
    wearer: wearers.length > 0,
    fact: {
      fact: 'recipe',
      lines:
        wearers.length === 0
          ? lines.map((line) => line.line)
          : wearers.flatMap((who) => lines.map((line) => ({ ...line.line, wearer: who }))),
      ...kindOf(per ?? (head?.kept['p'] === undefined ? undefined : head) ?? some ?? forOne),
      ...(pieces === undefined ? {} : { pieces }),
    },
  };
};

// "same recipe as the autumn dance": the lines are kept under that name.
const borrowed = pattern('(same|use|copy) (the)? (recipe|recipes) (as|from|of) (the|for)?');
const borrow = (reader: Reader, { start, end }: Stretch): Finding | undefined => {
  const match = borrowed.in(reader.tokens, start, end);
  if (match === undefined || end - match.end < 1 || end - match.end > 6) return undefined;
  return found(reader, match.start, end, [{ fact: 'recipe', lines: [], name: reader.words(match.end, end) }]);
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  const wearers: { finding: Finding; fact: Extract<Unworded, { fact: 'recipe' }> }[] = [];
  for (const part of reader.untouched().slice(0, 60)) {
    if (part.end - part.start > 60) continue;
    const reused = borrow(reader, part);
    if (reused !== undefined) {
      findings.push(reused);
      continue;
    }
    const yielded = priced(reader, part.start, part.end) ? undefined : yields(reader, part.start, part.end);
    if (yielded !== undefined) {
      findings.push(yielded);
      continue;
    }
    for (const stretch of byWearer(reader, part)) {
      const read = readStretch(reader, stretch) ?? alike(reader, stretch, wearers.at(-1)?.fact.lines);
      if (read === undefined || read.fact.fact !== 'recipe') continue;
      const finding = found(reader, stretch.start, stretch.end, [read.fact]);
      if (read.wearer) wearers.push({ finding, fact: read.fact });
      else findings.push(finding);
    }
  }
  const [first, ...rest] = wearers;
  if (first === undefined) return findings;
  const lines = wearers.flatMap((each) => each.fact.lines);
  return [
    ...findings,
    { ...first.finding, facts: (first.finding.facts ?? []).map((fact) => (fact.fact === 'recipe' ? { ...fact, lines } : fact)) },
    ...rest.map((each) => ({ start: each.finding.start, end: each.finding.end })),
  ];
};

// "groom gets 2 ranunculus, everyone else 1": the same flower, another number.
const alike = (
  reader: Reader,
  { start, end }: Stretch,
  before: readonly RecipeLineFact[] | undefined,
): { fact: Unworded; wearer: boolean } | undefined => {
  const role = roleHeading.at(reader.tokens, start, end);
  const wearer = who(role?.kept['r']);
  const amount = role === undefined ? undefined : quantity(reader.tokens, role.end);
  const [line, second] = before ?? [];
  if (wearer === undefined || amount?.stems === undefined || amount.next < end || line === undefined || second !== undefined)
    return undefined;
  return { wearer: true, fact: { fact: 'recipe', lines: [{ ingredient: line.ingredient, stems: amount.stems, wearer }] } };
};

// "groom gets 2 roses, rest 1 rose": a new wearer begins a new stretch.
const byWearer = (reader: Reader, part: Stretch): Stretch[] => {
  const starts: number[] = [part.start];
  for (let index = part.start + 1; index < part.end; index++) {
    const match = roleHeading.at(reader.tokens, index, part.end);
    if (match !== undefined && quantity(reader.tokens, match.end) !== undefined && separates(reader.tokens[index - 1])) starts.push(index);
  }
  return starts.map((start, at) => ({ start, end: starts[at + 1] ?? part.end }));
};

export const recipe: Phrase = {
  name: 'recipe',
  examples: ['3 bunny tails, 1 statice, half a stem eucalyptus each', 'groom: 2 roses. rest: 1 rose', '3 stems makes 2 buttonholes'],
  find,
};
