// The parts of a quote said together, in any sequence and with any marks between them, state what each states alone.

import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Fact } from '../../src/reading/fact.ts';
import { readMessage } from '../../src/reading/read-message.ts';
import { context } from './support/context.ts';

const orders = ['40 buttonholes', '12 wrist corsages', 'two dozen lapel pieces', '6 flower crowns', '30 bouts', '8 hair combs'];
const prices = ['at 25', '25 each', '£18.50 each', '@ 22', 'at £31', '12.50 ea'];
const bases = ['inc tax', 'plus vat', 'ex vat', 'vat included', 'inc', 'incl gst', '+ tax'];
const materials = ['dried', 'fresh', 'all dried', 'preserved'];
const dates = [
  'event 14 March',
  '14 march',
  'sat 20 March',
  'wedding 5 June 2pm',
  'for the 3rd of May',
  '13/2/2027',
  'March 14th',
  'event Sunday 14 March',
];

// The order of two facts is nothing; words may take a neighbour with them ("at 25 inc").
const stated = (text: string): string[] =>
  readMessage(text, context)
    .facts.map(({ words: _, ...fact }) => JSON.stringify(fact as Omit<Fact, 'words'>))
    .sort();

const parts = fc.record({
  order: fc.constantFrom(...orders),
  price: fc.constantFrom(...prices),
  basis: fc.option(fc.constantFrom(...bases), { nil: '' }),
  material: fc.option(fc.constantFrom(...materials), { nil: '' }),
  date: fc.option(fc.constantFrom(...dates), { nil: '' }),
});

// A price stands behind its pieces or before them, and the tax behind the price; material and day may stand anywhere.
const sequences = (said: { order: string; price: string; basis: string; material: string; date: string }): string[][] => {
  const quote = [said.order, `${said.price} ${said.basis}`.trim()];
  const rest = [said.material, said.date].filter((part) => part !== '');
  return [
    [...quote, ...rest],
    [...rest, ...quote],
    [...quote, ...rest.toReversed()],
    [...rest.slice(0, 1), ...quote, ...rest.slice(1)],
    [...rest.slice(1), ...quote, ...rest.slice(0, 1)],
  ];
};

it('in any sequence', () => {
  fc.assert(
    fc.property(parts, fc.constantFrom(', ', '\n', '. ', ' - ', ' '), fc.nat(4), (said, between, which) => {
      const { order, price, basis, material, date } = said;
      const alone = [`${order} ${price} ${basis}`, material, date].filter((part) => part.trim() !== '').flatMap(stated);
      expect(stated(sequences(said)[which]?.join(between) ?? '')).toEqual(alone.sort());
    }),
    { numRuns: 1000 },
  );
});

it('and asked with a question mark, states nothing', () => {
  fc.assert(
    fc.property(parts, fc.constantFrom(', ', ' '), fc.nat(4), (said, between, which) => {
      const text = `${sequences(said)[which]?.join(between) ?? ''}?`;
      expect(readMessage(text, context).facts.filter(({ fact }) => fact !== 'question')).toEqual([]);
    }),
    { numRuns: 500 },
  );
});
