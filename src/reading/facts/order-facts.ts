// What an order and its event are: pieces, price, tax, material, day, title, the event's own rules, and corrections of these.

import { z } from 'zod';
import { amount, day, material, named, optional, piece } from './shapes.ts';

/** "40 lapel pieces", "2 corsages at 35", "1 BH (groom) 24", "and 2 for the dads". */
export const pieces = z.object({
  fact: z.literal('pieces'),
  piece,
  count: z.number(),
  countMax: optional(z.number()), // "40 to 45"
  approx: optional(z.literal(true)), // "twenty-odd"
  price: optional(
    z.object({
      amount,
      amountMax: optional(amount),
      per: z.enum(['each', 'line']),
      kind: optional(z.enum(['from', 'up to', 'budget'])),
      currency: optional(z.string()),
      symbol: optional(z.string()),
    }),
  ), // this line's own price
  material: optional(material), // this line's own material
  wearer: optional(z.string()), // "(groom)"
  adds: optional(z.literal(true)), // "and 2 more": on top of what the thread holds
  sameEach: optional(z.literal(true)), // "30 bouts, same price each": one price for all grows with them
  ...named,
});

/** One price for every piece ("25 each") or for the whole order ("1000 all up"). */
export const price = z.object({
  fact: z.literal('price'),
  amount,
  amountMax: optional(amount), // "20 to 25"
  amounts: optional(z.array(amount)), // "18 or 22": alternatives
  currency: optional(z.string()), // ISO 4217, only where the words fix it
  symbol: optional(z.string()), // a bare "$"
  per: z.enum(['each', 'all']),
  piece: optional(piece), // "crowns are 140 each": for this kind only
  kind: optional(z.enum(['from', 'up to', 'budget'])),
  coversOther: optional(z.literal(true)), // the total also pays for other flower work
  ...named,
});

export const tax = z.object({
  fact: z.literal('tax'),
  basis: optional(z.enum(['included', 'on top', 'none'])),
  name: optional(z.string()), // GST, VAT, HST…
  rate: optional(amount), // percent
  ...named,
});

export const materialFact = z.object({ fact: z.literal('material'), material, piece: optional(piece), ...named });

export const date = z.object({
  fact: z.literal('date'),
  date: day,
  time: optional(z.string().regex(/^\d{2}:\d{2}$/)),
  of: optional(z.enum(['event', 'hand over', 'photos'])),
  yearAssumed: optional(z.literal(true)), // no year was said
  orderAssumed: optional(z.literal(true)), // 3/4 read in the studio's day-month order
  ...named,
});

/** What the event is called: "event: harbour dance". */
export const title = z.object({ fact: z.literal('title'), title: z.string(), ...named });

/** A rule for this event alone: "this one at 3.5 and 25% labour". */
export const rule = z.object({
  fact: z.literal('rule'),
  what: z.enum([
    'labour share',
    'labour rule',
    'multiple',
    'stems multiple',
    'sundries multiple',
    'sundries',
    'minimum price',
    'price step',
    'minutes',
    'tax rate',
    'spare', // percent of stems bought beyond the recipes
  ]),
  to: z.string(),
  piece: optional(piece),
  item: optional(z.string()), // "15% spare on statice": of these alone
  ...named,
});

/** A correction of one thing: to a new value, or by a difference. */
export const change = z.object({
  fact: z.literal('change'),
  what: z.enum(['count', 'price', 'tax', 'date', 'material', 'made', 'broke', 'piece', 'time', 'number']), // 'number': a bare "make that 45", resolved in the thread
  to: optional(z.union([z.string(), z.number()])),
  from: optional(z.union([z.string(), z.number()])),
  by: optional(z.union([z.string(), z.number()])), // counts, days, or money as text
  times: optional(amount), // "double the bouts": the count, by a factor
  piece: optional(piece),
  per: optional(z.enum(['each', 'all'])),
  sameEach: optional(z.literal(true)), // "30 at the same price each": one price for all grows with them
  some: optional(z.union([z.number(), z.literal('half')])), // "10 of the bouts fresh": so many of them alone
  rest: optional(material), // "half of them dried, the rest fresh"
  ofEvery: optional(z.literal(true)), // "make them all 14 each": of every kind
  currency: optional(z.string()),
  symbol: optional(z.string()), // a bare "$"
  name: optional(z.string()), // of the tax
  of: optional(z.literal('hand over')), // "pickup is 4pm not 3"
  ...named,
});

export const undo = z.object({ fact: z.literal('undo'), ...named });
