// What goes in and what it costs to buy: recipes, packs, and the prices an event was costed at.

import { z } from 'zod';
import { amount, named, optional, piece } from './shapes.ts';

const recipeLine = z.object({
  ingredient: z.string(),
  stems: optional(z.number()),
  length: optional(z.number()),
  unit: optional(z.string()), // of the length: cm, m, in…
  wearer: optional(z.string()),
  makes: optional(z.number()), // the amount is for this many pieces; kept apart, because 2 stems for 3 pieces has no last digit
});

export type RecipeLineFact = z.infer<typeof recipeLine>;

export const recipe = z.object({
  fact: z.literal('recipe'),
  lines: z.array(recipeLine),
  piece: optional(piece),
  pieces: optional(z.number()), // "3 stems makes 2 bouts": the lines make this many pieces
  name: optional(z.string()), // saved or reused under this name
  saves: optional(z.literal(true)), // "save that recipe as autumn dance": the recipe the thread holds, under this name
  from: optional(z.string()), // what the lines were copied from: a saved name, or another event
  like: optional(piece), // "corsages the same as the buttonholes"
  adds: optional(z.literal(true)), // "and a sprig of larch", "make the bunny tails 2": each line joins, or takes the place of its ingredient's line
  drops: optional(z.array(z.string())), // "no statice"
  swaps: optional(z.array(z.object({ ingredient: z.string(), with: z.string() }))), // "limonium instead of statice"
  scale: optional(amount), // "recipe times 1.5"
  ...named,
});

export const pack = z.object({
  fact: z.literal('pack'),
  item: z.string(),
  price: amount,
  priceMax: optional(amount),
  size: optional(z.number()),
  unit: optional(z.string()), // what `size` counts: stem, g, m, pin…
  per: optional(z.string()), // bunch, box, spool, wrap…
  currency: optional(z.string()),
  symbol: optional(z.string()),
  basis: optional(z.enum(['included', 'on top'])),
  taxName: optional(z.string()),
  from: optional(amount), // the old price
  quantity: optional(z.number()), // "2 bunches of ruscus 8 each"
  forAll: optional(z.literal(true)), // the price is for all of `quantity`: "3 bunches for £12"
  supplier: optional(z.string()),
  leadDays: optional(z.number()),
  dryingDays: optional(z.number()),
  stock: optional(z.number()),
  spare: optional(amount), // percent bought beyond what goes in
  role: optional(z.string()), // focal, line, texture, foliage, filler, sundry
  note: optional(z.string()),
  ...named,
});

/** What a pack of goods holds, whose price stands already. Kept as the pack it completes. */
export const packed = z.object({
  fact: z.literal('packed'),
  item: z.string(),
  size: z.number(),
  unit: optional(z.string()), // of a length: m, cm…
  per: optional(z.string()), // bunch, box, spool, wrap…
  ...named,
});

/** The price list's word on what an event's recipes use, as it was when they were costed. Nobody says this: it is kept beside what was said. */
export const quoted = z.object({
  fact: z.literal('quoted'),
  packs: z.array(z.object({ item: z.string(), price: amount, size: amount, unit: z.string(), per: optional(z.string()) })),
  ...named,
});
