// "make that 45", "sorry 45", "45 not 40": a number alone that corrects the last one. The thread knows whether that was a count or a price.

import { anyIn, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { tellsOfTax } from '../text/of-tax.ts';
import { isSingle, type Token } from '../text/token.ts';
import { bareWords, markers } from './change-words.ts';
import { reasonBehind } from './reason-behind.ts';
import { sameEach, samePrice } from './same-price.ts';
import { taxChange } from './tax-and-material.ts';
import { inZones } from './two-zones.ts';
import { wasAndIs } from './was-and-is.ts';
import { zonesOf } from './zones.ts';

const star = /^\*$/;

// "make that 45 pieces", "count is 55": only a count can be meant.
const ofCount = (stretch: readonly Token[]): boolean =>
  stretch.some((token) => /^(pieces|pcs|pcs|nos|count|qty|quantity|piece|pc|headcount|units)$/.test(token.text));

// "make it 40 not counting tax" says both.
const saysTax = (token: Token): boolean => tellsOfTax(token) || /^(counting|adding)$/.test(token.text);

// "ok go with 16", "lets say 18", "45 it is": chosen, so it is asked whether it is the price or the number.
const chosen = [
  pattern('(go|going|went|stick|sticking|settle|settling) (with|for|on|at) (the)? <plain>'),
  pattern("(lets|let's|we'll|well|i'll|ill) (go|do|say|try|have) (with|for)? <plain>"),
  pattern('<plain> it is'),
];
const chosenWords =
  /^(lets|let's|we'll|well|i'll|go|going|went|with|stick|sticking|settle|settling|do|say|have|right|great|perfect|fine|yes|yeah|yep|cool|alright|then|guess|think|ill)$/;

// "no wait go back to 12", where "back for 12" is an hour
const backTo = pattern('back to <plain>');

export const bareNumber = (reader: Reader, whole: Part): Finding | undefined => {
  const { tokens } = reader;
  const part = { ...whole, end: reasonBehind(tokens, whole.start, whole.end) };
  const stretch = tokens.slice(part.start, part.end);
  const numbers = stretch.flatMap((token, at) => (token.number === undefined ? [] : [part.start + at]));
  if (numbers.length === 0 || numbers.length > 2) return undefined;
  const starred = star.test(stretch[0]?.text ?? '') || star.test(stretch.at(-1)?.text ?? '');
  const picks = anyIn(chosen, tokens, part.start, part.end);
  const backAt = (backTo.in(tokens, part.start, part.end)?.start ?? part.end) - part.start;
  const same = samePrice(tokens, part.start, part.end);
  for (const [at, token] of stretch.entries()) {
    if (same !== undefined && part.start + at >= same[0] && part.start + at < same[1]) continue;
    if (at === backAt) continue;
    if (token.number !== undefined) {
      if (token.number.form !== 'plain') return undefined;
    } else if (
      token.kind === 'word'
        ? !bareWords.has(token.text) && !saysTax(token) && !(picks && chosenWords.test(token.text))
        : !/^[,.\-*()!":>/]$/.test(token.text)
    )
      return undefined;
  }
  // "that's 20 now" counts what is made; "it's 20 now" corrects.
  if (/^(that's|thats|makes|up)$/.test(stretch[0]?.text ?? '') && stretch.at(-1)?.text === 'now') return undefined;
  const zones = zonesOf(tokens, part.start, part.end);
  // "same price 55" may say the price, "same price, 55" does not.
  const kept = same !== undefined && ((numbers[0] ?? 0) < same[0] || /^(,|but|-)$/.test(tokens[same[1]]?.text ?? ''));
  // "no 12" behind an order; elsewhere it may be the number of a house.
  const refused = reader.context.pieces.length > 0 && tokens.length === 2 && stretch[0]?.text === 'no';
  const marked = refused || starred || picks || kept || zones.old.length > 0 || anyIn(markers, tokens, part.start, part.end);
  if (!marked) return undefined;
  const fresh = numbers.filter((index) => inZones(zones.fresh, index));
  const [at, second] = fresh;
  if (at === undefined || second !== undefined) return undefined;
  const number = tokens[at]?.number;
  const old = numbers.find((index) => inZones(zones.old, index));
  if (number === undefined || number.approx === true) return undefined;
  const span = wasAndIs(tokens, at);
  // "go back to 12 or 15"
  if (span === undefined && !isSingle(number)) return { start: part.start, end: whole.end, held: true };
  const was = old === undefined ? undefined : tokens[old]?.number;
  const [from, to] = span ?? [isSingle(was) ? was.amount : undefined, number.amount];
  // "40 to 45" is a change only after "from" or a word of change; that is what the marker said.
  const tax = taxChange(reader, part, zones);
  // A number beside a tax word is a price.
  if (tax.length > 0)
    return found(reader, part.start, whole.end, [{ fact: 'change', what: 'price', to, ...(from === undefined ? {} : { from }) }, ...tax]);
  return found(reader, part.start, whole.end, [
    {
      fact: 'change',
      what: same !== undefined || ofCount(stretch) ? 'count' : 'number',
      to: Number(to),
      ...(from === undefined ? {} : { from: Number(from) }),
      ...(same !== undefined && sameEach(tokens, same[0], part.end) ? { sameEach: true as const } : {}),
    },
  ]);
};
