// A wearer with an implant: on the list, the pin-on sheet and the packing list, never in a recipe, and in the way of every magnet chosen later.
// Magnets at least 15 cm from an implanted defibrillator: Sudden Cardiac Arrest UK; FDA 2021, as reported.

import { expect, test } from 'vitest';
import { talk } from '../support/converse.ts';

const order = ['groom, 5 groomsmen', '6 buttonholes at 18 dried event 14 march'];
/** Only the reply to the last of these lines. */
const last = async (...lines: string[]): Promise<string> => {
  const before = await talk([...order, ...lines.slice(0, -1)]);
  return (await talk([...order, ...lines])).slice(before.length);
};

test.each(['groom has a pacemaker', 'groom has a pacemaker, magnets', 'the groom’s got a pacemaker'])(
  '%s: beside the groom on the list',
  async (said) => {
    const reply = await last(said);
    expect(reply).toMatch(/- groom: buttonhole \(pacemaker; implant: no magnet\)/);
    expect(reply).toContain('5 groomsmen: buttonholes');
    expect(reply).toContain('Take care: Magnets can disturb');
    expect(reply).not.toContain('Recipe');
  },
);

test('it stands on the pin-on sheet and the packing list', async () => {
  expect(await last('groom has a pacemaker, magnets', 'pin-on sheet')).toMatch(/groom: left lapel \(pacemaker; implant: no magnet\)/);
  expect(await last('groom has a pacemaker, magnets', 'packing list')).toMatch(/groom: implant: no magnet/);
});

test('magnets chosen while somebody has an implant: the clash is named, however often they are chosen', async () => {
  expect(await last('groom has a pacemaker, magnets')).toMatch(/Magnets clash with an implant: groom \(pacemaker\)/);
  expect(await last('groom has a pacemaker', 'magnets', 'magnets for all')).toMatch(/clash with an implant: groom/);
  expect(await last('groom has a pacemaker', '1 rose, 1 magnet each')).toMatch(/clash with an implant: groom/);
  expect(await last('magnets for all')).not.toContain('clash');
});

test('a list said again keeps the care, and one of several keeps their number', async () => {
  expect(await last('groom has a pacemaker', 'groom, 6 groomsmen')).toMatch(/groom: buttonhole \(pacemaker/);
  expect(await last('one of the groomsmen has a pacemaker')).toMatch(
    /5 groomsmen: buttonholes \(one of them: pacemaker; implant: no magnet\)/,
  );
});
