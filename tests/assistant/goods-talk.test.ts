// Goods as they are talked about in a consult: what a pack holds, how much goes in beside what it costs, one more thing added, and what another price would do.

import { describe, expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

const last = async (...lines: string[]): Promise<string> => (await talk(lines)).slice((await talk(lines.slice(0, -1))).length);
const order = '30 bouts @ 14 ex, fresh, wedding friday 12 march';

describe('what a pack holds, said after its price', () => {
  test.each(['ruscus is a bunch of 10', 'ruscus comes in 10s', 'ruscus 10 stems to a bunch', 'a bunch of ruscus is 10 stems'])(
    '%s',
    async (said) => {
      expect(await last(order, 'roses 18 a bunch of 12, ruscus 7', '2 ruscus each', said)).toContain(
        'Each buttonhole takes £1.40 of stems',
      );
    },
  );
  test('with no price yet it is asked for, and nothing is kept', async () => {
    expect(await last(order, 'ruscus is a bunch of 10')).toContain('Ruscus has no price yet. Say “ruscus 4.80 a bunch of 10”.');
  });
  test('“gyp 10 a bunch” is a price', async () => {
    expect(await last(order, 'gyp 10 a bunch')).toContain('£10.00');
  });
});

describe('how much goes in, beside what it costs', () => {
  test.each([
    ['ribbon 4.20 for 10m roll, 20cm each', 'ribbon (20 cm)'],
    ['put a magnet on each, 60p each', 'magnet'],
    ['statice 4.80 a bunch of 10, 2 stems per bout', '2 statice'],
  ])('%s', async (said, inIt) => {
    const reply = await last(order, '1 rose each', said);
    expect(reply).toMatch(/In each buttonhole now|Recipe/);
    expect(reply).toContain(inIt.split(' ')[0] === 'ribbon' ? 'ribbon' : inIt);
  });
});

describe('a price for each, sold by so many', () => {
  const both = ['10 bouts at 14, 2 wrist corsages at 32', '2 roses each'];
  test('is the price of one', async () => {
    const said = await last(...both, 'roses 80p each sold in 20s');
    expect(said).toContain('Rose: £16.00 for 20 stems, £0.80 each.');
    expect(said).toContain('Each buttonhole takes £1.60 of stems: £0.11 over');
    expect(await last(...both, 'roses 80p each sold in 20s', 'buying list')).toContain('£32.00');
  });
  test('that may be the price of the bunch is asked about', async () => {
    expect(await last(...both, 'roses 80p each, bunch of 20')).toContain('Say: 80p for one / 80p for a bunch of 20');
    expect(await last(...both, 'roses 80p each, bunch of 20', '80p for one')).toContain('£16.00 for 20 stems');
  });
  test('beside the recipe both are kept', async () => {
    expect(await last(order, '2 roses 1 gyp each, roses are £1.20 a stem, gyp 9 for 25 stems')).toContain('takes £2.76 of stems');
  });
});

describe('one more thing', () => {
  test.each(['add hypericum, 1 per bout', 'add 1 hypericum per bout', 'add hypericum 1 per bout', 'extra hypericum, 1 each'])(
    '%s: beside what is in it, not instead',
    async (said) => {
      expect(await last(order, '1 rose, 2 ruscus each', said)).toContain('1 rose, 2 ruscus, 1 hypericum');
    },
  );
  test('“no ruscus in these” leaves the ruscus out', async () => {
    expect(await last(order, '1 rose, 2 ruscus each', 'no ruscus in these')).toContain('In each buttonhole now: 1 rose.');
  });
});

describe('what if it cost more, or more went in', () => {
  const priced = [order, 'roses 18 a bunch of 10, gyp 6.50 a bunch of 10', '1 rose, 1 gyp each'];
  test('another price is tried on the recipe and not kept', async () => {
    const reply = await last(...priced, 'what if roses go up to 22');
    expect(reply).toContain('With rose at £22.00 a bunch instead of £18.00:');
    expect(reply).toContain('Each buttonhole takes £2.85 of stems'); // 22 ÷ 10 + 6.50 ÷ 10
    expect(reply).toContain('nothing in this thread has changed');
    expect(await last(...priced, 'what if roses go up to 22', 'recipe')).toContain('£2.45');
  });
  test('more stems are tried', async () => {
    expect(await last(...priced, 'what if i use 2 roses each')).toContain('Each buttonhole takes £4.25 of stems');
  });
  test('what has no price, or no recipe, is said', async () => {
    expect(await last(...priced, 'what if lavender is 8')).toContain('Lavender has no price yet to change.');
    expect(await last(order, 'what if i use 2 roses each')).toContain('There is no recipe in this thread to try that in.');
    expect(await last(order, 'thistle 9 a bunch of 10', 'what if thistle is 12')).toContain('No recipe in this thread has thistle in it');
  });
});

describe('fewer hands', () => {
  test.each(["what if it's just me", "what if we're only one", "what if there's only one of us", 'could i do it on my own'])(
    '%s',
    async (said) => {
      expect(await last(order, said)).toContain('with one person at the bench');
    },
  );
  test('how long it takes is still asked of the pieces', async () => {
    expect(await last(order, "how long for 20 bouts if it's just me")).toContain('20 buttonholes');
  });
  test('with nothing ordered there is nothing to try', async () => {
    expect(await last("what if it's just me")).not.toContain('it fits');
  });
});

test.each(['boxed & labelled', "they're boxed and named", 'labelled and packed'])('%s: on the boards', async (said) => {
  expect(await last(order, 'all done', said)).toContain('boarded');
});
test('“boxed and labelled 12” counts twelve', async () => {
  expect(await last(order, 'boxed and labelled 12')).toContain('12 of 30');
});
test('“what have i got for stems” asks what there is to spend', async () => {
  expect(await last(order, 'what have i got for stems')).toContain('£1.94');
});
