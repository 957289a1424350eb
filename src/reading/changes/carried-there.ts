// "40 lapels at 3.20 each, drop to hall B", "take the lot to the church": where flowers are brought, and nothing goes down to a number.

import { anyIn, pattern } from '../pattern.ts';
import type { Reader } from '../phrase.ts';
import type { Part } from '../text/message.ts';
import { markers } from './change-words.ts';
import { zonesOf } from './zones.ts';

const place =
  "(hall|hall's|venue|church|chapel|cathedral|hotel|reception|registry|registry office|school|club|clubhouse|clubrooms|barn|marquee|shop|studio|desk|office|front desk|door|gate|ward|house|home|address|pub|winery|vineyard|estate|temple|mosque|synagogue|gurdwara|town hall|community centre|community center|centre|center|college|restaurant|golf club|room|suite|boathouse|theatre|theater|gym|lodge|manor|mum's|moms|mums|mum|mom|her|him|them|planner|bride|groom|office|mob|crematorium|courthouse|function room|back door|front door|stage door)";
const carrying = pattern(
  `(drop|drops|dropping|take|taking|bring|bringing|move|moving|shift|send|get|lift|run|put|set) (them|it|those|these|everything|all|all of it|the lot|the flowers|the box|the boxes|the whole lot)? (all)? (off|round|over|down|up|in|out|across|back)? (to|at) (the|her|his|their|our|your|my|a)? (<word>)? ${place}`,
);

/** Whether all that sounds like a change only tells where the flowers go. */
export const isCarriedThere = ({ tokens }: Reader, { start, end }: Part): boolean => {
  const match = carrying.in(tokens, start, end);
  return (
    match !== undefined &&
    !anyIn(markers, tokens, start, match.start) &&
    !anyIn(markers, tokens, match.end, end) &&
    zonesOf(tokens, start, end).old.length === 0
  );
};
