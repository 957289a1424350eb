// Numbers as people type them. Separators: ISO 80000-1 allows a thin space; the comma and point are national custom (common practice, no source).

import { describe, expect, it } from 'vitest';
import { openMessage } from '../../../src/reading/text/message.ts';

const firstNumber = (text: string) => openMessage(text).tokens.find((token) => token.number !== undefined)?.number;

describe('amounts', () => {
  it.each([
    ['18,500', '18500'],
    ['1,20,000', '120000'],
    ['R3 250', '3250'],
    ['3\u202f250', '3250'],
    ['1.234,50', '1234.5'],
    ['8,25', '8.25'],
    ['£8.25', '8.25'],
    ['450p', '4.5'],
    ['tenner', '10'],
    ['18,500/-', '18500'],
    ['nine pounds fifty', '9.5'],
    ['1.2k', '1200'],
    ['½', '0.5'],
    ['４０', '40'],
    ['forty five', '45'],
    ['a hundred and twenty', '120'],
    ['two dozen', '24'],
    ['a doz and a half', '18'],
    ['half a dozen', '6'],
    ['two dozen and 6', '30'],
    ['a couple of', '2'],
  ])('%s is %s', (text, amount) => expect(firstNumber(text)?.amount).toBe(amount));
});

describe('forms', () => {
  it.each([
    ['twenty-odd', { form: 'plain', amount: '20', approx: true }],
    ['about 20', { form: 'plain', amount: '20', approx: true }],
    ['30ish', { form: 'plain', amount: '30', approx: true }],
    ['20-25', { form: 'plain', amount: '20', max: '25' }],
    ['$20 to $25', { form: 'money', amount: '20', max: '25', symbol: '$' }],
    ['NZ$19', { form: 'money', amount: '19', currency: 'NZD' }],
    ['18%', { form: 'percent', amount: '18' }],
    ['30cm', { form: 'length', amount: '30', unit: 'cm' }],
    ['7 mins', { form: 'duration', amount: '7', unit: 'min' }],
    ['27th', { form: 'ordinal', amount: '27' }],
    ['4:30 pm', { form: 'time', amount: '', parts: [16, 30] }],
    ['38F', { form: 'temperature', amount: '38' }],
    ['4412#', { form: 'code', amount: '' }],
  ])('%s', (text, number) => expect(firstNumber(text)).toMatchObject(number));
});

it('does not take the stem of a price for a number of dozens', () => {
  expect(firstNumber('$24 doz')).toMatchObject({ form: 'money', amount: '24' });
});
