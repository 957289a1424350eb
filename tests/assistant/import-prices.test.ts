// A whole price list at once: as a file, at the prompt, pasted, sent again; every bad row named and nothing half-imported; five thousand rows in time.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { talk, talkJson } from '../support/converse.ts';
import { inGoodTime } from '../support/in-good-time.ts';

const folder = mkdtempSync(join(tmpdir(), 'benchbell-lists-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const saved = (name: string, text: string | Uint8Array): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

const list = ['Item,Price,Size,Role', 'Heather,4.20,20,filler', 'Thistle,6.00,10,focal', 'Sea lavender,5.00,25,texture'].join('\n');
const first = (text: string): string => text.trim().split('\n')[0] ?? '';
const replies = async (...lines: readonly (string | object)[]): Promise<readonly string[]> =>
  (await talkJson(lines)).map(({ reply }) => reply?.text ?? '');

describe('a price list', () => {
  it('dropped as a file is imported in one go, and counted', async () => {
    const [imported] = await talkJson([{ file: list }]);
    expect(imported?.reply?.text).toBe('3 items on the price list: 3 new.');
    expect(imported?.reading?.facts).toHaveLength(3);
  });

  it('named at the prompt is read from there', async () => {
    const said = await talk([`:file ${saved('prices.csv', list)}`, `:file ${join(folder, 'nowhere.csv')}`]);
    expect(said).toContain('3 items on the price list: 3 new.');
    expect(said).toContain(`I can't read ${join(folder, 'nowhere.csv')}.`);
  });

  it('pasted line by line ends at an empty line, and the next line is a message again', async () => {
    const said = await talk([...list.split('\n'), '', 'heather 4.50 a bunch of 20']);
    expect(said).toContain('3 items on the price list: 3 new.');
    expect(said).toContain('Heather: £4.20 → £4.50 for 20 stems, so £0.21 → £0.23 each.');
  });

  it('pasted in one message is read the same', async () => {
    expect(await replies({ text: list, addressed: true })).toEqual(['3 items on the price list: 3 new.']);
  });

  it('sent again says what moved, and keeps only that', async () => {
    const dearer = list.replace('6.00', '6.60').replace('5.00', '4.50');
    const again = await talkJson([{ file: list }, { file: list }, { file: dearer }, { text: 'what fits?', addressed: true }]);
    expect(again.map((line) => first(line.reply?.text ?? '')).slice(1, 3)).toEqual([
      '3 items on the price list: 3 as before.',
      '3 items on the price list: 1 dearer, 1 cheaper, 1 as before.',
    ]);
    expect(again[2]?.reply?.text).toContain('- Thistle: £6.00 → £6.60 for 10 stems, so £0.60 → £0.66 each');
  });

  it('leaves alone what it does not list', async () => {
    const [, second] = await replies({ file: list }, { file: 'Item,Price,Size\nFern,3.00,10' });
    expect(second).toBe('1 item on the price list: 1 new.\n3 other items stay as before.');
  });

  it('is taken back whole by undo', async () => {
    const [, undone, again] = await replies({ file: list }, { text: 'undo', addressed: true }, { file: list });
    expect(undone).toContain('Taken back.');
    expect(again).toBe('3 items on the price list: 3 new.');
  });

  it('names headings it took nothing from', async () => {
    expect(await replies({ file: 'Item,Price,Size,Colour\nFern,3.00,10,green' })).toEqual([
      '1 item on the price list: 1 new.\nNot used: “Colour”.',
    ]);
  });
});

describe('a list that cannot stand is refused whole, in words', () => {
  it.each<[string, string, RegExp]>([
    [
      'a bad number',
      'Item,Price,Size\nFern,3.00,10\nHeather,4.20,ten',
      /^1 of 2 rows can't be read, so nothing was imported\. line 3: Size ten is not a number\./,
    ],
    ['a zero pack', 'Item,Price,Size\nFern,3.00,0', /line 2: Size 0 is zero/],
    ['two items of one name', 'Item,Price,Size\nFern,3.00,10\nferns,3.10,10', /line 3: Item ferns is listed twice \(also line 2\)/],
    ['a foreign currency', 'Item,Price,Size\nFern,€3.00,10', /line 2: Price €3\.00 is in another currency/],
    ['a thousand or a decimal', 'Item;Price;Size\nFern;1,250;10', /could be a thousand or a decimal/],
    ['no pack size', 'Item,Price\nFern,3.00', /lacks size/],
    ['nothing in it', '', /has no rows/],
    ['an open quotation mark', 'Item,Price,Size\n"Fern,3.00,10', /opened on line 2 is never closed/],
    ['bytes that are no text', 'Item,Price,Size\nFern,3.00\ufffd,10', /not plain text/],
  ])('%s', async (_name, file, expected) => {
    const [refused, after] = await talkJson([{ file }, { file: list }]);
    expect(refused?.reply?.text).toMatch(expected);
    expect(after?.reply?.text).toBe('3 items on the price list: 3 new.');
  });

  it('named at the prompt, in an encoding that is not UTF-8', async () => {
    const latin = saved('latin.csv', Buffer.from('Item,Price,Size\nFern,\xa33.00,10', 'latin1'));
    expect(await talk([`:file ${latin}`])).toContain('That file is not plain text. Save the price list as CSV (UTF-8)');
  });

  it('named at the prompt, larger than any list', async () => {
    expect(await talk([`:file ${saved('huge.csv', 'x'.repeat(1_000_001))}`])).toContain('larger than a price list can be');
  });
});

describe('signs and marks sheets bring along', () => {
  it.each<[string, string]>([
    ['semicolons and decimal commas', 'Item;Price;Size\nFern;3,00;10\nHeather;4,20;20'],
    ['pound signs and a BOM', '\ufeffItem,Price,Size\nFern,£3.00,10\nHeather,£4.20,20'],
    [
      'quoted commas and other headings in another order',
      'Supplier,Stems per bunch,Product,Bunch price\n"Yard, north",10,Fern,3.00\n,20,Heather,4.20',
    ],
  ])('%s', async (_name, file) => {
    const [, fern] = await replies({ file }, { text: 'heather 4.20 a bunch of 20', addressed: true });
    expect(fern).toBe('Heather: £4.20 for 20 stems, £0.21 each, as before.');
  });
});

describe('five thousand rows', () => {
  const rows = Array.from({ length: 5000 }, (_, at) => `Stem no ${at} of the list,${(at % 90) + 1}.50,${(at % 40) + 5}`);

  it('are imported, stored and answered in under two seconds', async () => {
    const started = performance.now();
    const said = await talk([`:file ${saved('long.csv', ['Item,Price,Size', ...rows].join('\n'))}`]);
    expect(said).toContain('5000 items on the price list: 5000 new.');
    inGoodTime(performance.now() - started, 2000);
  });

  it('with a bad one among them are refused in the same time', async () => {
    const bad = rows.map((row, at) => (at === 4321 ? row.replace(/\d+$/, '0') : row));
    const started = performance.now();
    const said = await talk([`:file ${saved('bad.csv', ['Item,Price,Size', ...bad].join('\n'))}`]);
    expect(said).toContain("1 of 5000 rows can't be read, so nothing was imported. line 4323: Size 0 is zero.");
    inGoodTime(performance.now() - started, 2000);
  });
});
