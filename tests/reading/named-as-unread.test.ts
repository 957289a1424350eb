// What is held is named, word for word where no single word of it weighs.

import { expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';

it.each([
  ['10 bouts at 14.50 inc vat and one for free for the groom', ['and one for free for the groom']],
  ["10 bouts at 14.50 inc vat, groom's is free", ["groom's is free"]],
  ['12 bouts at 14.50 with one comp', ['with one comp']],
  ['10 bouts 14.50, 2 crowns free of charge', ['free of charge']],
  ['moved to 7/3 5pm, ceremony 4:30', ['5pm']],
  ['now sun 7 march, ceremony 2pm, reception 5pm', ['5pm']],
  ['12 bouts done, corsages all done, 3 to go', ['corsages all done,']],
  ['20 lapels and 3 crowns, show her the R45 and the R60 version', ['R45', 'R60']],
  ['groom, best man, 3 groomsmen, 15 march they come', ['15']],
])('%s', (text, unread) => {
  expect(readMessage(text, context).unread).toEqual(unread);
});

it.each(['10 bouts at 14.50, free delivery', '12 bouts at 14 inc, groom is free tuesday'])('%s names nothing', (text) => {
  expect(readMessage(text, context).unread).toEqual([]);
});
