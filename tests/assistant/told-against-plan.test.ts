// What was told afterwards, against the plan: money spent goes off the profit, dead stems are no left-over, and hours told for a part are of that part.

import { describe, expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

const order = '20 bouts at 14 fresh sat 13 march';

describe('the profit', () => {
  test('by the plan, and it says so', async () => {
    expect(await talk([order, 'whats my profit'])).toContain('left after stems and sundries as planned (£188.46)');
  });
  test('by the money spent: 233.33 less 61.20 and 15.00 is 157.13', async () => {
    const said = await talk([order, 'spent 61.20 at the market', 'whats my profit']);
    expect(said).toContain(
      '67.3 % of the price before tax is left after the £61.20 you spent and £15.00 for sundries as planned (£157.13)',
    );
    expect(said).toContain('Planned: 80.8 % (£188.46).');
  });
  test('with sundries told apart nothing is added as planned', async () => {
    const said = await talk([order, 'spent 61.20 at the market', 'spent 8 on ribbon', 'whats my margin']);
    expect(said).toContain('70.3 % of the price before tax is left after the £69.20 you spent (£164.13)');
  });
  test('with sundries alone told it is by the plan', async () => {
    const said = await talk([order, 'spent 8 on ribbon', 'whats my margin']);
    expect(said).toContain('as planned (£188.46)');
    expect(said).toContain('What you told me you spent is not taken off in that.');
  });
  test('more spent than there is to earn is a loss', async () => {
    expect(await talk([order, 'spent 300 at the market', 'whats my profit'])).toContain('£81.67 lost after the £300.00 you spent');
  });
});

describe('stems that came dead', () => {
  const priced = [order, '2 roses each', 'roses 9 a bunch of 10'];
  test('are taken off what the list bought, and no spare is learned of them', async () => {
    const said = await talk([...priced, 'roses came but 3 dead']);
    expect(said).toContain('47 of 50 are good: enough for the 40 the recipe takes, 7 to spare.');
    expect(said).not.toContain('you needed');
  });
  test('are added up, and it is said where they leave too few', async () => {
    expect(await talk([...priced, 'roses came but 3 dead', '12 roses snapped'])).toContain(
      '35 of 50 are good: 5 short of the 40 the recipe takes.',
    );
  });
  test('with no recipe they are noted', async () => {
    expect(await talk([order, 'roses came but 3 dead'])).toContain("3 can't be used, noted.");
  });
  test('what was left over teaches as before', async () => {
    expect(await talk([...priced, '3 roses left over'])).toContain('3 rose not used. If you bought by the list, you needed 18 % spare');
  });
});

describe('hours told', () => {
  const dried = '40 bouts at 12, 6 corsages at 30, dried, 3 april';
  test('while a part is made are of that part', async () => {
    const said = await talk([dried, 'made 15 bouts and 2 corsages', '3 bouts fell apart', 'took 4 hrs']);
    expect(said).toContain('Took 4 h so far; 13 h planned for all 46, 9 h of it still to make.');
    expect(said).not.toContain('under');
  });
  test('once all is made are held against the plan', async () => {
    expect(await talk([order, 'all done', 'took 4 hrs'])).toContain('Took 4 h; 5 h planned: 1 h under.');
  });
  test('with nothing told of what is made they are taken for all', async () => {
    expect(await talk([order, 'took 4 hrs'])).toContain('Took 4 h; 5 h planned: 1 h under.');
  });
});
