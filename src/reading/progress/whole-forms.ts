// Ways to say how far the whole of it is: "whole lot finished, all 36", "just finished number 23", "buttonholes over, only corsages pending".

import type { Unworded } from '../phrase.ts';
import { isSingle } from '../text/token.ts';
import { allButOf } from './but-not-all.ts';
import { done } from './counted-forms.ts';
import { overOutOf } from './finished-over.ts';
import { allButSome, allOf, amountOf, type Build, counts, outOf, pieceIn, sofar } from './made-facts.ts';

const everything =
  '(the)? (<all>|everything|all|lot|whole lot|whole order|whole thing|every last one|every one|all of them|all of it|they|these)';
const finished = '(done|finished|made|completed|complete|boxed|ready|wrapped up)';
const some = '<n:count> (of them|of those|nos|pcs|pieces)? (<material>)? (<p:piece>)?';
const ordinal = '(number|no|no\\.|num|nr|nbr)';
const left = '(pending|left|remaining|balance|baki|to go|to do|to make)';

export const wholeForms: readonly (readonly [string, Build])[] = [
  ...allButOf.map((form) => [form, allButSome] as const),
  [
    `(${everything} (is|are|now|been|all|'s){0,2} ${done}|all ${done}|${finished}) (,|-|:){1,2} (all|that's all|thats all|all of the|the whole) ${some}`,
    (match) => ({ ...(counts(match) as object), all: true }) as Unworded,
  ],
  // "combs finished all 8"
  [
    `(the|our)? <p:piece> (are|is|all|now){0,2} ${done} (,|-)? all (of)? (the|them)? <n:count> (of them)?`,
    (match) => ({ ...(counts(match) as object), all: true }) as Unworded,
  ],
  // The twenty-third is finished, so there are twenty-three; "number 4 on the list" is a job.
  [
    `(just|now|i|we|i've|we've|ive|weve|have){0,2} (finished|done|completed|boxed|made|finished off|polished off|wrapped up) ${ordinal} <n:count> (<p:piece>)? ((out of|of) (the)? <m:count> (<p:piece>)?)? ((on|in|off) (the|my|our|his|her)? <x:any>)?`,
    (match) => {
      if (match.kept['x'] !== undefined || amountOf(match.kept['n']) < 2) return undefined;
      return match.kept['m'] === undefined ? sofar(match) : outOf(match);
    },
  ],
  // "10 since smoko so 34 altogether": the ten are in it.
  [
    `(just|only|another|did|done|made|and|ok|so|that's|thats){0,2} <n:count> (more)? (<p:piece>)? (done|made|finished)? since (the|my|our|this|then|last|morning){0,2} (smoko|lunch|lunchtime|tea|break|breakfast|coffee|noon|midday|morning|then|time|count|<time>)? (,|-|so|and|now|which|that|that's|thats|makes|makes it|brings it to|it's|its|we're at|were at|i'm at|im at|we're on|up to|=){1,5} <m:count> (<q:piece>)? (done|made)? (altogether|all up|in total|in all|all told|so far|total|now|overall|all together|<all>) (done|made|now)?`,
    ({ kept: { n, m, p, q }, ...match }) => {
      const others = p !== undefined && q !== undefined && p.means['piece'] !== q.means['piece'];
      const unsure = !isSingle(n?.number) || !isSingle(m?.number) || others || amountOf(m) < amountOf(n);
      const kind = p ?? q;
      return unsure || m === undefined ? undefined : sofar({ ...match, kept: { n: m, ...(kind === undefined ? {} : { p: kind }) } });
    },
  ],
  // "just the one crown done"
  [
    `(just|only) (the)? one (of them|of those|<material>)? (<p:piece>)? (is|was|been|so far|has been|got){0,2} ${done}`,
    (match) => ({ fact: 'made', count: 1, total: true, ...pieceIn(match) }),
  ],
  // "30 nos over out of 50": finished, and so many wanted
  ...overOutOf.map((form) => [form, outOf] as const),
  // "over" is finished in India; alone it may be left over.
  [
    `(the|all|all the)? <p:piece> (are|is|all|work){0,2} over (,|-|and|but|;){1,2} (only|now|just|balance)? (the)? <piece> (are|is|only|still){0,2} ${left}`,
    allOf,
  ],
];

/** The last of a kind finishes all of it. */
export const lastForms: readonly (readonly [string, Build])[] = [
  // "just tied the last of the wrist corsages"
  [
    "(just|now|finally|and|ok|i|we|i've|ive|we've|weve|have|has){0,3} (tied|tied off|tied up|pinned|wrapped|knotted|tagged|labelled|carded|sealed|netted) (off|up)? (the|my|our)? (very)? (last|final) (one|few)? (of)? (the|my|our|these|those|them)? (<count>)? (<material>)? <p:piece>",
    allOf,
  ],
  // "nothing left to do on the crowns", "no bouts left to make"
  [
    '(nothing|none) (left|more|else|remaining){1,2} to (do|make|finish|wire|tape|box) (on|for|with|of) (the|our|these|those) (<material>)? <p:piece>',
    allOf,
  ],
  ['no (more)? <p:piece> (left|remaining) to (do|make|finish|wire|tape|box)', allOf],
  // "last bout just went in the box"
  [
    `(the|our|my)? (very)? (last|final) (<material>)? <p:piece> ((is|are|has|have|been|just|now|got|'s){0,3} ${done}|(is|are|has|have|just|now|'s){0,3} (went|gone|going|popped|safely|is|are) (straight)? (in|into) (the|its|their)? (box|boxes|cooler|fridge))`,
    allOf,
  ],
];
