// What goes into a piece: "3 bunny tails, 1 statice, half a stem eucalyptus each", "groom: 2 roses. rest: 1 rose", "3 stems makes 2 bouts".

import type { PieceKind } from '../../handbook/pieces.ts';
import type { RecipeLineFact } from '../fact.ts';
import { eachSaid } from '../goods/each-price.ts';
import { openShare } from '../goods/open-share.ts';
import { quantity } from '../goods/quantity.ts';
import { separates } from '../goods/recipe-lines.ts';
import { openParts } from '../open-parts.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { stepDone } from '../progress/losses.ts';
import { withoutRemark } from '../questions/remark-if.ts';
import { alike, unlisted } from '../recipes/alike-shares.ts';
import { besideCount } from '../recipes/beside-count.ts';
import { forEveryone } from '../recipes/for-everyone.ts';
import { joinedLines } from '../recipes/joined-lines.ts';
import { kindOfAll } from '../recipes/kind-of-all.ts';
import { kindOverWearers } from '../recipes/kind-over-wearers.ts';
import { byPiece, pieceLast } from '../recipes/piece-stretches.ts';
import { namedBefore, pastSizedHead, roleHeading } from '../recipes/recipe-headings.ts';
import { readStretch } from '../recipes/recipe-stretch.ts';
import { isSameAgain, sameShare } from '../recipes/same-share.ts';
import { stemsByPiece } from '../recipes/stems-by-piece.ts';
import { stemsByWearer } from '../recipes/stems-by-wearer.ts';
import { withoutTail } from '../recipes/tail.ts';
import { priced, saysYield, yields } from '../recipes/yields.ts';
import type { Part, Stretch } from '../text/message.ts';

// 'recipe "autumn dance": 2 bunny tails …': the lines are kept under the name too.
const titleForms = [
  pattern('(the|new|save)? recipe (called|named|as|for)? (the)? " (<any>){1,6} " (:|-|=|,)?'),
  pattern('(the)? " (<any>){1,6} " (recipe)? (:|-|=|is)'),
  pattern('(new|save)? recipe (called|named)? (<n:word>){1,5} (:|-|=)'),
  pattern('(<n:word>){1,4} recipe (:|-|=|is)'),
];
const titleAt = (reader: Reader, { start, end }: Stretch): { name: string; end: number } | undefined => {
  for (const form of titleForms) {
    const match = form.at(reader.tokens, start, end);
    if (match === undefined) continue;
    let [from, to] = [match.start, match.end];
    while (from < to && /^(the|new|save|recipe|called|named|as|for|")$/.test(reader.tokens[from]?.text ?? '')) from += 1;
    while (to > from && /^(:|-|=|is|,|"|recipe)$/.test(reader.tokens[to - 1]?.text ?? '')) to -= 1;
    const ours = reader.tokens
      .slice(from, to)
      .some((token) => token.means['piece'] !== undefined || token.means['role'] !== undefined || token.means['ingredient'] !== undefined);
    if (from < to && !ours) return { name: reader.words(from, to), end: match.end };
  }
  return undefined;
};

// "also 1 statice each", "1 statice each as well": beside what is in it, not instead.
const besides = (reader: Reader, { start, end }: Stretch): boolean => {
  const words = reader.tokens
    .slice(start, end)
    .flatMap((token) => (token.kind === 'word' || token.number !== undefined ? [token.text] : []));
  return /^(also|and also|add|adding|plus|include|put in|pop in|throw in|an? extra|extra)\b|\b(too|as well|also)$/.test(words.join(' '));
};

// "roses 28 a bunch, 1 each; ribbon 15cm each": what was told beside a price stays in.
const toldBesidePrice = ({ facts }: Reader): boolean => facts.some((fact) => fact.fact === 'recipe' && fact.adds === true);

const ofSomebody = pattern(
  '<unlisted> (wants|needs|wanted|asked for|has asked for|would like|likes|is having) (a|an|his|her|their|one) (<material>)? <piece> (w|with|in|that has)',
);

const bounded = pattern(
  '(no more than|max|maximum|maximum of|max of|at most|at least|min|minimum|minimum of|under|less than|fewer than|over|more than|<upTo>) <count> (<material>)? (stems|stem|flowers|heads|bits|things|<ingredient>) (max|tops)? (a|per|each|in a|in each|on a|/) (<piece>|one)',
);

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  const plain: Part[] = [];
  const parts = joinedLines(reader, openParts(reader).slice(0, 60));
  for (let at = 0; at < parts.length; at++) {
    const headed = kindOverWearers(reader, parts, at);
    const shares = headed === undefined ? [] : findIn(reader, headed.below);
    // Read only where they are all of what stands below the kind.
    if (headed === undefined || !shares.some(({ facts }) => ofWearers(facts))) plain.push(parts[at] as Part);
    else {
      findings.push(...shares.map((each, index) => underKind(each, headed.piece, index === 0 ? headed.start : each.start)));
      at = headed.next - 1;
    }
  }
  return [...findings, ...findIn(reader, plain)];
};

const ofWearers = (facts: Finding['facts']): boolean =>
  facts?.some((fact) => fact.fact === 'recipe' && fact.lines.every(({ wearer }) => wearer !== undefined)) === true;
const underKind = (finding: Finding, piece: PieceKind, start: number): Finding => ({
  ...finding,
  start,
  ...(finding.facts === undefined ? {} : { facts: finding.facts.map((fact) => (fact.fact === 'recipe' ? { piece, ...fact } : fact)) }),
});

const findIn = (reader: Reader, parts: readonly Part[]): Finding[] => {
  const findings: Finding[] = [];
  const shared: (Stretch & { lines: readonly RecipeLineFact[] })[] = [];
  const wearers: { finding: Finding; fact: Extract<Unworded, { fact: 'recipe' }> }[] = [];
  for (const told of parts) {
    const part = withoutTail(reader, withoutRemark(reader, told));
    if (part.end - part.start > 60 || stepDone.in(reader.tokens, part.start, part.end) !== undefined) continue;
    // "tyler wants a bout w blue ribbon": one person's, and nobody knows whose
    if (ofSomebody.at(reader.tokens, part.start, part.end) !== undefined) {
      findings.push({ start: part.start, end: part.end, held: true });
      continue;
    }
    // "no more than 3 stems a bout" says how many there may be, and not how many there are; "MOB gets 3-4 roses" neither.
    if ([bounded, openShare].some((form) => form.in(reader.tokens, part.start, part.end) !== undefined)) {
      findings.push({ start: part.start, end: part.end, held: true });
      continue;
    }
    // "fern 3 each" is a price or a recipe: left to nobody else.
    if (eachSaid(reader.tokens, part.start, part.end) === 'either') {
      findings.push({ start: part.start, end: part.end, held: true });
      continue;
    }
    const titled = titleAt(reader, part);
    if (titled !== undefined) {
      const read = readStretch(reader, { start: titled.end, end: part.end }, true);
      if (read?.fact.fact === 'recipe') {
        findings.push(
          found(reader, part.start, part.end, [{ ...read.fact, name: titled.name }, ...(read.pace === undefined ? [] : [read.pace])]),
        );
        continue;
      }
    }
    const ofStem = saysYield.in(reader.tokens, part.start, part.end) === undefined ? undefined : yields(reader, part.start, part.end);
    const beside = ofStem === undefined ? besideCount(reader, part) : undefined;
    if (beside !== undefined) {
      findings.push(beside);
      continue;
    }
    const yielded = priced(reader, part.start, part.end)
      ? undefined
      : (ofStem ??
        stemsByWearer(reader, part) ??
        stemsByPiece(reader, part) ??
        pieceLast(reader, part) ??
        yields(reader, part.start, part.end));
    if (yielded !== undefined) {
      findings.push(yielded);
      continue;
    }
    const everyone = forEveryone(reader, part);
    if (everyone?.start === part.start && wearers.length > 0) {
      shared.push(everyone);
      continue;
    }
    const before = { ...part, end: everyone?.start ?? part.end };
    const ofSingle = everyone !== undefined && (wearers.length > 0 || byWearer(reader, before).some((cut) => isOfWearer(reader, cut)));
    if (ofSingle) shared.push(everyone);
    const body = ofSingle ? before : part;
    const cuts = byWearer(reader, body);
    const listed = cuts.map((stretch) => readStretch(reader, stretch));
    const besideOthers = listed.some((read) => read?.wearer === true);
    const [whole] = cuts;
    for (const [at, stretch] of (cuts.length > 1 ? cuts : byPiece(reader, body)).entries()) {
      const known = cuts.length > 1 || (stretch.start === whole?.start && stretch.end === whole.end);
      const read =
        sameShare(reader, stretch, wearers.at(-1)?.fact.lines) ??
        (known ? listed[at] : readStretch(reader, stretch)) ??
        alike(reader, stretch, wearers.at(-1)?.fact.lines) ??
        (besideOthers ? unlisted(reader, stretch) : undefined);
      if (read === undefined || read.fact.fact !== 'recipe') continue;
      const fact = (besides(reader, part) || toldBesidePrice(reader)) && !read.wearer ? { ...read.fact, adds: true as const } : read.fact;
      const finding = found(reader, stretch.start, stretch.end, read.pace === undefined ? [fact] : [fact, read.pace]);
      if (read.wearer) wearers.push({ finding, fact: read.fact });
      else findings.push(finding);
    }
  }
  const [first, ...rest] = wearers;
  if (first === undefined) return findings;
  const lines = [...wearers.flatMap((each) => each.fact.lines), ...shared.flatMap((each) => each.lines)];
  const piece = kindOfAll(
    reader,
    wearers.map((each) => each.finding),
  );
  const kind = piece === undefined ? {} : { piece };
  return [
    ...findings,
    { ...first.finding, facts: (first.finding.facts ?? []).map((fact) => (fact.fact === 'recipe' ? { ...fact, lines, ...kind } : fact)) },
    ...[...rest.map(({ finding }) => finding), ...shared].map(({ start, end }) => ({ start, end })),
  ];
};

const isOfWearer = (reader: Reader, stretch: Stretch): boolean =>
  stretch.start < stretch.end && readStretch(reader, stretch)?.wearer === true;

// "groom gets 2 roses, rest 1 rose": a new wearer begins a new stretch.
const byWearer = (reader: Reader, part: Stretch): Stretch[] => {
  const starts: number[] = [part.start];
  for (let index = pastSizedHead(reader, part) + 1; index < part.end; index++) {
    const match = roleHeading.at(reader.tokens, index, part.end);
    const shares = match !== undefined && (quantity(reader.tokens, match.end) !== undefined || isSameAgain(reader, match.end, part.end));
    if (shares && separates(reader.tokens[index - 1])) {
      if (namedBefore(reader.tokens, starts.at(-1) ?? part.start, index).length === 0) starts.push(index);
    }
  }
  return starts.map((start, at) => ({ start, end: starts[at + 1] ?? part.end }));
};

export const recipe: Phrase = {
  name: 'recipe',
  examples: ['3 bunny tails, 1 statice, half a stem eucalyptus each', 'groom: 2 roses. rest: 1 rose', '3 stems makes 2 buttonholes'],
  find,
};
