// Bench card, pin-on sheet, packing list and labels in the thread: every one of them counts what is ordered, whatever the order.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { wearersList } from '../../../src/handover/wearers.ts';
import type { EventState } from '../../../src/thread/event.ts';
import { anEvent, eventDay, line, wears, withSettings, yard } from '../../handover/an-event.ts';
import { randomOrder } from '../../handover/random-orders.ts';
import { asked } from '../../support/an-answer.ts';

const around = { studio: yard };
const ordered = (event: EventState): number => event.lines.reduce((total, { count }) => total + count, 0);
const sum = (text: string, pattern: RegExp): number => [...text.matchAll(pattern)].reduce((total, match) => total + Number(match[1]), 0);

test('every sheet holds the pieces ordered, no more and no fewer', () => {
  fc.assert(
    fc.property(randomOrder, (event) => {
      const pieces = ordered(event);
      const pinOn = asked('pinOn', event, around);
      const packing = asked('packing', event, around);
      const labels = asked('labels', event, around);
      if (pieces === 0) {
        for (const sheet of [pinOn, packing, labels]) expect(sheet).toBe('There are no pieces in this thread yet. How many?');
        return;
      }
      expect([...pinOn.matchAll(/☐/g)]).toHaveLength(pieces);
      expect(sum(packing, /^- ☐ (?:Board|Box) \d+: (\d+)/gm)).toBe(pieces);
      expect(sum(labels, /^(?:Board|Box) \d+: (\d+)/gm)).toBe(pieces);
      for (const { role } of wearersList(event).wearers) expect(pinOn).toContain(role);
    }),
    { numRuns: 60 },
  );
});

const dance = anEvent({
  lines: [line(10), line(2, 'wrist corsage')],
  material: 'dried',
  date: eventDay,
  wearers: [wears('groom'), wears('groomsmen', 5), wears('fathers', 2), wears('page boy'), wears('mothers', 2)],
  recipes: {
    buttonhole: [
      { ingredient: 'bunny tail', stems: 3 },
      { ingredient: 'ribbon', length: 30, unit: 'cm' },
    ],
  },
});

describe('bench card', () => {
  test('count, minutes, side, recipe, steps in order, and the usual care at the bench', () => {
    const text = asked('card', dance, around);
    expect(text).toMatch(/^10 buttonholes, dried: 15 min each, 2 h 30 min in all\.\nWorn on the left lapel\./);
    expect(text).toContain('In each:\n- 3 bunny tail\n- 30 cm ribbon');
    expect(text.indexOf('Cut the ribbon first')).toBeLessThan(text.indexOf('Tuck the fixing high and hide it'));
    expect(text).toContain('Take care: Cut wire ends are sharp');
  });

  test('the kind asked for; of several the first, with words for the others', () => {
    expect(asked('card', dance, around)).toContain('For the others say “bench card wrist corsages”');
    expect(asked('card', dance, around, { piece: 'wrist corsage' })).toMatch(/^2 wrist corsages, dried:/);
    expect(asked('card', dance, around, { piece: 'flower crown' })).toBe(
      'There are no flower crowns in this order. It has: buttonholes, wrist corsages.',
    );
  });

  test('a single piece is not said to be several', () =>
    expect(asked('card', anEvent({ lines: [line(1)] }), around)).toMatch(/^1 buttonhole: 15 min\./));
});

describe('pin-on sheet', () => {
  test('board by board, one box to tick for each person', () => {
    const text = asked('pinOn', dance, around);
    expect(text).toMatch(/^12 pieces to pin on, 11 named\./);
    expect(text).toContain('Board 1: 10 buttonholes, dried\n- ☐ groom: left lapel\n- ☐☐☐☐☐ groomsmen: left lapel');
    expect(text).toContain('- ☐ page boy: left lapel (child: no loose pin, sew it on or tie it)');
    expect(text).toContain('- ☐ not named yet: left lapel');
    expect(text).toContain('Box 2: 2 wrist corsages, dried\n- ☐☐ mothers: left wrist');
  });

  test('more wearers than pieces are named', () => {
    const text = asked('pinOn', { ...dance, lines: [line(7), line(2, 'wrist corsage')] }, around);
    expect(text).toContain('More wearers than pieces. Without one: 1 of 2 fathers, page boy.');
  });

  test('people spread over two boards are counted on each', () => {
    const text = asked('pinOn', anEvent({ lines: [line(14)], wearers: [wears('ushers', 14)] }), around);
    expect(text).toContain('☐ ushers, 12 of 14: left lapel');
    expect(text).toContain('☐ ushers, 2 of 14: left lapel');
  });
});

describe('packing list', () => {
  test('boards, pins, tissue and how it is kept, with the source', () => {
    const text = asked('packing', dance, around);
    expect(text).toMatch(/^To pack: 10 buttonholes, 2 wrist corsages on 1 board and 1 box, for Sat 13 March 2027\./);
    expect(text).toContain('- ☐ 18 pins on or with the pieces'); // two each but for the page boy's
    expect(text).toContain('dark, cool and dry');
    expect(text).toContain('University');
  });

  // Orchids below 10 °C: the chilling limit of packing.ts, which names its source.
  test('fresh orchids are not chilled below their limit', () => {
    const orchids = anEvent({ lines: [line(4)], material: 'fresh', recipes: { buttonhole: [{ ingredient: 'orchid', stems: 1 }] } });
    expect(asked('packing', orchids, around)).toMatch(/orchids: .*10 to 15 °C/);
  });

  test('says when it is handed over', () =>
    expect(asked('packing', { ...dance, handOver: { date: eventDay, time: '09:30' } }, around)).toContain(
      ', hand over Sat 13 March 2027 at 09:30.',
    ));
});

describe('printing', () => {
  test('on the paper of the region, with all of it in words', () => {
    expect(asked('sheets', dance, around)).toMatch(/^Sheets to print, A4: 10 buttonholes, 2 wrist corsages on 1 board and 1 box/);
    expect(asked('sheets', dance, { studio: withSettings({ region: 'US', currency: 'USD' }) })).toContain('Sheets to print, Letter:');
    expect(asked('sheets', dance, around)).toContain('[sheets.pdf] Bench cards for 10 buttonholes, 2 wrist corsages.');
  });

  test('a list that does not agree is said before it is printed', () =>
    expect(asked('sheets', dance, around)).toContain("Wearers and pieces don't agree yet"));

  test('"print the packing list" is the file too', () =>
    expect(asked('packing', dance, around, { words: 'print the packing list' })).toContain('[sheets.pdf]'));
});
