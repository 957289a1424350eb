// Taking one thing back and saying another: "make that 45", "R60 each not R65", "swap the 2 wrist corsages for pin-ons", "no, ex tax", "moved to 21 March".

import { aheadThenSwapped } from '../changes/ahead-then-swapped.ts';
import { andNone } from '../changes/and-none.ts';
import { bareNumber } from '../changes/bare-number.ts';
import { besideBracket } from '../changes/bracket-behind.ts';
import { valuesAndLoss } from '../changes/broken-beside.ts';
import { isCarriedThere } from '../changes/carried-there.ts';
import { markers, strongMarkers } from '../changes/change-words.ts';
import { countAtPrice } from '../changes/count-at-price.ts';
import { dayApart } from '../changes/day-apart.ts';
import { countFactor } from '../changes/differences.ts';
import { differencesIn } from '../changes/differences-in.ts';
import { tellsWhoLeft } from '../changes/dropped-out.ts';
import { eitherValue } from '../changes/either-value.ts';
import { tellsHowFar } from '../changes/far-along.ts';
import { countFromTo, priceFromTo } from '../changes/from-to.ts';
import { dateAndHours } from '../changes/hours-behind-move.ts';
import { itWas } from '../changes/it-was.ts';
import { kindAndNumber } from '../changes/kind-and-number.ts';
import { kindCancelled } from '../changes/kind-cancelled.ts';
import { kindMeant } from '../changes/kind-meant.ts';
import { kindNotKind } from '../changes/kind-not-kind.ts';
import { kindStill } from '../changes/kind-still.ts';
import { kindsNow } from '../changes/kinds-now.ts';
import { besidePrice } from '../changes/kinds-priced.ts';
import { kindsWithOld } from '../changes/kinds-with-old.ts';
import { onlyLoss } from '../changes/loss-told.ts';
import { materialBecomes } from '../changes/material-becomes.ts';
import { noneThen } from '../changes/none-then.ts';
import { nowCountOrPrice } from '../changes/now-count-or-price.ts';
import { isOfSome } from '../changes/of-some.ts';
import { isOfWage } from '../changes/of-wage.ts';
import { offAndMore } from '../changes/off-and-more.ts';
import { oneWearersKind } from '../changes/one-wearers-kind.ts';
import { priceDifference } from '../changes/price-differences.ts';
import { priceKept } from '../changes/price-kept.ts';
import { pricePerKind } from '../changes/price-per-kind.ts';
import { isPutRight } from '../changes/put-right.ts';
import { atSameEach } from '../changes/same-price.ts';
import { soManyInAll } from '../changes/so-many-in-all.ts';
import { speaksOfElse } from '../changes/speaks-of-else.ts';
import { swapped } from '../changes/swap.ts';
import { twoPutRight } from '../changes/two-put-right.ts';
import { zonesOf } from '../changes/zones.ts';
import { basisOfOrder } from '../order/line-totals.ts';
import { anyIn, pattern } from '../pattern.ts';
import { type Finding, found, type Phrase, type Reader } from '../phrase.ts';
import { didWord, doneWord } from '../progress/done-words.ts';
import type { Part } from '../text/message.ts';
import { firstWhere } from '../text/token.ts';
import { usualWords } from '../words/usual-words.ts';

const doneForm = pattern(`(${doneWord}|${didWord}|to go|left|broke|broken|snapped|pending|remaining|dropped)`);
// "another dozen bouts wired up" is work, not more of the order.
const stepAfter = pattern('<count> (more)? (<piece>)? (are|is|now|all)? (wired|taped|glued|prepped|conditioned|stripped|sprayed|ribboned)');

// "put me down for 24 buttonholes" orders them.
const notedDown = pattern(
  '(put|note|jot|write|mark|pop|pencil|stick|book|log|record) ((me|us|them|her|him)? (down|in) (for|as)? (about)? <count> (<word>)? <piece>|(about)? <count> (<word>)? <piece> (down|in|on the (list|order|book|sheet)))',
);

// "same again for the hotel, 36 buttonholes 15 each" is an order of its own.
const orderedAgain = pattern('same again for <any>{1,6} <count> (<material>)? <piece>');

// "need to do 8 more corsages" is work left; "8 bouts subject to change" changes nothing.
const noChange = pattern(
  '(not (one|a|even one|a single|one single) (single)? <piece> (between|among|amongst|in|on|to|at|there|anywhere|all)|(need|have|got|needs|gotta|still|had) (to)? (do|make|finish|wire|tape|build|redo|remake|rebuild|replace|rewire) (another|the|all|both|those)? <count>|(set|setting) up|(subject to|may|might|could|can|liable to|likely to) change|(my|your|her|his|their|the) (shift|shifts|rota|roster|day off|turn)|(add|put|stick|chuck) (another)? <count> (more)? (<piece>)? (to|on|onto|in) (the|my|our)? (tally|done|finished|made|completed|boxed)|(need|want|after|get|do|put|work) (me|us|out)? (a|some) (price|prices|quote) (up|done|together|worked out) for|(come|comes|coming|meet|meeting|arrive|arriving|be here|be there|start|starting|ring|call|calling|pop in|pop by|open|opening|close|leave|lunch|collecting) (<any>){0,3} (at|by) <plain> (instead|not|rather)|take it or leave it|take it from there|no (price|prices|pricing|date|dates|budget|names|numbers) (yet|as yet|so far))',
);

// "corsages go to 2 mums": whose they are, and no new number.
const goesTo = pattern(
  "<piece> (are|is|will|all|both|'s|just|should|shall|to|then|that){0,2} (go|goes|going|given|handed) (out|over|off)? to (the|his|her|our|their|a|an|both|all|each|every|both the|all the){0,2} (<count>)? (x|of|of the|the)? ((<word>)? <role>|<unlisted>)",
);

// "corsages are going to be 6 or 7 instead of 4": no hands they go to, where a number before is taken back.
const goods = pattern('<number> (stem|stems|<ingredient>|<pack>)');
const willBe = ({ tokens }: Reader, { start, end }: Part, at: number): boolean =>
  tokens[at - 1]?.text === 'be' &&
  (tokens[at]?.number ?? tokens[at]?.means['material']) !== undefined &&
  goods.at(tokens, at, end) === undefined &&
  zonesOf(tokens, start, end).old.length > 0;

// "drop the crowns off at 3": where they go and when.
const handing = pattern(
  '(drop|dropping|pick|picking) (the|those|all|our|her)? (<count>)? (<material>)? (<piece>|ones|lot|stuff|flowers) ((off|up) (at|by|around|before|after) <number>|(off|round|over|in)? (at|to|round to|over to|with) (the|her|their|his|our|your|my) <word>)',
);

// "make that 2 spare bouts", "2 crowns are spare": not how many there are.
const spares = pattern(
  '((make|have|do|say) (it|that|them)? <count> (<material>)? (spare|spares) <piece>|<count> (<material>)? <piece> (are|is) (the|our|just)? (spare|spares))',
);

const doubted = pattern('\\? or (maybe|just|even|at)? <amount>');

const ofStems = pattern(
  '(<piece>|each|every) (<any>){0,4} <count> (of)? <u:unlisted> (now)? (,|-)? (not|instead of|instead|rather than|was) (<any>)? <plain>',
);
// "its £2 more per buttonhole", "should be £2 more each": what leads to a difference.
const leadsToMore =
  /^(its|it's|it|it'll|they|they're|theyre|that's|thats|is|are|will|be|should|shd|gonna|going|to|has|have|need|needs|make|want)$/;
// "put R5 on every buttonhole please, wire went up": courtesy or the reason follows.
const whyBehind = /^(,|-|please|pls|plz|thanks|ta|now|cos|coz|because|as|since|cause)$/;
const readPart = (reader: Reader, part: Part): Finding[] => {
  const { tokens } = reader;
  const stretch = tokens.slice(part.start, part.end);
  if (speaksOfElse(reader.tokens, part)) return [];
  if (notedDown.in(tokens, part.start, part.end) !== undefined || orderedAgain.in(tokens, part.start, part.end) !== undefined) return [];
  if (noChange.in(tokens, part.start, part.end) !== undefined || onlyLoss(reader, part)) return [];
  if (isOfWage(reader, part) || tellsWhoLeft(reader, part)) return [{ start: part.start, end: part.end, held: true }];
  if (handing.in(tokens, part.start, part.end) !== undefined || spares.in(tokens, part.start, part.end) !== undefined)
    return [{ start: part.start, end: part.end, held: true }];
  const given = goesTo.in(tokens, part.start, part.end);
  if (given !== undefined && !willBe(reader, part, given.end)) return [];
  // "10 bouts £120, 3 corsages £66, line totals not each" orders.
  const basis = basisOfOrder(tokens, part.start, part.end);
  if (basis !== undefined && !anyIn(markers, tokens, part.start, basis)) return [];
  if (isCarriedThere(reader, part)) return [];
  if (isOfSome(reader, part)) return [{ start: part.start, end: part.end, held: true }];
  const sides = dayApart(reader, part);
  if (sides !== undefined) return sides.flatMap((side) => readPart(reader, side));
  const whole = kindsWithOld(reader, part) ?? aheadThenSwapped(reader, part);
  if (whole !== undefined) return [whole];
  const none = andNone(reader, part, (own) => readPart(reader, own));
  if (none !== undefined) return [...none];
  const two = twoPutRight(reader, part, (own) => readPart(reader, own));
  if (two !== undefined) return [...two];
  const either =
    noneThen(reader, part) ??
    kindCancelled(reader, part) ??
    materialBecomes(reader, part) ??
    priceKept(reader, part) ??
    itWas(reader, part) ??
    pricePerKind(reader, part) ??
    countAtPrice(reader, part) ??
    kindsNow(reader, part) ??
    nowCountOrPrice(reader, part) ??
    kindAndNumber(reader, part);
  if (either !== undefined) return [either];
  if (tellsHowFar(reader, part)) return [];
  const fromTo = priceFromTo(reader, part) ?? countFromTo(reader, part);
  if (fromTo !== undefined) return [fromTo];
  const swap =
    kindStill(reader, part) ??
    oneWearersKind(reader, part) ??
    kindNotKind(reader, part) ??
    kindMeant(reader, part) ??
    swapped(reader, part);
  if (swap?.facts?.[1] !== undefined || swap?.held === true) return [swap];
  const more = offAndMore(reader, part, (own) => readPart(reader, own));
  if (more !== undefined) return [...more];
  if (swap !== undefined) return [swap];
  const opening = /^(ok|actually|sorry|can|you|we|please|pls|oh|they|want|to|now|,|lets|let's)$/;
  let from = part.start;
  while (from < part.end && opening.test(tokens[from]?.text ?? '')) from += 1;
  const factor = countFactor(tokens, from, part.end);
  if (factor !== undefined) return [found(reader, part.start, part.end, [factor.fact])];
  const moved = dateAndHours(reader, part);
  if (moved !== undefined) return [...moved];
  if (stepAfter.in(tokens, part.start, part.end) !== undefined) return [];
  const doneAt = doneForm.in(tokens, part.start, part.end);
  const strong = anyIn(strongMarkers, tokens, part.start, part.end);
  const old =
    stretch.some((token) => token.text === 'not') ||
    zonesOf(tokens, part.start, part.end).old.some(([from, to]) => tokens.slice(from, to).some((token) => token.number !== undefined));
  const goods = stretch.some(
    (token) => token.means['ingredient'] !== undefined || token.means['other'] !== undefined || token.number?.form === 'duration',
  );
  // "bouts now 2 gum not 3" counts what goes into one; "wearers total 22 now" is no price.
  const stems = ofStems.in(tokens, part.start, part.end)?.kept['u'];
  if (stretch.some(({ text }) => text === 'wearers')) return [];
  if (stems !== undefined && !usualWords.has(stems.text)) return [{ start: part.start, end: part.end, held: true }];
  // "add $2 to each, roses went up"
  let at = from;
  while (goods && at < from + 4 && leadsToMore.test(tokens[at]?.text ?? '')) at += 1;
  const dearer = goods ? (priceDifference(tokens, from, part.end) ?? priceDifference(tokens, at, part.end)) : undefined;
  if (dearer !== undefined && whyBehind.test(tokens[dearer.match.end]?.text ?? ''))
    return dearer.fact === undefined ? [{ ...dearer.match, held: true }] : [found(reader, from, dearer.match.end, [dearer.fact])];
  if (goods) return [];
  if (
    doneAt === undefined ||
    /^(dropped|drop)$/.test(tokens[doneAt.start]?.text ?? '') ||
    (doneAt.start === part.start && /^(did|made|got|make)$/.test(tokens[doneAt.start]?.text ?? '') && old)
  ) {
    const differences = differencesIn(reader, part);
    if (differences.length > 0) return differences;
  } else if (!strong && !old) return [];
  const bare = bareNumber(reader, part);
  if (bare !== undefined) return [bare];
  return valuesAndLoss(reader, part).map((finding) => besidePrice(reader, soManyInAll(reader, eitherValue(reader, finding))));
};

// "make them all 14 each"
const everyKind = /^(all|every|everything|both|every one|each of them)$/;
const ofEveryKind = ({ tokens }: Reader, { start, end }: Part, finding: Finding): Finding => {
  const [fact, another] = finding.facts ?? [];
  const isPrice = fact?.fact === 'change' && fact.what === 'price' && fact.per === 'each' && fact.piece === undefined;
  if (!isPrice || another !== undefined || firstWhere(tokens, start, end, ({ text }) => everyKind.test(text)) < 0) return finding;
  return { ...finding, facts: [{ ...fact, ofEvery: true }] };
};

const find = (reader: Reader): Finding[] => {
  const findings: Finding[] = [];
  for (const part of reader.untouched().slice(0, 40)) {
    if (part.end - part.start > 50) continue;
    // "make it 45? or 40": neither is said.
    if (doubted.at(reader.tokens, part.end, reader.tokens.length) !== undefined) continue;
    const read = besideBracket(reader, part, (own) => readPart(reader, own));
    findings.push(...read.map((finding) => atSameEach(reader.tokens, part, ofEveryKind(reader, part, finding))));
    // "bouts at 12, i meant 14": the first number holds no longer, whatever the second is of.
    if (read.length === 0 && isPutRight(reader, part)) findings.push({ start: part.start, end: part.end, held: true });
  }
  return findings;
};

export const correction: Phrase = {
  name: 'correction',
  examples: ['make that 45', '45 not 40', 'swap the 2 wrist corsages for pin-ons', 'no, ex tax', 'moved to 21 March'],
  find,
};
