// What one message can state, ask or correct. The shapes are schemas because facts are stored for years and read back.
// Money and rates are decimal text ("8.25"); counts, stems and lengths of what goes in are plain numbers as typed; days are YYYY-MM-DD.

import { z } from 'zod';
import { hazards } from '../handbook/hazard-words.ts';
import { materials, pieceKinds } from '../handbook/pieces.ts';

const amount = z.string().regex(/^-?\d+(\.\d+)?$/);
const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
const piece = z.enum(pieceKinds);
const material = z.enum(materials);
const words = z.string(); // the words of the message this was read from
const optional = <T extends z.ZodType>(type: T) => type.exactOptional();

const named = { words };

/** "40 lapel pieces", "2 corsages at 35", "1 BH (groom) 24", "and 2 for the dads". */
const pieces = z.object({
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
      currency: optional(z.string()),
      symbol: optional(z.string()),
    }),
  ), // this line's own price
  material: optional(material), // this line's own material
  wearer: optional(z.string()), // "(groom)"
  adds: optional(z.literal(true)), // "and 2 more": on top of what the thread holds
  ...named,
});

/** One price for every piece ("25 each") or for the whole order ("1000 all up"). */
const price = z.object({
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

const tax = z.object({
  fact: z.literal('tax'),
  basis: optional(z.enum(['included', 'on top', 'none'])),
  name: optional(z.string()), // GST, VAT, HST…
  rate: optional(amount), // percent
  ...named,
});

const materialFact = z.object({ fact: z.literal('material'), material, piece: optional(piece), ...named });

const date = z.object({
  fact: z.literal('date'),
  date: day,
  time: optional(z.string().regex(/^\d{2}:\d{2}$/)),
  of: optional(z.enum(['event', 'hand over', 'photos'])),
  yearAssumed: optional(z.literal(true)), // no year was said
  orderAssumed: optional(z.literal(true)), // 3/4 read in the studio's day-month order
  ...named,
});

/** Finished work. `count` adds to what is made unless `total` ("12 of the 40 done", "40/40 done" say the whole). */
const made = z.object({
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

const broke = z.object({ fact: z.literal('broke'), count: z.number(), piece: optional(piece), ...named });
const left = z.object({ fact: z.literal('left'), count: z.number(), piece: optional(piece), ...named });

/** A correction of one thing: to a new value, or by a difference. */
const change = z.object({
  fact: z.literal('change'),
  what: z.enum(['count', 'price', 'tax', 'date', 'material', 'made', 'broke', 'piece', 'time', 'number']), // 'number': a bare "make that 45", resolved in the thread
  to: optional(z.union([z.string(), z.number()])),
  from: optional(z.union([z.string(), z.number()])),
  by: optional(z.union([z.string(), z.number()])), // counts, days, or money as text
  times: optional(amount), // "double the bouts": the count, by a factor
  piece: optional(piece),
  per: optional(z.enum(['each', 'all'])),
  currency: optional(z.string()),
  symbol: optional(z.string()), // a bare "$"
  name: optional(z.string()), // of the tax
  ...named,
});

const undo = z.object({ fact: z.literal('undo'), ...named });

export const asked = [
  'price', // what is the price / what should it be
  'total',
  'stemBudget', // what is left for stems each
  'spend', // wholesale for the whole order
  'labour', // labour money and share
  'labourTime', // how long will n take
  'margin',
  'count', // how many did they order
  'countFor', // how many at 25 for 600
  'priceFor', // what must I charge to keep 3.20 for stems
  'ladder', // try 20 to 30
  'whatIf', // can we do 22
  'remaining', // how many left to make
  'due', // what is due today / tomorrow / this week
  'start', // when do we start
  'latestStart',
  'fits', // are we ok for saturday, can we take another 30
  'away', // what if one of us is away thursday
  'eventDate',
  'material',
  'stemOrder', // what or how many stems to order
  'orderBy',
  'drying',
  'buying', // the buying list
  'prices', // the studio's price list
  'recipe',
  'taxStatus', // is tax in there
  'summary',
  'events', // open events
  'working', // show working
  'client', // the version for the client
  'why',
  'help',
  'calendar',
  'picture',
  'wearers',
  'card', // bench card
  'pinOn',
  'packing',
  'labels', // board labels
  'sheets', // all sheets as one file to print
  'review',
  'season',
  'whatFits',
  'forget', // everything kept of this event; `all`: confirmed
  'export', // everything kept of this event, as a file
  'other', // a question we recognise as one but cannot answer
] as const;

/** A question: computes and stores nothing. */
const question = z.object({
  fact: z.literal('question'),
  asks: z.enum(asked),
  number: optional(z.number()),
  numberMax: optional(z.number()),
  amount: optional(amount),
  amountMax: optional(amount),
  step: optional(amount),
  piece: optional(piece),
  item: optional(z.string()), // "how many stems of statice"
  all: optional(z.literal(true)), // over all open events: "buying list for everything"
  date: optional(day),
  people: optional(z.number()),
  material: optional(material),
  basis: optional(z.enum(['included', 'on top', 'none'])),
  ...named,
});

const recipeLine = z.object({
  ingredient: z.string(),
  stems: optional(z.number()),
  length: optional(z.number()),
  unit: optional(z.string()), // of the length: cm, m, in…
  wearer: optional(z.string()),
  makes: optional(z.number()), // the amount is for this many pieces; kept apart, because 2 stems for 3 pieces has no last digit
});
export type RecipeLineFact = z.infer<typeof recipeLine>;

const recipe = z.object({
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

const pack = z.object({
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
  supplier: optional(z.string()),
  leadDays: optional(z.number()),
  dryingDays: optional(z.number()),
  stock: optional(z.number()),
  spare: optional(amount), // percent bought beyond what goes in
  role: optional(z.string()), // focal, line, texture, foliage, filler, sundry
  note: optional(z.string()),
  ...named,
});

/** The price list's word on what an event's recipes use, as it was when they were costed. Nobody says this: it is kept beside what was said. */
const quoted = z.object({
  fact: z.literal('quoted'),
  packs: z.array(z.object({ item: z.string(), price: amount, size: amount, unit: z.string(), per: optional(z.string()) })),
  ...named,
});

const crew = z.object({
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

const wearers = z.object({
  fact: z.literal('wearers'),
  wearers: z.array(z.object({ wearer: z.string(), count: z.number(), piece: optional(piece), note: optional(z.string()) })),
  total: optional(z.number()),
  notes: optional(z.literal(true)), // only the notes are said: a wearer of the list keeps its count and its piece
  ...named,
});

/** What the event is called: "event: harbour dance". */
const title = z.object({ fact: z.literal('title'), title: z.string(), ...named });

/** A rule for this event alone: "this one at 3.5 and 25% labour". */
const rule = z.object({
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
  ]),
  to: z.string(),
  piece: optional(piece),
  ...named,
});

/** What it really cost: "spent 182.40 at the market", "took 3 hours for 12", "3 unused". */
const actual = z.object({
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
const step = z.object({
  fact: z.literal('step'),
  step: z.enum(['ordered', 'received', 'hung', 'drying checked', 'boarded', 'handed over', 'cancelled']),
  item: optional(z.string()),
  ...named,
});

/** How long this studio dries something: "we dry statice 10 days". */
const drying = z.object({ fact: z.literal('drying'), item: z.string(), days: z.number(), daysMax: optional(z.number()), ...named });

/** Kept beside what a message states, never read from it as a fact: the hazards its words tell of, and the cautions its reply showed. */
const care = z.object({
  fact: z.literal('care'),
  heard: optional(z.array(z.enum(hazards))),
  shown: optional(z.array(z.string())), // ids of the handbook's cautions
  ...named,
});

/** Kept beside what a message states: a calendar file or picture was given out and the dates it held, or people were told that it no longer holds. */
const calendar = z.object({
  fact: z.literal('calendar'),
  given: optional(z.enum(['file', 'picture'])),
  steps: optional(z.array(z.object({ id: z.string(), title: z.string(), date: day }))),
  ...named,
});

export const factSchema = z.discriminatedUnion('fact', [
  pieces,
  price,
  tax,
  materialFact,
  date,
  made,
  broke,
  left,
  change,
  undo,
  question,
  recipe,
  pack,
  quoted,
  crew,
  wearers,
  title,
  rule,
  actual,
  step,
  drying,
  care,
  calendar,
]);
export type Fact = z.infer<typeof factSchema>;
export type FactName = Fact['fact'];
export type FactOf<N extends FactName> = Extract<Fact, { fact: N }>;
export type Asked = (typeof asked)[number];
