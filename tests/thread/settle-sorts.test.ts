// The sort of the corsages an order holds, told behind it: they are those, and no more of them.

import { describe, expect, test } from 'vitest';
import { replyTo } from '../support/plain-studio.ts';

const four = '4 corsages at 40 inc';
const wrists = '4 wrist corsages at 40 inc';
const ofBoth = /2 (pin|wrist) corsages at £40\.00, 2 (pin|wrist) corsages at £40\.00, £160\.00 in all/;

describe('half of them', () => {
  test.each([
    [four, 'half wrist half pin on'],
    [four, 'half and half, wrist and pin'],
    [four, '50/50 wrist and pin on'],
    [wrists, 'half wrist half pin on'],
    [wrists, 'half of them pin ons please'],
    [four, '2 wrist 2 pin on'],
    [four, '2 wrist corsages and 2 pin corsages'],
    [wrists, 'make 2 of them pin-ons'],
    [wrists, '2 of those corsages are for the dads so pin on'],
    [wrists, '2 of the 4 should be pin ons'],
  ])('%s, %s', async (order, said) => expect(await replyTo([order, said])).toMatch(ofBoth));
  test('of an odd number it is asked', async () => {
    const asked = await replyTo(['5 corsages at 40 inc', 'half wrist half pin on']);
    expect(asked).toContain('Say: 3 wrist corsages and 2 pin corsages / 2 wrist corsages and 3 pin corsages');
    expect(await replyTo(['5 corsages at 40 inc', 'half wrist half pin on', '3 wrist 2 pin'])).toContain('3 wrist corsages at £40.00');
    expect(await replyTo(['5 corsages at 40 inc', 'half wrist half pin on', 'total?'])).toContain('£200.00 in all');
  });
  test('no more than there are', async () => {
    expect(await replyTo([wrists, '6 of them pin on'])).toContain('There are 4 wrist corsages, not 6.');
  });
});

describe('all of them', () => {
  test.each(['wrist', 'wrist ones please', 'make them wrist', 'all wrist', 'they want wrist ones'])('%s', async (said) =>
    expect(await replyTo([four, said])).toContain('4 wrist corsages at £40.00'),
  );
  test.each(['pins', 'pin on?'])('%s says nothing of them', async (said) =>
    expect(await replyTo([four, said, 'how many did they order?'])).toContain('4 corsages'),
  );
  test('wrist corsages become no others by a word alone', async () => {
    expect(await replyTo([wrists, 'pin on'])).toContain('could not read');
  });
});

test('fewer than there are: some of them or more, it is asked', async () => {
  expect(await replyTo([four, '2 wrist corsages'])).toContain('Say: 2 of the 4 corsages / 2 wrist corsages more');
  expect(await replyTo([four, '2 wrist corsages', '2 of the 4'])).toContain('2 wrist corsages at £40.00');
  expect(await replyTo([four, '2 wrist corsages', '2 more'])).toContain('No price yet for the wrist corsages');
});

test('with a price said it is asked as well', async () => {
  const said = [four, '2 wrist 2 pin on at 45 each'];
  expect(await replyTo(said)).toContain('Say: 4 of the 4 corsages / 2 wrist corsages and 2 pin corsages more');
  expect(await replyTo([...said, 'the first'])).toMatch(
    /2 (pin|wrist) corsages at £45\.00, 2 (pin|wrist) corsages at £45\.00, £180\.00 in all/,
  );
  expect(await replyTo([...said, 'the second'])).toContain('£340.00 in all');
});

test('who wears them is put on the list there is', async () => {
  const reply = await replyTo(['groom, 2 dads, 2 mums', wrists, '2 of those corsages are for the dads so pin on']);
  expect(reply).toMatch(/2 fathers: pin corsages/);
});
