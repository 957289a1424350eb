// Orders as threads leave them, well kept or not: kinds twice, lines for one wearer, wearers who match nothing.

import fc from 'fast-check';
import { materials, pieceKinds } from '../../src/handbook/pieces.ts';
import type { EventState, OrderLine } from '../../src/thread/event.ts';
import { anEvent } from './an-event.ts';

const roles = ['groom', 'grooms', 'ushers', 'dads', 'mums', 'page boy', 'flower girls', 'bridesmaids', 'reader', 'dog of honour', 'Groom'];
const notes = ['aged 3, no pins', 'has a pacemaker', 'allergic to lilies', 'heavy tweed coat', 'left-handed'];

const optional = <T, K extends string>(name: K, value: T | undefined) => (value === undefined ? {} : ({ [name]: value } as Record<K, T>));

const orderLine: fc.Arbitrary<OrderLine> = fc
  .record({
    piece: fc.constantFrom(...pieceKinds),
    count: fc.integer({ min: 0, max: 90 }),
    material: fc.option(fc.constantFrom(...materials), { nil: undefined }),
    wearer: fc.option(fc.constantFrom(...roles), { nil: undefined, freq: 3 }),
  })
  .map(({ piece, count, material, wearer }) => ({ piece, count, ...optional('material', material), ...optional('wearer', wearer) }));

const wearer: fc.Arbitrary<EventState['wearers'][number]> = fc
  .record({
    wearer: fc.constantFrom(...roles),
    count: fc.integer({ min: 0, max: 30 }),
    piece: fc.option(fc.constantFrom(...pieceKinds), { nil: undefined }),
    note: fc.option(fc.constantFrom(...notes), { nil: undefined }),
  })
  .map(({ piece, note, ...rest }) => ({ ...rest, ...optional('piece', piece), ...optional('note', note) }));

export const randomOrder: fc.Arbitrary<EventState> = fc
  .record({
    lines: fc.array(orderLine, { maxLength: 6 }),
    wearers: fc.array(wearer, { maxLength: 8 }),
    material: fc.option(fc.constantFrom(...materials), { nil: undefined }),
  })
  .map(({ lines, wearers, material }) => anEvent({ lines, wearers, ...optional('material', material) }));
