// Money, counted pieces and counted stems that nobody read beside an order: what was read is asked about before it is kept.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { replyTo } from '../support/plain-studio.ts';
import { context } from './support/context.ts';

const read = (text: string) => readMessage(text, context);

describe('a part of the order left unread', () => {
  it.each([
    ['13 BHs £9.75 each inc, the fancier sort £14 inc', '£14'],
    ["gran's corsage £28 and mum's £32, dads buttonhole 18, all inc", '£32'],
    ['20 bouts, 40 roses', '40 roses'],
    ['9 bouts £126, 2 corsages £29', '£29'],
    ['2 dozen bouts less two or three, $14 each plus tax', '2 dozen bouts'],
  ])('%s', (said, left) => {
    const { facts, asks, unread } = read(said);
    expect(facts).toEqual([]);
    expect(asks).toMatchObject([{ why: 'part left', choices: [{ words: 'take the rest' }] }]);
    expect(unread.join(' ')).toContain(left);
  });
});

it('a tax or a material alone is not worth a question', () => {
  expect(read('40 bouts at £9 for half of them, £8.50 the others, plus vat')).toMatchObject({ facts: [], asks: [] });
});

describe('what is left to others is no part of it', () => {
  it.each([
    '15 wrist corsages R95 each. Delivery R250. excl vat',
    'sixteen lapel flowers at €14, the tables are €600 separate, all plus VAT',
    '75 lapel flowers for the charity do, £2.25 each so £168.75, + vat',
    '6 buttonholes £9 each and a bigger box at £5',
    'ribbon 5m £3, 25m £11',
    'my gran wore 5 roses in 1950 so the bride wants 6 buttonholes',
  ])('%s', (said) => {
    expect(read(said).facts.length).toBeGreaterThan(0);
    expect(read(said).asks).toEqual([]);
  });
});

describe('in the thread', () => {
  const half = '13 BHs £9.75 each inc, the fancier sort £14 inc';
  it('says what was read and what was not, and keeps nothing', async () => {
    const reply = await replyTo([half]);
    expect(reply).toContain('Read: 13 buttonholes, £9.75 each; tax included.');
    expect(reply).toContain('I could not use “£14”, so nothing is kept yet.');
    expect(await replyTo([half, 'summary'])).not.toContain('13 buttonholes');
  });
  it.each(['yes', 'take the rest', 'ok take the rest'])('is kept with “%s”', async (yes) => {
    expect(await replyTo([half, yes])).toContain('13 buttonholes at £9.75');
  });
  it('is not kept with “no”, and may be said another way', async () => {
    expect(await replyTo([half, 'no'])).toContain('Left as it was.');
    expect(await replyTo([half, '13 BHs £9.75 each inc'])).toContain('13 buttonholes at £9.75');
  });
});
