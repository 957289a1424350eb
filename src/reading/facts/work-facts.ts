// What is done, by whom, how fast and how long things take: finished work, breakages, crew, steps, drying, what it really cost.

import { z } from 'zod';
import { amount, day, named, optional, piece } from './shapes.ts';

/** Finished work. `count` adds to what is made unless `total` ("12 of the 40 done", "40/40 done" say the whole). */
export const made = z.object({
  fact: z.literal('made'),
  count: optional(z.number()),
  piece: optional(piece),
  all: optional(z.literal(true)), // "corsages all done"
  total: optional(z.literal(true)),
  of: optional(z.number()), // the 40 in "12 of 40"
  stage: optional(z.string()), // "wired": begun, not finished; 'base' and 'finished': the two halves of a mixed piece
  resumes: optional(day), // with a count of 0: no work on them before this day
  remade: optional(z.literal(true)),
  spares: optional(z.number()),
  fraction: optional(amount), // "half of them" = 0.5
  ...named,
});

export const broke = z.object({ fact: z.literal('broke'), count: z.number(), piece: optional(piece), ...named });

export const left = z.object({ fact: z.literal('left'), count: z.number(), piece: optional(piece), ...named });

export const crew = z.object({
  fact: z.literal('crew'),
  people: optional(z.number()),
  hours: optional(z.number()), // each
  totalHours: optional(z.number()),
  date: optional(day),
  wage: optional(amount), // per hour
  currency: optional(z.string()),
  symbol: optional(z.string()), // a bare "$"
  minutesPerPiece: optional(z.number()),
  piecesPerHour: optional(z.number()),
  piece: optional(piece),
  away: optional(z.literal(true)), // these people are not at the bench that day
  ...named,
});

/** What it really cost: "spent 182.40 at the market", "took 3 hours for 12", "3 unused". */
export const actual = z.object({
  fact: z.literal('actual'),
  what: z.enum(['spent', 'minutes', 'unused']),
  amount: optional(amount),
  minutes: optional(z.number()),
  count: optional(z.number()),
  piece: optional(piece),
  item: optional(z.string()),
  ...named,
});

/** An order placed or received, or a step ticked: "ordered the statice", "ribbon's in". */
export const step = z.object({
  fact: z.literal('step'),
  step: z.enum(['ordered', 'received', 'hung', 'drying checked', 'boarded', 'handed over', 'cancelled']),
  item: optional(z.string()),
  ...named,
});

/** How long this studio dries something: "we dry statice 10 days". */
export const drying = z.object({ fact: z.literal('drying'), item: z.string(), days: z.number(), daysMax: optional(z.number()), ...named });
