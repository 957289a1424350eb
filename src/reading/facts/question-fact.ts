// What can be asked.

import { z } from 'zod';
import { amount, day, material, named, optional, piece } from './shapes.ts';

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
  'withHands', // what if it's just me
  'hands', // who is at the bench on thursday
  'eventDate',
  'material',
  'stemOrder', // what or how many stems to order
  'orderBy',
  'drying',
  'inWater', // when and how long fresh stems are conditioned
  'buying', // the buying list
  'allBought', // is that list everything
  'leftOver', // what of it will be left
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
  'notKept', // a deposit, a payment or a discount told or asked about
  'export', // everything kept of this event, as a file
  'other', // a question we recognise as one but cannot answer
] as const;

/** A question: computes and stores nothing. */
export const question = z.object({
  fact: z.literal('question'),
  asks: z.enum(asked),
  number: optional(z.number()),
  numberMax: optional(z.number()),
  amount: optional(amount),
  amountMax: optional(amount),
  differs: optional(z.enum(['more', 'fewer', 'without'])), // "5 more", "3 fewer", "without the corsages": from what is ordered
  per: optional(z.literal('all')), // "can we do it for 400 all in": the amount is for all of them
  step: optional(amount),
  piece: optional(piece),
  item: optional(z.string()), // "how many stems of statice"
  stems: optional(z.number()), // of it in each: "what if i use 2 roses"
  all: optional(z.literal(true)), // over all open events: "buying list for everything"
  date: optional(day),
  people: optional(z.number()),
  material: optional(material),
  basis: optional(z.enum(['included', 'on top', 'none'])),
  ...named,
});
