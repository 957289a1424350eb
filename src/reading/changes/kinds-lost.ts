// A kind that a correction names and says nothing of: "make it 5 crowns and no combs for the girls", "the 5 crowns, in wire like the combs". What is read of the others may be wrong without it.

import type { Unworded } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import type { Token } from '../text/token.ts';
import { inZones, type Zones } from './two-zones.ts';

const stays = /^(same|ok|okay|fine|stay|stays|staying|unchanged|as|still|good|right|correct|happy)$/; // "bouts are 9 now, corsages same"

// "make it 20 bouts and no corsages, 14 each": none of them, and no price of theirs.
const isDenied = (tokens: readonly Token[], at: number): boolean =>
  tokens[at - 1]?.text === 'no' && /^(and|&|n|but|with)$/.test(tokens[at - 2]?.text ?? '');

/** Whether a kind meant now is in none of the changes, beside one that is. */
export const losesKind = (tokens: readonly Token[], { start, end }: Part, { fresh }: Zones, facts: readonly Unworded[]): boolean => {
  const told = new Set(facts.flatMap((fact) => (fact.fact === 'change' && fact.piece !== undefined ? [fact.piece as string] : [])));
  if (told.size === 0 || !facts.some((fact) => fact.fact === 'change' && (fact.what === 'count' || fact.what === 'price'))) return false;
  return tokens.slice(start, end).some(({ means: { piece } }, at) => {
    if (piece === undefined || piece === 'unspecified' || !inZones(fresh, start + at)) return false;
    if (isDenied(tokens, start + at)) return true;
    if (told.has(piece)) return false;
    return !tokens.slice(start + at + 1, start + at + 4).some(({ text }) => stays.test(text));
  });
};
