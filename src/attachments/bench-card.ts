// The card on the wall for one kind of piece, as data: how many, what is in it, how long, the steps in order, and the cautions at the bench.

import type { CautionId } from '../handbook/caution-row.ts';
import { type Caution, cautionsFor, notAdviceLine } from '../handbook/cautions.ts';
import { craftSteps } from '../handbook/craft.ts';
import { boardRule } from '../handbook/packing.ts';
import type { PieceKind } from '../handbook/pieces.ts';
import type { Source } from '../handbook/sources.ts';
import { caresInNote, wearerCustom, wearingSide } from '../handbook/wearing.ts';
import { duration } from '../reply/words/dates.ts';
import type { SheetPiece, SheetsInput, SheetWearer } from './sheet-input.ts';

export interface BenchCard {
  readonly title: string; // "Buttonhole"
  readonly counts: string; // "40 and 2 spares to make · dried"
  readonly time: string; // "15 min each · 10 h 30 min in all"; '' if unknown
  readonly worn: string; // "left lapel"
  readonly recipe: readonly { readonly ingredient: string; readonly amount: string }[];
  readonly steps: readonly { readonly step: string; readonly note: string }[];
  readonly cautions: readonly string[];
  readonly sources: readonly Source[]; // of its steps and of where it is worn; each caution has its own
}

export const cautionWords = (caution: Caution): string =>
  [caution.wording, notAdviceLine(caution)].filter((words) => words !== '').join(' ');

const ofPlants = new Set<CautionId>(['sap', 'skin', 'poisonous', 'pollen', 'pollen-disputed', 'scent', 'invasive']);
const ofChildren = new Set<CautionId>(['magnet-child', 'pin-child']);

const wornByChild = (kind: PieceKind, wearers: readonly SheetWearer[]): boolean => {
  const children = wearers.filter((one) => wearerCustom(one.wearer)?.child === true || caresInNote(one.note ?? '').includes('child'));
  return children.length === 0 || children.some((one) => one.kind === kind); // nobody named yet: any of them may be
};

/** A caution stands on the card where its hazard is: a plant's where the plant is, a pin's where there is a pin. */
const cautionsHere = (piece: SheetPiece, input: SheetsInput): readonly Caution[] => {
  const pinned = boardRule(piece.kind).pinsEach > 0;
  const plants = cautionsFor({
    plants: piece.recipe.map((line) => line.ingredient),
    ...(piece.material === undefined ? {} : { materials: [piece.material] }),
  });
  return input.cautions
    .filter((caution) => caution.shownOn.includes('bench card'))
    .flatMap((caution) => {
      if (ofPlants.has(caution.id)) return plants.filter((one) => one.id === caution.id);
      if (caution.id === 'magnet') return pinned ? [caution] : [];
      if (ofChildren.has(caution.id)) return pinned && wornByChild(piece.kind, input.wearers) ? [caution] : [];
      if (caution.id === 'dried-dust')
        return piece.material === undefined || plants.some((one) => one.id === 'dried-dust') ? [caution] : [];
      return [caution];
    });
};

export const benchCard = (piece: SheetPiece, input: SheetsInput): BenchCard => {
  const steps = craftSteps(piece.kind);
  const worn = wearingSide(piece.kind);
  const all = piece.count + piece.spares;
  return {
    title: piece.one.charAt(0).toUpperCase() + piece.one.slice(1),
    counts: [
      `${piece.count}${piece.spares > 0 ? ` and ${piece.spares} ${piece.spares === 1 ? 'spare' : 'spares'}` : ''} to make`,
      ...(piece.material === undefined ? [] : [piece.material]),
    ].join(' · '),
    time: piece.minutes === undefined ? '' : `${duration(piece.minutes)} each · ${duration(piece.minutes * all)} in all`,
    worn: [worn.side, worn.dissent].filter((words) => words !== '').join('; '),
    recipe: piece.recipe,
    steps: steps.map(({ step, note }) => ({ step, note })),
    cautions: cautionsHere(piece, input).map(cautionWords),
    sources: [...new Set([...steps.map((step) => step.source), ...worn.sources])],
  };
};
