// Pieces that fell and are whole, or only some of them broke: "dropped 2 crowns, both fine", "dropped 4 bouts, 2 of them wrecked". A fall is no loss yet.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { goneWrong, moreGoneWrong } from './losses.ts';
import { amountOf } from './made-facts.ts';

const fell =
  '(dropped|knocked|tipped|bumped|sat on|stood on|trod on) (another|about|all|the|over|off|down){0,2} (<n:count>|a|an|one) (of the|of them|of)? (<material>)? (<p:piece>)?';
const where = '(off|over|on|onto|from|down|in) (the|my|our)? (<word>)?';
const joint = '(,|-|and|n|&|but|;){0,2}';
const fine = pattern(
  `${fell} (${where})? ${joint} (luckily|thankfully|phew|they|they're|theyre|it|its|it's|both|all|still|but|are|is|look|looks|seem|seems|of them|no|none){0,4} (fine|ok|okay|alright|all right|good|intact|survived|unharmed|unscathed|undamaged|usable|saved|salvageable|lived|not (broken|damaged|hurt)|no (damage|harm|harm done)|none (broke|broken|damaged|harmed))`,
);
const inPart = pattern(
  `${fell} (${where})? ${joint} (only|just|and)? <m:count> (<o:word>)? (of (them|em|those|these))? (are|is|were|was|have|has|got|now|totally|completely){0,2} (${goneWrong}|${moreGoneWrong})`,
);

// "knocked 2 corsages off the shelf, both smashed"
const allGone = pattern(
  `(knocked|tipped|bumped) (another|about|all|the|over|off|down){0,2} (<n:count>) (of the|of them|of)? (<material>)? (<p:piece>)? (${where})? ${joint} (both|all|they're all|theyre all) (of them)? (are|is|were|was|have|got|now|totally|completely){0,2} (${goneWrong}|${moreGoneWrong})`,
);

const read = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const whole = fine.in(tokens, part.start, part.end);
  if (whole !== undefined) return [{ start: whole.start, end: whole.end, held: true }];
  const gone = allGone.in(tokens, part.start, part.end);
  const lost = gone?.kept['n']?.number;
  if (gone !== undefined && lost !== undefined && lost.max === undefined) {
    const two = tokens.slice(gone.start, gone.end).some(({ text }) => text === 'both');
    const count = Number(lost.amount);
    if (two && count !== 2) return [{ start: gone.start, end: gone.end, held: true }];
    return [found(reader, gone.start, gone.end, [{ fact: 'broke', count, ...kindOf(gone.kept['p']) }])];
  }
  const some = inPart.in(tokens, part.start, part.end);
  const { n, m, o, p } = some?.kept ?? {};
  if (some === undefined || n === undefined || m === undefined || o !== undefined || amountOf(m) > amountOf(n)) return [];
  // "dropped 4, 2 wrecked" may be six.
  const ofThem = tokens.slice(tokens.indexOf(m, some.start), some.end).some(({ text }) => /^(of|of them|of those|of these)$/.test(text));
  if (!ofThem || m.number?.max !== undefined) return [{ start: some.start, end: some.end, held: true }];
  const piece: { piece?: PieceKind } = kindOf(p);
  return [found(reader, some.start, some.end, [{ fact: 'broke', count: amountOf(m), ...piece }])];
};

/** What fell and is not lost, or not all of it. */
export const dropped = (reader: Reader): Finding[] =>
  [fine, inPart, allGone].some((form) => form.might(reader.tokens))
    ? reader.untouched().flatMap((part) => (part.asked ? [] : read(reader, part)))
    : [];
