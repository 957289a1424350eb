// Sentences that tell of the work and of nothing else: read before corrections and orders, because every word of them is understood.

import { workBesideHour } from '../changes/beside-work.ts';
import { firstIn, pattern } from '../pattern.ts';
import { allFree, type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { allButOne } from '../progress/all-but-whose.ts';
import { basesAtStage } from '../progress/bases-at-stage.ts';
import { packedByTheBox } from '../progress/boxes-of.ts';
import { byNobody } from '../progress/by-nobody.ts';
import { bySeveral } from '../progress/by-several.ts';
import { byTwo } from '../progress/by-two.ts';
import { countsThenKinds } from '../progress/counts-then-kinds.ts';
import { dropped } from '../progress/dropped.ts';
import { finishedBelow } from '../progress/finished-below.ts';
import { inOrder } from '../progress/in-order.ts';
import { lossThenCount } from '../progress/loss-then-count.ts';
import { madeGoodStill } from '../progress/made-good-still.ts';
import { nthDone } from '../progress/nth-done.ts';
import { numberedDone } from '../progress/numbered-done.ts';
import { oneThenMore } from '../progress/one-then-more.ts';
import { onlyThoseLeft } from '../progress/only-those-left.ts';
import { withoutRest } from '../progress/some-left.ts';
import { stagesListed } from '../progress/stages-listed.ts';
import { sumsBehind } from '../progress/sum-behind.ts';
import { summed } from '../progress/sums.ts';
import { twoKinds } from '../progress/two-kinds.ts';
import { underHeadings } from '../progress/under-heading.ts';
import { wasToDo } from '../progress/was-to-do.ts';
import { whosePiece } from '../progress/whose-piece.ts';
import { withoutReasons } from '../progress/why-remade.ts';
import { workClauses, workTold } from '../progress/work-clauses.ts';
import type { Part } from '../text/message.ts';

// "10 or 11 bouts done": how many is not said. "12 bouts need taping": work on what is there, no new order.
const notSaid = [
  '<range> (of (the|our|those)?)? (<material>)? <piece> (are|is|all|now|have been){0,2} (done|made|finished|complete|completed|ready|boxed|broken|broke|left)',
  '<count> (of (the|our|those)?)? (<material>)? <piece> (still|just|only)? (need|needs) (taping|wiring|ribboning|ribbon|ribbons|pins|gluing|glue|boxing|tape|backing|mossing|magnets|labelling)',
  // "half the corsages done, thats 6 bouts": one of the kinds is a slip.
  "(half|halfway|a third|two thirds|a quarter|three quarters|most|<percent>) (of)? (the|our|my|through the|with the)? <piece> (are|is|now|all)? (done|made|finished|complete|boxed)? (,|-|so|and){0,2} (that's|thats|that is|which is|=) <count> <piece>",
].map((source) => pattern(source));
const held = (reader: Reader): Finding[] =>
  reader.untouched().flatMap((part) => {
    const match = firstIn(notSaid, reader.tokens, part.start, part.end);
    return match === undefined || part.asked ? [] : [{ start: match.start, end: match.end, held: true }];
  });

// "the five wrist corsages are boxed, and that is the full number": all of the kind.
const full = pattern(
  "(that|that's|thats|this is|it's|its|which is) (is)? (the|our|their) (full|whole|complete|entire) (number|lot|amount|order|set|count|batch|quantity|total|load)",
);
const withAll = (reader: Reader, findings: Finding[]): Finding[] => {
  const [only, second] = findings;
  const [fact, more] = only?.facts ?? [];
  if (only === undefined || second !== undefined || more !== undefined || fact?.fact !== 'made' || fact.piece === undefined)
    return findings;
  const plain = fact.count !== undefined && fact.count > 0 && fact.of === undefined && fact.stage === undefined && fact.remade !== true;
  const said = plain && full.might(reader.tokens) ? full.in(reader.tokens, 0, reader.tokens.length) : undefined;
  return said === undefined || said.start < only.start ? findings : [{ ...only, facts: [{ ...fact, all: true }] }];
};

// What is read already is nobody else's.
const without = (reader: Reader, findings: readonly Finding[]): Reader => {
  if (findings.length === 0) return reader;
  const free = (index: number): boolean => reader.free(index) && !findings.some(({ start, end }) => index >= start && index < end);
  const apart = ({ start, end }: Finding, part: Part): boolean => end <= part.start || start >= part.end;
  return { ...reader, free, untouched: () => reader.untouched().filter((part) => findings.every((finding) => apart(finding, part))) };
};

// "12 done, knocked 2 off the bench, both broken": the work before and behind what is read, in the order it is told.
const edge = /^(,|;|-|but|and|so|n)$/;
const withBeside = (reader: Reader, findings: readonly Finding[]): Finding[] => {
  if (findings.length === 0) return [];
  const { tokens } = reader;
  const beside = reader.untouched().flatMap((part) => {
    const own = findings.filter(({ start, end }) => start < part.end && end > part.start).sort((a, b) => a.start - b.start);
    return own.length === 0
      ? []
      : [part, ...own].flatMap((_, at) => {
          let [start, end] = [own[at - 1]?.end ?? part.start, own[at]?.start ?? part.end];
          while (start < end && edge.test(tokens[start]?.text ?? '')) start += 1;
          while (start < end && edge.test(tokens[end - 1]?.text ?? '')) end -= 1;
          return start < end
            ? workClauses(reader, { ...part, start, end }).map((told) => found(reader, told.start, told.end, told.facts))
            : [];
        });
  });
  return [...findings, ...beside].sort((a, b) => a.start - b.start);
};

// "popping out for lunch, thats 26 done 14 to go": the clause before is read or held already, and the rest tells of the work.
const behindTaken = (reader: Reader): Finding[] =>
  reader.message.parts.slice(0, 40).flatMap((part) => {
    let start = part.start;
    while (start < part.end && !reader.free(start)) start += 1;
    if (start === part.start || part.asked || !edge.test(reader.tokens[start]?.text ?? '')) return [];
    if (!allFree(reader, start, part.end)) return [];
    return workClauses(reader, { ...part, start: start + 1 }).map((told) => found(reader, told.start, told.end, told.facts));
  });

const find = (reader: Reader): Finding[] => {
  const first = withBeside(reader, [
    ...allButOne(reader),
    ...finishedBelow(reader),
    ...basesAtStage(reader),
    ...packedByTheBox(reader),
    ...stagesListed(reader),
    ...onlyThoseLeft(reader),
    ...nthDone(reader),
    ...numberedDone(reader),
    ...byNobody(reader),
    ...wasToDo(reader),
    ...bySeveral(reader),
    ...byTwo(reader),
    ...oneThenMore(reader),
    ...countsThenKinds(reader),
    ...madeGoodStill(reader),
    ...lossThenCount(reader),
    ...dropped(reader),
    ...sumsBehind(reader),
    ...whosePiece(reader),
    ...twoKinds(reader),
  ]);
  const read = [...behindTaken(reader), ...first, ...workBesideHour(without(reader, first))];
  const rest = without(reader, read);
  const findings = workTold(rest).map(({ start, end, facts }) => found(reader, start, end, facts));
  if (findings.length === 0) return [...read, ...held(rest)];
  return [...read, ...withAll(reader, inOrder(withoutReasons(reader, summed(reader, underHeadings(reader, withoutRest(findings))))))];
};

export const toldOfWork: Phrase = {
  name: 'progress',
  examples: ['made 12', '12 of the 40 done', 'corsages all done', '2 broke', '5 to go'],
  find,
};
