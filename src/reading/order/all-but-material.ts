// The places of a stretch but for its words of material: "12 @ 10 and 3 @ 15 dried bouts". The material is said of the order as a whole.

import type { Token } from '../text/token.ts';

export const allButMaterial = (tokens: readonly Token[], start: number, end: number): number[] => {
  const places: number[] = [];
  for (let index = start; index < end; index++) if (tokens[index]?.means['material'] === undefined) places.push(index);
  return places;
};
