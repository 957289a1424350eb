// "Spent 182.40": for the stems alone, or with ribbon, pins and all? The margin depends on it, so where the words don't say it is asked.

import { soundsLikeSundry } from '../handbook/roles.ts';
import type { FactOf } from '../reading/fact.ts';
import type { Ask } from '../reading/reading.ts';

/** The item of a spending that covers stems and sundries together. */
export const everything = 'everything';

const tells =
  /\b(stems?|flowers?|foliage|plants?|blooms?|market|wholesalers?|growers?|everything|all (of it|in)|the lot|in all|all up|total|altogether)\b/i;
const plants = /\b(stems?|flowers?|foliage|plants?|blooms?|greenery)\b/i;
const tellsAll = /\b(everything|all (of it|in)|the lot|in all|all up|total|altogether)\b/i;

/** The question, or the fact with what its own words tell. */
export const settleSpent = (fact: FactOf<'actual'>): { readonly fact: FactOf<'actual'> } | { readonly ask: Ask } => {
  if (fact.what !== 'spent' || fact.item !== undefined) return { fact };
  if (tellsAll.test(fact.words)) return { fact: { ...fact, item: everything } };
  const sundries = soundsLikeSundry(fact.words);
  // "96.50 on stems and ribbon"
  if (plants.test(fact.words) && sundries) return { fact: { ...fact, item: everything } };
  if (tells.test(fact.words) || sundries) return { fact };
  return {
    ask: {
      about: 'item',
      why: 'spent on what',
      words: fact.words,
      choices: [
        { words: 'stems only', facts: [{ ...fact, item: 'stems' }] },
        { words: everything, facts: [{ ...fact, item: everything }] },
      ],
    },
  };
};
