// A mail or a run sheet pasted whole: unless it was read to the end, nothing of it is kept before somebody has looked at what was read.

import { describe, expect, it } from 'vitest';
import { readMessage } from '../../src/reading/read-message.ts';
import { replyTo } from '../support/plain-studio.ts';
import { context } from './support/context.ts';

const read = (text: string) => readMessage(text, context);

// Invented.
const mail = [
  'Hello again, it was so good to meet you on the quay, and thank you for the tea. We have talked it over with both families now.',
  'We would love 12 buttonholes at £14 each including VAT, and my aunt is baking for everybody who comes to help.',
  'There are 3 steps down to the boat house, the van fits to 2.1 m, and the caterer needs 45 minutes before us with 6 trolleys.',
];
const order = { fact: 'pieces', piece: 'buttonhole', count: 12 };

describe('a long text', () => {
  it('read in part is asked about, with all that was read', () => {
    const { facts, asks } = read([...mail, 'Dad wants 3 by the way, and the hall is £900.'].join(' '));
    expect(facts).toEqual([]);
    expect(asks).toMatchObject([
      { why: 'part left', choices: [{ words: 'take the rest', facts: [{ ...order, price: { amount: '14' } }, { fact: 'tax' }] }] },
    ]);
  });

  it('read to the end is kept', () => {
    const { facts, asks } = read(
      `${mail.slice(0, 2).join(' ')} We are so looking forward to seeing what you make of it all, and so is everybody here at home.`,
    );
    expect(facts).toMatchObject([order, { fact: 'price' }, { fact: 'tax' }]);
    expect(asks).toEqual([]);
  });

  it('with only a phone number left in a line of its own is kept', () => {
    expect(
      read(
        [
          ...mail.slice(0, 2),
          'My number is 07700 900123, and please ring before noon because the afternoons are busy with the boats.',
        ].join('\n'),
      ),
    ).toMatchObject({
      facts: [order, { fact: 'price' }, { fact: 'tax' }],
      asks: [],
    });
  });

  it('that is short is read as ever', () => {
    expect(read('12 buttonholes at £14 each, 3 by the way')).toMatchObject({ asks: [] });
  });

  it('of prices is kept line by line, whatever stands between them', () => {
    const list = Array.from({ length: 12 }, (_, at) => `statice no${at} £${at + 2}.50 a bunch of 10`).join('\n');
    const { facts, asks } = read(`${list}\nMinimum order £60, and the van leaves bay 4 at 6 with 12 crates`);
    expect(facts.length).toBeGreaterThanOrEqual(10);
    expect(asks).toEqual([]);
  });
});

it('shows what was read one below the other, keeps nothing, and takes it on a word', async () => {
  const said = [...mail, 'The event is 14 March 2027, dried, and the hall is £900.'].join(' ');
  const shown = await replyTo([said]);
  expect(shown).toMatch(/^Read:\n/);
  expect(shown).toContain('- 12 buttonholes, £14.00 each');
  expect(shown).toContain('- event Sun 14 March 2027');
  expect(shown).toContain('so nothing is kept yet');
  expect(await replyTo([said, 'how many pieces?'])).not.toContain('12 buttonholes');
  expect(await replyTo([said, 'yes'])).toContain('12 buttonholes at £14.00');
});
