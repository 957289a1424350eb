// The sheets for the wall and the day: on paper and as text they say the same, nothing is cut, and their counts agree with the order.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layOutBoards } from '../../src/attachments/boards.ts';
import { packingList } from '../../src/attachments/packing-list.ts';
import type { SheetPiece, SheetsInput, SheetWearer } from '../../src/attachments/sheet-input.ts';
import { sheetsPdf } from '../../src/attachments/sheets-pdf.ts';
import { benchCardText, boardLabelsText, packingText, pinOnText, sheetsText } from '../../src/attachments/sheets-text.ts';
import { cautionsFor } from '../../src/handbook/cautions.ts';
import type { PieceKind } from '../../src/handbook/pieces.ts';
import type { Day } from '../../src/values/day.ts';
import { readPdf } from './read-pdf.ts';

const buttonholes: SheetPiece = {
  kind: 'buttonhole',
  one: 'buttonhole',
  many: 'buttonholes',
  count: 9,
  spares: 2,
  minutes: 15,
  material: 'dried',
  recipe: [
    { ingredient: 'bunny tail', amount: '2 stems' },
    { ingredient: 'ribbon, oat', amount: '30 cm' },
  ],
};
const corsages: SheetPiece = {
  kind: 'wrist corsage',
  one: 'wrist corsage',
  many: 'wrist corsages',
  count: 2,
  spares: 0,
  minutes: 30,
  material: 'fresh',
  recipe: [{ ingredient: 'white ranunculus', amount: '3 stems' }],
};
const wears = (wearer: string, count = 1, kind: PieceKind = 'buttonhole', note?: string): SheetWearer => ({
  wearer,
  count,
  kind,
  ...(note === undefined ? {} : { note }),
});

const harbourDance: SheetsInput = {
  studio: 'Tarry Lane Flowers',
  event: 'Harbour dance',
  eventDay: '2027-03-14' as Day,
  time: '14:00',
  handOver: 'Sat 13 March, 16:00, at the yard',
  dayFirst: true,
  paper: 'A4',
  pieces: [buttonholes, corsages],
  wearers: [
    wears('groom'),
    wears('groomsmen', 5),
    wears('page boy', 1, 'buttonhole', 'aged 4'),
    wears('grandfather', 1, 'buttonhole', 'pacemaker, heavy coat'),
    wears('mothers', 2, 'wrist corsage'),
  ],
  cautions: cautionsFor({
    materials: ['dried', 'fresh'],
    plants: ['bunny tail', 'white ranunculus'],
    fixings: ['pin', 'magnet'],
    wearers: ['child', 'implant'],
  }),
  stamp: Date.UTC(2027, 0, 20, 9),
};

const read = (input: SheetsInput) => readPdf(sheetsPdf(input, { compress: false }));
const sheetOf = (input: SheetsInput, title: string) => {
  const { words } = read(input);
  const pages = new Set(words.filter((one) => one.size === 20 && one.words.startsWith(title)).map((one) => one.page));
  return words.filter((one) => pages.has(one.page));
};
const said = (input: SheetsInput, title: string): string =>
  sheetOf(input, title)
    .map((one) => one.words)
    .join(' ');

const eighty: SheetsInput = {
  ...harbourDance,
  pieces: [{ ...buttonholes, count: 80 }],
  wearers: Array.from({ length: 80 }, (_, index) => wears(`guest no ${index + 1}`)),
};

describe('the PDF', () => {
  test('is the same, byte for byte, for the same input', () => {
    expect(Buffer.compare(sheetsPdf(harbourDance), sheetsPdf(structuredClone(harbourDance)))).toBe(0);
    expect(Buffer.from(sheetsPdf(harbourDance)).subarray(0, 5).toString()).toBe('%PDF-');
    expect(Buffer.from(sheetsPdf(harbourDance)).toString('latin1')).toContain('(D:20270120090000Z)');
  });

  // ISO 216: A4 is 210 × 297 mm. US Letter is 8½ × 11 in. A point is 1/72 in.
  test.each([
    ['A4', (210 / 25.4) * 72, (297 / 25.4) * 72],
    ['Letter', 8.5 * 72, 11 * 72],
  ] as const)('has %s pages', (paper, width, height) => {
    const { pages } = read({ ...harbourDance, paper });
    expect(pages.length).toBeGreaterThan(4);
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 1);
      expect(page.height).toBeCloseTo(height, 1);
    }
  });

  test('embeds its font, so that it prints the same anywhere', () => {
    const file = Buffer.from(sheetsPdf(harbourDance)).toString('latin1');
    expect(file.match(/\/FontFile2 /g)).toHaveLength(2);
    expect(file).not.toMatch(/\/BaseFont \/Helvetica/);
  });

  test('uses black alone', () => {
    const file = Buffer.from(sheetsPdf(harbourDance, { compress: false })).toString('latin1');
    const colours = [...file.matchAll(/^([\d.]+ [\d.]+ [\d.]+) (?:scn|SCN)$/gm)].map(([, colour]) => colour);
    expect(new Set(colours)).toEqual(new Set(['0 0 0']));
  });

  test.each(['A4', 'Letter'] as const)('cuts nothing at the edges of %s, whatever people typed', (paper) => {
    const typed = fc.oneof(
      fc.string({ unit: 'grapheme', minLength: 1, maxLength: 150 }),
      fc.constantFrom('W'.repeat(300), 'a long list of words '.repeat(30), '💐 花嫁 · office ﬁ', ''),
    );
    fc.assert(
      fc.property(typed, typed, typed, fc.integer({ min: 1, max: 40 }), (name, note, ingredient, count) => {
        const { pages, words } = read({
          ...harbourDance,
          paper,
          event: name,
          pieces: [{ ...buttonholes, count, recipe: Array.from({ length: count }, () => ({ ingredient, amount: note })) }, corsages],
          wearers: [wears(name, count, 'buttonhole', note)],
        });
        for (const one of words) {
          const page = pages[one.page - 1];
          expect(one.left).toBeGreaterThanOrEqual(36);
          expect(one.right).toBeLessThanOrEqual((page?.width ?? 0) - 36);
          expect(one.baseline - one.size * 0.3).toBeGreaterThanOrEqual(36);
          expect(one.baseline + one.size).toBeLessThanOrEqual((page?.height ?? 0) - 36);
        }
      }),
      { numRuns: 8 },
    );
  });
});

describe('the bench card', () => {
  test('holds counts, minutes, recipe, steps and a place for a photo', () => {
    const card = said(harbourDance, 'Buttonhole');
    for (const words of ['9 and 2 spares to make', '15 min each · 2 h 45 min in all', 'left lapel', '2 stems', 'bunny tail', '30 cm'])
      expect(card).toContain(words);
    for (const words of ['Cut the ribbon first', 'the middle of the jacket', 'photo of the first one made']) expect(card).toContain(words);
  });

  test('warns where the hazard is: a plant on the piece it is in, a pin on the piece that is pinned', () => {
    expect(benchCardText(corsages, harbourDance)).toContain('Ranunculus can bring on a rash');
    expect(benchCardText(buttonholes, harbourDance)).not.toContain('Ranunculus');
    expect(benchCardText(buttonholes, harbourDance)).toContain('Small children usually get no loose pin');
    expect(benchCardText(corsages, harbourDance)).not.toContain('loose pin');
    expect(benchCardText(corsages, harbourDance)).not.toContain('Dust from dried flowers');
  });
});

describe('the pin-on sheet', () => {
  test('says wearer, side and what the wearer needs', () => {
    expect(pinOnText(harbourDance)).toContain('[ ] page boy · buttonhole · left lapel · aged 4; child: no loose pin');
    expect(pinOnText(harbourDance)).toContain('[ ] grandfather · buttonhole · left lapel · pacemaker, heavy coat; no magnet; long pin');
    expect(pinOnText(harbourDance)).toContain('[ ] mothers, 2 of 2 · wrist corsage · left wrist');
  });

  test('runs over pages for 80 wearers, each once, with the column heads on every page and a box to tick for each', () => {
    const words = sheetOf(eighty, 'Pin-on sheet');
    const pages = new Set(words.map((one) => one.page));
    expect(pages.size).toBeGreaterThan(2);
    for (const page of pages) expect(words.filter((one) => one.page === page && one.words === 'wearer')).toHaveLength(1);
    const names = words.filter((one) => one.words.startsWith('guest no ')).map((one) => one.words);
    expect(names).toEqual(eighty.wearers.map((one) => one.wearer));
  });

  test('names the board again at the head of the page it runs on to', () => {
    expect(said(eighty, 'Pin-on sheet')).toMatch(/Board \d, continued/);
  });

  test('names wearers for whom there is no piece', () => {
    const input = { ...harbourDance, wearers: [wears('groom'), wears('ushers', 10), wears('flower girls', 2, 'flower crown')] };
    expect(pinOnText(input)).toContain('More wearers than pieces. Without one: ushers × 2, flower girls × 2.');
    expect(said(input, 'Pin-on sheet')).toContain('Without one: ushers × 2, flower girls × 2.');
  });

  test('keeps two grooms and a role it does not know as they are written', () => {
    const text = pinOnText({ ...harbourDance, wearers: [wears('groom', 2), wears('keeper of the bagpipes')] });
    expect(text).toContain('groom, 1 of 2');
    expect(text).toContain('keeper of the bagpipes');
  });
});

describe('counts', () => {
  const kinds = ['buttonhole', 'wrist corsage', 'pin corsage', 'flower crown', 'hair flower'] as const;
  const order = fc
    .uniqueArray(
      fc.record({ kind: fc.constantFrom(...kinds), count: fc.integer({ min: 1, max: 90 }), spares: fc.integer({ min: 0, max: 6 }) }),
      {
        selector: (piece) => piece.kind,
        minLength: 1,
      },
    )
    .map((rows) => rows.map((row): SheetPiece => ({ ...row, one: row.kind, many: `${row.kind}s`, recipe: [] })));
  const people = fc.array(
    fc.record({
      wearer: fc.constantFrom('groom', 'ushers', 'aunts', 'bridesmaids', 'page boy'),
      count: fc.integer({ min: 1, max: 30 }),
      kind: fc.constantFrom(...kinds),
    }),
    { maxLength: 8 },
  );

  test('on boards, sheet, labels and packing list agree with the order, whoever wears them', () => {
    fc.assert(
      fc.property(order, people, (pieces, wearers) => {
        const input: SheetsInput = { ...harbourDance, pieces, wearers, cautions: [] };
        const { boards, withoutPiece } = layOutBoards(input);
        const places = boards.flatMap((board) => board.places.map((place) => ({ ...place, kind: board.kind })));
        const ordered = pieces.reduce((total, piece) => total + piece.count + piece.spares, 0);
        for (const piece of pieces) {
          const here = places.filter((place) => place.kind === piece.kind);
          expect(here).toHaveLength(piece.count + piece.spares);
          expect(here.filter((place) => place.is === 'spare')).toHaveLength(piece.spares);
        }
        const named = places.filter((place) => place.is === 'named').length;
        const missing = withoutPiece.reduce((total, one) => total + one.missing, 0);
        expect(named + missing).toBe(wearers.reduce((total, one) => total + one.count, 0));

        expect(pinOnText(input).match(/^ {2}\[ \] /gm) ?? []).toHaveLength(ordered);
        expect(boardLabelsText(input).match(/^ {2}/gm) ?? []).toHaveLength(ordered);
        const list = packingList(input, boards);
        expect(list.boards).toHaveLength(boards.length);
        const packed = list.boards.map((board) => Number(/: (\d+) /.exec(board.label)?.[1]));
        expect(packed.reduce((total, one) => total + one, 0)).toBe(ordered);
      }),
      { numRuns: 60 },
    );
  });
});

describe('the packing list', () => {
  test('counts boards, boxes, pins and tissue from the pieces', () => {
    const text = packingText(harbourDance);
    for (const words of ['9 buttonholes and 2 spares', '1 covered board, labelled', '1 box, labelled', '22 pins', '4 sheets of tissue'])
      expect(text).toContain(words);
    expect(text).toContain('Board 1: 11 buttonholes (groom, groomsmen × 5, page boy, grandfather, 1 not named yet, 2 spares)');
  });

  // Orchids and cold (a flower food maker, December 2015): not below 50 °F, which is 10 °C.
  test('keeps orchids from the cold, with the source', () => {
    const input = { ...harbourDance, pieces: [{ ...corsages, recipe: [{ ingredient: 'orchid', amount: '1 bloom' }] }] };
    expect(packingText(input)).toMatch(/orchids: .*10 to 15 °C \[Orchids and cold, .*2015 \(trade\)\]/);
  });
});

describe('paper and text', () => {
  test('say the same: every line of the text is on paper', () => {
    const letters = (text: string) => text.replace(/[^\p{L}\p{N}]/gu, '');
    const onPaper = letters(
      read(harbourDance)
        .words.map((one) => one.words)
        .join(''),
    );
    const skipped = /^(Buttonhole|Wrist corsage): |^Steps:|^Recipe, for one:/; // set out as headings on paper
    for (const line of sheetsText(harbourDance)
      .split('\n')
      .filter((one) => one !== '' && !skipped.test(one)))
      for (const part of line.split(/ · |\[[^\]]*\]|: /)) expect(onPaper, line).toContain(letters(part));
  });

  test('name the sources of what they say', () => {
    expect(said(harbourDance, 'Where this was read')).toContain('common practice, no source');
    expect(sheetsText(harbourDance)).toContain('Constructing Boutonnieres and Corsages, Georgia Agriculture Education, 2005 (textbook)');
  });
});

describe('boards laid elsewhere', () => {
  test('are printed as they are given', () => {
    const laid = {
      boards: [
        {
          number: 1,
          on: 'box' as const,
          kind: 'buttonhole' as const,
          pieces: '1 boutonniere',
          places: [{ wearer: 'harbour master', piece: 'boutonniere', side: 'right lapel', note: 'sewn on', is: 'named' as const }],
        },
      ],
      withoutPiece: [],
    };
    expect(pinOnText(harbourDance, laid)).toContain('[ ] harbour master · boutonniere · right lapel · sewn on');
    const { words } = readPdf(sheetsPdf(harbourDance, { compress: false, laid }));
    for (const one of ['harbour master', 'right lapel', 'Box 1: 1 boutonniere', 'Box 1 of 1'])
      expect(words.map((placed) => placed.words)).toContain(one);
    expect(words.map((placed) => placed.words)).not.toContain('groom');
  });
});
