// "Same again for the second flower girl": whose kind it is, the order knows or is asked.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '9 lapels at 15, 2 corsages at 26, inc vat';

describe('one more of what such a wearer has', () => {
  it.each([
    [
      [order, 'the flower girl needs a little crown, 40', 'same again for the second flower girl'],
      '2 flower crowns (flower girl) at £40.00',
    ],
    [[order, 'add a flower crown for the flower girl, 40', 'another one for the other flower girl'], '2 flower crowns at £40.00'],
    [[order, 'add a flower crown for the flower girl, 40', 'one more crown for the second flower girl'], '2 flower crowns at £40.00'],
    [['6 bouts at 14', 'ditto for the best man'], '7 buttonholes at £14.00'],
  ])('%j', async (said, line) => expect(await replyTo(said)).toContain(line));
});

describe('of several kinds', () => {
  it('which one is asked, and nobody is put on the list before', async () => {
    const reply = await replyTo([order, "same again for the groom's mum"]);
    expect(reply).toContain('Which pieces is “same again for the groom');
    expect(reply).not.toContain('wearer');
  });
  it('the answer orders it and says whose it is', async () => {
    const said = [order, "same again for the groom's mum", 'corsage'];
    expect(await replyTo(said)).toContain('3 corsages at £26.00');
    expect(await replyTo([...said, 'who wears what'])).toContain('mother of the groom: corsage');
  });
});

describe('who a piece is for', () => {
  it('is kept beside its price', async () =>
    expect(await replyTo([order, 'the flower girl needs a little crown, 40', 'who wears what'])).toContain('flower girl: flower crown'));
  it('and the one on the list stays one', async () =>
    expect(await replyTo(['groom, gran', '2 bouts at 14', 'add a corsage for gran, 28', 'who wears what'])).toMatch(/^2 wearers/m));
});
