// Words around a date that say whose it is: the event's, another business's, or nobody's in particular.

import { wordList } from '../words/word-list.ts';

// Another business's date.
export const vetoes = new Set(
  wordList(`
  rent, invoice, engaged, proposed, dentist, doctor, doctors, gp, holiday, holidays, leave, van, meeting, appointment, lunch, drinks, course, training,
  pay, payday, paid, tax, bas, mot, rego, school, flight, rates, insurance, market, closed, shut, open, electrician, plumber, inspection,
  bins, bin, interview, courier, wholesaler, away, off, vat return, return, expires, expired, ends, renewal, renew, sale, statement,
  overdue, bill, roster, rota, shift, birthday, coffee, football, match, game, parcel, fridge, cooler, vet, physio, haircut, car,
  power, stocktake, jab, exam, landlord, loan, inv, term, hols, clocks, stock, supplier, suppliers, restock
`),
);
export const fillers = new Set([
  ...wordList(`
  it's, its, some, time, bit, touch, of, tis, is, are, ok, now, so, the, day, folks, guys, all, on, at, lads, for, this, one,
  that, that's, thats, then, please, pls, plse, plz, thanks, ta, cheers, hi, hey, yes, yep, by, be, will, and, in, set, confirmed,
  booked, lock, locked, when, going, btw, fyi, team, girls, ladies, y, love, hun, mate, eh, no, theirs, definitely, def, start,
  starts, morning, afternoon, arvo, with, mix, ones, it, know, i, only, evening, night, sharp, early, late, around, about,
  everyone, deffo, sometime, probably, maybe, looking, like, half, quarter, past, noon, midday, yeah, aye, grand, client,
  customer, says, just, to, from, o'clock, a, has, have, there, they, we, they'll, theyll, confirm, confirming, tbc, tba, tbd,
  yet, dont, don't, got, think, thought, reckon, believe, guess, apparently, well, actually, still, note, noted, kindly, can, you, could, jot, put, exact, sure, roughly, thinking, hoping, later, soon, everything, everything's, flowers, stuff, works, them, their, both, fully, entirely, totally, completely
`),
  ',',
  '-',
  '.',
  '(',
  ')',
  ':',
  '"',
  '!',
]);

/** "20 may not be enough": what follows the verb, and no month. */
export const afterMay = /^(need|be|have|not|want|take|break|get|do|as|go|still|just|well|also|even|run|end|come)$/;
