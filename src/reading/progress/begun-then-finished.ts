// "8 corsages wired but only 3 finished": three of those corsages, however far the others are.

import type { PieceKind } from '../../handbook/pieces.ts';
import type { Unworded } from '../phrase.ts';
import type { Token } from '../text/token.ts';
import type { Group } from './work-together.ts';

type Made = Extract<Unworded, { fact: 'made' }>;
const only = ({ facts: [fact, second] }: Group): Made | undefined =>
  fact?.fact === 'made' && second === undefined && fact.count !== undefined && fact.remade !== true && fact.of === undefined
    ? fact
    : undefined;
const bounds = /^(but|only|just)$/;

const kindBegun = (tokens: readonly Token[], before: Group | undefined, group: Group): PieceKind | undefined => {
  const [begun, further] = [before === undefined ? undefined : only(before), only(group)];
  if (before === undefined || begun?.stage === undefined || further === undefined || further.piece !== undefined) return undefined;
  const fewer = (further.count ?? 0) < (begun.count ?? 0) && further.stage !== begun.stage;
  return fewer && tokens.slice(before.start, group.end).some(({ text }) => bounds.test(text)) ? begun.piece : undefined;
};

/** The groups, those that tell how many of the begun ones are further with the kind of these. */
export const withKindBegun = (tokens: readonly Token[], groups: readonly Group[]): readonly Group[] =>
  groups.map((group, at) => {
    const piece = kindBegun(tokens, groups[at - 1], group);
    return piece === undefined ? group : { ...group, facts: group.facts.map((fact) => ({ ...fact, piece }) as Unworded) };
  });
