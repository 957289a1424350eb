// Answers in a word or two to what the bot itself asked: none of them is met with silence.

import { describe, expect, it } from 'vitest';
import { talkJson } from '../support/converse.ts';

const lastOf = async (...said: readonly string[]): Promise<string | undefined> =>
  (await talkJson(said.map((text) => ({ thread: 't1', text })))).at(-1)?.reply?.text;

describe('the price of pieces that was asked for', () => {
  it.each([
    ['price for 20 bouts?', '14', '£280.00'],
    ['price for 20 bouts?', '14 each inc', '£280.00'],
    ['price for 20 bouts?', '£14', '£280.00'],
    ['how much for 12 corsages', '30 each inc', '£360.00'],
    ['what would 20 bouts cost?', '280 all in', '£280.00'],
  ])('“%s”, “%s”', async (asked, told, total) => expect(await lastOf(asked, told, 'total?')).toContain(total));
  it('keeps the pieces where only the tax is told', async () => {
    expect(await lastOf('price for 20 bouts?', 'inc')).toContain('20 buttonholes: noted.');
    expect(await lastOf('price for 20 bouts?', 'inc', '14', 'total?')).toContain('£280.00');
  });
  it('leaves them out where other pieces are told', async () =>
    expect(await lastOf('price for 20 bouts?', '10 corsages at 30', 'total?')).toContain('£300.00'));
  it('keeps nothing of a question alone', async () =>
    expect(await lastOf('price for 20 bouts?', 'total?')).toContain('There is no price in this thread yet'));
});

const order = '12 bouts at 14 sat 6 march fresh';

describe('a choice', () => {
  it('of pieces or a price is taken by the word for it', async () =>
    expect(await lastOf(order, 'make it 16', 'pieces')).toContain('Buttonholes: 12 → 16'));
  it('is put again behind a yes that could be either', async () =>
    expect(await lastOf('12 bouts and 4 corsages sat 6 march fresh', '14 and 30', 'yes')).toMatch(/^What does “14 and 30” set\?/));
  it('is put again behind a number that could be either', async () =>
    expect(await lastOf(order, 'make it 16', '16')).toMatch(/^What does “make it 16” set\?/));
  it('is put again behind what was not read', async () =>
    expect(await lastOf(order, 'make it 16', 'aunties 4 at 12 instead')).toMatch(/^Not read: .*\n\nWhat does “make it 16” set\?/s));
});

describe('whether to forget the event', () => {
  it.each(['yes', 'yes please', 'yep'])('“%s” does', async (yes) =>
    expect(await lastOf(order, 'forget this event', yes)).toContain('Forgotten'),
  );
  it('“ok” has only heard it', async () => expect(await lastOf(order, 'forget this event', 'ok')).toBeUndefined());
  it('“no” keeps it', async () => expect(await lastOf(order, 'forget this event', 'no')).toContain('12 buttonholes'));
});
