// "30 nos over out of 50": in India so many are finished, and so many wanted. Alone, "over" may be left over.

const nos = '(nos|pcs|pieces|no)?';
const outOf = '(out of|of|from) (the|our|total|a total of)?';
const be = '(is|are|all|work)?';

/** So many over, out of so many. */
export const overOutOf: readonly string[] = [
  `<n:count> ${nos} (<material>)? (<p:piece>)? ${be} over ${outOf} <m:count> ${nos} (<p:piece>)?`,
  `<n:count> ${nos} ${outOf} <m:count> ${nos} (<p:piece>)? ${be} over`,
  `${outOf} <m:count> ${nos} (<p:piece>)? (,|-)? <n:count> ${nos} ${be} over`,
];
/** "30 nos over, 20 pending" */
export const overAndLeft = `<count> (nos|pcs|pieces) (<material>)? (<piece>)? over (,|;|-|and|&|sir|madam|only|now){0,3} (balance|still|only)? <count> ${nos} (more)? (pending|balance|left|remaining|to go|to do|to make|baki)`;
