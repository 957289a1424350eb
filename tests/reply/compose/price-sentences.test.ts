// The small print of a price: every rate, assumption and minimum in a sentence a florist can act on, and every column named after what it holds.

import { describe, expect, it } from 'vitest';
import { allRates } from '../../../src/handbook/tax-rates.ts';
import { inOntario, plainStudio, replyTo } from '../../support/plain-studio.ts';

const twoMaterials = ['40 buttonholes at 25 inc, fresh', '10 crowns at 96', 'crowns are dried'];

describe('tax', () => {
  it('is noted by the handbook in whole sentences', () => {
    const notes = allRates.flatMap(({ note }) => (note === undefined ? [] : [note]));
    expect(notes.length).toBeGreaterThan(5);
    for (const note of notes) expect(note).toMatch(/^[A-Z].*\.$/);
    expect(notes.join(' ')).not.toMatch(/derived|the page|heading/);
  });

  it('has no figure where none is charged or none is known', async () => {
    expect(await replyTo(['40 buttonholes at 25, no tax'])).not.toContain('no tax 0 %');
    const american = await replyTo(['40 boutonnieres at 25'], plainStudio('US'));
    expect(american).not.toContain('0 %)');
    expect(american).toContain('No rate is set for the sales tax that comes on top: say “tax 8.25%”');
  });

  it('names both rates to the client', async () => {
    // Ireland, 13.5 % on fresh flowers and 23 % on dried: Horticultural retailers' VAT obligations, HortiTrends (reprints Revenue).
    // 1000 × 13.5 / 113.5 = 118.94 and 960 × 23 / 123 = 179.51.
    expect(await replyTo([...twoMaterials, 'for the client'], plainStudio('IE'))).toContain(
      'Total €1,960.00, including €118.94 VAT at 13.5 % and €179.51 VAT at 23 %.',
    );
  });

  it('offers each rate of a mixed piece once', async () => {
    expect(await replyTo(['40 buttonholes at 25 inc, mixed'], plainStudio('IE'))).toContain(
      'Say: 23 % (as dried, preserved, artificial) / 13.5 % (as fresh)',
    );
  });
});

describe('a price before tax', () => {
  it('is labelled as the quoted one, and the tax leads up to what the client pays', async () => {
    expect(await replyTo(['40 boutonnieres at 25'], inOntario)).toMatch(
      /Before tax \(quoted\) +\$25\.00 .*\nHST 13 % +\$3\.25 .*\nClient pays +\$28\.25 /,
    );
  });

  it('is told apart from what the client pays in an order of several kinds', async () => {
    const reply = await replyTo(['40 boutonnieres at 25, 2 crowns at 120'], inOntario);
    expect(reply).toMatch(/each ex tax +wholesale +labour +client pays\n40 boutonnieres +\$25\.00 .*\$1,130\.00/);
    expect(reply).toContain('$1,401.20 in all with the tax');
  });
});

describe('a column of money for what is bought', () => {
  const order = ['8 buttonholes at 18, 2 crowns at 140, inc'];
  it('is stems where sundries are planned apart', async () => expect(await replyTo(order)).toMatch(/each +stems +labour/));
  it('is wholesale where it pays for sundries too', async () =>
    expect(await replyTo(order, plainStudio('GB'))).toMatch(/each +wholesale +labour/));
});

describe('what was taken for granted', () => {
  it('is named', async () => {
    expect(await replyTo(['40 buttonholes at 25 inc'])).toContain('VAT 20 % (assumed: tax rate of your region).');
    expect(await replyTo(['40 buttonholes at 25 inc'], plainStudio('GB'))).toContain(
      '(assumed: labour share, multiple, tax rate of your region).',
    );
    expect(await replyTo(['40 buttonholes at 25 inc', 'vat is 20%'])).not.toContain('(assumed');
  });
});

describe('a minimum', () => {
  const studio = plainStudio('GB', { minimumPrice: { buttonhole: '12' } });
  it.each([
    ['40 buttonholes at 11 plus vat', '£11.00 is below your minimum of £12.00 for a buttonhole, both before tax.'],
    ['40 buttonholes at 11 inc vat', '£11.00 is below your minimum of £12.00 for a buttonhole, both with the tax in.'],
    ['40 buttonholes at 11, no tax', '£11.00 is below your minimum of £12.00 for a buttonhole.'],
  ])('is compared like with like: %s', async (said, line) => expect(await replyTo([said], studio)).toContain(line));
});
