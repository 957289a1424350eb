// Who wears the pieces.

import { z } from 'zod';
import { named, optional, piece } from './shapes.ts';

export const wearers = z.object({
  fact: z.literal('wearers'),
  wearers: z.array(
    z.object({
      wearer: z.string(),
      count: z.number(),
      approx: optional(z.literal(true)), // "about 7 groomsmen"
      piece: optional(piece),
      note: optional(z.string()),
      names: optional(z.array(z.string())), // of the people, as typed; may be fewer than there are
    }),
  ),
  total: optional(z.number()),
  approx: optional(z.literal(true)), // of the total: "about 14 wearing"
  by: optional(z.enum(['more', 'fewer', 'none'])), // "one usher less", "another bridesmaid", "no dads": than the list has, settled in the thread
  notes: optional(z.literal(true)), // only the notes are said: a wearer of the list keeps its count and its piece
  ...named,
});
