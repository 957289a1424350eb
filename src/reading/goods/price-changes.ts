// A price that was another one before: "gone up, 12 to 13.50", "was 4.60, now 5.20", "4.60 -> 5.20".

import { formOf, type Match, pattern } from '../pattern.ts';
import { placesIn } from '../text/places-in.ts';
import { firstWhere, type Token } from '../text/token.ts';

// "theyre doing it for 11.80", "got it down to 4.20", "they're charging 14 a bunch": in "got 14 stems" and "doing 3 bunches for 30" the number counts.
const seller =
  "(they're|theyre|they are|they|he's|hes|he|she's|shes|she|i'm|im|i|we're|were|we|wholesaler|market|grower|supplier|the grower|the market)? (now|have|has|just|only|is|are|today){0,2}";
const sellsAt = `${seller} (doing|does|do|selling|sells|sell|letting|lets|let|offering|offers|charging|charges|charge|asking|giving|given|gave|got|paying|pay|getting|get|knocked|dropped|brought) (me|us)? (have|take)? (it|them|that|those|these)? (go|down)? (now)? ((at|from|off) (the)? (market|auction|wholesaler|grower|van))? (for|at|to) <t:amount>`;
const asks = `${seller} (doing|selling|charging|charges|charge|asking|asks|paying) (now)? (<t:money>|<t:amount> ((a|per|/) <pack>|<each>|now|today|this week))`;
const once =
  '(was|were|used to be|used to cost) <f:amount> ((a|per|/)? <pack>|<each>)? (last (week|month|year|time|season)|before|yesterday)? (,|-|;|but|and|so|now|today|this week){0,3}';
const then =
  '(last (week|month|year|time|season|summer|winter|spring|autumn|valentines|june)|before|yesterday|in <month>|back in <month>|previously)';
/** "1.10 a stem in may": an amount of another time. */
export const toldOfThen = pattern(
  `<amount> ((a|per|/)? <pack>|<each>)? (last (week|month|year|time|season)|back in <month>|yesterday|previously)`,
);
const onceThen = `(was|were|used to be|used to cost|cost) <f:amount> ((a|per|/)? <pack>|<each>)? ${then} (,|-|;|but|and|so){0,2}`;
const sinceThen = `<f:amount> ((a|per|/) <pack>)? ${then} (,|-|;|but|and){1,2}`;
const changes = [
  '(down|up|dropped|gone|went|back|now|risen|cut|come){1,3} to <t:amount> (a|per|/)? (<pack>)? (from|was) <f:amount>',
  '<upTo> <t:amount> (a|per|/)? (<pack>)? (from|was) <f:amount>',
  '<t:amount> (a|per|/|the|an)? <pack> (,|-|\\(|now)? (they|it)? (was|used to be|used to cost|old price|old price was|previously|up from|down from|from|not|instead of|were) <f:amount>',
  '(gone|went|going|up|down|from|rise|rises|jumped|dropped|was|risen|increased|increase|increases|hike|hiked|climbed|moved|come|crept) (up|down)? (from|,|:)? <r:amount> (to|now|,) (now)? <t:amount>',
  "(was|were|used to be|used to cost) <f:amount> (a|per|/)? (<pack>)? (,|-|but|and){0,2} (is|are|it's|its|they're)? now (its|it's|is|are|at)? <t:amount>",
  "(was|were|used to be|used to cost) <f:amount> (a|per|/)? (<pack>)? (,|-|but|and){1,2} (is|are|it's|its|they're) (now)? <t:amount>",
  // "gyp was 9 last yr, 11.50 a bunch now"
  `${onceThen} (it's|its|they're|is|are)? (at|now)? <t:amount> ((a|per|/)? <pack>|<each>)? (now|today|this (week|year|season)|atm)`,
  `${onceThen} (now|today|this (week|year|season)) (it's|its|they're|is|are|at)? <t:amount>`,
  `${sinceThen} (now|today) (<t:money>|<t:amount> ((a|per|/) <pack>|<each>)?)`,
  `${once} ${sellsAt}`,
  `${once} ${asks}`,
  'now <t:amount> (,|-|\\()? (was|used to be|used to cost|old price|old price was|previously|up from|down from|from|not|instead of|were) <f:amount>',
  '<t:amount> ((a|per|/|the) <pack>|<pack>|<each>)? (today|now|this week)? (,|-|\\()? (they|it)? (was|used to be|used to cost|old price|old price was|previously|up from|down from|not|instead of|were) <f:amount>',
  '<t:money> (from|not|and not) <f:money>',
  '<t:amount> from <f:amount> (a|per|/) <pack>',
  '<t:amount> now (,|-|\\(){0,2} <f:amount> (before|previously|last (time|week|month))',
  '<r:amount> ((up|down|gone up|now) to|now) <t:amount>',
  '<r:amount> (-|=){0,2} \\> <t:amount>',
];
const changeForms = changes.map(pattern);
const bareForms = changes.map(formOf);

// "12 a bunch from 1 feb" tells a day.
const tellsDay = (tokens: readonly Token[], match: Match): boolean => tokens[match.end]?.means['month'] !== undefined;
const changeIn = (tokens: readonly Token[], start: number, end: number): Match | undefined => {
  for (const form of changeForms) {
    const match = form.in(tokens, start, end);
    if (match !== undefined && !tellsDay(tokens, match)) return match;
  }
  return undefined;
};
// Among words taken out of the message: looked through as they are, so that the places of the message stay known.
const changeAmong = (tokens: readonly Token[]): Match | undefined => {
  for (const form of bareForms) {
    const index = firstWhere(tokens, 0, tokens.length, (_, at) => form.at(tokens, at) !== undefined);
    const match = index === -1 ? undefined : form.at(tokens, index);
    if (match !== undefined && !tellsDay(tokens, match)) return match;
  }
  return undefined;
};
// "9.90 for a pack of ten now, used to be 8.80": what a pack holds is neither price.
const mayChange = /^(was|were|used|up|down|from|now|instead|before|not|gone|went|old)$/;
export const changeBeside = (
  tokens: readonly Token[],
  start: number,
  end: number,
  packed: readonly number[], // and what is said of tax
): { readonly kept: Match['kept']; readonly said: readonly number[] } | undefined => {
  const places = placesIn({ start, end });
  const ofPack = (index: number): boolean =>
    (packed.includes(index) && tokens[index]?.text !== ',') ||
    tokens[index]?.number?.form === 'length' ||
    /^[()]$/.test(tokens[index]?.text ?? '') ||
    (packed.includes(index + 1) && /^(a|an|the|per|for|\/)$/.test(tokens[index]?.text ?? ''));
  const rest = packed.length === 0 ? places : places.filter((index) => !ofPack(index));
  if (rest.length < places.length && rest.some((index) => mayChange.test(tokens[index]?.text ?? ''))) {
    const bare = rest.map((index) => tokens[index] as Token);
    const match = changeAmong(bare);
    if (match !== undefined) return { kept: match.kept, said: rest.slice(match.start, match.end) };
  }
  const whole = changeIn(tokens, start, end);
  return whole && { kept: whole.kept, said: places.slice(whole.start - start, whole.end - start) };
};
export const changeWord =
  /^(gone|went|going|up|down|from|jumped|dropped|rise|rises|risen|increased|increase|increases|hike|hiked|climbed|was|moved|crept|come|upto|up ?to)$/;

const byPart = pattern('(up|down|dropped|risen|increased|rise|increase) (by|of|about|around|another){0,2} <n:amount>');
const dearer = pattern('<money> (a|per|/)? (<pack>)? (more|less|dearer|cheaper|extra|off)');
// "picked up 3 bunches at $9": what was bought.
export const taken = /^(pick|picks|picked|picking|snap|snapped|stock|stocked|scooped|bought|mopped|loaded|hoovered)$/;

/** "up 50c a bunch", "a dollar dearer": by how much, not what it costs now. */
export const byHowMuch = (tokens: readonly Token[], start: number, end: number): Match | undefined => {
  for (let index = byPart.next(tokens, start, end); index < end; index = byPart.next(tokens, index + 1, end)) {
    const match = taken.test(tokens[index - 1]?.text ?? '') ? undefined : byPart.at(tokens, index, end);
    if (match !== undefined) return match;
  }
  return dearer.in(tokens, start, end);
};
