// A question that waits: its answers in the florist's own words, what is said beside it, and what is not read.

import { describe, expect, it } from 'vitest';
import { plainStudio, replyTo } from '../support/plain-studio.ts';

const order = '20 bouts at 15 inc, 4 wrist corsages at 35 inc';

describe('“18 done” of two kinds', () => {
  it.each(['bouts', 'buttonholes', 'boutonniere', 'the bouts pls', '18 bouts', '18 buttonholes', 'bhs'])(
    '“%s” are the buttonholes made',
    async (said) => {
      expect(await replyTo([order, '18 done', said])).toMatch(/^18 of 20 buttonholes made/);
    },
  );
  it('is shared out', async () => {
    expect(await replyTo([order, '18 done', '14 bouts and 4 corsages'])).toMatch(/^14 of 20 buttonholes made, 6 left; all 4/);
  });
  it('another number is asked about, and the order stays', async () => {
    expect(await replyTo([order, '18 done', '17 bouts'])).toContain('17 buttonholes made / 17 buttonholes ordered');
    expect(await replyTo([order, '18 done', '17 bouts', 'how many left?'])).toContain('0 of 20 buttonholes');
  });
  it.each(['no 12', 'sorry 12', 'i meant 12', '12 not 18', 'no, 12 done'])(
    '%s puts the number right, and the kind is still asked',
    async (said) => {
      expect(await replyTo([order, '18 done', said])).toContain('Which pieces is “12 done” about?');
      expect(await replyTo([order, '18 done', said, 'bouts'])).toMatch(/^12 of 20 buttonholes made/);
    },
  );
  it('“make it 24” may be the order’s', async () => {
    expect(await replyTo([order, '18 done', 'make it 24', 'how many left?'])).toContain('0 of 20 buttonholes');
    expect(await replyTo([order, '18 done', 'make it 24'])).not.toContain('“24 done”');
  });
  it('is asked once for all that is said of them', async () => {
    expect(await replyTo([order, '18 done, 2 broke'])).toContain('Which pieces is “18 done, 2 broke” about?');
    expect(await replyTo([order, '18 done, 2 broke', 'bouts'])).toMatch(/^16 of 20 buttonholes made/);
  });
  it('is named where another question goes first', async () => {
    expect(await replyTo(['20 bouts, 4 wrist corsages', '15, and 18 done'])).toContain('Not used: “18 done”.');
  });
  it('is asked once the kind is told, for it may be ordered as well', async () => {
    expect(await replyTo([order, '18 done', 'bouts', 'no 12'])).toContain('12 buttonholes made');
  });
  it('is asked in the studio’s own word', async () => {
    expect(await replyTo([order, '18 done'], plainStudio('US'))).toContain('Say: boutonniere / wrist corsage');
  });
});

describe('something else while it waits', () => {
  it('keeps it where its answers still hold', async () => {
    expect(await replyTo([order, '18 done', 'fresh'])).toContain('Which pieces is “18 done” about?');
    expect(await replyTo([order, '18 done', 'fresh', 'bouts'])).toMatch(/^18 of 20 buttonholes made/);
    expect(await replyTo(['8 bouts 17 inc', '27/2 fresh', 'each'])).toContain('8 buttonholes at £17.00');
  });
  it('is put again behind a question', async () => {
    expect(await replyTo([order, '18 done', 'how many left?'])).toContain('Which pieces is “18 done” about?');
  });
  it('is named where another takes its place', async () => {
    expect(await replyTo([order, '18 done', '2 broke'])).toContain('Not kept: “18 done”.');
  });
  it('is put again where nothing was read', async () => {
    expect(await replyTo([order, '18 done', 'the van is late'])).toContain('Say: buttonhole / wrist corsage');
  });
});

describe('plain answers', () => {
  it.each([
    [['20 bouts at 15 inc', 'sat 6 march', 'both'], /dried base/],
    [['11 bouts 3 corsages 1 crown', '14, 32, 65', 'yes'], /1 flower crown at £65\.00, £315\.00 in all/],
    [['20 bouts at 15', 'inc'], /VAT included: /],
    [['20 bouts at 15 inc', '7 done', 'made the rest'], /20 buttonholes (are )?made/],
    [['20 bouts at 15 inc', '7 done', 'made the rest bar 2'], /18 of 20 buttonholes made/],
    [['20 bouts at 15 inc, 3 corsages at 30', '7 bouts done', 'rest done'], /Which pieces is “rest done” about/],
    [['10 bouts at 14 inc, 2 crowns at 70', 'drop the crowns'], /^Flower crowns: 2 → 0/],
  ])('%j', async (said, reply) => {
    expect(await replyTo(said)).toMatch(reply);
  });
});

it('an undo names what it takes back', async () => {
  expect(await replyTo(['8 bouts at 14 inc', '27/2 fresh', 'the van is late', 'undo'])).toMatch(
    /^Taken back: event Sat 27 February 2027.*; fresh\./,
  );
});
