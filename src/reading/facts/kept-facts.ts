// Kept beside what a message states, never read from it: cautions shown, calendars given out, words left unread.

import { z } from 'zod';
import { hazards } from '../../handbook/hazard-words.ts';
import { day, named, optional } from './shapes.ts';

/** Kept beside what a message states, never read from it as a fact: the hazards its words tell of, and the cautions its reply showed. */
export const care = z.object({
  fact: z.literal('care'),
  heard: optional(z.array(z.enum(hazards))),
  denied: optional(z.array(z.enum(hazards))), // said to be used no more
  shown: optional(z.array(z.string())), // ids of the handbook's cautions
  ...named,
});

/** Kept beside what a message states: a calendar file or picture was given out and the dates it held, or people were told that it no longer holds. */
export const calendar = z.object({
  fact: z.literal('calendar'),
  given: optional(z.enum(['file', 'picture'])),
  steps: optional(z.array(z.object({ id: z.string(), title: z.string(), date: day }))),
  ...named,
});

/** Kept beside what a message states, for "why?": the words of it that were read as nothing. */
export const unread = z.object({ fact: z.literal('unread'), parts: z.array(z.string()), ...named });
