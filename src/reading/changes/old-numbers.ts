// The numbers that a correction takes back: one for whatever is new, or a count and a price ("20 bouts at 14 not 18 at 15").

import { leftOut } from '../facts/left-out.ts';
import { pattern } from '../pattern.ts';
import type { Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, isRangeOrChoice, isSingle, type NumberRead, type Token } from '../text/token.ts';
import { inZones, type Zones } from './two-zones.ts';

export interface OldNumbers {
  readonly at: number; // where the first stands, or -1
  readonly from: NumberRead | undefined; // what a count was
  readonly price: NumberRead | undefined; // what a price was
  readonly onlyPrice: boolean; // the one that stands there was a price
}

export const oldNumbers = (tokens: readonly Token[], part: Part, zones: Zones): OldNumbers => {
  // "it was 14 march now we need 30 bouts": the number of a day was no count.
  const ofDay = (index: number): boolean => [index - 1, index + 1].some((by) => tokens[by]?.means['month'] !== undefined);
  const old = (from: number): number =>
    firstWhere(
      tokens,
      from,
      part.end,
      (token, index) => inZones(zones.old, index) && !ofDay(index) && (token.number?.form === 'plain' || token.number?.form === 'money'),
    );
  const at = old(part.start);
  const from = at < 0 ? undefined : tokens[at]?.number;
  const second = at < 0 ? -1 : old(at + 1);
  const surely = (index: number): boolean =>
    tokens[index]?.number?.form === 'money' || (index >= 0 && tokens[index + 1]?.means['each'] !== undefined);
  const priced = surely(second) || (second > 0 && /^(at|@)$/.test(tokens[second - 1]?.text ?? ''));
  const price = priced && from?.form === 'plain' ? tokens[second]?.number : from;
  // "$23 or $25, should be 32": which of them it was is not said.
  const sure = (number: NumberRead | undefined): NumberRead | undefined => (isSingle(number) ? number : undefined);
  return { at, from: sure(from), price: sure(price), onlyPrice: second < 0 && surely(at) };
};

// "24 bouts now, scrap the 4 corsages"
const takes = /^(scrap|scratch|scrub|drop|dropping|cancel|cancelling|lose|losing|ditch|remove|axe|nix|skip|delete|scrapping|minus)$/;
const takesOff = (tokens: readonly Token[], at: number): boolean => {
  let before = at - 1;
  while (/^(the|those|these|our|all|off|out|of)$/.test(tokens[before]?.text ?? '')) before -= 1;
  // "4 corsages scrapped"
  if (
    tokens
      .slice(at + 2, at + 5)
      .some(({ text }, by) => /^(scrapped|cancelled|canceled)$/.test(text) && tokens[at + 1 + by]?.means['piece'] !== undefined)
  )
    return true;
  const off = /^(off|out)$/.test(tokens[before + 1]?.text ?? '') && /^(take|taking|leave|knock)$/.test(tokens[before]?.text ?? '');
  // "drop the 4 corsages to 2" says how many stay.
  const stays = tokens.slice(at + 1, at + 5).some(({ means, text }) => /^(to|down)$/.test(text) || means['upTo'] !== undefined);
  return !stays && (off || takes.test(tokens[before]?.text ?? ''));
};

/** "17 bouts instead of 15, and 2 more corsages": 1 where the count adds to what there is, -1 where it takes off. */
export const differenceSaid = (tokens: readonly Token[], at: number): number => {
  if (takesOff(tokens, at)) return -1;
  if (/^(add|adding|plus)$/.test(tokens[at - 1]?.text ?? '')) return 1;
  const next = tokens[at + 1]?.text ?? '';
  return /^(more|extra|additional)$/.test(next) ? 1 : /^(fewer|less)$/.test(next) ? -1 : 0;
};

// "17 bouts instead of 15, two more ushers": who makes the difference, and no further change.
const reason = pattern(
  "(,|-|;|\\(|as|because|cos|coz|since|there's|theres|there are|we have|they have|got|they've|theyve|found|added|couple|they|bride|client|family|planner|she|he|have|has|just|forgot|remembered|invited|lost|asked){1,5} (<k:count>|a|an|another|one) (more|extra|additional|new|further|fewer|less)? (<role>|cousins|cousin|guests|uncles|aunts|nephews|nieces|brothers|sisters|men|guys|lads|girls) (now|coming|added|too|after all|than (i|we) (said|thought)|\\)){0,2}",
);
/** The part without the reason behind a change that explains it. */
export const upToReason = (tokens: readonly Token[], part: Part, facts: readonly Unworded[]): Part => {
  const why = reason.in(tokens, part.start + 1, part.end);
  if (why?.end !== part.end) return part;
  const said = why.kept['k']?.number;
  const more = tokens.slice(why.start, why.end).every(({ text }) => !/^(fewer|less)$/.test(text));
  const by = Number(said?.amount ?? 1) * (more ? 1 : -1);
  const explained = facts.some(
    (fact) =>
      fact.fact === 'change' &&
      fact.what === 'count' &&
      fact.to !== undefined &&
      fact.from !== undefined &&
      Number(fact.to) - Number(fact.from) === by,
  );
  return !isRangeOrChoice(said) && explained ? { ...part, end: why.start } : part;
};

/** "make it 20 at 14, 3 for kids": whether a number that no change holds shows that not all is understood; a range taken back may go. */
export const unsaid = (tokens: readonly Token[], part: Part, zones: Zones, facts: readonly Unworded[]): boolean =>
  facts.some((fact) => fact.fact === 'change' && (fact.what === 'count' || fact.what === 'price')) &&
  leftOut(tokens, upToReason(tokens, part, facts), facts).some((at) => isSingle(tokens[at]?.number) || !inZones(zones.old, at));
