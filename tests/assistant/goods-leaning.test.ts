// Short words about goods that lean on what was said before: one more thing in the recipe, another in its place, a lone figure, how many are in a bunch,
// and what is asked right behind a buying list.

import { describe, expect, test } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const order = '8 bouts at 20 inc, fresh, wedding sat 20 feb 2027';
const recipe = 'bout recipe: 1 rose, 2 wax, 1 sprig ruscus';

describe('one more thing, without a number', () => {
  test.each(['and pins', 'plus pins', 'oh and pins', 'and pins too'])('%s: one each, and the answer says so', async (said) => {
    const reply = await replyTo([order, recipe, said]);
    expect(reply).toContain('Recipe: 1 pin (no number was said, so one each).');
    expect(reply).toContain('In each buttonhole now: 1 rose, 2 waxflower, 1 ruscus, 1 pin.');
  });
  test.each(['and fern called', 'add pins to the list', 'and ribbon is late', 'and no wax', 'ask rose instead', 'rose at 9'])(
    '%s changes nothing',
    async (said) => {
      expect(await replyTo([order, recipe, said])).not.toMatch(/Recipe|Say: /);
    },
  );
  test('several at once', async () => {
    expect(await replyTo([order, recipe, 'and ribbon and pins'])).toContain('1 ruscus, 1 ribbon, 1 pin.');
  });
  test('with two recipes it is asked which', async () => {
    const talk = ['8 bouts, 3 corsages, sat 20 feb 2027', recipe, 'corsage is 3 spray roses, 2 gyp', 'and pins'];
    expect(await replyTo(talk)).toContain('Which pieces is “and pins” about?');
    expect(await replyTo([...talk, 'corsage'])).toContain(
      'In each corsage now: 3 spray roses, 2 gypsophila, 1 pin.'.replace('3 spray roses', '3 spray rose'),
    );
  });
  test('with no recipe nothing is read', async () => {
    expect(await replyTo([order, 'and pins'])).toContain('I could not read that');
  });
});

describe('another in its place', () => {
  test.each(['use spray roses instead', 'spray roses instead please', 'go with spray roses instead', 'no roses, use spray roses instead'])(
    '%s: of the same flower',
    async (said) => {
      expect(await replyTo([order, recipe, said])).toContain('In each buttonhole now: 1 spray rose, 2 waxflower, 1 ruscus.');
    },
  );
  test('of which, where nothing says so, is asked', async () => {
    expect(await replyTo([order, recipe, 'use lisianthus instead'])).toContain('What does “use lisianthus instead” take the place of?');
    expect(await replyTo([order, recipe, 'use lisianthus instead', 'the wax'])).toContain('1 rose, 2 lisianthus, 1 ruscus');
  });
  test('with its own number', async () => {
    expect(await replyTo([order, recipe, '2 spray roses instead'])).toContain('2 waxflower, 1 ruscus');
  });
  test('“no ruscus, use wax instead” leaves no wax out', async () => {
    expect(await replyTo([order, '1 rose, 2 ruscus each', 'no ruscus, use wax instead'])).toContain('1 rose, 2 waxflower');
  });
});

describe('a lone figure behind goods that have no price', () => {
  test('is asked about', async () => {
    expect(await replyTo([order, recipe, 'ruscus 7'])).toContain('Say: the price / 7 in each');
    expect(await replyTo([order, recipe, 'ruscus 7', 'the price'])).toContain('Ruscus: £7.00 a pack. How many are in a pack?');
    expect(await replyTo([order, recipe, 'ruscus 7', '7 in each'])).toContain('1 rose, 2 waxflower, 7 ruscus');
  });
  test('several at once', async () => {
    expect(await replyTo([order, recipe, 'ruscus 7, wax 9', 'the prices'])).toContain('Waxflower: £9.00 a pack');
  });
  test('once priced it is as unread as before', async () => {
    expect(await replyTo([order, recipe, 'ruscus 7 a bunch of 10', 'ruscus 8'])).not.toContain('Say: the price');
  });
});

describe('“How many are in a bunch?”', () => {
  test.each(['10', 'its 10 a bunch', '10 in a bunch', 'they come in 10s', 'bunches of 10', 'theres 10 to a bunch', '10 stems'])(
    '%s',
    async (said) => {
      expect(await replyTo([order, recipe, 'ruscus 7 a bunch', said])).toContain('Ruscus: £7.00 for 10 stems, £0.70 each.');
    },
  );
  test('a length of a roll', async () => {
    expect(await replyTo([order, '1 rose, 20cm ribbon each', 'ribbon 4.20 a roll', '10m'])).toContain('£4.20 for 10 m');
  });
  test.each(['we sell them at £10', '10 more bouts', '10 or 12'])('%s is no answer to it', async (said) => {
    expect(await replyTo([order, recipe, 'ruscus 7 a bunch', said])).not.toContain('for 10 stems');
  });
});

describe('right behind a buying list', () => {
  const priced = [order, '1 rose, 2 ruscus each', 'roses 12 a bunch of 10, ruscus 7 a bunch of 15', 'buying list'];
  test.each(['is that everything', 'is that it then', 'anything else to buy'])('%s', async (said) => {
    expect(await replyTo([...priced, said])).toContain('That is all the recipes take: 2 items for 8 pieces.');
  });
  test('what is lacking is named', async () => {
    expect(await replyTo([order, recipe, 'roses 12 a bunch of 10', 'buying list', 'is that everything'])).toContain(
      'Not everything yet: waxflower, ruscus can’t be costed yet.'.replace('’', "'"),
    );
  });
  test.each(['whats left over', 'what will be left', 'any leftovers'])('%s', async (said) => {
    expect(await replyTo([...priced, said])).toContain('Left over: 10 ruscus');
  });
  test('behind another question it is asked of the pieces', async () => {
    expect(await replyTo([...priced, 'whos in friday', 'whats left over'])).toContain('8 left');
  });
  test('the question still open stays open', async () => {
    const talk = [
      '8 bouts, fresh, sat 20 feb 2027',
      '1 rose, 2 ruscus each',
      'roses 12 a bunch of 10, ruscus 7 a bunch of 15',
      'no ruscus',
      'buying list',
      '25',
    ];
    expect(await replyTo(talk)).not.toContain('I could not read that');
  });
});

describe('spare on stems, for this event', () => {
  const priced = [order, '2 roses each', 'roses 1.20 each'];
  test.each(['allow 10% spare on everything', 'order 10% extra', '10% spare', 'we allow 10% wastage', 'allow 10 percent for breakages'])(
    '%s',
    async (said) => {
      expect(await replyTo([...priced, said])).toContain('For this event only: 10 % spare on stems');
      const list = await replyTo([...priced, said, 'buying list']);
      expect(list).toMatch(/rose +18 +18/); // 16 and a tenth, up
      expect(list).toContain('Spare: 10 % on stems (as said).');
    },
  );
  test('of one alone', async () => {
    const said = await replyTo([order, '2 roses, 1 ruscus each', 'roses 1.20 each, ruscus 70p each', '50% spare on ruscus', 'buying list']);
    expect(said).toMatch(/rose +20 +20/); // the usual 20 %
    expect(said).toMatch(/ruscus +12 +12/);
    expect(said).toContain('50 % on ruscus (as said)');
  });
  test('what no one buys is refused', async () => {
    expect(await replyTo([...priced, 'allow 500% spare'])).toContain("A spare of 500 % can't be worked with");
  });
});

describe('goods that are short are no pieces to make', () => {
  test.each(['roses 5 short', 'gyp 2 left', '5 short on roses', 'wax came 3 short'])('%s', async (said) => {
    expect(await replyTo([order, recipe, said])).not.toContain('made');
  });
});

test('“can we get away with 1 rose” tries the recipe, not the bench', async () => {
  const reply = await replyTo([order, '2 roses each', 'roses 1.20 each', 'can we get away with 1 rose']);
  expect(reply).toContain('With 1 rose in each');
});

test('“how many in a bunch of ruscus” that nobody has said', async () => {
  expect(await replyTo([order, recipe, 'ruscus 7 a bunch', 'how many ruscus do i order'])).toContain('Ruscus: how many are in a pack?');
});

describe('one kind’s recipe like another’s but for something', () => {
  const talk = ['8 bouts, 3 corsages, fresh, sat 20 feb 2027', 'bout recipe: 1 rose, 2 wax, 1 ruscus'];
  test.each([
    ['corsages same as bouts but double everything', '2 rose, 4 waxflower, 2 ruscus'],
    ['corsages the same as the bouts, plus a feather', '1 rose, 2 waxflower, 1 ruscus, 1 feather'],
    ['corsages same as the bouts but no wax', '1 rose, 1 ruscus'],
  ])('%s', async (said, expected) => {
    expect(await replyTo([...talk, said, 'recipe'])).toContain(`Each corsage: ${expected}.`);
  });
  test('the price or the number may be meant as well', async () => {
    expect(await replyTo([...talk, 'corsages same as bouts'])).toContain('I could not read that');
  });
});

describe('what came and can’t be used', () => {
  const talk = [order, '1 rose, 2 statice each', 'roses 1.20 each, statice 4.80 a bunch of 10'];
  test.each(['statice came but 4 dead', 'statice arrived, 4 stems broken'])('%s: no pieces broke', async (said) => {
    const reply = await replyTo([...talk, said]);
    expect(reply).toContain('Statice: received');
    expect(reply).not.toContain('made');
  });
});

test('“how long does statice take to dry” is of statice, before what the event waits for', async () => {
  const talk = ['8 bouts at 20 inc, dried, wedding sat 17 april 2027', '1 statice, 1 eucalyptus each', 'how long does statice take to dry'];
  expect(await replyTo(talk)).toMatch(/^Statice: 14 days hung up to dry/);
});

test('“put 2 wheat in the bouts” adds to their recipe', async () => {
  expect(await replyTo([order, '1 rose each', 'put 2 wheat in the bouts'])).toContain('In each buttonhole now: 1 rose, 2 wheat.');
});
