// A price question with another number, another price or only some of the kinds is worked out, never answered with the old figures.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../../support/plain-studio.ts';

const lapels = '20 bouts at 15 inc';
const twoKinds = '20 bouts at 15 inc, 4 wrist corsages at 35 inc';
const first = async (...said: string[]): Promise<string> => (await replyTo(said)).split('\n')[0] ?? '';

describe('another number of the pieces', () => {
  it.each([
    ['what would 30 come to?', '£450.00'],
    ['whats the total for 30?', '£450.00'],
    ['how much for 30?', '£450.00'],
    ['how much is 25 of them all in?', '£375.00'],
    ['how much for 5 more?', '£375.00'],
    ['what if they add 10 bouts', '£450.00'],
    ['what would 2 fewer be', '£270.00'],
  ])('%s', async (asked, total) => {
    const reply = await replyTo([lapels, asked]);
    expect(reply).toContain(total);
    expect(reply).toContain('nothing in this thread has changed');
  });
  it('says what the 5 more are alone', async () => {
    expect(await replyTo([lapels, 'how much for 5 more?'])).toContain('That is £75.00 more than now.');
  });
  it('goes by the price of each where one price was said for all', async () => {
    // 400 / 25 = 16, and 30 × 16 = 480
    expect(await replyTo(['25 bouts, 400 total inc vat', 'what would 30 come to?'])).toContain('£480.00');
  });
  it('asks of which kind', async () => {
    expect(await first(twoKinds, 'whats the total for 30?')).toBe(
      '30 of which? Ask with the kind: “30 buttonholes” or “30 wrist corsages”.',
    );
  });
  it('does not guess which line of a kind grows', async () => {
    expect(await first('1 groom bout 22, 6 groomsmen 16 inc', 'how much for 12 bouts?')).toContain('say how many of each');
  });
});

describe('another price', () => {
  it.each(['how much would 45 each be?', 'what would it come to at 45'])('%s', async (asked) => {
    expect(await replyTo([lapels, asked])).toContain('£900.00');
  });
  it('of several kinds asks for which', async () => {
    expect(await first(twoKinds, 'how much would 45 each be?')).toContain('£45.00 for which?');
  });
  it('shares what they would pay for all', async () => {
    expect(await first(lapels, 'what would each bout be if they only pay 260 total')).toContain('20 buttonholes at £13.00');
  });
});

describe('only some of the kinds', () => {
  it.each([
    ['total for the bouts?', '£300.00 for the buttonholes, of which £50.00 VAT.'],
    ['total for the corsages?', '£140.00 for the wrist corsages, of which £23.33 VAT.'],
    ['how much without the corsages?', '£300.00 without the wrist corsages, of which £50.00 VAT.'],
    ['how much if we drop the corsages?', '£300.00 without the wrist corsages, of which £50.00 VAT.'],
    ['total for the crowns?', 'No flower crowns are ordered here yet.'],
  ])('%s', async (asked, said) => {
    expect(await first(twoKinds, asked)).toBe(said);
  });
  it('takes no price for all apart', async () => {
    expect(await first('20 bouts and 4 corsages, 500 all in inc vat', 'how much without the corsages?')).toContain(
      '£500.00 is one price for the whole order',
    );
  });
  it('names a kind tried that has no price', async () => {
    expect(await replyTo([lapels, 'how much for 4 crowns'])).toContain('Not in these figures: flower crowns not priced yet.');
  });
});

it('asks whether a number behind a kind is so many or a price', async () => {
  expect(await first(twoKinds, 'what if the corsages were 40?')).toMatch(/^40 wrist corsages, or £40\.00 each\?/);
});

it('says what it has not used above the figures as they stand', async () => {
  expect(await replyTo([lapels, 'was the 44 a total or each?'])).toContain('I have not worked out anything with “44”');
  expect(await replyTo([lapels, 'what did we charge for 30 last year'])).toContain('I have not worked out anything with “30”');
  expect(await replyTo([lapels, 'total?'])).not.toContain('worked out');
});
