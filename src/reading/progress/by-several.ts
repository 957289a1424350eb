// What several people made, one after the other, with the word for finished once behind them all: "thandi 12 lapels, priya 15 lapels, all
// finished" is twenty-seven made, and no order.

import type { PieceKind } from '../../handbook/pieces.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import { kindOf } from '../text/kind-named.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice, type Token } from '../text/token.ts';
import { familyAtBench } from '../words/bench-people.ts';
import { isUnlisted } from '../words/other-things.ts';
import { doneWord, intent } from './done-words.ts';
import { amountOf } from './made-facts.ts';
import { noName } from './work-forms.ts';

const person = "(has|'s|had|did|made|done|:|-|with|got)?";
const item = pattern(`(,|and|&|n|plus|\\+|;){0,2} (<w:word>) ${person} <n:count> (<material>)? (<p:piece>)? (from (her|him|me))?`);
const close = pattern(
  `(,|-|;|and|so){0,2} (they're|theyre|they are|that's|thats)? (all|both|everything|everything's|the lot|all of (them|it|those)|every one|both lots) (of (them|it))? (are|is|now|been|have been|has been|all){0,2} (${doneWord}) (now|today|already|,|!|yay|woo|x|ta|thanks)?`,
);
const nobody =
  /^(order|ordered|orders|add|added|adding|quote|book|booked|put|make|do|get|send|sent|client|clients|also|and|then|that|these|those|the|a|an|of|for|at|by|to|from|on|in|per|each|we|they|you|u|it|its|it's|wedding|event|table|flat|room|tray|box|batch|invoice|job|ref)$/;
// Of the bench, or of the family that helps at it: "girls" and "boys" may be those who wear them.
const atBench = new RegExp(
  `^((freelancer|florist|helper|casual|junior|trainee|assistant|worker|apprentice|student|maker|karigar|temp|designer|senior|volunteer)s?|${familyAtBench})$`,
);
export const isPerson = (token: Token | undefined): boolean =>
  token !== undefined &&
  (/^(me|i|i've|ive)$/.test(token.text) ||
    atBench.test(token.text) ||
    ((isUnlisted(token) || token.means['ingredient'] !== undefined) &&
      !nobody.test(token.text) &&
      !noName.test(token.text) &&
      !intent.has(token.text)));

const severalIn = (reader: Reader, part: Part): Finding | undefined => {
  const { tokens } = reader;
  const counts = new Map<PieceKind | undefined, number>();
  const people = new Set<string>();
  let unsure = false;
  let [index, kind] = [part.start, undefined as PieceKind | undefined];
  while (index < part.end) {
    const match = item.at(tokens, index, part.end);
    const { w, n, p } = match?.kept ?? {};
    if (match === undefined || !isPerson(w)) break;
    unsure ||= isRangeOrChoice(n?.number);
    kind = p === undefined ? kind : kindOf(p).piece;
    // "thandi 12, priya 15": of what is not said.
    if (p === undefined && people.size === 0) return undefined;
    people.add(w?.text ?? '');
    counts.set(kind, (counts.get(kind) ?? 0) + amountOf(n));
    index = match.end;
  }
  const ending = people.size < 2 ? undefined : close.at(tokens, index, part.end);
  if (ending?.end !== part.end) return undefined;
  if (unsure) return { start: part.start, end: part.end, held: true };
  const facts = [...counts].map(([piece, count]): Unworded => ({ fact: 'made', count, ...(piece === undefined ? {} : { piece }) }));
  return found(reader, part.start, part.end, facts);
};

export const bySeveral = (reader: Reader): Finding[] =>
  close.might(reader.tokens)
    ? reader.untouched().flatMap((part) => (part.asked || part.end - part.start > 40 ? [] : (severalIn(reader, part) ?? [])))
    : [];
