// Names said for wearers stay with them, through new counts and through the sheets; with more names than people it is asked who they are.

import { describe, expect, it } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '12 buttonholes at 16 inc tax, 3 corsages at 25';
const list = ['Groom: Dan Reed', 'Best man: Ollie', 'Ushers: Sam, Raj, Tom (hay fever)', 'Dee - mother of the bride - corsage'].join(
  '\\\n',
);

describe('a list of wearers by name', () => {
  it('shows each with their role, and a care with whom it was said of', async () => {
    const reply = await replyTo([order, list]);
    expect(reply).toMatch(/^6 wearers, 15 pieces: 7 buttonholes and 2 corsages have no name yet\./);
    expect(reply).toContain('groom (Dan Reed): buttonhole');
    expect(reply).toContain('3 ushers (Sam, Raj, Tom): buttonholes (Tom: hay fever; allergy: check what is in it)');
    expect(reply).toContain('mother of the bride (Dee): corsage');
  });

  it.each([
    [
      'pin-on sheet',
      ['☐ Dan Reed, groom: left lapel', '☐ Sam, usher: left lapel', '☐ Raj, usher: left lapel', '☐ Dee, mother of the bride'],
    ],
    ['who wears what?', ['best man (Ollie): buttonhole']],
  ])('%s', async (asked, lines) => {
    const reply = await replyTo([order, list, asked]);
    for (const line of lines) expect(reply).toContain(line);
  });

  it.each<[string, string | RegExp]>([
    ['4 ushers', '4 ushers (Sam, Raj, Tom): buttonholes'],
    ['another usher', '4 ushers (Sam, Raj, Tom): buttonholes'],
    ['2 ushers', '3 names for 2 ushers: Sam, Raj, Tom. Who is it to be? Say “Ushers: Sam, Raj”.'],
    ['one usher less', '3 names for 2 ushers: Sam, Raj, Tom.'],
    ['Ushers: Raj, Kit', '2 ushers (Raj, Kit): buttonholes'],
    ['no ushers', /^(?![\s\S]*usher)/],
  ])('then “%s”', async (said, reply) => {
    expect(await replyTo([order, list, said])).toMatch(reply);
  });

  it('a flower to be left out is a note, and nobody goes without for it', async () => {
    const said = ['Dan - groom - buttonhole, no lilies', 'Dee - mother of the bride - pin corsage - no roses', 'MC - no thanks'].join(
      '\\\n',
    );
    const reply = await replyTo([said]);
    expect(reply).toMatch(/^2 wearers, 2 pieces: they agree\./);
    expect(reply).toContain('groom (Dan): buttonhole (no lilies)');
  });

  it('who is named again after nobody was left has no names of before', async () => {
    expect(await replyTo([order, list, 'no ushers', '2 ushers'])).not.toContain('names for');
  });
});
