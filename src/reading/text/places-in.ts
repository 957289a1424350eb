// The places of the tokens in a stretch, as those are told who take some of them and leave others.

import type { Stretch } from './message.ts';

export const placesIn = ({ start, end }: Stretch): number[] => {
  const places: number[] = [];
  for (let index = start; index < end; index++) places.push(index);
  return places;
};
