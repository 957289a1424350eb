// Prices typed in a thread: what one stem costs, what it was before, whose recipes it touches, and prices that cannot stand.
// A unit cost is always rounded up, as floral design courses teach it (4.95 for 100 is 0.05, 14.60 for 48 is 0.31); see tests/buying/unit-cost.test.ts.
import { describe, expect, it } from 'vitest';
import { lastReply, replies } from '../../support/thread-talk.ts';

const order = ['40 buttonholes at 25 inc', 'dried, event 14 March', 'each buttonhole: 3 bunny tails, 1 statice'];

describe('a price typed in a thread', () => {
  it.each([
    ['cockscomb 4.95 a box of 100', 'Cockscomb: £4.95 for 100 stems, £0.05 each.'],
    ['cockscomb 14.60 a box of 48', 'Cockscomb: £14.60 for 48 stems, £0.31 each.'],
    ['statice 8.20 a bunch of 10', 'Statice: £7.50 → £8.20 for 10 stems, so £0.75 → £0.82 each.'],
    ['statice 7.50 a bunch of 10', 'Statice: £7.50 for 10 stems, £0.75 each, as before.'],
    ['statice 9 a bunch of 12', 'Statice: £7.50 for 10 stems, £0.75 each → £9.00 for 12 stems, £0.75 each.'],
    ['satin ribbon 10 m spool 18', 'Satin ribbon: £18.00 for 10 m, £1.80 a m.'],
    ['statice 9.50 inc vat a bunch of 10', 'Statice: £7.50 → £9.50 for 10 stems, so £0.75 → £0.95 each, counted with the VAT in it.'],
    ['heather 4.80 a bunch', 'Heather: £4.80 a bunch. How many are in a bunch? Say “heather 4.80 a bunch of 10”.'],
    ['hot glue 50p per stick', 'Hot glue: £0.50 each.'],
    ['foraged larch twigs, free, 7 days to dry', 'Larch twig: free, as before, 7 days to dry.'],
  ])('%s', async (said, expected) => {
    expect((await lastReply(said)).split('\n')[0]).toBe(expected);
  });

  it.each([
    ['3 bunches of statice for £24', 'Statice: £7.50 → £8.00 for 10 stems, so £0.75 → £0.80 each (£24.00 for 3).'],
    ['heather 3 bunches for £12', 'Heather: £4.00 a bunch (£12.00 for 3). How many are in a bunch? Say “heather 4.00 a bunch of 10”.'],
    ['heather 2 bunches of 10 for £9', 'Heather: £4.50 for 10 stems, £0.45 each (£9.00 for 2).'],
    ['statice 3 bunches for £10', 'Statice: £10.00 for 3 does not come out even for one. What does one bunch cost?'],
    ['statice 3 bunches £24', 'Is “£24” for each bunch or for all of them?'],
  ])('for several packs is reckoned for one, refused or asked about: %s', async (said, expected) => {
    expect((await lastReply(said)).split('\n')[0]).toBe(expected);
  });

  it.each([
    ['each', 'Statice: £7.50 → £8.00 for 10 stems, so £0.75 → £0.80 each.'],
    ['for all', 'Statice: £7.50 → £4.00 for 10 stems, so £0.75 → £0.40 each (£8.00 for 2).'],
    ['all of them', 'Statice: £7.50 → £4.00 for 10 stems, so £0.75 → £0.40 each (£8.00 for 2).'],
  ])('for several packs is as the answer says: %s', async (answer, expected) => {
    expect((await lastReply('2 bunches of statice £8', answer)).split('\n')[0]).toBe(expected);
  });

  it('that is nearly the name of something listed is kept apart and asked about', async () => {
    expect(await lastReply('statise 8.20 a bunch of 10')).toContain('New on the list. Did you mean Statice?');
  });

  it('of something in the recipe is costed at once, here', async () => {
    const reply = await lastReply(...order, 'statice 8.20 a bunch of 10');
    expect(reply).toContain('Statice: £7.50 → £8.20 for 10 stems');
    expect(reply).toContain('Each buttonhole takes £1.69 of stems');
    expect(reply).not.toContain('Since then');
  });

  it('of something that is not in the recipe leaves the recipe alone', async () => {
    expect(await lastReply(...order, 'lavender 8.40 a bunch of 100')).toBe('Lavender: £8.00 → £8.40 for 100 stems, so £0.08 → £0.09 each.');
  });

  it('names the other events whose recipes use it; they keep the price they were quoted at', async () => {
    const said = await replies(
      'event: autumn dance',
      ...order,
      { thread: 't2', text: 'statice 8.20 a bunch of 10' },
      "what's the recipe?",
      'each buttonhole: 3 bunny tails, 1 statice',
    );
    expect(said[4]).toContain('Used in autumn dance; it keeps the price it was quoted at.');
    expect(said[5]).toContain('Each buttonhole takes £1.62 of stems');
    expect(said[5]).toContain('At the prices it was quoted at. Since then: Statice £7.50 → £8.20. At today’s prices'.replace('’', "'"));
    expect(said[6]).toContain('Each buttonhole takes £1.69 of stems');
    expect(said[6]).not.toContain('Since then');
  });

  it('keeps its quotes when an older price message is edited or taken back', async () => {
    const said = await replies(
      { id: 'p1', thread: 't2', text: 'statice 8.00 a bunch of 10' },
      ...order,
      { thread: 't2', edits: 'p1', text: 'statice 9.00 a bunch of 10' },
      "what's the recipe?",
      { thread: 't2', deletes: 'p1' },
      "what's the recipe?",
    );
    expect(said[5]).toContain('Since then: Statice £8.00 → £9.00.');
    expect(said[7]).toContain('Since then: Statice £8.00 → £7.50.');
  });

  it('taken back by undo says what holds again', async () => {
    expect(await lastReply('statice 8.20 a bunch of 10', 'undo')).toBe('Taken back.\nStatice: back to £7.50 for 10 stems, £0.75 each.');
    expect(await lastReply('heather 4.80 a bunch of 20', 'undo')).toBe('Taken back.\nHeather is off the price list.');
  });
});

describe('prices that cannot stand refuse the message', () => {
  it.each([
    ['statice 4.80 a bunch of 0', 'A pack of 0 statice can’t be bought'],
    ['statice 4.80 a bunch, statice 5.20 a bunch', 'There are two prices for statice: £4.80 and £5.20. Which is right?'],
  ])('%s', async (said, expected) => {
    const [refused, after] = await replies(said, 'statice 7.50 a bunch of 10');
    expect(refused).toContain(expected.replace('’', "'"));
    expect(after).toContain('as before');
  });
});
