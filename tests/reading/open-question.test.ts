// Answers to what the bot asked. A bare number means nothing outside an open question.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import type { OpenQuestion } from '../../src/reading/reading.ts';
import type { Day } from '../../src/values/day.ts';
import { context } from './support/context.ts';

const answer = (text: string, open: OpenQuestion | undefined) => readMessage(text, { ...context, pieces: ['buttonhole'], open });
const asked = (text: string): OpenQuestion => {
  const [ask] = readMessage(text, context).asks;
  if (ask === undefined) throw new Error(`"${text}" asks nothing`);
  return { kind: 'choice', ask };
};

describe('"12 bouts 12 bucks": each or all?', () => {
  const open = asked('12 bouts 12 bucks');
  it.each([
    ['each', 'each'],
    ['each please', 'each'],
    ['the first one', 'each'],
    ['for all', 'all'],
    ['all', 'all'],
    ['the second', 'all'],
  ])('%s', (text, per) => {
    expect(answer(text, open).facts).toEqual([expect.objectContaining({ fact: 'price', amount: '12', per })]);
  });
  it('leaves the question open when something else is said', () => {
    expect(answer('lunch at 1', open).facts).toEqual([]);
  });
});

describe('"10 bouts at 14 and 4 corsages at 30, total 300": the lines, which come to 260, or the total?', () => {
  const said = '10 bouts at 14 and 4 corsages at 30, total 300';
  const open = asked(said);
  const lines = [
    { amount: '14', per: 'each', piece: 'buttonhole' },
    { amount: '30', per: 'each', piece: 'corsage' },
  ];
  const total = [{ amount: '300', per: 'all' }];
  it.each([
    ['the lines', lines],
    ['260', lines],
    ['the first', lines],
    ['the total', total],
    ['300', total],
    ['total 300', total],
  ])('%s', (text, prices) => {
    expect(answer(text, open).facts).toEqual(prices.map((price) => expect.objectContaining({ fact: 'price', ...price })));
  });

  it('keeps neither until it is told', () => {
    const { facts } = readMessage(said, context);
    expect(facts.filter((fact) => fact.fact === 'price' || (fact.fact === 'pieces' && fact.price !== undefined))).toEqual([]);
  });

  it('asks nothing where they agree', () => {
    expect(readMessage('10 bouts at 14 and 4 corsages at 30, total 260', context).asks).toEqual([]);
  });
});

describe('"wedding on the 27th": which month?', () => {
  const open = asked('wedding on the 27th');
  it.each([
    ['february', '2027-02-27'],
    ['march please', '2027-03-27'],
    ['27 feb', '2027-02-27'],
    ['the first', '2027-01-27'],
  ])('%s', (text, date) => {
    expect(answer(text, open).facts).toEqual([expect.objectContaining({ fact: 'date', date })]);
  });
});

describe('"2 or 3 of us in friday, 5 hrs each": which is it?', () => {
  const open = asked('2 or 3 of us in friday, 5 hrs each');
  it.each([
    ['3', 3, 15],
    ['2 people', 2, 10],
    ['the second', 3, 15],
  ])('%s', (text, people, totalHours) => {
    expect(answer(text, open).facts).toEqual([expect.objectContaining({ fact: 'crew', people, hours: 5, totalHours, date: '2027-01-22' })]);
  });
});

describe('"2 to 5 of us in friday, 5 hrs each": a number between the two is meant, and no place in the list', () => {
  const open = asked('2 to 5 of us in friday, 5 hrs each');
  it.each(['3', 'about 3', '3 people', 'say 3'])('%s', (text) => {
    expect(answer(text, open).facts).toEqual([expect.objectContaining({ people: 3, hours: 5, totalHours: 15 })]);
  });
  it.each(['lunch at 3', '3 crowns'])('%s answers nothing', (text) => {
    expect(answer(text, open).facts).not.toEqual([expect.objectContaining({ people: 3 })]);
  });
});

describe('something missing', () => {
  it('takes a bare number as the count', () => {
    expect(answer('45', { kind: 'missing', about: 'count' }).facts).toEqual([
      { fact: 'pieces', piece: 'buttonhole', count: 45, words: '45' },
    ]);
  });
  it('asks of a number that few orders have', () => {
    const [ask] = answer('400 it is', { kind: 'missing', about: 'count' }).asks;
    expect(ask?.choices.map(({ words }) => words)).toEqual(['400 pieces', '400 in all']);
  });
  it('takes a bare number as the price', () => {
    expect(answer('25', { kind: 'missing', about: 'price' }).facts).toEqual([{ fact: 'price', amount: '25', per: 'each', words: '25' }]);
  });
  it('reads a bare number as nothing when nothing was asked', () => {
    expect(answer('45', undefined)).toEqual({ facts: [], unread: ['45'], asks: [], problems: [] });
  });
});

it('takes the month of a moved date from the thread', () => {
  const { facts } = readMessage("date's moved to the 19th", { ...context, eventDate: '2027-03-14' as Day });
  expect(facts).toEqual([expect.objectContaining({ fact: 'change', what: 'date', to: '2027-03-19' })]);
});
