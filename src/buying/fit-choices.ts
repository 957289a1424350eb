// What each listed plant could do in a recipe for this order: so many stems a piece, the whole packs that takes, and the worth of what goes in.

import { type PlantRole, plantRoles } from '../handbook/roles.ts';
import { Decimal, decimal } from '../values/decimal.ts';
import { type Item, isSundry } from './item.ts';
import { spareOf } from './recipe-cost.ts';
import { demandOf, stockInHand, wholePacks } from './whole-packs.ts';

/** Stems of one ingredient in one piece, by the part it plays. Common practice, no source. */
export const usualStems: Readonly<Record<PlantRole, readonly string[]>> = {
  focal: ['1', '2', '3'],
  line: ['1'],
  texture: ['1', '2'],
  foliage: ['0.5', '1'],
  filler: ['0.5', '1'],
};

export interface Choice {
  readonly item: Item;
  readonly role: PlantRole;
  readonly stems: string; // in one piece
  readonly spend: number; // ten-thousandths of the currency, up
  readonly value: number; // ten-thousandths of the currency, down
}

const scale = 10_000;
export const scaledUp = (amount: Decimal): number => amount.times(scale).toDecimalPlaces(0, Decimal.ROUND_UP).toNumber();
export const scaledDown = (amount: Decimal): number => amount.times(scale).toDecimalPlaces(0, Decimal.ROUND_DOWN).toNumber();
export const unscaled = (amount: number): Decimal => decimal(amount).div(scale);

const isPlantRole = (role: string | undefined): role is PlantRole => plantRoles.some((one) => one === role);

/** Whether an item can stand in a proposal: a plant counted by the stem, with its role on the list. */
export const hasPart = (item: Item): boolean => item.unit.measure === 'count' && isPlantRole(item.role);

export const lacksRole = (item: Item): boolean => item.unit.measure === 'count' && item.role === undefined && !isSundry(item);

/** Every choice one item offers, for this many pieces. */
export const choicesOf = (item: Item, pieces: number, usualSpare: Decimal, stemsByRole: typeof usualStems): readonly Choice[] => {
  const { role } = item;
  if (!hasPart(item) || !isPlantRole(role)) return [];
  return stemsByRole[role].map((stems) => {
    const demand = demandOf(pieces, { kind: 'stems', stems: decimal(stems) });
    const { packs } = wholePacks(item, demand, spareOf(item, usualSpare), stockInHand(item));
    return {
      item,
      role,
      stems,
      spend: scaledUp(item.packPrice.times(packs)),
      value: scaledDown(demand.stems.times(item.packPrice).div(item.size)),
    };
  });
};
