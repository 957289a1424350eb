// The log decides: an edit replaces what its message said, a deletion and an undo take it back, each in its own place in time.

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fact } from '../../src/reading/fact.ts';
import { applyFacts } from '../../src/thread/apply-facts.ts';
import type { Entry } from '../../src/thread/entry.ts';
import { newEvent } from '../../src/thread/event.ts';
import { foldEvent, foldStudio } from '../../src/thread/fold.ts';
import { each, on, pieces } from '../support/facts.ts';

let clock = 0;
const entry = (kind: Entry['kind'], message: string, facts: readonly Fact[] = [], scope: Entry['scope'] = 'event'): Entry => {
  clock += 1;
  return { scope, message, revision: String(clock), kind, author: 'ana', at: clock, facts };
};

const order = entry('stated', 'm1', [pieces(40, 'buttonhole'), each('25')]);
const date = entry('stated', 'm2', [on('2027-03-14')]);

describe('the event a log tells', () => {
  it('is the messages in the order they were written', () => {
    const event = foldEvent([order, date]);
    expect([event.lines.length, event.date]).toEqual([1, '2027-03-14']);
  });

  it('takes an edit in its message’s place, before what came after it', () => {
    const later = entry('stated', 'm3', [pieces(50, 'buttonhole')]);
    const edited = entry('edited', 'm1', [pieces(45, 'buttonhole'), each('22')]);
    expect(foldEvent([order, later, edited]).lines).toEqual([{ piece: 'buttonhole', count: 50, price: { amount: '22', per: 'each' } }]);
  });

  it('is the same whether the facts of a message come at once or one after the other, where a correction brings the first line', () => {
    const waiting = applyFacts(newEvent, [each('30')]);
    const first: Fact = { fact: 'change', what: 'count', piece: 'buttonhole', to: 22, words: 'make it 22 buttonholes' };
    const dried: Fact = { fact: 'material', material: 'dried', words: 'dried' };
    expect(applyFacts(applyFacts(waiting, [first]), [dried])).toEqual(applyFacts(waiting, [first, dried]));
    expect(applyFacts(waiting, [first]).lines).toEqual([{ piece: 'buttonhole', count: 22, price: { amount: '30', per: 'each' } }]);
  });

  it('forgets a deleted message and keeps the others', () => {
    const event = foldEvent([order, date, entry('deleted', 'm1')]);
    expect([event.lines, event.date]).toEqual([[], '2027-03-14']);
  });

  it('takes back an undone message', () => {
    expect(foldEvent([order, date, entry('undone', 'm2')]).date).toBeUndefined();
  });

  it('lets an edit bring an undone message back', () => {
    const again = entry('edited', 'm2', [on('2027-03-21')]);
    expect(foldEvent([order, date, entry('undone', 'm2'), again]).date).toBe('2027-03-21');
  });

  it('keeps a question open until something is said', () => {
    const asked: Entry = { ...entry('asked', 'm1'), open: { kind: 'missing', about: 'date' } };
    expect(foldEvent([order, asked]).open).toMatchObject({ kind: 'missing', about: 'date' });
    expect(foldEvent([order, asked, date]).open).toBeUndefined();
  });

  it('leaves what belongs to the studio out of the event', () => {
    const crew: Fact = { fact: 'crew', people: 2, words: '2 of us' };
    const log = [order, entry('stated', 'm4', [crew], 'studio')];
    expect(foldEvent(log).lines.length).toBe(1);
    expect(foldStudio({ name: 'A yard', region: 'GB', timeZone: 'Europe/London', currency: 'GBP' }, log).crew).toEqual([crew]);
  });
});

describe('a snapshot', () => {
  const message = fc.record({
    count: fc.integer({ min: 1, max: 90 }),
    kind: fc.constantFrom('buttonhole' as const, 'corsage' as const, 'flower crown' as const),
    price: fc.option(fc.integer({ min: 1, max: 99 })),
  });

  it('extended message by message equals the fold of the whole log', () => {
    fc.assert(
      fc.property(fc.array(message, { maxLength: 12 }), (messages) => {
        const said = messages.map(({ count, kind, price }) => [pieces(count, kind), ...(price === null ? [] : [each(String(price))])]);
        const log = said.map((facts, index) => entry('stated', `m${index}`, facts));
        expect(foldEvent(log)).toEqual(said.reduce(applyFacts, newEvent));
      }),
    );
  });
});
