// Each caution appears for its trigger and never without it. The facts behind the wording are checked against the authority named beside each.

import { describe, expect, test } from 'vitest';
import type { CautionId, WorkAtHand } from '../../src/handbook/caution-row.ts';
import { cautionsFor, cautionWords } from '../../src/handbook/cautions.ts';
import { harmfulAmong, harmfulPlants } from '../../src/handbook/cautions-plants.ts';
import { cautionRows } from '../../src/handbook/cautions-table.ts';

const idsFor = (work: WorkAtHand): readonly CautionId[] => cautionsFor(work).map((caution) => caution.id);

/** What calls for it, and the nearest work that does not. */
const cases: readonly { readonly id: CautionId; readonly calls: readonly WorkAtHand[]; readonly doesNot: readonly WorkAtHand[] }[] = [
  { id: 'magnet', calls: [{ fixings: ['magnet'] }, { wearers: ['implant'] }], doesNot: [{ fixings: ['pin', 'wire'], wearers: ['child'] }] },
  {
    id: 'magnet-child',
    calls: [{ fixings: ['magnet'], wearers: ['child'] }],
    doesNot: [{ fixings: ['magnet'] }, { wearers: ['child'] }, { fixings: ['pin'], wearers: ['child'] }],
  },
  { id: 'pin-child', calls: [{ fixings: ['pin'], wearers: ['child'] }], doesNot: [{ fixings: ['pin'] }, { wearers: ['child'] }] },
  { id: 'wire-ends', calls: [{ fixings: ['wire'] }], doesNot: [{ fixings: ['pin', 'magnet'] }] },
  { id: 'allergy', calls: [{ wearers: ['allergy'] }], doesNot: [{ wearers: ['child', 'implant'] }] },
  { id: 'sap', calls: [{ plants: ['Euphorbia'] }, { plants: ['2 stems spurge'] }], doesNot: [{ plants: ['eucalyptus'] }] },
  {
    id: 'skin',
    calls: [{ plants: ['white tulips'] }, { plants: ['alstroemeria'] }, { plants: ['leatherleaf'] }, { plants: ['anemones'] }],
    doesNot: [{ plants: ['rose', 'lavender', 'ruscus'] }],
  },
  {
    id: 'poisonous',
    calls: [{ plants: ['lily of the valley'] }, { plants: ['Monkshood'] }, { plants: ['foxgloves'] }, { plants: ['delphinium'] }],
    doesNot: [{ plants: ['lily', 'rosemary'] }],
  },
  {
    id: 'pollen',
    calls: [{ plants: ['wattle'] }, { plants: ['baby’s breath'] }, { plants: ['statice, dusk'] }],
    doesNot: [{ plants: ['bunny tail', 'ruscus'] }],
  },
  { id: 'pollen-disputed', calls: [{ plants: ['solidago'] }], doesNot: [{ plants: ['statice'] }] },
  { id: 'scent', calls: [{ plants: ['gardenia'] }], doesNot: [{ plants: ['freesia'] }] },
  {
    id: 'dried-dust',
    calls: [{ materials: ['dried'] }, { materials: ['mixed'] }],
    doesNot: [{ materials: ['fresh', 'artificial', 'preserved'] }],
  },
  { id: 'silica', calls: [{ methods: ['silica gel'] }], doesNot: [{ methods: ['borax'] }] },
  { id: 'silica-blue', calls: [{ methods: ['silica gel'] }], doesNot: [{ methods: ['borax', 'hot glue'] }] },
  { id: 'borax', calls: [{ methods: ['borax'] }], doesNot: [{ methods: ['silica gel'] }] },
  { id: 'hot-glue', calls: [{ methods: ['hot glue'] }], doesNot: [{ methods: ['silica gel'] }] },
  {
    id: 'flame',
    calls: [
      { materials: ['dried'], circumstances: ['candles'] },
      { materials: ['artificial'], circumstances: ['candles'] },
    ],
    doesNot: [{ materials: ['dried'] }, { materials: ['fresh'], circumstances: ['candles'] }, { circumstances: ['candles'] }],
  },
  { id: 'foraging', calls: [{ circumstances: ['foraged'] }], doesNot: [{ circumstances: ['border'] }] },
  { id: 'protected', calls: [{ circumstances: ['foraged'] }], doesNot: [{ circumstances: ['border'] }] },
  { id: 'invasive', calls: [{ plants: ['english ivy'] }], doesNot: [{ plants: ['salal'] }] },
  { id: 'border', calls: [{ circumstances: ['border'] }], doesNot: [{ circumstances: ['foraged'] }] },
  { id: 'tax', calls: [{ circumstances: ['tax'] }], doesNot: [{ circumstances: ['wages'] }] },
  { id: 'wages', calls: [{ circumstances: ['wages'] }], doesNot: [{ circumstances: ['tax'] }] },
];

describe('each caution', () => {
  test.each(cases)('$id appears for its trigger', ({ id, calls }) => {
    for (const work of calls) expect(idsFor(work), JSON.stringify(work)).toContain(id);
  });

  test.each(cases)('$id never appears without it', ({ id, doesNot }) => {
    for (const work of doesNot) expect(idsFor(work), JSON.stringify(work)).not.toContain(id);
  });

  test.each(cases)('$id goes when everything that calls for it is taken away from work that calls for them all', ({ id }) => {
    const everything = {
      materials: ['dried', 'fresh'],
      plants: harmfulPlants.flatMap((plant) => plant.names.slice(0, 1)),
      fixings: ['pin', 'magnet', 'wire'],
      methods: ['silica gel', 'borax', 'hot glue'],
      wearers: ['child', 'implant', 'allergy'],
      circumstances: ['foraged', 'candles', 'border', 'tax', 'wages'],
    } as const satisfies WorkAtHand;
    expect(idsFor(everything)).toContain(id);
    const row = cautionRows.find((one) => one.id === id);
    let less: WorkAtHand = everything;
    for (const trigger of row?.when ?? []) {
      const { plantHazard, ...rest } = trigger;
      if (plantHazard) less = { ...less, plants: [] };
      for (const [key, values] of Object.entries(rest)) {
        const have: readonly string[] = less[key as keyof WorkAtHand] ?? [];
        less = { ...less, [key]: have.filter((one) => !(values as readonly string[]).includes(one)) };
      }
    }
    expect(idsFor(less)).not.toContain(id);
  });

  test('is covered here, and there is none beside these', () => {
    expect(cases.map((one) => one.id)).toEqual(cautionRows.map((row) => row.id));
    expect(cautionsFor({})).toEqual([]);
  });
});

describe('the wording', () => {
  test('names the plants that called for it, each once', () => {
    const [skin] = cautionsFor({ plants: ['tulips', 'Tulip, white', 'gerbera'] });
    expect(skin?.wording).toMatch(/^Tulip and gerbera can bring on a rash/);
  });

  test('is one to three short sentences, with a source, and leaves nothing to fill in', () => {
    for (const caution of cautionsFor({ plants: harmfulPlants.flatMap((plant) => plant.names), fixings: ['magnet'], methods: ['borax'] })) {
      expect(caution.wording).not.toContain('{');
      expect(caution.wording.split(/[.!?](?:\s|$)/).filter(Boolean).length).toBeLessThanOrEqual(3);
      expect(caution.sources.length).toBeGreaterThan(0);
    }
  });

  // Every row defers to somebody better placed, except where the care itself is all there is to say.
  test('defers to local rules or qualified people', () => {
    const plain: readonly CautionId[] = ['wire-ends', 'scent'];
    for (const row of cautionRows.filter((one) => !plain.includes(one.id)))
      expect(row.wording, row.id).toMatch(
        /doctor|medical help|local|licence|safety sheet|check yours|authority|accountant|plant health office/,
      );
  });

  test('says what it is not', () => {
    const endings = (work: Parameters<typeof cautionsFor>[0]) =>
      cautionsFor(work).map((one) => /Not \w+ advice\.$/.exec(cautionWords(one))?.[0]);
    expect(endings({ fixings: ['magnet'] })).toEqual(['Not medical advice.']);
    expect(endings({ circumstances: ['tax'] })).toEqual(['Not tax advice.']);
    expect(endings({ fixings: ['wire'] })).toEqual([undefined]);
  });
});

describe('the facts', () => {
  const wording = (id: CautionId) => cautionRows.find((row) => row.id === id)?.wording ?? '';

  // FDA advice 2021 as reported by Medical Bag: 6 in; "How do magnets affect an ICD?", Sudden Cardiac Arrest UK: 15 cm.
  test('magnets: 15 cm, which is 6 inches to the nearest', () => {
    expect(wording('magnet')).toContain('15 cm');
    expect(Math.round(15 / 2.54)).toBe(6);
  });

  // North Dakota Fire Marshal, Candle safety, 2023: 12 inches; FDNY, Don't leave candles burning: 4 feet. They disagree, so both are shown.
  test('candles: the range from 12 in to 4 ft, and the same in metres', () => {
    expect(wording('flame')).toContain('12 in (30 cm) to 4 ft (1.2 m)');
    expect(Math.round(12 * 2.54)).toBe(30);
    expect((4 * 0.3048).toFixed(1)).toBe('1.2');
  });

  // Botanical Society of Britain and Ireland, Code of Conduct, 2017.
  test('picking: at most 1 in 20', () => expect(wording('foraging')).toContain('1 in 20'));

  // Parish Episcopal School, Hot glue, tool safety: about 120 °C and 190 to 210 °C.
  test('hot glue: 120 and 190 degrees', () => expect(wording('hot-glue')).toMatch(/120 °C.*190 °C/));

  // Occupational allergic contact dermatitis caused by decorative plants, Contact Dermatitis, 1996: the plants it lists.
  test.each(['alstroemeria', 'tulip', 'hyacinth', 'chrysanthemum', 'gerbera', 'feverfew', 'narcissus', 'carnation'])(
    '%s is known for hand rashes',
    (plant) => expect(idsFor({ plants: [plant] })).toContain('skin'),
  );

  // Poisonous home plants, relaying the Texas A&M horticulture list.
  test.each(['larkspur', 'lily of the valley', 'monkshood', 'oleander', 'foxglove'])('%s has poisonous parts', (plant) =>
    expect(idsFor({ plants: [plant] })).toContain('poisonous'),
  );
});

describe('plants by name', () => {
  test.each([
    ['mums have wrist corsages', 0],
    ['lily', 0],
    ['statice', 1],
    ['2 x LIMONIUM', 1],
    ["baby's-breath", 1],
    ['ivory ribbon', 0],
    ['carnations', 1],
    ['arum', 1],
    ['narcissi', 1],
  ])('%s', (typed, found) => expect(harmfulAmong([typed])).toHaveLength(found));

  test('a silk flower has no sap, pollen or poison, but burns', () => {
    expect(idsFor({ materials: ['artificial'], plants: ['tulip', 'euphorbia', 'foxglove'], circumstances: ['candles'] })).toEqual([
      'flame',
    ]);
  });
});
