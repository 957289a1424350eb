// Exact lengths and the words for them.
import { describe, expect, test } from 'vitest';
import { fromMetres, inMetres, isWound, type LengthUnit, readContainer, readUnit } from '../../src/handbook/units.ts';
import { decimal } from '../../src/values/decimal.ts';

// NIST Special Publication 811, Guide for the Use of the International System of Units, National Institute of Standards and Technology, 2008,
// appendix B.8: 1 yd = 0.9144 m, 1 ft = 0.3048 m, 1 in = 0.0254 m, all exact (values from memory).
describe('one of each in metres, exactly', () => {
  const exact: readonly (readonly [LengthUnit, string])[] = [
    ['yd', '0.9144'],
    ['ft', '0.3048'],
    ['in', '0.0254'],
    ['m', '1'],
    ['cm', '0.01'],
    ['mm', '0.001'],
  ];
  test.each(exact)('1 %s', (unit, metres) => {
    expect(inMetres(decimal(1), unit).toFixed()).toBe(metres);
  });
});

test('36 inches, 3 feet and a yard are one length', () => {
  expect(inMetres(decimal(36), 'in').eq(inMetres(decimal(1), 'yd'))).toBe(true);
  expect(inMetres(decimal(3), 'ft').eq(inMetres(decimal(1), 'yd'))).toBe(true);
  expect(fromMetres(decimal('0.9144'), 'in').toFixed()).toBe('36');
});

test.each([
  ['yards', 'yd'],
  ['YDS', 'yd'],
  ['feet', 'ft'],
  ['inches', 'in'],
  ['"', 'in'],
  ['metres', 'm'],
  ['meter', 'm'],
  ['cm.', 'cm'],
  ['stems', 'stem'],
  ['each', 'stem'],
  ['pins', 'pin'],
  ['leaves', 'leaf'],
  ['sticks', 'stick'],
  ['kg', 'kg'],
])('%s is a %s', (word, name) => {
  expect(readUnit(word)?.name).toBe(name);
});

test('a bunch and a spool are containers, not units', () => {
  expect(readUnit('bunch')).toBeUndefined();
  expect(readContainer('Bunches')).toBe('bunch');
  expect(readContainer('boxes')).toBe('box');
  expect(['spool', 'roll', 'reel', 'bolt'].every(isWound)).toBe(true);
  expect(isWound('bunch')).toBe(false);
});
