// Who wears what, checked against the order: nothing is made to agree, every difference is named by kind.

import type { PieceKind } from '../handbook/pieces.ts';
import type { Source } from '../handbook/sources.ts';
import { sparesSuggested, wearerCustom } from '../handbook/wearing.ts';
import type { EventState } from '../thread/event.ts';
import type { Known } from '../values/known.ts';
import { type OrderCount, orderCounts } from './order-counts.ts';
import { type Care, wearerCares } from './wearer-cares.ts';
import { type WearerPiece, wearerPiece } from './wearer-piece.ts';

export interface Wearer extends WearerPiece {
  readonly role: string; // as written
  readonly count: number;
  readonly approx?: true; // "about 7"
  readonly roleKnown: boolean;
  readonly note: string; // as written; '' for none
  readonly names: readonly string[]; // of the people, as written; may be fewer than `count`; with more of them it is not known who is meant, and there are none here
  readonly cares: readonly Known<Care>[];
}

/** One kind: how many wear it and how many are ordered. */
export interface KindCount {
  readonly piece: PieceKind;
  readonly wearers: number;
  readonly pieces: number;
  readonly over: number; // pieces less wearers: above 0 a spare or a missing name, below 0 somebody goes without
}

export type WearersAsk =
  | { readonly about: 'two grooms'; readonly count: number } // kept as written; only asked
  | { readonly about: 'more names than people'; readonly role: string; readonly count: number; readonly names: readonly string[] }
  | { readonly about: 'unknown role'; readonly role: string; readonly piece: PieceKind }
  | { readonly about: 'not the usual piece'; readonly role: string; readonly piece: PieceKind; readonly usual: PieceKind }
  | { readonly about: 'count is a range'; readonly piece: PieceKind; readonly count: number; readonly countMax: number };

export interface SparesOffered {
  readonly suggested: number; // finished pieces beyond the list; a suggestion, counted nowhere
  readonly over: number; // pieces of the order with no name, which may be these spares already
  readonly why: string;
  readonly sources: readonly Source[];
}

export interface WearersList {
  readonly wearers: readonly Wearer[]; // in the order they were written
  readonly kinds: readonly KindCount[]; // ordered kinds first, then kinds only wearers have
  readonly all: { readonly wearers: number; readonly pieces: number; readonly over: number };
  readonly differences: readonly KindCount[]; // those of `kinds` that do not agree; empty while nobody is named
  readonly asks: readonly WearersAsk[];
  readonly spares: SparesOffered | undefined; // undefined while nobody is named
}

type Written = EventState['wearers'][number];

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** Wearers as said, joined by those only a line of the order names: "1 buttonhole (groom)". */
const written = (event: EventState): readonly Written[] => {
  const list = event.wearers.filter((one) => one.count > 0);
  for (const { wearer, piece, count } of event.lines) {
    // "no best man" after his piece was ordered: it is ordered still, and has nobody.
    if (wearer === undefined || count <= 0 || event.wearers.some((one) => one.count === 0 && same(one.wearer, wearer))) continue;
    const at = list.findIndex((one) => same(one.wearer, wearer) && (one.piece === undefined || one.piece === piece));
    const known = list[at];
    if (known === undefined) list.push({ wearer, count, piece });
    else list[at] = { ...known, piece };
  }
  return list;
};

const isGroom = (role: string): boolean => /^(the )?grooms?$/i.test(role.trim());

const asksOf = (said: readonly Written[], wearers: readonly Wearer[], order: readonly OrderCount[]): readonly WearersAsk[] => {
  const grooms = wearers.filter(({ role }) => isGroom(role)).reduce((total, { count }) => total + count, 0);
  const ofRole = wearers.flatMap((wearer): readonly WearersAsk[] => {
    const { role, piece, roleKnown, why } = wearer;
    if (piece.origin !== 'assumed') return [];
    if (!roleKnown) return [{ about: 'unknown role', role, piece: piece.value }];
    const [usual] = wearerCustom(role)?.usual ?? [];
    return why === 'only kind ordered' && usual !== undefined ? [{ about: 'not the usual piece', role, piece: piece.value, usual }] : [];
  });
  return [
    ...(grooms > 1 ? [{ about: 'two grooms' as const, count: grooms }] : []),
    ...said.flatMap(({ wearer: role, count, names = [] }): readonly WearersAsk[] =>
      names.length > count ? [{ about: 'more names than people', role, count, names }] : [],
    ),
    ...ofRole,
    ...order.flatMap(({ piece, count, countMax }) =>
      countMax === undefined ? [] : [{ about: 'count is a range' as const, piece, count, countMax }],
    ),
  ];
};

export const wearersList = (event: EventState): WearersList => {
  const order = orderCounts(event);
  const said = written(event);
  const wearers = said.map((one): Wearer => {
    const note = one.note?.trim() ?? '';
    return {
      role: one.wearer,
      count: one.count,
      ...(one.approx ? { approx: true } : {}),
      ...wearerPiece(one.wearer, one.piece, order),
      roleKnown: wearerCustom(one.wearer) !== undefined,
      note,
      names: (one.names?.length ?? 0) > one.count ? [] : (one.names ?? []),
      cares: wearerCares(one.wearer, note),
    };
  });
  const kinds = [...new Set([...order.map(({ piece }) => piece), ...wearers.map(({ piece }) => piece.value)])].map((piece): KindCount => {
    const worn = wearers.filter((wearer) => wearer.piece.value === piece).reduce((total, { count }) => total + count, 0);
    const pieces = order.find((one) => one.piece === piece)?.count ?? 0;
    return { piece, wearers: worn, pieces, over: pieces - worn };
  });
  const all = { wearers: kinds.reduce((total, kind) => total + kind.wearers, 0), pieces: kinds.reduce((n, kind) => n + kind.pieces, 0) };
  const named = wearers.length > 0;
  return {
    wearers,
    kinds,
    all: { ...all, over: all.pieces - all.wearers },
    differences: named ? kinds.filter(({ over }) => over !== 0) : [],
    asks: asksOf(said, wearers, order),
    spares: named ? sparesOf(wearers, kinds) : undefined,
  };
};

const sparesOf = (wearers: readonly Wearer[], kinds: readonly KindCount[]): SparesOffered => {
  const { spares, why, sources } = sparesSuggested(wearers.some(({ role }) => isGroom(role)) ? ['groom'] : []);
  return { suggested: spares, over: kinds.reduce((total, { over }) => total + Math.max(0, over), 0), why, sources };
};
