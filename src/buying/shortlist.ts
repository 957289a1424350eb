// A price list of hundreds of plants is cut to those whose whole packs come out best for this count before recipes are searched for, so that the answer
// stays quick. Up to sixty plants nothing is cut and the answer is proven; beyond, it is the best of the sixty, and the reply says so.

import { type PlantRole, plantRoles } from '../handbook/roles.ts';
import { type Choice, choicesOf, hasPart, usualStems } from './fit-choices.ts';
import type { Item } from './item.ts';
import type { FitWanted } from './what-fits.ts';

export const mostPlants = 60;

/** What goes into the pieces for the money spent on it, at the item's best; stock in hand is free and comes first. */
const bestUse = (choices: readonly Choice[]): number =>
  Math.max(...choices.map(({ value, spend }) => (spend === 0 ? Number.POSITIVE_INFINITY : value / spend)));

const leastSpend = (choices: readonly Choice[]): number => Math.min(...choices.map(({ spend }) => spend));

/** The items themselves when they are few enough, in their own order either way. Each role keeps its cheapest, or nothing might fit at all. */
export const shortlist = (items: readonly Item[], wanted: FitWanted, most = mostPlants): readonly Item[] => {
  const plants = items.filter(hasPart);
  if (plants.length <= most) return items;
  const ranked = plants.map((item) => {
    const choices = choicesOf(item, wanted.pieces, wanted.usualSpare, wanted.stemsByRole ?? usualStems);
    return { item, role: item.role, use: bestUse(choices), spend: leastSpend(choices) };
  });
  const listed = plantRoles.filter((role) => plants.some((item) => item.role === role));
  const each = Math.floor(most / listed.length);
  const kept = new Set(listed.flatMap((role) => bestOf(role, ranked, each)));
  return items.filter((item) => kept.has(item) || !hasPart(item));
};

interface Ranked {
  readonly item: Item;
  readonly role: Item['role'];
  readonly use: number;
  readonly spend: number;
}

const bestOf = (role: PlantRole, ranked: readonly Ranked[], most: number): readonly Item[] => {
  const own = ranked.filter((one) => one.role === role);
  const [cheapest, ...others] = own.sort((a, b) => a.spend - b.spend);
  const best = others.sort((a, b) => (a.use === b.use ? a.spend - b.spend : b.use - a.use)).slice(0, most - 1);
  return [...(cheapest ? [cheapest] : []), ...best].map(({ item }) => item);
};
