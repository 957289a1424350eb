// The shapes that facts are made of. Money and rates are decimal text ("8.25"); days are YYYY-MM-DD.

import { z } from 'zod';
import { materials, pieceKinds } from '../../handbook/pieces.ts';

export const amount = z.string().regex(/^-?\d+(\.\d+)?$/);
export const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/);
export const piece = z.enum(pieceKinds);
export const material = z.enum(materials);
export const optional = <T extends z.ZodType>(type: T) => type.exactOptional();

/** Every fact has the words of the message it was read from. */
export const named = { words: z.string() };
