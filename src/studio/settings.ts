// What one studio has chosen, as it is stored and as demo-data/studio.json holds it. A field left out is our default, and replies call that "assumed".

import { z } from 'zod';
import { pieceKinds } from '../handbook/pieces.ts';
import { weekdays } from '../values/day.ts';

const amount = z.string().regex(/^\d+(\.\d+)?$/, 'a plain decimal in quotes, like "12.50"');
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'a date like 2027-03-14');
const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time like 07:00');
const weekday = z.enum(weekdays);
const perPiece = <T extends z.ZodType>(value: T) => z.partialRecord(z.enum(pieceKinds), value);
const optional = <T extends z.ZodType>(type: T) => type.exactOptional();

const isTimeZone = (name: string): boolean => {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false;
  }
};

export const studioSettings = z.strictObject({
  name: z.string().min(1).max(80),
  region: z.string().regex(/^[A-Z]{2}$/, 'a country code of two capitals, like GB'), // ISO 3166-1
  subdivision: optional(z.string()), // ISO 3166-2 without the country: SCT, ON, TX
  timeZone: z.string().refine(isTimeZone, 'an IANA time zone, like Europe/London'),
  currency: z.string().regex(/^[A-Z]{3}$/, 'an ISO 4217 code, like GBP'),
  dayFirst: optional(z.boolean()), // default by region
  says: optional(z.enum(['buttonhole', 'boutonniere'])), // default by region
  tax: optional(
    z.strictObject({
      regime: optional(z.string()), // a row of handbook/tax-rates; default by region
      rate: optional(amount), // own rate, percent
      name: optional(z.string()),
      usual: optional(z.enum(['included', 'on top'])), // how prices are quoted when a message doesn't say; default included (on top in US, CA)
      rounding: optional(z.enum(['invoice', 'line'])),
      registered: optional(z.boolean()), // false: no tax at all
      cashStep: optional(amount), // 0.05: cash totals are rounded to this
    }),
  ),
  labour: optional(
    z.strictObject({
      rule: optional(z.enum(['on product', 'out of the price'])),
      share: optional(amount), // percent
      wage: optional(amount), // per hour
      onCosts: optional(amount), // percent on top of the wage: holiday pay, employer's contributions
    }),
  ),
  multiples: optional(z.strictObject({ stems: optional(amount), sundries: optional(amount) })),
  sundriesEach: optional(perPiece(amount)), // cost of pin, tape, ribbon, card for one piece
  minimumPrice: optional(perPiece(amount)),
  priceStep: optional(amount), // worked-out prices are rounded up to this
  minutes: optional(perPiece(z.number().positive())), // bench minutes for one piece
  bench: optional(
    z.strictObject({
      people: optional(z.number().int().min(0)),
      hours: optional(z.partialRecord(weekday, z.number().min(0).max(24))), // opening hours by weekday; a day left out is closed
      closed: optional(z.array(day)),
      openOnHolidays: optional(z.boolean()),
    }),
  ),
  leadDays: optional(z.number().int().min(0)), // working days from order to delivery when the price list doesn't say
  drying: optional(z.record(z.string(), z.strictObject({ least: z.number().min(0), most: z.number().min(0) }))), // own days by plant
  boardedDaysBefore: optional(z.number().int().min(0)), // dried work, working days
  opensDaysBefore: optional(z.number().int().min(1)), // dried work
  reminder: optional(
    z.strictObject({
      at: optional(clock),
      channel: optional(z.string()),
      person: optional(z.string()),
      nudgeAt: optional(clock),
      weekAheadOn: optional(weekday),
    }),
  ),
});
export type StudioSettings = z.infer<typeof studioSettings>;
