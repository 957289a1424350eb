// Words that say whether a price is for one or for all, and whether it is a floor, a ceiling or a budget.

import { wordList } from './word-list.ts';

export const eachWords = wordList(`
  each, ea, e.a, eac, ech, apiece, a piece, per piece, per pc, per pcs, pp, p/p, per head, a head, a pop, per person, per item, per
  unit, per one, per stem piece, a go, a throw, per each, /ea, /each, /pc, /piece, /pcs, / pc, / piece, / ea, / each, per, per nos,
  per no, /head, /unit, a unit, the piece, for each, each one, each piece, pr piece, pr pc, p.p, p/pc, pc each, a pc, /person, a shot,
  a pce, p/st, per stuk, la pièce, la piece, pièce, per pce, for one, per guest, a person
`);
export const allWords = wordList(`
  all up, for the lot, the lot, for all, in total, total, total's, totalling, totaling, altogether, all together, for everything, for
  them all, for all of them, all in, for the whole lot, overall, in all, together, for the set, for the batch, for full lot, for the full lot, full lot, for the entire lot, for complete lot, tot, ttl, grand total, the total,
  all told, for the order, whole order, for the whole order, for the whole job, for the job, total price, total cost, order total,
  lump sum, whole lot, for both, everything, for the whole thing, all inclusive, flat, total of, in toto, lumpsum, all-in, all-up
`);
export const fromWords = wordList(`
  from, starting at, starting from, start at, starts at, at least, min, minimum, not less than, no less than, upwards of, starting,
  starts from, and up, onwards, upwards, can't do under, cant do under, cannot do under, can't go under, cant go under, can't do below, can't go below,
  cant go below, can't do less than, cant do less than, can't do it under, cant do it under, can't do them under, can't do any for under, not under, nothing under,
  not pay less than, won't pay less than, can't pay less than, can't be less than, cant be less than, not be less than, won't be less than, not go less than, can't go lower than, cant go lower than, cannot go lower than, won't go lower than, wont go lower than,
  not go lower than, not go below, won't go below, wont go below, cannot go below, not go under, won't go under, wont go under, never less than, not charge less than, won't charge less than
`);
export const upToWords = wordList(`
  up to, upto, max, maximum, no more than, not more than, at most, under, less than, cap, capped at, cap of, below, not over, max of,
  maximum of, nothing over, nothing above, nothing more than, not a penny over, not a cent over, not a penny more than, tops, at the most, at the very most, at very most, no higher than, not above, ceiling, limit, limit of, within, top whack, cant go over, can't go over,
  cannot go over, wont go over, won't go over, will not go over, not go over, not to go over, not going over, keep it under, keep it below, keep it within, keep under, stay under, stay within, stay below, come in under, doesn't want to go over,
  doesnt want to go over, dont go over, don't go over, at max, can't go above, cant go above,
  cannot go above, wont go above, won't go above, dont want to spend over, don't want to spend over, doesnt want to spend over, doesn't want to spend over, dont want to spend more than,
  don't want to spend more than, doesnt want to spend more than, doesn't want to spend more than, not spend over, not spend more than,
  doesn't want to pay more than, doesnt want to pay more than, don't want to pay more than, dont want to pay more than, not pay more than, won't pay more than,
  wont pay more than, can't pay more than, cant pay more than, won't spend more than, wont spend more than, doesn't want to pay over, don't want to pay over,
  not pay over, won't pay over, wont pay over, can't pay over, cant pay over, never pay more than, never pay over, never go over, wouldn't pay more than, wouldnt pay more than, wouldn't pay over, wouldn't go over, wouldnt go over, not gonna pay more than, not gonna pay over,
  no gonna pay more than, not gonna go over, no gonna go over, refuses to pay more than, refuse to pay more than, refuses to pay over, refuses to go over, won't go higher than, wont go higher than, can't go higher than, cant go higher than, cannot go higher than, not go higher than, not go above,
  won't stretch past, can't stretch past, not stretch past, not go past, won't go past, can't go past
`);
export const budgetWords = wordList(`
  budget, budget's, budget of, budget is, budget around, to spend, has to spend, budgeted, bugdet, buget, budgt, spend, to play with,
  budgets, budgeting
`);
