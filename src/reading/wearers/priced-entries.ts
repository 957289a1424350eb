// Who wears a piece at which price, one after the other: "groom 1 @ $20, 5 groomsmen @ $15", "10 lads at 12.50, groom 18".

import type { PieceKind } from '../../handbook/pieces.ts';
import { firstAt, pattern } from '../pattern.ts';
import { allFree, type Reader } from '../phrase.ts';
import type { NumberRead, Token } from '../text/token.ts';
import { countFor, nameOf } from './role-counts.ts';

export interface PricedEntry {
  readonly wearer?: string;
  readonly role: string;
  readonly count: number;
  readonly counted: boolean; // its number was said
  readonly piece?: PieceKind;
  readonly number: NumberRead;
  readonly marked: boolean; // by a currency, "each" or a piece: it can only be a price
  readonly odd: boolean; // 12.50: no time of day either
  readonly at: boolean;
  readonly plain: boolean; // "5 groomsmen bouts 16", "bouts for 5 groomsmen 16"
  readonly bench: boolean; // may be people who make them
  readonly end: number;
}

const who = '(<w:role>|<w:owner>)';
const piece = "(')? ((,|:)? (with|in|wearing|gets|get|having)? (a|an|the|one)? (one|<p:piece>))?";
const cost = '(,|:|-|@|at|x|is|are|be|=|\\(|for|to be|gets){0,2} <a:amount> (<e:each>|for one)? (\\))?';
const lead = '(the|our|for|for the|a|an)?';
const forms = [
  pattern(`${lead} ${who} (x|:)? <m:count> (of them|off|no)? ((@|at|x|=) <a:amount>|<a:money>) (<e:each>)?`),
  pattern(`${lead} (<w:role>) (and|&|\\+|n) (the)? (<v:role>) ${piece} ${cost}`),
  pattern(`(<p:piece> for)? ${lead} (<n:count>)? (x)? ${who} ${piece} ${cost}`),
  pattern(`<a:amount> (<e:each>)? (for|x) (the|our|each of the)? (<n:count>)? ${who} ${piece}`),
];

// "mums £30 each": how many of them is not said.
const pairs = /^(dads|fathers|mums|moms|mothers|mams|papas)$/;
const afterwards = ['material', 'included', 'onTop', 'taxName', 'taxWord', 'event', 'weekday', 'month'];
const ends = (tokens: readonly Token[], index: number): boolean => {
  const next = tokens[index];
  return (
    next === undefined ||
    next.kind === 'line' ||
    /^([,;.&+)-]|and|plus|n|all|for|then|pls|please|with)$/.test(next.text) ||
    afterwards.some((tag) => next.means[tag] !== undefined)
  );
};

/** The entry that begins at this token. */
export const pricedEntry = (reader: Reader, index: number): PricedEntry | undefined => {
  const { tokens } = reader;
  const match = firstAt(forms, tokens, index, tokens.length);
  const { w, v, n, m, p, a, e } = match?.kept ?? {};
  const number = a?.number;
  if (match === undefined || w === undefined || a === undefined || number === undefined) return undefined;
  // "4 bridesmaids 45 each, crowns", "groom 18 bouts", "6 groomsmen bh $16 each groom's one $22"
  const next = tokens[match.end]?.means;
  const behind = (next?.['piece'] ?? next?.['role'] ?? next?.['owner']) !== undefined && e !== undefined;
  if (!ends(tokens, match.end) && !behind) return undefined;
  if (number.max !== undefined || number.or !== undefined || (n !== undefined && m !== undefined)) return undefined;
  if (!allFree(reader, match.start, match.end)) return undefined;
  const role = w.means['role'] ?? w.means['owner'] ?? '';
  const said = (n ?? m)?.number;
  if (role === 'rest' || said?.max !== undefined || p?.means['piece'] === 'unspecified') return undefined;
  const single = w.means['owner'] !== undefined ? 1 : pairs.test(w.text) ? undefined : countFor(w.text, undefined, false);
  const count =
    said !== undefined
      ? Number(said.amount)
      : v === undefined
        ? single
        : single === 1 && countFor(v.text, undefined, false) === 1
          ? 2
          : undefined;
  if (count === undefined || Number(number.amount) < 4) return undefined;
  const of = tokens.indexOf(w, index);
  const at = /^(@|at)$/.test(tokens[tokens.indexOf(a, index) - 1]?.text ?? '');
  const kind = p?.means['piece'] as PieceKind | undefined;
  return {
    ...(v === undefined ? { wearer: w.means['bench'] === undefined ? nameOf(role, count) : w.text } : {}),
    role,
    count,
    counted: said !== undefined,
    ...(kind === undefined ? {} : { piece: kind }),
    number,
    marked: number.form === 'money' || e !== undefined || kind !== undefined,
    odd: /[.,]\d\d$/.test(a.text) && !/[.,](00|15|30|45)$/.test(a.text),
    at,
    plain: p !== undefined && v === undefined && (tokens.indexOf(p, index) < of || !/^[,:]$/.test(tokens[of + 1]?.text ?? '')),
    bench: w.means['bench'] !== undefined,
    end: match.end,
  };
};
