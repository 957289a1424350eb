// Words dropped from either end of a stretch before a name is read from it, and words no name goes past: "gyp went up", "roses cost us".

import type { Token } from '../text/token.ts';
import { wordList } from '../words/word-list.ts';

export const dropBefore: ReadonlySet<string> = new Set(
  wordList(`
  the, a, an, some, our, of, more, -, :, got, x, w, new, extra, about, wee, and, then, also, plus, use, uses, has, have, gets, with,
  in, is, bit, lil, (, now, fyi, my, this, week, todays, today's, price, prices, cost, for, market, rate, rates, update, pls, note, ok, hi, sorry, oops, actually, correction, hey, hiya,
  add, do, doing, yep, that's, thats, are, list, foraged, picked, just, only
`),
);

export const dropAfter: ReadonlySet<string> = new Set(
  wordList(`
  stem, stems, are, is, at, @, -, :, now, for, the, (, ), a, an, gone, up, down, went, have, has, only, just, cost, costs, price,
  was, each, per, =, of, from, to, in, its, come, today, going, gonna, about, /, on, by, strands, pcs, rate, rates, will, be, risen, dropped,
  increased, back, still, special, +, selling, they, they're, theyre, working, out, came, this, week, again, bits, stalks, then,
  too, please, pls, same, half, drop, drops, that, x, as, well, go, goes, into, in, instead
`),
);

const beside = new Set(
  wordList(`
  between, anywhere, around, about, from, to, at, on, in, into, by, with, for, per, a, an, the, than, over, under, up, down, off, out, is, are,
  was, were, be, been, will, would, should, has, have, had, having, can, get, gets, getting, got, go, goes, going, gone, went, come,
  comes, coming, came, cost, costs, costing, costed, price, prices, priced, pricing, change, changes, changed, changing, set, put, make, update,
  updated, us, me, we, you, they, it, its, i, he, she, our, my, their, your, his, her, this, that, these, those, here, there, now,
  today, tomorrow, yesterday, week, month, year, season, market, wholesaler, wholesalers, wholesale, supplier, suppliers, auction, grower, growers, farm, each, ea,
  only, just, still, again, currently, running, averaging, hovering, usually, normally, roughly, mostly, anyway, though, but, so, if, when, because, as, also, too, not, no,
  reduced, need, needs, needing, more, ran, run, runs, find, found, see, saw, seen, seeing, pay, pays, paying, paid, charge, charges, charging, charged, sell, sells, selling, sold, buy, buys, buying, bought, quote, quoted, quotes,
  want, wants, wanted, asking, doing, do, does, did, says, said, drying, dries, dry, takes, took, lead, time, gauge, swg, worth, dear, cheap, cheaper, dearer, expensive, please, pls,
  hi, hey, ok, yes, yep, fyi, btw, lately, atm, since, until, till, before, after, then, and, or, &, look, looking, sitting, starting, starts, available, all, both, anything,
  think, thinks, thinking, thought, reckon, reckons, reckoned, guess, guesses, hear, hears, heard, expect, expects, expecting, expected, hope, hopes,
  told, tells, mentioned, mentions, promised, promises, swears, swore, texted, emailed, messaged, rang, called, confirmed, confirms, suggests, suggested,
  warned, warns, worked, works, ended, ends, turned, turns, saying, likely, probably, maybe, might, could, may, somewhere, overall, whole, thing, everything, stuff
`),
);

/** Whether no name goes past this word. */
export const besideNames = (token: Token): boolean =>
  token.means['ingredient'] === undefined &&
  (beside.has(token.text) ||
    token.means['weekday'] !== undefined ||
    token.means['month'] !== undefined ||
    token.means['all'] !== undefined ||
    token.means['included'] !== undefined ||
    token.means['onTop'] !== undefined ||
    token.means['from'] !== undefined ||
    token.means['upTo'] !== undefined);
