// Who usually wears what and on which side, and how many spares are worth making. Custom, not law: sources that disagree are both shown.

import { hazardsIn } from './hazard-words.ts';
import type { PieceKind } from './pieces.ts';
import { commonPractice, type Source } from './sources.ts';
import { wearingSources as from } from './sources-wearing.ts';

export interface WearingSide {
  readonly side: string; // as the pin-on sheet says it
  readonly dissent: string; // what another source says; '' if none was found
  readonly sources: readonly Source[];
}

const sides: Readonly<Record<PieceKind, WearingSide>> = {
  buttonhole: { side: 'left lapel', dissent: '', sources: [from.bodyFlowers, from.classUnit, from.pinningOn] },
  'pin corsage': {
    side: 'left shoulder',
    dissent: 'one florist pins it on the right: ask',
    sources: [from.etiquette, from.pinningOn, from.leftRight],
  },
  corsage: {
    side: 'left shoulder or left wrist',
    dissent: 'one florist pins it on the right: ask',
    sources: [from.etiquette, from.pinningOn, from.leftRight],
  },
  'wrist corsage': { side: 'left wrist', dissent: '', sources: [from.etiquette, from.pinningOn] },
  'flower crown': { side: 'head, as agreed', dissent: '', sources: [commonPractice] },
  'hair flower': { side: 'hair, side as agreed', dissent: '', sources: [commonPractice] },
  unspecified: { side: 'as agreed', dissent: '', sources: [commonPractice] },
};

export const wearingSide = (piece: PieceKind): WearingSide => sides[piece];

/** How each kind is usually held on, for the cautions. A studio may use a magnet instead of a pin. */
export const usualFixings: Readonly<Record<PieceKind, readonly ('pin' | 'wire')[]>> = {
  buttonhole: ['pin', 'wire'],
  'pin corsage': ['pin', 'wire'],
  corsage: ['pin', 'wire'],
  'wrist corsage': ['wire'],
  'flower crown': ['wire'],
  'hair flower': ['wire'],
  unspecified: [],
};

export interface WearerCustom {
  readonly usual: readonly PieceKind[]; // the commoner first
  readonly child: boolean; // usually a small child: no loose pin
  readonly source: Source;
}

const wears = (usual: readonly PieceKind[], words: RegExp, source: Source, child = false) => ({ words, custom: { usual, child, source } });

// Checked in this order: "father of the bride" is a father, "flower girl" and "page boy" are children.
const customs = [
  wears(['flower crown', 'wrist corsage', 'hair flower'], /\b(flower ?girls?)\b/, commonPractice, true),
  wears(['buttonhole'], /\b(page ?boys?|pages?|ring ?bearers?)\b/, from.whoWears, true),
  wears(['buttonhole'], /\b(bab(y|ies)|toddlers?|child(ren)?|kids?|little (boys?|ones?))\b/, commonPractice, true),
  wears(
    ['wrist corsage', 'pin corsage'],
    /\b((grand|step|god)?-?mothers?|(grand|step)?-?m[uo]ms?|nans?|nanas?|grann(y|ies)|grandmas?|mo[bg]|aunt(s|ies?)?)\b/,
    from.whoWears,
  ),
  wears(['buttonhole'], /\b((grand|step|god)?-?fathers?|(gran|grand|step)?-?dads?|grandpas?|fo[bg]|uncles?)\b/, from.whoWears),
  wears(['hair flower', 'wrist corsage'], /\b(bridesmaids?|maids? of honou?r|matrons? of honou?r)\b/, commonPractice),
  wears(
    ['buttonhole'],
    /\b(groom|grooms|groomsm[ae]n|best m[ae]n|ushers?|officiants?|celebrants?|mcs?|m\.c\.|witness(es)?)\b/,
    from.whoWears,
  ),
  wears(['buttonhole', 'pin corsage'], /\b(readers?)\b/, from.whoWears),
  wears(['hair flower', 'flower crown'], /\b(brides?)\b/, commonPractice),
] as const;

/** What this wearer usually wears, from the role as written; undefined for a role we don't know, which is kept as written. */
export const wearerCustom = (role: string): WearerCustom | undefined => customs.find(({ words }) => words.test(role.toLowerCase()))?.custom;

/** The cares a note asks for: "baby, no pins", "pacemaker", "allergic to lilies", "heavy wool coat". */
export const caresInNote = (note: string): readonly ('child' | 'implant' | 'allergy' | 'heavy coat')[] => {
  const text = note.toLowerCase();
  return [
    ...(/\b(bab(y|ies)|toddler|child|kid|(aged?|is) [0-9]\b|\b[0-9] ?(yrs?|years?)( old)?\b)/.test(text) ? (['child'] as const) : []),
    ...(/\b(implant)/.test(text) || hazardsIn(text).includes('implant') ? (['implant'] as const) : []),
    ...(/\b(allerg|hay ?fever|asthma)/.test(text) ? (['allergy'] as const) : []),
    ...(/\b(coat|tweed|thick|heavy|wool)/.test(text) ? (['heavy coat'] as const) : []),
  ];
};

export interface SparesSuggested {
  readonly spares: number; // finished pieces beyond the list
  readonly why: string;
  readonly sources: readonly Source[];
}

/** One spare for each list, and one more for the groom. Florists say so; no source gives a percentage. */
export const sparesSuggested = (wearers: readonly string[]): SparesSuggested => {
  const groom = wearers.some((wearer) => /\bgroom\b/i.test(wearer) && !/father|mother|parent/i.test(wearer));
  return groom
    ? { spares: 2, why: 'one for the list and one for the groom', sources: [from.sparesWhy, from.sparesUshers] }
    : { spares: 1, why: 'one for the list', sources: [from.sparesWhy, from.sparesUshers] };
};
