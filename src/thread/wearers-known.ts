// Who is known to wear a piece: those on the list, and those only a line of the order names ("6 bridesmaids hair flowers 25 each").

import { roleOf } from './apply-wearers.ts';
import type { EventState } from './event.ts';

export const wearersKnown = ({ wearers, lines }: EventState): EventState['wearers'] => {
  const listed = new Set(wearers.map(({ wearer }) => roleOf(wearer)));
  const byLine = lines.flatMap(({ wearer, count, piece }) =>
    wearer === undefined || listed.has(roleOf(wearer)) ? [] : [{ wearer, count, ...(piece === 'unspecified' ? {} : { piece }) }],
  );
  return [...wearers, ...byLine];
};
