// Wearers said against the list there is: "one usher less", "another bridesmaid", "no dads after all".

import { firstAt, pattern } from '../pattern.ts';
import { type Finding, found, type Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { isPlural, nameOf } from './role-counts.ts';

const lead =
  "(sorry|oops|ok|oh|so|actually|update|fyi|argh|,|-|:|bride says|groom says|she says|they say|client says|turns out|it's|its|there's|there is|there will be|we have|we've|they have|that's|thats|now|and|just|can we|please|pls){0,4}";
const end = '(please|pls|sorry|thanks|ta|in the end|after all|now|then|today|too|as well|anymore|any more|,){0,3}';
const many = '(<n:count>|one|a|an)';
const of = '(of)? (the|our|those|his|her)?';
const gone =
  "(has|have|had|is|are|'s|just){0,2} (dropped out|pulled out|bailed|bailed out|cancelled|not coming|isn't coming|isnt coming|aren't coming|can't come|cant come|can't make it|cant make it|cannot make it|not wearing one|out)";

const fewer = [
  `${lead} ${many} <r:role> (less|fewer|down|short|off) ${end}`,
  `${lead} ${many} (less|fewer) <r:role> ${end}`,
  `${lead} (drop|minus|lose|losing|lost|remove|scratch|take off|take out|scrap|down|less|cut) ${many} ${of} <r:role> ${end}`,
  `${lead} ${many} ${of} <r:role> ${gone} ${end}`,
  `${lead} (the|an|a) <r:role> ${gone} ${end}`,
].map((source) => pattern(source));
const more = [
  `${lead} ${many} (more|extra|additional|further) <r:role> ${end}`,
  `${lead} (another|an extra|an additional) (<n:count>)? <r:role> ${end}`,
  `${lead} (add|adding|add in|plus) (another|an extra|${many}) (more|extra)? <r:role> (to the (list|wearers|party))? ${end}`,
].map((source) => pattern(source));
const none = [
  `${lead} no <r:role> ${end}`,
  `${lead} no (more|longer any|longer a) <r:role> ${end}`,
  `${lead} (the|our)? <r:role> (aren't|arent|are not|won't be|wont be|isn't|isnt|is not|not) (wearing|having|getting|needing) (one|any|them|flowers|anything) ${end}`,
].map((source) => pattern(source));

// "no mum", "no lads" may be said to them.
const spokenTo =
  /^(bride|groom|mother|father|brother|sister|friend|man|men|woman|women|boy|boys|girl|girls|partner|son|daughter|uncle|aunt|cousin|captain|president|guest|guests|rest|person|people|grandmother|grandfather|child|children)$/;
const kin = /^(mother|father|grandmother|grandfather|brother|sister|uncle|aunt|cousin)$/;

/** More or fewer of one kind of wearers, where all of the part says so. */
export const oneLess = (reader: Reader, part: Part): Finding | undefined => {
  for (const [by, forms] of [
    ['fewer', fewer],
    ['more', more],
    ['none', none],
  ] as const) {
    const match = firstAt(forms, reader.tokens, part.start, part.end);
    const { n, r } = match?.kept ?? {};
    const role = r?.means['role'];
    if (match?.end !== part.end || r === undefined || role === undefined) continue;
    if (n?.number !== undefined && (n.number.max !== undefined || n.number.or !== undefined || n.number.approx === true)) continue;
    if (spokenTo.test(role) && !(kin.test(role) && isPlural(r.text))) return undefined;
    // "the ushers dropped out": how many is not said.
    if (
      by === 'fewer' &&
      n === undefined &&
      isPlural(r.text) &&
      !reader.tokens.slice(match.start, match.end).some(({ text }) => text === 'one')
    )
      return { start: part.start, end: part.end, held: true };
    const count = n === undefined ? 1 : Number(n.number?.amount);
    return found(reader, part.start, part.end, [
      {
        fact: 'wearers',
        wearers: [{ wearer: nameOf(role, by === 'none' && isPlural(r.text) ? 2 : count), count: by === 'none' ? 0 : count }],
        by,
      },
    ]);
  }
  return undefined;
};
