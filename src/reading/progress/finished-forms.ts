// Ways to say that work is finished, each with the fact it gives. Earlier forms win.

import { type Pattern, pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import { isOtherThings } from '../words/other-things.ts';
import { clientForms } from './client-forms.ts';
import { be, counted, did, done } from './counted-forms.ts';
import { didWord, doneWord } from './done-words.ts';
import { goneWrong } from './losses.ts';
import {
  again,
  allOf,
  amountOf,
  atShare,
  type Build,
  bases,
  counts,
  none,
  outOf,
  percentDone,
  pieceIn,
  share,
  sofar,
} from './made-facts.ts';
import { lastForms, wholeForms } from './whole-forms.ts';

export interface Form {
  readonly form: Pattern;
  readonly build: Build;
}

const shareOf =
  '(of)? (the|them)? (way|of)? (<p:piece>)? (through|done|finished|made|there|thru|complete|of them done|them done|are done|is done|are made) (the|with)? (<p:piece>)?';

const forms: readonly (readonly [string, Build])[] = [
  ...wholeForms,
  [`(${did}|wired|glued) (the|about|all|another|first|up){0,2} <n:count> (of the|more|of)? (<material>)? (<p:piece>)? (base|bases)`, bases],
  [`<n:count> (of the|more|of|x)? (<material>)? (<p:piece>)? (base|bases) (are|is|now|all|just|been){0,2} ${done}`, bases],
  [`(base|bases) (for|of|on) (the|all)? <n:count> (of)? (the)? (<material>)? (<p:piece>)? (are|is|now|all|just|been){0,2} ${done}`, bases],
  [`(base|bases) ${done} (for|on|of) (the|all)? <n:count> (<p:piece>)?`, bases],
  [
    `(the|all|all the)? (<p:piece>)? bases (are|is|now|all|have been){0,2} ${done}`,
    (match) => ({ fact: 'made', all: true, stage: 'base', ...pieceIn(match) }),
  ],
  [`(ok|so)? <s:slashed> (of)? (the)? (<p:piece>)? ${be}{0,2} ${done}`, outOf],
  [`${done} <s:slashed> (of)? (the)? (<p:piece>)?`, outOf],
  [`${did} <s:slashed> (of)? (the)? (<p:piece>)?`, outOf],
  ['<s:slashed> (<p:piece>)? (so far|now|complete)', outOf],
  ["(we're|were|we are|i'm|im|now|currently|sitting|up) (at|on|to) <s:slashed> (of the)? (<p:piece>)? (now|so far)?", atShare],
  ['<p:piece> (:|-|at|are|now)? <n:count> (of|out of) (the)? <m:count>', outOf],
  [
    `(${did})? <n:count> (<p:piece>)? (<piece>)? (out of|of|outta|outa|from (the|our|all)) (the|our|all|those|these|my|them)? <m:count> (<material>)? (<p:piece>)? ${be}{0,2} (${done})?`,
    outOf,
  ],
  // "6 bouts from 12" may be a price.
  [`<n:count> (<p:piece>)? from <m:count> (<material>)? (<p:piece>)? ${be}{0,2} ${done}`, outOf],
  [
    '(remade|redid|redone|had to (redo|remake|replace|rebuild|rewire)|re-made|remaking|replaced|remake|rebuilt|rewired|re-wired|reworked|refixed) (the|all|those|both|them|these)? <n:count> (<filler>)? (<p:piece>|ones|duds)? (that|which)? (broke|snapped|broken|fell|were broken|got broken|apart|got squashed|were damaged|duds)?',
    again,
  ],
  [`(the)? last (few)? (of)? (the|them|my|our) <p:piece> ${be}{0,2} ${done}`, allOf],
  ["(thats|that's|that is) the last (of|few)? (the|them|those|of)? (<p:piece>)? (done|made|finished|boxed|off the bench|now)?", allOf],
  [
    '(remade|redid|rebuilt|replaced|rewired|redone) (the|that) (one|broken one|snapped one|<p:piece>) (that|with|which) (the|a|was|had|got|is)?',
    (match) => ({ fact: 'made', count: 1, remade: true, ...pieceIn(match) }),
  ],
  [
    `(remade|redid|rebuilt|replaced|rewired|redone|fixed|mended) (the|that|this) (${goneWrong}) (one|<p:piece>)`,
    (match) => (/[^s]s$/.test(match.kept['p']?.text ?? '') ? undefined : { fact: 'made', count: 1, remade: true, ...pieceIn(match) }),
  ],
  [
    '(made|did|done) <n:count> (more|new|others|extra)? (<p:piece>|ones|replacements)? (to replace|in place of|instead of) (the|it|them|those)? (broken|snapped)? (<q:piece>|ones)?',
    // "did 8 bouts instead of corsages" makes none again.
    (match) => {
      const { p, q } = match.kept;
      if (p !== undefined && q !== undefined && p.means['piece'] !== q.means['piece']) return counts(match);
      return again(p === undefined && q !== undefined ? { ...match, kept: { ...match.kept, p: q } } : match);
    },
  ],
  ['(made|did|done) <n:count> (<p:piece>)? (replacements|replacement) (<p:piece>)?', again],
  // "half done, thats 12 bouts"
  [
    "(half|halfway|about half|half of them) (done|made|finished|there) (,|-|so|and){0,2} (that's|thats|that is) <n:count> (<p:piece>)? (done|made|finished)?",
    sofar,
  ],
  // "tray 3 done, thats 36": what is in all the trays
  [
    "(tray|trays|box|crate|board|rack|shelf|batch) (<plain>)? (is|are|all|now){0,2} (done|finished|packed|boxed|full|complete|made) (,|-|and|;){0,2} (that's|thats|that is|that makes|makes|makes it|so|so that's) <n:count> (<p:piece>)? (all up|in total|so far|now|done|made|altogether)?",
    (match) => (/^(more|extra|left|to)$/.test(match.kept['p']?.text ?? '') ? undefined : sofar(match)),
  ],
  ['<n:count> (of them)? (<material>)? (<p:piece>)? (done|made|finished)? and counting', sofar],
  // "10 nos corsage over": finished, in India
  ['<n:count> (nos|pcs|pieces) (<material>)? (<p:piece>)? over (already|only|sir|madam|now)?', counts],
  // "15 boutonnieres down"
  ['<n:count> (<material>)? <p:piece> down (so far|already|today|now|\\.|!)', counts],
  // "we got 27 corsages out"
  [
    '(got|getting) (about|all|another|the)? <n:count> (of the|more)? (<material>)? <p:piece> (out|out the door|off the bench|through)',
    counts,
  ],
  ['<n:count> (replacements|replacement) (<p:piece>)? (are|is|all|now)? (made|done|finished|ready)', again],
  [
    '(remade|redid|redone|rebuilt|replaced|rewired) both (of)? (the|them)? (<p:piece>)?',
    (match) => ({ fact: 'made', count: 2, remade: true, ...pieceIn(match) }),
  ],
  ['(re|re-) - (did|made) (the)? <n:count> (<p:piece>)?', again],
  [
    `<n:count> (x|nos|pcs|more|of the)? (<p:piece>)? (<piece>)? ${be}{0,2} ${done} (out of|of|from|outta) (the|our|all|a total of)? <m:count>`,
    outOf,
  ],
  [`${did} <n:count> (<p:piece>)? (out of|of|from|off the) (the|our|all|those|these|my|them)? <m:count>`, outOf],
  ['<n:count> (of)? (the|them)? (<p:piece>)? (remade|redone|replaced|rebuilt)', again],
  [
    `(none|nothing|zero|nil|zilch|no (<p:piece>)) (of them|of the (<p:piece>)?|of the <piece>|is|are|at all|have been|been|got|is getting|getting)? ${done} (yet|today|so far|at all)?`,
    none,
  ],
  [
    "<p:piece> (are|is|have|has|were)? (not|haven't|havent|hasn't|hasnt|still not|yet to be|aren't|arent) (been|yet)? (even)? (started|begun|touched|done yet|made yet)",
    none,
  ],
  [`not (a single|one|a|any|even one) (one|of them|single one)? (is|been|yet)? ${done} (up)? (yet)?`, none],
  [
    "(havent|haven't|not|didnt|didn't|have not|did not|hasnt|hasn't) (made|done|started|get|got|do|make|even started|begun|(finished|finish) (any|one|a single one|anything)) (any|one|a single one|anything|a thing)? (of)? (the|them)? (<p:piece>)? (done)? (yet|today|at all)?",
    (match) => (match.end - match.start >= 3 || match.kept['p'] !== undefined ? none(match) : undefined),
  ],
  ["(havent|haven't|have not|not|hasnt|hasn't) (even)? (started|begun)", none],
  ['(nothing|none|zero|nil|no progress) (done)? (made)? (today|yet|yesterday|this morning|so far)', none],
  ['still (on|at|stuck on|sitting on|sitting at) (zero|nil|nothing|none|0|nowt)', none],
  ['(none of the|no|zero|nil) <p:piece> (done|made)? (at all)? (yet|so far|as yet)', none],
  ['(none of the|no|zero|nil) <p:piece> (done|made|started|finished|boxed) at all', none],
  [
    '(did|made|done) <n:count> (,|and|&|then)? <word> (did|made|done|has done|has made) <m:count>',
    (match) => ({ fact: 'made', count: amountOf(match.kept['n']) + amountOf(match.kept['m']) }),
  ],
  [`(half|half of) (the|those|our|of the)? <m:count> (<material>)? (<p:piece>)? ${be}{0,2} ${done}`, share('0.5')],
  [
    '(add|put|stick|chuck) (another)? <n:count> (more)? (<p:piece>)? (to|on|onto|in) (the|my|our)? (tally|done|finished|made|completed|boxed) (pile|count|tally|list|box|total)?',
    counts,
  ],
  // "tick off 4 lapels", "mark the crowns off"
  [`(tick|mark|cross|check) off (another|about)? ${counted}`, counts],
  [`(tick|mark|cross|check) (another|about)? ${counted} off`, counts],
  ['(tick|mark|cross|check) off (all)? (the|all the|those|my|our) <p:piece>', allOf],
  ['(tick|mark|cross|check) (all)? (the|all the|those|my|our) <p:piece> off', allOf],
  [`<p:piece> (are|is|all|now){0,2} ${done} (-|:|=|x|,)? (x)? <n:count> (nos|no|pcs|pieces|off|in number)`, counts],
  [`<p:piece> (are|is|all|now){0,2} ${done} (-|:|=|x) <n:count>`, counts],
  [`(the|all)? (of)? (the|those|my|our)? <p:piece> (are|is|have|has|now|were|'s|as)? (all|now|been|fully){0,3} ${done}`, allOf],
  ['<p:piece> (-|:|,)? (all)? (done|finished|complete|completed|ready)', allOf],
  [
    `(all|every|all of) (the|our|of the|of)? (last)? (single)? (of)? <p:piece> (are|is|have been|now|been|has been|all|got)? ${done}`,
    allOf,
  ],
  ...lastForms,
  ...clientForms,
  [
    "(just|we|i|we've|i've|ive|weve|have|and|ok|all|finally)? (finished|done|completed|did|made|boxed|wrapped up|finished off|polished off) (with)? (all|every)? (of)? (the|all the|my|our|those|last of the|rest of the|every) (last)? (of)? (the)? (<material>)? <p:piece>",
    allOf,
  ],
  [
    "(<all>|everything|all|all of them|the lot|them all|whole lot|whole order|whole thing|every last one|every one|all of it|all the pieces|everything's|the lot's|whole lot's|whole order's|whole thing's|full order|entire order) (is|are|now|has been|have been|been|'s)? (all)? (done|finished|made|boxed|complete|completed|packed)",
    allOf,
  ],
  ['(done|finished|made|completed|boxed) (with)? (<all>|the lot|them all|all of them|everything|for the lot|all|all of it)', allOf],
  [
    `(that's|thats|that is)? (all|the whole) <n:count> (of)? (the|them)? (<material>)? (<p:piece>)? ${be}{0,2} ${done}`,
    (match) => ({ ...(counts(match) as object), all: true }) as Unworded,
  ],
  [
    "(that's|thats|that is|we're|were) (us|me|we) (on|at|up to|now on|now at|sitting at) <n:count> (<p:piece>)? (now|so far|done|made)?",
    sofar,
  ],
  [
    "(that's|thats|that makes|that is|makes that) (now|it)? <n:count> (<p:piece>)? (<all>|in total|all up|all told|total)? (now|so far|in total|altogether|done|made|all told|finished|boxed){1,2}",
    sofar,
  ],
  ['(so|leaves|leaving|that leaves|which leaves|still|now) (us|me)? (with)? <n:count> (good|usable|sound|perfect) (ones|<p:piece>)', sofar],
  [
    '<n:count> (<p:piece>)? ((still)? (good|usable|intact|sound) (left|ones left|remaining)|left (that are|still)? (good|usable|intact|sound))',
    sofar,
  ],
  [
    '(<n:count> (more|extra|further) (<p:piece>)? (made|done)? (since|after)|(another|a further|further) <n:count> (<p:piece>)? (made|done)? since) (lunch|breakfast|tea|then|yesterday|this morning|noon|midday|smoko|last time|last count|<time>)',
    counts,
  ],
  [
    '<n:count> (<p:piece>)? (made|done|completed|finished|complete|ready|in the box|boxed)? (so far|up to now|up till now|to date|till now|til now|until now|as of now|upto now|at this point|sofar|thus far|as yet)',
    sofar,
  ],
  // "now max 30" is a limit.
  ["(<reaching>|up to|now at|now on|we're at|were at|we're on|were on) <n:count> (<p:piece>)? (now|done|made|so far)", sofar],
  [`${did} <upTo> <n:count> (<p:piece>)?`, sofar],
  ["(we're|we are|i'm|im|now) <reaching> <n:count> (<p:piece>)?", sofar],
  // "halfway through the 30 bouts"; of 15 there is no half
  [
    '(halfway|half way|half - way) (there|done)? (through|thru|on|with|into) (the|our|my|these|those|all)? <m:count> (<material>)? (<p:piece>)?',
    (match) => (amountOf(match.kept['m']) % 2 === 0 ? share('0.5')(match) : undefined),
  ],
  [`(half|halfway|half way) ${shareOf}`, share('0.5')],
  [`<f:percent> (of (the|them|our)?)? (<p:piece>)? (is|are|way)? (through|there|thru|${doneWord})`, percentDone],
  [`(${didWord}) <f:percent> (of)? (the|them)? (<p:piece>)?`, percentDone],
  [`(a third|third|one third) ${shareOf}`, share('0.333')],
  [`(two thirds) ${shareOf}`, share('0.667')],
  [`(a quarter|quarter) ${shareOf}`, share('0.25')],
  [`(three quarters) ${shareOf}`, share('0.75')],
  ['(did|made|done|finished|got) half (of)? (the|them) (<p:piece>)? (done)?', share('0.5')],
  [`(<p:piece>) (:|-|=|,|x)? (now)? <n:count> (are|is|now)? ${done}`, counts],
  [`(<p:piece>) (:|-|=)? ${did} <n:count>`, counts],
  [`(all)? (the)? <p:piece> for (the|our|all|all the)? <n:count> <role> (are|is|all|now|have been){0,2} ${done}`, counts],
  // "2 tiny corsages done"
  [
    `<n:count> (more|of the|of)? <u:unlisted> (<v:unlisted>)? <p:piece> ${be}{0,2} ${done}`,
    (match) =>
      [match.kept['u'], match.kept['v']].some(
        (token) => token !== undefined && (isOtherThings(token) || /^(spares?|extra)$/.test(token.text)),
      )
        ? undefined
        : counts(match),
  ],
];
export const finishedForms: readonly Form[] = forms.map(([source, build]) => ({ form: pattern(source), build }));
