// The care one wearer needs, from the note somebody wrote or from the role, and the few words of it that fit on a pin-on sheet.

import type { PieceKind } from '../handbook/pieces.ts';
import { caresInNote, usualFixings, wearerCustom } from '../handbook/wearing.ts';
import { assumed, type Known, said } from '../values/known.ts';

export type Care = ReturnType<typeof caresInNote>[number];

/** 'said' where the words name it; 'assumed' for a role that is usually a small child. */
export const wearerCares = (role: string, note: string): readonly Known<Care>[] => {
  const written = caresInNote(`${role} ${note}`);
  const child = wearerCustom(role)?.child === true && !written.includes('child');
  return [...written.map((care): Known<Care> => said(care)), ...(child ? [assumed<Care>('child')] : [])];
};

// Common practice, no source, but for the pins (see handbook/cautions-table.ts, which has the sources and the full wording).
const words: Readonly<Record<Care, (pinned: boolean) => string>> = {
  child: (pinned) => (pinned ? 'child: no loose pin, sew it on or tie it' : ''),
  implant: () => 'implant: no magnet',
  allergy: () => 'allergy: check what is in it',
  'heavy coat': (pinned) => (pinned ? 'heavy coat: long pins, through every layer' : ''),
};

/** What the person who pins it on needs to read; '' where the piece calls for nothing. */
export const careWords = (care: Care, piece: PieceKind): string => words[care](isPinned(piece));

export const isPinned = (piece: PieceKind): boolean => usualFixings[piece].includes('pin') || piece === 'unspecified';

/** Whatever the others are held on by: no magnet goes near an implant. */
export const hasImplant = ({ cares }: { readonly cares: readonly Known<Care>[] }): boolean =>
  cares.some(({ value }) => value === 'implant');
