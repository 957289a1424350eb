// The ways to say whether tax is in the price, goes on top, or is none: "inc GST", "+ VAT", "no vat on this". The first that fits decides.

import type { FactOf } from '../fact.ts';
import { pattern } from '../pattern.ts';
import { service } from './covers-delivery.ts';
import { unregistered } from './not-registered.ts';
import { bothTaxes } from './tax-doubts.ts';

export type Basis = NonNullable<FactOf<'tax'>['basis']>;

const rate = '(@|at|of)? (<rate:percent>)?';
const rateBehind = '(@|at|of|-|\\(|is){0,2} <rate:percent> (\\))?';
const extra = `(${service}|ribbon|ribbons|pins|bows|box|gift box|sundries|labour|labor) (fee|charge|charges|cost|on site|on the day|to (the)? <word>)?`;
const isNot =
  "(is|are|was|were|am)? not|isn't|isnt|is n't|wasn't|wasnt|weren't|werent|aren't|arent|ain't|aint|never|is never|was never|isn't actually|isnt actually";
const doesNot =
  "isn't|isnt|aren't|arent|wasn't|wasnt|weren't|werent|ain't|aint|doesn't|doesnt|does not|don't|dont|do not|didn't|didnt|did not|won't|wont|can't|cant";
const thePrices =
  '((any|all)? (of)? (the|those|these|that|this|my|our|any|her|your){1,2} (price|prices|pricing|quote|quotes|figure|figures|number|numbers|total|totals|amount|amounts|cost|costs|rate|rates)|it|them|there|those|these|that|this)';
export const taxForms: readonly [Basis, ReturnType<typeof pattern>][] = (
  [
    [
      'included',
      `no <tax:tax> (to add|on top|extra|to go on) (,|-|,)? (it's|its|it is|that's|thats|as it's|already|cos it's){0,2} (all|already)? (in|<included>|inside|in there|in it|in that|in the price) (there|it|that|the price|already)?`,
    ],
    [
      'on top',
      `(no|without) (the)? ${rate} <tax:tax> (on|in|included|added|put|charged)? (it|that|this|there|them)? (on|in)? (yet|as yet|so far|at the moment)`,
    ],
    ['on top', `(no|nil) <tax:tax> (in|included|inc) (it|that|there|this|the price)?`],
    [
      'on top',
      `(hasn't|hasnt|haven't|havent|hadn't|doesn't|doesnt|does not|don't|dont|not|isn't|isnt) (got|have|having|with|carry|cover|covering) (the|any)? ${rate} <tax:tax> (in|on)? (it|there|them|that|the price)?`,
    ],
    ['included', `<tax:tax> (is|are|'s|was)? (already on|on) (it|there|them|that|the price) already`],
    ['included', `<tax:tax> (is|are|'s)? already on (it|there|them|that)?`],
    [
      'included',
      `<tax:tax> ${rate} (is|are|'s|all|already|been){0,2} (covered|taken care of|factored in|rolled in|baked in|worked in|allowed for|accounted for|absorbed|counted|bundled|bundled in|all in|thrown in|sorted)`,
    ],
    ['included', `(counting|factoring in|allowing for|covers|covering) (the)? ${rate} <tax:tax>`],
    [
      'on top',
      `<tax:tax> ${rate} (is|are|gets|comes|being|billed|charged|invoiced|payable|paid|will be|to be){0,2} (added|on top|<onTop>|separately|over and above|at checkout|outside|at the till|on the invoice|afterwards)`,
    ],
    [
      'on top',
      `(w|with) (/)? (the)? ${rate} <tax:tax> (being|getting|to be|to get|going|put|be){0,2} (on top|on the top|<onTop>|extra|additional|separate|separately|added|charged|applied|to add|to go on|to come) (on)? (top|at the end|after)?`,
    ],
    // "including delivery and VAT", "not including delivery or gst", "gst and delivery included"
    [
      'on top',
      `(not <included>|not with|without|excluding|excludes|excl|ex|before|plus|+|add) (the)? ${extra} (and|&|n|or|,){1,2} (the)? ${rate} <tax:tax>`,
    ],
    ['included', `(<included>|with|w) (the)? ${extra} (and|&|n|,){1,2} (the)? ${rate} <tax:tax>`],
    ['included', `${rate} <tax:tax> (and|&|\\+|n|,){1,2} (the)? ${service} (is|are|both|all){0,2} (<included>|in the price|in)`],
    ['none', `(no|zero|nil|without any) <tax:tax> (on this|on it|charged|applies|to pay)?`],
    ['none', `<tax:tax> (-)? (free|exempt)`],
    ['none', `(non|not) (-)? taxable`],
    ['none', 'nontaxable'],
    ['none', unregistered],
    ['none', "(don't|dont|do not|never) (have to|need to)? charge (any|the)? <tax:tax>"],
    [
      'on top',
      `(not|without|never|${doesNot}) (<included>|include|including|counting|allowing for|adding|cover|covering) (the|any)? ${rate} <tax:tax>`,
    ],
    [
      'on top',
      `<tax:tax> (is|are|isn't|isnt)? (not)? (excluded|extra|on top|additional|separate|separately|exclusive|excl|added|to be added|to add|on top of that|to go on|goes on top|as applicable|applicable|not <included>|isn't <included>|excluding)`,
    ],
    [
      'on top',
      `<tax:tax> ${rate} (is|has|needs|will|should|still|yet){0,2} (to)? (be|go|come|going|getting|get)? (on|added|add|adding|come|applied) (on|to)? (top|that|it|this|them)?`,
    ],
    // "gst is NOT in those prices", "hst wasnt part of the quote"; "vat is not in the drawer" tells of something else.
    ['on top', `<tax:tax> (${isNot}) (<included>|counted|figured|factored|built)? (in|on|inside|part of|added to) ${thePrices}`],
    ['on top', `<tax:tax> (not|isn't|isnt|hasn't been|hasnt been|not been) (on|in|added|put on) (it|that|there|them)? (yet)?`],
    ['on top', `<tax:tax> (:|=|-) (<onTop>|extra|on top|added|not <included>|excluded)`],
    ['included', `<tax:tax> (:|=|-) (<included>|in|yes)`],
    ['included', `(got|has|with|have) (the)? <tax:tax> (in|on) (it|there|them|already)`],
    ['included', `(w|with) (/)? (the)? ${rate} <tax:tax>`],
    ['on top', `<tax:tax> ${rate} (is|are)? (is|are)? (not|isn't|isnt|aint) (yet)? <included> (yet|so far|in that|in those)?`],
    ['on top', `<tax:tax> ${rate} (is|are)? (not <included>|to be added|on top|extra|additional|to go on|to add|added on|on it)`],
    ['on top', `(plus|+|and|&|add|then|w|with) (the|a)? <rate:percent> <tax:tax> (on top|extra)?`],
    // "ex VAT at 13.5%", "+ vat (23%)"
    [
      'on top',
      `(before|without|net of|pre|<onTop>|plus|+|add|and|then) (.)? (the|applicable|any)? <tax:tax> ${rateBehind} (on top|extra)?`,
    ],
    ['on top', `(plus|+|add) (the|applicable|any)? <tax:tax> ${rate} (on top|extra)?`],
    [
      'on top',
      `(before|excluding|exclusive of|exclusive|excludes|excl|excl.|exc|ex|exl|exlc|less|without|w/o|net of|minus|pre|ex.) (.|-|the|all)? (the)? ${rate} <tax:tax>`,
    ],
    ['on top', `<onTop> (.)? (of)? (the)? ${rate} <tax:tax>`],
    ['on top', `(add|and) <tax:tax> (on top|to that|to it|after)`],
    ['on top', `<rate:percent> <tax:tax> (on top|extra|additional|to add|to be added|is extra)`],
    ['on top', `<tax:tax> (is|at|@|of|:)? <rate:percent> (on top|extra|additional|to add|to be added)`],
    ['included', `(<included>|with|w) (.)? (of|the)? <tax:tax> ${rateBehind}`],
    ['included', `(<included>|with|after) (.)? (of|the|all)? (the)? ${rate} <tax:tax>`],
    [
      'included',
      `<tax:tax> ${rate} (is|are|all|was|already)? (already|all)? (<included>|in there|in it|inside|in that|paid|in the price|built in|in)`,
    ],
    ['included', `<rate:percent> <tax:tax> <included>`],
    ['included', `all taxes (in|<included>)`],
    [
      'included',
      `(price|prices|that|it|they|this) (already|all|both)? (has|have|includes|include|got|got the) (the)? <rate:percent> (in|on|included) (it|there|them|that|already)?`,
    ],
    ['on top', `(pre|pre-|before) (-)? tax`],
    ['on top', 'pretax'],
    ['on top', 'untaxed'],
  ] as const
).map(([basis, source]) => [basis, pattern(source.replaceAll('<tax:tax>', bothTaxes))]);
