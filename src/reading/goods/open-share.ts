// "MOB gets 3-4 roses": how many of a flower somebody gets is not said, and it is no price of the flower either.

import { pattern } from '../pattern.ts';

export const openShare = pattern(
  '(<role>|<owner>) (<piece>|side)? (:|=|-|gets|has|have|get|takes|take|needs|need|wants|want|uses|use|is|are|with|,)? (:)? (just|only)? <range> (x|stems|stem|of|more|extra|<material>){0,2} <ingredient>',
);
