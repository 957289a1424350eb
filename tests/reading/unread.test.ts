// Other people's numbers: bays, rooms, invoices, times, wages, phone numbers, bouquets and arches. Nothing of them is read, and nothing is asked.

import { expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';
import { textLines } from './support/corpus-files.ts';

it.each(textLines('unread.txt'))('%s', (message) => {
  const { facts, asks, problems } = readMessage(message, context);
  expect({ facts, asks, problems }).toEqual({ facts: [], asks: [], problems: [] });
});

it('names numbers and trade words that nothing used', () => {
  expect(readMessage('12 buttonholes at 18 each, 3 somethings', context).unread).toEqual(['3']);
});

it('names a kind that a change denies and does not read, and keeps no part of the change', () => {
  const { facts, unread } = readMessage('make it 5 crowns and no hair flowers for the bride', context);
  expect({ facts, unread }).toEqual({ facts: [], unread: ['5 crowns', 'hair flowers'] });
});
