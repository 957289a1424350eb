// The sheets for the wall and the day on paper: everything laid and counted before is there, and nothing is cut.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sheetsPdf } from '../../src/attachments/sheets-pdf.ts';
import { line, wears } from '../handover/an-event.ts';
import { randomOrder } from '../handover/random-orders.ts';
import { harbourDance, printed, readBack, said, sheetOf } from './printed-event.ts';

const dance = printed(harbourDance);
const guests = Array.from({ length: 80 }, (_, index) => `guest no ${index + 1}`);
const eighty = printed({ ...harbourDance, lines: [line(80)], wearers: guests.map((guest) => wears(guest)) });

describe('the PDF', () => {
  test('is the same, byte for byte, for the same input', () => {
    expect(Buffer.compare(sheetsPdf(dance), sheetsPdf(structuredClone(dance)))).toBe(0);
    expect(Buffer.from(sheetsPdf(dance)).subarray(0, 5).toString()).toBe('%PDF-');
    expect(Buffer.from(sheetsPdf(dance)).toString('latin1')).toContain('(D:20270120090000Z)');
  });

  // ISO 216: A4 is 210 × 297 mm. US Letter is 8½ × 11 in. A point is 1/72 in.
  test.each([
    ['A4', (210 / 25.4) * 72, (297 / 25.4) * 72],
    ['Letter', 8.5 * 72, 11 * 72],
  ] as const)('has %s pages', (paper, width, height) => {
    const { pages } = readBack({ ...dance, paper });
    expect(pages.length).toBeGreaterThan(4);
    for (const page of pages) {
      expect(page.width).toBeCloseTo(width, 1);
      expect(page.height).toBeCloseTo(height, 1);
    }
  });

  test('embeds its font, so that it prints the same anywhere', () => {
    const file = Buffer.from(sheetsPdf(dance)).toString('latin1');
    expect(file.match(/\/FontFile2 /g)).toHaveLength(2);
    expect(file).not.toMatch(/\/BaseFont \/Helvetica/);
  });

  test('uses black alone', () => {
    const file = Buffer.from(sheetsPdf(dance, { compress: false })).toString('latin1');
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
        const { pages, words } = readBack(
          printed(
            {
              ...harbourDance,
              lines: [line(count), line(2, 'wrist corsage')],
              wearers: [wears(name, count, { piece: 'buttonhole', note })],
              recipes: { buttonhole: Array.from({ length: count }, () => ({ ingredient, length: 30, unit: note })) },
            },
            { paper, event: name },
          ),
        );
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

  test('shows every place on every board and every line of the packing list, whatever the order', () => {
    const letters = (text: string) => text.replace(/[^\p{L}\p{N}]/gu, '');
    fc.assert(
      fc.property(randomOrder, (event) => {
        const input = printed(event);
        const pinOn = sheetOf(input, 'Pin-on sheet').map((one) => one.words);
        const places = input.laid.boards.flatMap((board) => board.places);
        const sides = new Set(places.map((place) => place.side));
        expect(pinOn.filter((words) => words === 'not named yet')).toHaveLength(places.filter((place) => place.is === 'unnamed').length);
        for (const side of sides) expect(letters(pinOn.join(''))).toContain(letters(side));
        const packing = letters(said(input, 'Packing list'));
        for (const words of [...input.packing.pieces, ...input.packing.take]) expect(packing).toContain(letters(words));
        for (const { label, holds } of input.packing.boards) expect(packing).toContain(letters(label + holds));
      }),
      { numRuns: 10 },
    );
  });
});

describe('the bench card', () => {
  test('holds count, minutes, recipe, steps and a place for a photo', () => {
    const card = said(dance, 'Buttonhole');
    for (const words of ['9 to make · dried', '15 min each · 2 h 15 min in all', 'left lapel', '2', 'bunny tail', '30 cm', 'ribbon, oat'])
      expect(card).toContain(words);
    for (const words of ['Cut the ribbon first', 'the middle of the jacket', 'photo of the first one made']) expect(card).toContain(words);
  });

  test('warns where the hazard is: a plant on the piece it is in, a pin on the piece that is pinned', () => {
    const [buttonholes, corsages] = [said(dance, 'Buttonhole'), said(dance, 'Wrist corsage')];
    expect(corsages).toContain('Ranunculus can bring on a rash');
    expect(buttonholes).not.toContain('Ranunculus');
    expect(buttonholes).toContain('Small children usually get no loose pin');
    expect(corsages).not.toContain('loose pin');
    expect(corsages).not.toContain('Dust from dried flowers');
  });
});

describe('the pin-on sheet', () => {
  test('says wearer, side and what the wearer needs', () => {
    const sheet = said(dance, 'Pin-on sheet');
    expect(sheet).toMatch(/buttonhole page boy left lapel aged 4; child: no loose pin/);
    expect(sheet).toMatch(/buttonhole grandfather left lapel pacemaker, heavy coat; implant: no magnet; heavy coat: long/);
    expect(sheet).toMatch(/wrist corsage mothers, 2 of 2 left wrist/);
  });

  test('runs over pages for 80 wearers, each once, with the column heads on every page', () => {
    const words = sheetOf(eighty, 'Pin-on sheet');
    const pages = new Set(words.map((one) => one.page));
    expect(pages.size).toBeGreaterThan(2);
    for (const page of pages) expect(words.filter((one) => one.page === page && one.words === 'wearer')).toHaveLength(1);
    expect(words.filter((one) => one.words.startsWith('guest no ')).map((one) => one.words)).toEqual(guests);
  });

  test('names the board again at the head of the page it runs on to', () => {
    expect(said(eighty, 'Pin-on sheet')).toMatch(/Board \d, continued/);
  });

  test('names wearers for whom there is no piece', () => {
    const short = printed({
      ...harbourDance,
      wearers: [wears('groom'), wears('ushers', 10), wears('flower girls', 2, { piece: 'flower crown' })],
    });
    expect(said(short, 'Pin-on sheet')).toContain('Without one: ushers × 2, flower girls × 2.');
  });
});

test('a label names its board, its pieces and the event', () => {
  expect(said(dance, 'Board labels')).toMatch(
    /Board 1 of 2 9 buttonholes, dried Harbour dance · Sat 13 March 2027, 14:00 · Tarry Lane Flowers groom/,
  );
});

// Orchids and cold (a flower food maker, December 2015): not below 50 °F, which is 10 °C.
test('the packing list keeps orchids from the cold, with the source', () => {
  const orchids = printed({ ...harbourDance, recipes: { 'wrist corsage': [{ ingredient: 'orchid', stems: 1 }] } });
  expect(said(orchids, 'Packing list')).toMatch(/orchids: .*10 to 15 °C Orchids and cold, .*2015 \(trade\)/);
});

test('the last page names the sources of what the others say', () => {
  const sources = said(dance, 'Where this was read');
  expect(sources).toContain('common practice, no source');
  expect(sources).toContain('Constructing Boutonnieres and Corsages, Georgia Agriculture Education, 2005 (textbook)');
});
