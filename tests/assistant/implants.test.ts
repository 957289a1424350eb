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

test('it stands on the board labels too, before the name', async () => {
  expect(await last('groom has a pacemaker', 'board labels')).toContain('- no magnet: groom');
});

// Devices beside pacemakers and defibrillators: common practice, no source; asking once too often costs nothing.
test.each(['an insulin pump', 'a cochlear implant', 'a heart monitor', 'a neurostimulator'])(
  'groom has %s: no magnet there',
  async (device) => {
    expect(await last(`groom has ${device}`)).toMatch(/- groom: buttonhole \(.+; implant: no magnet\)/);
  },
);

test('magnets talked of are packed beside the pins, and not for the implant', async () => {
  expect(await last('groom has a pacemaker', 'magnets for all', 'packing list')).toMatch(
    /12 pins on[\s\S]*☐ 5 magnets, if they are to take the pins’ place/,
  );
});

test('how pieces are held on is no recipe: nothing is refused, and magnets can be taken back', async () => {
  expect(await last('magnets not pins')).toContain('Noted: magnets.');
  const [chosen, back] = [await last('magnets', 'packing list'), await last('magnets', 'no magnets after all, use pins', 'packing list')];
  expect(chosen).toContain('6 magnets');
  expect(back).not.toMatch(/magnets/);
  expect(await last('magnets', 'no magnets after all, use pins')).toContain('Noted: no magnets.');
});

test('a question chooses no magnets, and is answered with the usual care every time', async () => {
  expect(await last('can we use magnets?')).toMatch(/^> can we use magnets\?\s+Magnets can disturb/m);
  expect(await last('magnets', 'should we use magnets?')).toMatch(/Magnets can disturb/);
  expect(await last('can we use magnets?', 'packing list')).not.toMatch(/magnet/);
});
