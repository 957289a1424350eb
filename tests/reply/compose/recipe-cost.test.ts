// Recipes in a thread against their stems money: rows and shares, over and under, cures that really are enough, wearers, yields, missing prices.
// Stems money of the demo studio at 25 with 20 % inside, 30 % on product, times 4, sundries 0.75: 3.2564 (tests/pricing check the chain by its sources).
import { describe, expect, it } from 'vitest';
import { demoStudio, talk } from '../../support/converse.ts';
import { lastReply, replies } from '../../support/thread-talk.ts';

const order = '40 buttonholes at 25 inc';

describe('a recipe', () => {
  it('has a row an ingredient, with what it takes of the stems money, and sundries of its own', async () => {
    expect(await lastReply(order, 'each buttonhole: 3 bunny tails, 1 statice, 30cm velvet ribbon')).toContain(
      [
        'Recipe for each buttonhole: 3 bunny tails, 1 statice, 30 cm velvet ribbon.',
        'Each buttonhole takes £1.62 of stems: £1.64 under the £3.26 there is.',
        '',
        '               in it    one   cost  share',
        'Bunny tails        3  £0.29  £0.87   27 %',
        'Statice            1  £0.75  £0.75   23 %',
        'Velvet ribbon  30 cm  £0.47  £0.47   62 %',
        '',
        'Sundries from the list come to £0.47: £0.28 under the £0.75 planned.',
      ].join('\n'),
    );
  });

  it('over the money names single changes that are enough, and the price that would hold it', async () => {
    const over = await lastReply(order, 'each buttonhole: 3 bunny tails, 2 craspedia, 1 statice');
    expect(over).toContain('Each buttonhole takes £3.42 of stems: £0.16 over the £3.26 there is.');
    expect(over).toContain('- Craspedia: 1 instead of 2 (£2.52 of stems)');
    expect(over).toContain('- Keep it and charge £26.50 each');
  });

  it.each([
    ['fewer of the dearest', 'each buttonhole: 3 bunny tails, 1 craspedia, 1 statice'],
    ['a swap within the role', 'each buttonhole: 3 bunny tails, 2 craspedia, 1 nigella pods'],
    ['one left out', 'each buttonhole: 3 bunny tails, 2 craspedia'],
  ])('cured by %s is under', async (_name, cured) => {
    expect(await lastReply(order, cured)).toMatch(/of stems: £\d\.\d\d under/);
  });

  it('kept at the price it names is under', async () => {
    expect(await lastReply('40 buttonholes at 26.50 inc', 'each buttonhole: 3 bunny tails, 2 craspedia, 1 statice')).toMatch(/under the £/);
  });

  it('whose sundries are beyond the plan takes them from the stems money', async () => {
    const reply = await lastReply('40 buttonholes at 15 inc', 'each buttonhole: 4 bunny tails, 1m velvet ribbon');
    expect(reply).toContain('Each buttonhole takes £1.16 of stems: £0.49 under the £1.65 there is.');
    expect(reply).toContain('Sundries from the list come to £1.60: £0.85 over the £0.75 planned.');
    expect(reply).toContain('- Bunny tails: 2 instead of 4 (£0.58 of stems)');
    expect(reply).toContain('- Keep it and charge £17.50 each'); // 4 × (1.16 + 1.60) × 1.3 × 1.2 = 17.2224, up to the half pound
  });

  it('takes known sundries from the same money where none is set aside for them', async () => {
    const { sundriesEach: _, ...plain } = demoStudio;
    const shown = await talk(
      [order, 'strawflower 9.75 bunch of 10, velvet ribbon 11.28 spool of 8 yd', '2 strawflowers, 30cm velvet ribbon each'],
      { studio: plain },
    );
    // 16.025641 / 4 = 4.0064 of wholesale; 2 × 0.975 = 1.95; a spool of 8 yd (7.3152 m) has 24 cuts of 30 cm: 11.28 / 24 = 0.47.
    expect(shown).toContain('takes £1.95 of stems and £0.47 of sundries: £1.59 under the £4.01 there is.');
  });

  it('shows what one costs so that it multiplies to the cost, or says that it is rounded', async () => {
    const exact = await talk([order, 'strawflower 9.80 bunch of 25', '2 strawflowers each']);
    expect(exact).toMatch(/strawflower +2 +£0\.392 +£0\.78/i);
    const endless = await talk([order, 'strawflower 4.80 bunch of 55', '3 strawflowers each']);
    expect(endless).toMatch(/strawflower +3 +£0\.09 +£0\.26/i);
    expect(endless).toContain('What one costs is rounded up; the cost is worked out from the exact price, then rounded.');
  });

  it("tells a wearer's own in a line of its own", async () => {
    const reply = await lastReply(order, 'each buttonhole: 3 bunny tails, 1 statice', 'groom: 5 bunny tails');
    expect(reply).toContain('Each buttonhole takes £1.62 of stems');
    expect(reply).toContain('Each buttonhole for the groom takes £2.20 of stems: £1.06 under the £3.26 there is.');
  });

  it('follows the price: a cheaper piece leaves less', async () => {
    const reply = await lastReply(order, 'each buttonhole: 3 bunny tails, 2 craspedia, 1 statice', 'make it 27 each');
    expect(reply).toContain('Each buttonhole takes £3.42 of stems: £0.16 under the £3.58 there is.');
  });

  it('asked for as the stem budget shows the same rows', async () => {
    const reply = await lastReply(order, 'each buttonhole: 3 bunny tails, 1 statice', 'stem budget');
    expect(reply).toMatch(/^£3\.26 of stems each/);
    expect(reply).toContain('Bunny tails      3  £0.29  £0.87   27 %');
  });

  it('without a price yet is costed all the same', async () => {
    expect(await lastReply('each buttonhole: 3 bunny tails, 1 statice')).toContain('Each buttonhole takes £1.62 of stems.');
  });
});

describe('no recipe yet', () => {
  it('the price answer splits the stems money over five and over six', async () => {
    expect(await lastReply(order)).toContain('\nFive ingredients: about £0.65 each; six: £0.54.\n');
  });

  it('the stem budget does so for every kind', async () => {
    const reply = await lastReply('40 buttonholes at 25, 4 flower crowns at 95 inc', 'stem budget');
    expect(reply).toMatch(/Five ingredients: about £0\.65 each; six: £0\.54 \(buttonholes\)\.\nFive ingredients: .* \(flower crowns\)\./);
  });

  it('nothing is split once there is a recipe', async () => {
    expect(await lastReply(order, 'each buttonhole: 3 bunny tails, 1 statice', 'make it 26 each')).not.toContain('Five ingredients');
  });
});

describe('what cannot be costed', () => {
  it('is named with the nearest on the list, and the recipe is kept', async () => {
    const [, , recipe] = await replies(order, 'each buttonhole: 3 peony, 1 statise', "what's the recipe?");
    expect(recipe).toMatch(/^Each buttonhole: 3 peony, 1 statise\./);
    expect(recipe).toContain('- Statise: not on the price list (did you mean Statice?)');
    expect(recipe).toContain('Say the price, like “peony 4.80 a bunch of 10”.');
  });

  it('becomes costed as soon as its price is said', async () => {
    const reply = await lastReply(order, 'each buttonhole: 3 bunny tails, 1 peony', 'peony 12 a bunch of 10');
    expect(reply).toContain('Each buttonhole takes £2.07 of stems');
    expect(reply).not.toContain('not on the price list');
  });

  it('a yield of nothing named asks of which flower', async () => {
    expect(await lastReply(order, '3 stems makes 2 buttonholes')).toContain('- Stem: of which flower?');
  });
});

describe('used again in another thread', () => {
  const dance = ['event: autumn dance', '12 buttonholes at 25 inc', 'each buttonhole: 3 bunny tails, 1 statice'];
  const supper = (text: string) => ({ thread: 't2', text });

  it('the recipe of an event by its name', async () => {
    const reply = await lastReply(...dance, supper('8 buttonholes at 22 inc'), supper('same recipe as the autumn dance'));
    expect(reply).toContain('Recipe for each buttonhole from “autumn dance”: 3 bunny tails, 1 statice.');
    expect(reply).toContain('Each buttonhole takes £1.62 of stems');
  });

  it('a copy: changing the first leaves the second as it is', async () => {
    const said = await replies(
      ...dance,
      supper('8 buttonholes at 22 inc'),
      supper('same recipe as the autumn dance'),
      'each buttonhole: 1 lavender, 1 statice',
      supper("what's the recipe?"),
    );
    expect(said.at(-1)).toMatch(/^Each buttonhole: 3 bunny tails, 1 statice\./);
  });

  it('an unknown name offers the nearest and keeps nothing', async () => {
    const said = await replies(
      ...dance,
      supper('8 buttonholes at 22 inc'),
      supper('same recipe as the autum dance'),
      supper("what's the recipe?"),
    );
    expect(said.at(-2)).toContain('I have no recipe called “autum dance”. Nearest: autumn dance.');
    expect(said.at(-1)).toContain('There is no recipe yet.');
  });
});
