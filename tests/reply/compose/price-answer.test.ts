// The price answer as the florist reads it out: first line the answer, nothing hidden, nothing stored by a question.

import { describe, expect, it } from 'vitest';
import type { StudioSettings } from '../../../src/studio/settings.ts';
import { demoStudio, talk } from '../../support/converse.ts';

const reply = async (lines: readonly string[], studio: StudioSettings = demoStudio): Promise<string> => {
  const said = await talk(lines, { studio });
  return said
    .slice(said.lastIndexOf('\n> ') + 1)
    .split('\n')
    .slice(1)
    .join('\n');
};

const firstLine = async (lines: readonly string[], studio?: StudioSettings): Promise<string> =>
  (await reply(lines, studio)).split('\n')[0] ?? '';

/** The demo studio elsewhere, with that place's own tax. */
const studioIn = (region: string, currency: string, timeZone: string): StudioSettings => {
  const { tax: _, subdivision: _s, ...rest } = demoStudio;
  return { ...rest, region, currency, timeZone };
};

describe('the first line is the answer', () => {
  it.each([
    ['40 lapel pieces at 25 inc tax', '40 buttonholes at £25.00, VAT included: £3.26 of stems each, plus £0.75 sundries.'],
    ['1000 all up for 40 buttonholes', '40 buttonholes at £25.00, VAT included (your usual): £3.26 of stems each, plus £0.75 sundries.'],
    ['12 buttonholes at 22 plus vat', '12 buttonholes at £22.00, plus VAT: £3.48 of stems each, plus £0.75 sundries.'],
    [
      '8 buttonholes at 18, 2 wrist corsages at 42, a crown at 140, inc',
      '8 buttonholes at £18.00, 2 wrist corsages at £42.00, 1 flower crown at £140.00, £368.00 in all, VAT included: £58.97 to spend on stems and sundries.',
    ],
  ])('%s', async (text, line) => {
    expect(await firstLine([text])).toBe(line);
  });

  it('says boutonniere, and the tax on top, in the United States', async () => {
    const line = await firstLine(['40 boutonnieres at $25 plus tax 8.25%'], studioIn('US', 'USD', 'America/Chicago'));
    expect(line).toMatch(/^40 boutonnieres at \$25\.00, plus/);
  });
});

describe('another number than the thread has is tried, and not kept', () => {
  it.each([
    ['what would 60 bouts come to?', '60 buttonholes at £25.00,'],
    ['60 bouts at 22 comes to how much?', '60 buttonholes at £22.00,'],
    ['what if we did 60 at 22?', '60 buttonholes at £22.00,'],
    // A bare number is the price or the count, whichever is nearer.
    ['what about 27?', '40 buttonholes at £27.00,'],
    ['what if 50?', '50 buttonholes at £25.00,'],
    ['what would 40 bouts come to?', '£1,000.00 in all'],
    ["what's the stem budget at 30 each?", '40 buttonholes at £30.00,'],
    ['if we charge 22 each what do we spend at the market', '40 buttonholes at £22.00,'],
    ["what's the stem budget?", '£3.26 of stems each'],
  ])('%s', async (question, opening) => {
    expect(await firstLine(['40 buttonholes at 25 inc', question])).toMatch(new RegExp(`^${opening}`));
    expect(await firstLine(['40 buttonholes at 25 inc', question, 'how many is it?'])).toBe('40 in all: 40 buttonholes.');
  });
});

describe('nothing is hidden', () => {
  it('asks which of the two a number is that was chosen', async () => {
    expect(await reply(['40 buttonholes at 25 inc', 'ok go with 27'])).toMatch(/27 pieces \/ 27 each/);
  });

  it('names what an event rule replaces', async () => {
    expect(await reply(['40 buttonholes at 25 inc', 'this one at 3.5 and 25% labour'])).toContain(
      'labour share 25 % instead of 30 %, multiple 3.5 instead of 4',
    );
  });

  it('names how a total was shared over the kinds', async () => {
    expect(await reply(['40 buttonholes and 4 corsages, 1200 all in'])).toContain('shared over the kinds by bench minutes');
  });

  it('names the other end of a range', async () => {
    expect(await reply(['12 buttonholes 20 to 25 each inc vat'])).toContain('At the top of the range, £25.00 each: £3.26 of stems each.');
  });

  it('names a tax that was said but is not the one used', async () => {
    expect(await reply(['40 buttonholes at 25 inc gst'])).toContain('You said GST; this is worked out with VAT.');
  });

  it.each([
    [['40 buttonholes at 25 or 28 inc gst']],
    [['40 buttonholes at 25 inc gst', 'try 20 to 30']],
    [['40 buttonholes at 25 inc gst', 'how many at 25 for 600']],
    [['40 buttonholes at 25 inc gst', 'what must I charge to keep 3.20 for stems']],
  ])('names it beside prices that are tried: %j', async (lines) => {
    expect(await reply(lines)).toContain('You said GST; this is worked out with VAT.');
  });

  it('says nothing of it where the tax goes by its own name', async () => {
    expect(await reply(['40 buttonholes at 25 or 28 inc vat'])).not.toContain('You said');
  });

  it('names the minutes that are not paid for, and the price that pays for them', async () => {
    expect(await reply(['50 buttonholes at 8.25 inc vat'])).toMatch(
      /pays for 6 min each; you plan 15\. That is 6 h 56 min short for the order\. £19\.00 would cover it/,
    );
  });

  it('names the gap between the head’s figure and the exact one', async () => {
    expect(await reply(['40 buttonholes at 25 inc'])).toContain(
      'In your head, £3.50 for stems and sundries: taking percentages off one by one comes out £0.51 low.',
    );
  });
});

describe('working and the client form', () => {
  it('shows the chain with its rounding at the end', async () => {
    const working = await reply(['40 buttonholes at 25 inc', 'show working']);
    expect(working).toMatch(/20\.833333… × 30 ÷ 130\s+4\.807692…\s+4\.81/);
  });

  it('gives the client prices and the tax statement, and no cost', async () => {
    const form = await reply(['40 buttonholes at 25 inc, dried, event 14 March', 'for the client']);
    expect(form).toMatch(/40 buttonholes at £25\.00/);
    expect(form).toMatch(/£1,000\.00.*£166\.67 VAT/);
    expect(form).not.toMatch(/stems|labour|wholesale|sundries|minutes/i);
  });
});
