// The numbers that a correction takes back: one for whatever is new, or a count and a price ("20 bouts at 14 not 18 at 15").

import { leftOut } from '../facts/left-out.ts';
import type { Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { firstWhere, type NumberRead, type Token } from '../text/token.ts';
import { inZones, type Zones } from './zones.ts';

export interface OldNumbers {
  readonly at: number; // where the first stands, or -1
  readonly from: NumberRead | undefined; // what a count was
  readonly price: NumberRead | undefined; // what a price was
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
  const token = tokens[second];
  const priced =
    token !== undefined &&
    (token.number?.form === 'money' || /^(at|@)$/.test(tokens[second - 1]?.text ?? '') || tokens[second + 1]?.means['each'] !== undefined);
  return { at, from, price: priced && from?.form === 'plain' ? token.number : from };
};

/** "make it 20 at 14, 3 for kids": whether a number that no change holds shows that not all is understood. */
export const unsaid = (tokens: readonly Token[], part: Part, facts: readonly Unworded[]): boolean =>
  facts.some((fact) => fact.fact === 'change' && (fact.what === 'count' || fact.what === 'price')) &&
  leftOut(tokens, part, facts).length > 0;
