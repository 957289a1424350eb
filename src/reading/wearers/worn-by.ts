// What one kind of wearer wears, said in a sentence: "mums have wrist corsages", "groom wears a bout", "mums wear corsages 35 each".

import type { PieceKind } from '../../handbook/pieces.ts';
import { currencyFields } from '../order/read-order.ts';
import { pattern } from '../pattern.ts';
import { type Finding, found, type Reader, type Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isRangeOrChoice } from '../text/token.ts';
import { countFor, nameOf } from './role-counts.ts';
import type { Entry } from './wearers-read.ts';

const worn = pattern(
  '(and|the|all|all the|both|,){0,2} <r:role> (need|needs|wants|would like|is having|asked for|has asked for|have|get|gets|has|wear|wears|want|wearing|are wearing|is wearing|will wear|are getting|are having|in|with|to have|to wear|on|:|-|=) (a|an|the)? (<material>)? <p:piece> (each|too|please|pls)?',
);
const needs = /^(needs?|wants|would like|is having|(has )?asked for)$/;
// "mums wear corsages 35 each": what each of theirs costs.
const priced = pattern('(,|-|at|@|:){0,2} (<a:amount> <each>|<a:money>)');

/** What is said, where it is all of the part: of those on the list, or of somebody new. */
export const wornBy = (reader: Reader, part: Part, entries: readonly Entry[]): Finding | undefined => {
  const { tokens } = reader;
  const match = worn.at(tokens, part.start, part.end);
  const piece = match?.kept['p']?.means['piece'] as PieceKind | undefined;
  const role = match?.kept['r']?.means['role'];
  if (match === undefined || piece === undefined || piece === 'unspecified' || role === undefined) return undefined;
  const cost = match.end === part.end ? undefined : priced.at(tokens, match.end, part.end);
  const number = cost?.kept['a']?.number;
  if ((cost?.end ?? match.end) !== part.end || isRangeOrChoice(number)) return undefined;
  const price: Unworded[] =
    number === undefined ? [] : [{ fact: 'price', amount: number.amount, ...currencyFields(number), per: 'each', piece }];
  const meant = entries.filter((each) => each.piece === undefined && (each.wearer === nameOf(role, 1) || each.wearer === nameOf(role, 2)));
  const needed = tokens.slice(match.start, match.end).some(({ text }) => needs.test(text));
  const both = tokens.slice(match.start, match.end).some(({ text }) => text === 'both');
  const count = meant.length === 0 ? countFor(match.kept['r']?.text ?? '', undefined, both) : undefined;
  if (count !== undefined) {
    // "bride needs combs" may speak for her bridesmaids.
    if (needed && count === 1 && /[^s]s$/.test(match.kept['p']?.text ?? '')) return undefined;
    const wearers: Unworded = { fact: 'wearers', wearers: [{ wearer: nameOf(role, count), count, piece }] };
    // "mums have wrist corsages": two of them, though no list names them; the order's own count is left as it is. "nan needs a corsage" orders one.
    return found(reader, part.start, part.end, [wearers, ...(needed ? [{ fact: 'pieces' as const, piece, count }] : []), ...price]);
  }
  if (meant.length === 0) return undefined;
  for (const each of meant) each.piece = piece;
  const all = meant.reduce((sum, each) => sum + each.count, 0);
  return found(reader, part.start, part.end, [{ fact: 'pieces', piece, count: all }, ...price]);
};
