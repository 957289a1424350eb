// Which piece a wearer gets when nobody said: the usual for the role if it is in the order, else what the order leaves room for. Always marked assumed.

import type { PieceKind } from '../handbook/pieces.ts';
import { wearerCustom } from '../handbook/wearing.ts';
import { assumed, type Known, said } from '../values/known.ts';
import type { OrderCount } from './order-counts.ts';

export type WhyAssumed =
  | 'usual for the role'
  | 'only kind ordered' // not the usual for the role, or the role is unknown
  | 'most of the order' // the role is unknown and several kinds are ordered
  | 'nothing ordered';

export interface WearerPiece {
  readonly piece: Known<PieceKind>; // as the order counts it
  readonly wornAs: PieceKind; // the closer word where the order has a looser one: "corsage" on a wrist
  readonly why?: WhyAssumed; // only where assumed
}

const corsages: readonly PieceKind[] = ['corsage', 'wrist corsage', 'pin corsage'];

/** The kind of the order that this wish is served from: itself, another word for a corsage, or pieces nobody has named a kind for. */
const orderedAs = (wish: PieceKind, order: readonly OrderCount[]): PieceKind | undefined => {
  const kinds = order.map(({ piece }) => piece);
  if (kinds.includes(wish)) return wish;
  const likeIt = corsages.includes(wish) ? kinds.find((kind) => corsages.includes(kind) && [kind, wish].includes('corsage')) : undefined;
  return likeIt ?? (kinds.includes('unspecified') ? 'unspecified' : undefined);
};

/** The closer of the two words for one piece. */
const closer = (wish: PieceKind, ordered: PieceKind): PieceKind => (wish === 'corsage' || wish === 'unspecified' ? ordered : wish);

const served = (wish: PieceKind, ordered: PieceKind, known: (piece: PieceKind) => Known<PieceKind>, why?: WhyAssumed): WearerPiece => ({
  piece: known(ordered),
  wornAs: ordered === 'unspecified' ? wish : closer(wish, ordered),
  ...(why === undefined ? {} : { why }),
});

export const wearerPiece = (role: string, wish: PieceKind | undefined, order: readonly OrderCount[]): WearerPiece => {
  if (wish !== undefined && wish !== 'unspecified') return served(wish, orderedAs(wish, order) ?? wish, said);
  const usual = wearerCustom(role)?.usual ?? [];
  for (const kind of usual) {
    const ordered = orderedAs(kind, order);
    if (ordered !== undefined) return served(kind, ordered, assumed, 'usual for the role');
  }
  const [first] = order;
  if (first !== undefined && order.length === 1) return served(first.piece, first.piece, assumed, 'only kind ordered');
  const [habit] = usual;
  if (habit !== undefined) return served(habit, habit, assumed, 'usual for the role');
  const most = order.reduce((top, one) => (one.count > top.count ? one : top), first ?? { piece: 'unspecified', count: 0 });
  return served(most.piece, most.piece, assumed, first === undefined ? 'nothing ordered' : 'most of the order');
};
