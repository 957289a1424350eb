// What one message after another makes of an event. Prices never move from one kind to another in silence.

import { describe, expect, it } from 'vitest';
import type { Fact } from '../../src/reading/fact.ts';
import { applyFacts } from '../../src/thread/apply-facts.ts';
import { type EventState, newEvent } from '../../src/thread/event.ts';
import { broke, change, each, inAll, made, material, on, pieces } from '../support/facts.ts';

const eventAfter = (...messages: readonly (readonly Fact[])[]): EventState => messages.reduce(applyFacts, newEvent);

const shown = (event: EventState): readonly string[] =>
  event.lines.map(
    (line) =>
      `${line.count} ${line.piece}${line.price ? ` ${line.price.amount} ${line.price.per}` : ''}${line.wearer ? ` (${line.wearer})` : ''}`,
  );

const table: readonly {
  readonly said: string;
  readonly messages: readonly (readonly Fact[])[];
  readonly lines: readonly string[];
  readonly total?: string;
}[] = [
  { said: '40 buttonholes at 25', messages: [[pieces(40, 'buttonhole'), each('25')]], lines: ['40 buttonhole 25 each'] },
  { said: 'pieces first, price later', messages: [[pieces(40, 'buttonhole')], [each('25')]], lines: ['40 buttonhole 25 each'] },
  { said: 'price first, pieces later', messages: [[each('25')], [pieces(40, 'buttonhole')]], lines: ['40 buttonhole 25 each'] },
  {
    said: 'a second kind brings its own price',
    messages: [
      [pieces(40, 'buttonhole'), each('25')],
      [pieces(10, 'corsage'), each('35')],
    ],
    lines: ['40 buttonhole 25 each', '10 corsage 35 each'],
  },
  {
    said: 'a second kind without a price takes none',
    messages: [[pieces(40, 'buttonhole'), each('25')], [pieces(10, 'corsage')]],
    lines: ['40 buttonhole 25 each', '10 corsage'],
  },
  {
    said: 'a price alone goes to the kind that has none',
    messages: [[pieces(40, 'buttonhole'), each('25')], [pieces(10, 'corsage')], [each('35')]],
    lines: ['40 buttonhole 25 each', '10 corsage 35 each'],
  },
  {
    said: 'a total of lines with prices of their own leaves them their prices',
    messages: [
      [
        pieces(9, 'buttonhole', { price: { amount: '12', per: 'each' } }),
        pieces(4, 'corsage', { price: { amount: '28', per: 'each' } }),
        inAll('220'),
      ],
    ],
    lines: ['9 buttonhole 12 each', '4 corsage 28 each'],
  },
  {
    said: 'a kind said again keeps its price',
    messages: [[pieces(40, 'buttonhole'), each('25')], [pieces(45, 'buttonhole')]],
    lines: ['45 buttonhole 25 each'],
  },
  {
    said: 'and 2 more',
    messages: [[pieces(40, 'buttonhole'), each('25')], [pieces(2, 'buttonhole', { adds: true })]],
    lines: ['42 buttonhole 25 each'],
  },
  {
    said: 'and 2 for the dads',
    messages: [[pieces(40, 'buttonhole'), each('25')], [pieces(2, 'unspecified', { adds: true, wearer: 'dads' })]],
    lines: ['40 buttonhole 25 each', '2 buttonhole 25 each (dads)'],
  },
  {
    said: '4 buttonholes at 19, one for the groom at 24',
    messages: [
      [
        pieces(4, 'buttonhole', { price: { amount: '19', per: 'each' } }),
        pieces(1, 'buttonhole', { price: { amount: '24', per: 'each' }, wearer: 'groom' }),
      ],
    ],
    lines: ['4 buttonhole 19 each', '1 buttonhole 24 each (groom)'],
  },
  {
    said: '40 pieces, then: buttonholes',
    messages: [[pieces(40, 'unspecified'), each('25')], [pieces(40, 'buttonhole')]],
    lines: ['40 buttonhole 25 each'],
  },
  { said: '1000 all up for 40', messages: [[pieces(40, 'buttonhole'), inAll('1000')]], lines: ['40 buttonhole'], total: '1000' },
  {
    said: 'a total replaces a price each',
    messages: [[pieces(40, 'buttonhole'), each('25')], [inAll('900')]],
    lines: ['40 buttonhole'],
    total: '900',
  },
  {
    said: 'a price each replaces a total',
    messages: [[pieces(40, 'buttonhole'), inAll('1000')], [each('24')]],
    lines: ['40 buttonhole 24 each'],
  },
  {
    said: 'make that 45',
    messages: [[pieces(40, 'buttonhole'), each('25')], [change('count', { to: 45 })]],
    lines: ['45 buttonhole 25 each'],
  },
  {
    said: 'minus one',
    messages: [[pieces(40, 'buttonhole'), each('25')], [change('count', { by: -1, piece: 'buttonhole' })]],
    lines: ['39 buttonhole 25 each'],
  },
  {
    said: 'swap the 2 wrist corsages for pin-ons',
    messages: [
      [pieces(2, 'wrist corsage'), each('42')],
      [change('count', { piece: 'pin corsage', to: 2 }), change('count', { piece: 'wrist corsage', to: 0 })],
    ],
    lines: ['2 pin corsage'],
  },
  {
    said: 'add 2 to each',
    messages: [[pieces(40, 'buttonhole'), each('25')], [change('price', { by: '2', per: 'each' })]],
    lines: ['40 buttonhole 27 each'],
  },
  {
    said: 'add 0.10 to each, exactly',
    messages: [[pieces(3, 'corsage'), each('0.20')], [change('price', { by: '0.10' })]],
    lines: ['3 corsage 0.3 each'],
  },
];

describe('the order', () => {
  it.each(table)('$said', ({ messages, lines, total }) => {
    const event = eventAfter(...messages);
    expect(shown(event)).toEqual(lines);
    expect(event.price?.per === 'all' ? event.price.amount : undefined).toBe(total);
  });
});

describe('date and material', () => {
  it('keeps the event apart from the hand-over', () => {
    const event = eventAfter([on('2027-03-14')], [on('2027-03-13', { of: 'hand over', time: '16:00' })]);
    expect([event.date, event.handOver]).toEqual(['2027-03-14', { date: '2027-03-13', time: '16:00' }]);
  });

  it('moves the date by days', () => {
    expect(eventAfter([on('2027-03-14')], [change('date', { by: 7 })]).date).toBe('2027-03-21');
  });

  it('keeps one kind fresh in a dried order', () => {
    const event = eventAfter([pieces(40, 'buttonhole'), pieces(4, 'corsage')], [material('dried')], [material('fresh', 'corsage')]);
    expect([event.material, ...event.lines.map((line) => line.material)]).toEqual(['dried', undefined, 'fresh']);
  });

  it('takes a material beside further pieces for theirs, and beside the first pieces for the event’s', () => {
    const first = [pieces(10, 'buttonhole'), material('dried')];
    const event = eventAfter(first, [pieces(10, 'flower crown'), material('fresh')]);
    expect([event.material, ...event.lines.map((line) => line.material)]).toEqual(['dried', undefined, 'fresh']);
    expect(eventAfter(first, [pieces(12, 'buttonhole'), material('fresh')]).material).toBe('fresh');
  });
});

describe('progress', () => {
  const order = [pieces(40, 'buttonhole'), pieces(4, 'corsage')];
  const madeAfter = (...messages: readonly (readonly Fact[])[]) => {
    const { progress } = eventAfter(order, ...messages);
    return [progress.buttonhole?.made ?? 0, progress.corsage?.made ?? 0];
  };

  it.each([
    ['made 12', [[made({ count: 12, piece: 'buttonhole' })]], [12, 0]],
    ['made 12, made 5', [[made({ count: 12, piece: 'buttonhole' })], [made({ count: 5, piece: 'buttonhole' })]], [17, 0]],
    [
      '12 of the 40 done, said twice',
      [[made({ count: 12, piece: 'buttonhole', total: true })], [made({ count: 12, piece: 'buttonhole', total: true })]],
      [12, 0],
    ],
    ['2 broke', [[made({ count: 12, piece: 'buttonhole' })], [broke(2, 'buttonhole')]], [10, 0]],
    ['done all the corsages', [[made({ all: true, piece: 'corsage' })]], [0, 4]],
    ['all done', [[made({ all: true })]], [40, 4]],
    ['wired is not made', [[made({ count: 24, piece: 'buttonhole', stage: 'wired' })]], [0, 0]],
    ['half of them', [[made({ fraction: '0.5', piece: 'buttonhole' })]], [20, 0]],
    ['14 done, not 40', [[made({ count: 40, piece: 'buttonhole' })], [change('made', { to: 14, from: 40, piece: 'buttonhole' })]], [14, 0]],
    ['breaking more than were made', [[made({ count: 1, piece: 'buttonhole' })], [broke(3, 'buttonhole')]], [0, 0]],
  ] as const)('%s', (_said, messages, expected) => {
    expect(madeAfter(...messages)).toEqual(expected);
  });
});
