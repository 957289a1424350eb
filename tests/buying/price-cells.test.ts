// One cell at a time, as sheets of different countries write it.
import { describe, expect, test } from 'vitest';
import { faultsOf, itemsOf, shortly } from './lists-read.ts';

describe('numbers, sizes and money in the cells of a price list', () => {
  test.each([
    ['8 yd', '', '8 yd'],
    ['10m', 'roll', '10 m a roll'],
    ['25 m spool', '', '25 m a spool'],
    ['100', 'ft', '100 ft'],
    ['144', 'pins', '144 pin'],
    ['', 'stem', '1 stem'],
    ['1', 'roll', '1 roll'],
  ])('%s | %s', (size, unit, shown) => {
    expect(shortly(itemsOf(`item,price,size,unit\nthing,5,${size},${unit}`)[0])).toBe(`thing 5.00 / ${shown}`);
  });

  test.each([
    ['1,250.00', '1250.00'],
    ['1 250,50', '1250.50'],
    ['1.250,50', '1250.50'],
    ['0,5', '0.50'],
    ['.75', '0.75'],
    ['free', '0.00'],
    ['12 £', '12.00'],
  ])('a price of %s', (cell, price) => {
    expect(itemsOf(`item;price;size\nthing;${cell};1 stem`)[0]?.packPrice.toFixed(2)).toBe(price);
  });

  test('1,250 is a thousand where the file writes decimal points, and one and a quarter where it writes decimal commas', () => {
    expect(itemsOf('item;price;size\na;1,250;1 stem\nb;14.50;1 stem')[0]?.packPrice.toFixed(2)).toBe('1250.00');
    expect(itemsOf('item;price;size\na;1,250;1 stem\nb;14,50;1 stem')[0]?.packPrice.toFixed(2)).toBe('1.25');
    expect(itemsOf('item;price;size\na;1.250;1 stem\nb;14,50;1 stem')[0]?.packPrice.toFixed(2)).toBe('1250.00');
  });

  test('1,250 alone is refused, not guessed', () => {
    expect(faultsOf('item;price;size\na;1,250;1 stem')).toEqual(['2 price: number unclear']);
  });

  test('euros and dollars belong to their own studios', () => {
    expect(itemsOf('item;price;size\na;14,50 €;1 stem', 'EUR')[0]?.packPrice.toFixed(2)).toBe('14.50');
    expect(itemsOf('item,price,size\na,$14.50,1 stem', 'AUD')[0]?.packPrice.toFixed(2)).toBe('14.50');
    expect(itemsOf('item,price,size\na,NZ$14.50,1 stem', 'NZD')[0]?.packPrice.toFixed(2)).toBe('14.50');
    expect(faultsOf('item,price,size\na,€14.50,1 stem\nb,$3,1 stem')).toEqual(['2 price: other currency', '3 price: other currency']);
  });

  test.each(['-£5', '£-5', '(5.00)', '−5', '- 5'])('a price of %s is negative', (cell) => {
    expect(faultsOf(`item,price,size\nrose,${cell},10`)).toEqual(['2 price: negative']);
  });
});
