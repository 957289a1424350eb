// What is finished: "made 12", "12 of the 40 done", "40/40 bouts done", "corsages all done", "2 broke", "5 to go", "two dozen wired" (begun, not finished).

import { onOtherWork } from '../held/other-work-alone.ts';
import { anyIn, type Match, type Pattern, pattern } from '../pattern.ts';
import { anyFree, type Finding, found, type Phrase, type Reader, type Unworded } from '../phrase.ts';
import { allBut, allButFirst, downAndLeft, someExcepted } from '../progress/but-not-all.ts';
import { countedForms, doneAnywhere } from '../progress/counted-forms.ts';
import { type Form, finishedForms } from '../progress/finished-forms.ts';
import { inOrder } from '../progress/in-order.ts';
import { isIntended } from '../progress/intended.ts';
import { kindsFinished } from '../progress/kinds-finished.ts';
import { listAfter, listBeforeDone } from '../progress/lists.ts';
import {
  allAtStage,
  goneForm,
  leftForms,
  lossForms,
  minusForm,
  mishap,
  noneLeft,
  oneLeft,
  saysLeft,
  spareForm,
  stageForms,
  stageIn,
} from '../progress/losses.ts';
import { amountOf, type Build, pieceIn } from '../progress/made-facts.ts';
import { makeGood } from '../progress/made-good.ts';
import { tellsNoWork } from '../progress/no-work-done.ts';
import { oneOfTheirs, onesLeft, otherLeft } from '../progress/ones-left.ts';
import { nearly, partial } from '../progress/part-done.ts';
import { countOfShare, tellsShare } from '../progress/share-beside.ts';
import { bareShare, halfAlone, sharesByKind } from '../progress/shares.ts';
import { withSoManyOfThem } from '../progress/so-many-of-them.ts';
import { withoutRest } from '../progress/some-left.ts';
import { countsSpareGoods } from '../progress/spare-goods.ts';
import { ofOtherKind, ofTheKind, plainCount, sameKind, summed, totalOnly, wholeSoFar } from '../progress/sums.ts';
import { underHeadings } from '../progress/under-heading.ts';
import { countDoubted, withUnreadBeside } from '../progress/unread-beside.ts';
import { unsureStages } from '../progress/unsure-stages.ts';
import { heldWhereWanted } from '../progress/wanted-by.ts';
import { acceptsAfter, ofStems, ofUnknown } from '../progress/what-follows.ts';
import { endsWork, lastOnes, saysSoFar, thatIsAll } from '../progress/whole-told.ts';
import { withoutReasons } from '../progress/why-remade.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';

const monthBehind = pattern('(-|of|th)? <month>');

// "made 12-13": how many is not said.
const spread = ({ kept: { n, m } }: Match): boolean => isRangeOrChoice((n ?? m)?.number);

// "32 made in total": told together, so it is the whole.
const saysWhole = (token: Token): boolean => /^(in total|in all|all told|all up)$/.test(token.text);

const findPart = (reader: Reader, part: Part, likely: readonly Form[]): Finding[] => {
  const { tokens } = reader;
  const findings: Finding[] = [];
  const taken = new Set<number>();
  const doubted: Match[] = [];
  const open = (index: number): boolean => !taken.has(index) && reader.free(index);
  const take = (match: Match, facts: readonly Unworded[]): void => {
    for (let index = match.start; index < match.end; index++) taken.add(index);
    findings.push(found(reader, match.start, match.end, facts));
  };
  const sweep = (form: Pattern, build: Build, guarded = true): void => {
    for (let index = form.next(tokens, part.start, part.end); index < part.end; index = form.next(tokens, index + 1, part.end)) {
      const match = form.at(tokens, index, part.end);
      if (match === undefined || spread(match) || !acceptsAfter(reader, match) || (guarded && isIntended(reader, part, match.start)))
        continue;
      const whole = ofUnknown(reader, match);
      if (whole !== undefined) {
        findings.push({ start: whole, end: match.end, held: true });
        continue;
      }
      let free = true;
      for (let at = match.start; at < match.end; at++) free &&= open(at);
      const fact = free ? build(match) : undefined;
      if (fact === undefined) continue;
      if (partial(tokens, match, fact)) {
        doubted.push(match);
        continue;
      }
      if (nearly(reader, match, fact)) {
        findings.push({ start: match.start, end: match.end, held: true });
        continue;
      }
      take(match, [fact]);
      index = match.end - 1;
    }
  };
  const pair = downAndLeft.in(tokens, part.start, part.end);
  if (pair !== undefined)
    take(pair, [
      { fact: 'made', count: amountOf(pair.kept['n']), ...pieceIn(pair) },
      { fact: 'left', count: amountOf(pair.kept['m']) },
    ]);
  const but = allBut.in(tokens, part.start, part.end) ?? allButFirst.in(tokens, part.start, part.end);
  if (but === undefined && someExcepted.in(tokens, part.start, part.end) !== undefined)
    return [{ start: part.start, end: part.end, held: true }];
  const besides = but !== undefined && reader.tokens[but.start - 1]?.number !== undefined; // "30 done but 2 need redoing"
  if (but !== undefined && !besides) take(but, [{ fact: 'left', count: amountOf(but.kept['n']), ...pieceIn(but) }]);
  const whole = saysSoFar(reader, part) || tokens.slice(part.start, part.end).some(saysWhole);
  const list = listBeforeDone(reader, part, open);
  const total = whole ? { total: true as const } : {};
  if (list !== undefined && !isIntended(reader, part, list.match.start))
    take(
      list.match,
      list.facts.map((fact) => ({ ...fact, ...total }) as Unworded),
    );
  for (const { form, build } of likely) sweep(form, build);
  for (const finding of kindsFinished(reader, part, open)) {
    findings.push(finding);
    for (let index = finding.start; index < finding.end; index++) taken.add(index);
  }
  const gone = goneForm.in(tokens, part.start, part.end) !== undefined && tokens.some((token) => mishap.test(token.text));
  const lostPiece: Build = (match) => (match.kept['p'] === undefined && ofStems(reader, match) ? undefined : lost(match));
  for (const form of gone ? [...lossForms, goneForm] : lossForms) sweep(form, lostPiece);
  const less = minusForm.in(tokens, part.start, part.end);
  if (less !== undefined && doneAnywhere.in(tokens, part.start, less.start) !== undefined) sweep(minusForm, lost);
  makeGood(reader, part, findings, take);
  const extra = spareForm.in(tokens, part.start, part.end);
  const spares = extra !== undefined && countsSpareGoods(tokens, extra.end) ? undefined : extra;
  // "made 12 plus 2 or 3 spares"
  if (isRangeOrChoice(spares?.kept['n']?.number)) return [{ start: part.start, end: part.end, held: true }];
  const finished = doneAnywhere.in(tokens, part.start, part.end) !== undefined || anyIn(countedForms, tokens, part.start, part.end);
  const spare = spares !== undefined && finished && open(spares.start) && open(spares.end - 1) ? amountOf(spares.kept['n']) : undefined;
  if (spares !== undefined && spare !== undefined) for (let index = spares.start; index < spares.end; index++) taken.add(index);
  const counted: Build = (match) => ({
    fact: 'made',
    count: amountOf(match.kept['n']),
    ...pieceIn(match),
    ...total,
    ...(spare === undefined ? {} : { spares: spare }),
  });
  for (const form of countedForms) sweep(form, counted);
  const last = findings
    .filter((finding) => finding.facts?.some((fact) => fact.fact === 'made' && fact.count !== undefined && fact.all !== true))
    .at(-1);
  if (last !== undefined)
    for (const each of listAfter(reader, last.end, part.end)) {
      const whole = ofTheKind(reader, last, each);
      if (whole !== undefined) findings.splice(findings.indexOf(last), 1);
      take(whole?.match ?? each.match, whole?.facts ?? each.facts.map((fact) => sameKind(fact, last)));
    }
  // "made 12 today, total 30 of 45": the share says the whole.
  const share = findings.flatMap((finding) => finding.facts ?? []).find((fact) => fact.fact === 'made' && fact.of !== undefined);
  if (share !== undefined)
    for (const finding of findings.filter((each) => (plainCount(each) !== undefined || totalOnly(each)) && !ofOtherKind(each, share)))
      findings[findings.indexOf(finding)] = { start: finding.start, end: finding.end };
  const made = findings.some((finding) => finding.facts?.some((fact) => fact.fact === 'made'));
  const spareKept = findings.some((finding) => finding.facts?.some((fact) => fact.fact === 'made' && fact.spares !== undefined));
  if (spares !== undefined && spare !== undefined && !spareKept)
    findings.push(found(reader, spares.start, spares.end, [{ fact: 'made', count: spare, spares: spare, ...pieceIn(spares) }]));
  const settled = wholeSoFar(reader, part, findings, open);
  if (settled !== undefined) return settled;
  for (const [at, finding] of findings.entries())
    if (reader.facts.some((fact) => tellsShare(fact, finding.facts?.[0]))) findings[at] = { start: finding.start, end: finding.end };
  const ending = made ? thatIsAll.in(tokens, part.start, part.end) : undefined;
  const wholly =
    ending !== undefined &&
    (!tokens.slice(ending.start, ending.end).some((token) => endsWork.test(token.text)) ||
      tokens.slice(part.start, part.end).some((token) => lastOnes.test(token.text)));
  if (ending !== undefined && wholly && open(ending.start)) take(ending, [{ fact: 'made', all: true, ...pieceIn(ending) }]);
  const begun: Build = (match) =>
    // "start drying 4-jun" names a day
    monthBehind.at(tokens, match.end, tokens.length) !== undefined
      ? undefined
      : { fact: 'made', count: amountOf(match.kept['n']), stage: stageIn(tokens, match), ...pieceIn(match) };
  for (const form of stageForms) sweep(form, begun);
  sweep(allAtStage, (match) => ({ fact: 'made', all: true, stage: stageIn(tokens, match), ...pieceIn(match) }));
  sweep(oneLeft, (match) => (/[^s]s$/.test(match.kept['p']?.text ?? '') ? undefined : { fact: 'left', count: 1, ...pieceIn(match) }));
  sweep(onesLeft, (match) => oneOfTheirs(tokens, match));
  const anything = findings.length > 0;
  for (const [at, form] of leftForms.entries()) {
    sweep(
      form,
      (match) =>
        (at === 2 && !saysLeft(tokens, match, anything)) || otherLeft.at(tokens, match.end, part.end) !== undefined || noneLeft(match)
          ? undefined
          : { fact: 'left', count: amountOf(match.kept['n']), ...pieceIn(match) },
      at === 3,
    );
  }
  return withUnreadBeside(reader, part, [...countOfShare(withoutRest(findings)), ...countDoubted(reader, part, doubted, open)], open);
};

const lost: Build = (match) => ({
  fact: 'broke',
  count: match.kept['n'] === undefined ? 1 : amountOf(match.kept['n']),
  ...pieceIn(match),
});

const find = (reader: Reader): Finding[] => {
  const likely = finishedForms.filter(({ form }) => form.might(reader.tokens));
  const parts = reader.message.parts
    .slice(0, 60)
    .filter((part) => anyFree(reader, part.start, part.end) && !onOtherWork(reader, part) && !tellsNoWork(reader, part));
  return inOrder([
    ...bareShare(reader),
    ...sharesByKind(reader),
    ...halfAlone(reader),
    ...withoutReasons(
      reader,
      summed(
        reader,
        underHeadings(
          reader,
          parts.flatMap((part) => [...findPart(reader, part, likely), ...unsureStages(reader, part)]),
        ).map((finding) => withSoManyOfThem(reader, heldWhereWanted(reader, finding))),
      ),
    ),
  ]);
};

export const progress: Phrase = {
  name: 'more progress',
  examples: [],
  find,
};
