// Short ways to write the facts a message states, so that a test reads like the message.

import type { PieceKind } from '../../src/handbook/pieces.ts';
import type { Fact, FactOf } from '../../src/reading/fact.ts';

const words = 'as said';

type Extra<N extends Fact['fact']> = Partial<Omit<FactOf<N>, 'fact' | 'words'>>;

export const pieces = (count: number, piece: PieceKind, extra: Extra<'pieces'> = {}): Fact => ({
  fact: 'pieces',
  piece,
  count,
  ...extra,
  words,
});
export const each = (amount: string): Fact => ({ fact: 'price', amount, per: 'each', words });
export const inAll = (amount: string): Fact => ({ fact: 'price', amount, per: 'all', words });
export const tax = (basis: 'included' | 'on top' | 'none'): Fact => ({ fact: 'tax', basis, words });
export const on = (date: string, extra: Extra<'date'> = {}): Fact => ({ fact: 'date', date, ...extra, words });
export const material = (of: FactOf<'material'>['material'], piece?: PieceKind): Fact => ({
  fact: 'material',
  material: of,
  ...(piece ? { piece } : {}),
  words,
});
export const made = (extra: Extra<'made'>): Fact => ({ fact: 'made', ...extra, words });
export const broke = (count: number, piece?: PieceKind): Fact => ({ fact: 'broke', count, ...(piece ? { piece } : {}), words });
export const change = (what: FactOf<'change'>['what'], extra: Extra<'change'>): Fact => ({ fact: 'change', what, ...extra, words });
export const asks = (question: FactOf<'question'>['asks'], extra: Extra<'question'> = {}): Fact => ({
  fact: 'question',
  asks: question,
  ...extra,
  words,
});
