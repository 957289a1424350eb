// Price lists as they come out of sheets and mailboxes.
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inGoodTime } from '../support/in-good-time.ts';
import { faultsOf, itemsOf, readList, shortly } from './lists-read.ts';

const expected = 'bunny tails 14.50 / 50 stem a bunch';
describe('one list in many dresses', () => {
  test.each([
    ['plain', 'item,price,size,unit,pack\nbunny tails,14.50,50,stem,bunch'],
    ['with a byte-order mark and Windows lines', '\ufeffitem,price,size,unit,pack\r\nbunny tails,14.50,50,stem,bunch\r\n'],
    ['semicolons and decimal commas', 'item;price;size;unit;pack\nbunny tails;14,50;50;stem;bunch'],
    ['tabs, pasted from a sheet', 'item\tprice\tsize\tunit\tpack\nbunny tails\t14.50\t50\tstem\tbunch'],
    ['pasted between code fences', '```\nitem,price,size,unit,pack\nbunny tails,14.50,50,stem,bunch\n```'],
    [
      'columns in another order, trade headings',
      'Supplier,Sold by,Stems per bunch,Product,Trade price\nSaltmarsh Dried,bunch,50,bunny tails,14.50',
    ],
    ['a pound sign', 'item,price (£),size,unit,pack\nbunny tails,£14.50,50,stems,bunch'],
    ['a currency code', 'item,price,size,unit,pack\nbunny tails,GBP 14.50,50,stems,bunch'],
    ['quoted decimal comma', 'item,price,size,unit,pack\nbunny tails,"14,50",50,stem,bunch'],
    ['the size says it all', 'item,price,size\nbunny tails,14.50,bunch of 50'],
    ['the unit column names the bunch', 'item,price,size,unit\nbunny tails,14.50,50,bunch'],
    ['blank lines and empty rows', '\nitem,price,size,unit,pack\n\nbunny tails,14.50,50,stem,bunch\n,,,,\n'],
    ['the heading again over the next page', 'item,price,size,unit,pack\nItem,Price,Size,Unit,Pack\nbunny tails,14.50,50,stem,bunch'],
    ['stray spaces in and around a name', 'item,price,size,unit,pack\n bunny  tails ,14.50,50,stem,bunch'],
  ])('%s', (_name, csv) => {
    expect(itemsOf(csv).map(shortly)).toEqual([expected]);
  });

  test('quoted commas and line breaks stay in their cell', () => {
    const [row] = itemsOf('item,price,size,note\n"rose, spray",11,10,"white,\nnot cream"');
    expect([row?.name, row?.note]).toEqual(['rose, spray', 'white,\nnot cream']);
  });

  test('every column', () => {
    const [row] = itemsOf(
      'Name,Cost,Qty,UOM,Container,Grower,Lead time (working days),Wastage %,On hand,Days to dry,Use,Remarks\nlarkspur,10.40,10,stems,bunch,Ferrygate Flowers,2,100%,1 bunch,14-18 days,line,hang at once',
    );
    expect(row).toMatchObject({
      name: 'larkspur',
      pack: 'bunch',
      supplier: 'Ferrygate Flowers',
      leadDays: 2,
      dryingDays: 18,
      role: 'line',
      note: 'hang at once',
    });
    expect([row?.packPrice.toFixed(2), row?.size.toFixed(), row?.spare?.toFixed(), row?.stock?.toFixed()]).toEqual([
      '10.40',
      '10',
      '100',
      '10',
    ]);
  });

  test('the apostrophe an exported list puts before a formula is not part of the name', () => {
    expect(itemsOf("item,price,size\n'@home roses,5,10")[0]?.name).toBe('@home roses');
  });

  test('headings nothing is taken from are named', () => {
    const result = readList('item,price,size,shelf\nrose,11,10,B2');
    expect(result.ok && result.value.unread).toEqual(['shelf']);
  });
});

describe('bad rows are named by line and reason, and nothing is imported', () => {
  test('one of each', () => {
    const csv = [
      'item,price,size,unit,pack,lead,spare,stock,drying,role',
      'good,5,10,stem,bunch,,,,,',
      ',5,10,stem,bunch,,,,,',
      'no price,,10,stem,bunch,,,,,',
      'worded,five,10,stem,bunch,,,,,',
      'negative,-5,10,stem,bunch,,,,,',
      'nothing in it,5,0,stem,bunch,,,,,',
      'no size,5,,,bunch,,,,,',
      'ribbon,5,8,,spool,,,,,',
      'odd unit,5,8,fathom,,,,,,',
      'two units,5,8 yd,m,,,,,,',
      'lead,5,10,stem,bunch,soon,,,,',
      'spare,5,10,stem,bunch,,0.1,,,',
      'stock,5,10,stem,bunch,,,3 m,,',
      'drying,5,10,stem,bunch,,,,-2,',
      'role,5,10,stem,bunch,,,,,spaceship',
      'Goods,5,10,stem,bunch,,,,,,extra',
      'GOOD,6,10,stem,bunch,,,,,',
    ].join('\n');
    expect(faultsOf(csv)).toEqual([
      '3 item: empty',
      '4 price: empty',
      '5 price: not a number',
      '6 price: negative',
      '7 size: zero pack size',
      '8 size: empty',
      '9 size: length unit missing',
      '10 unit: unit unknown',
      '11 size: units disagree',
      '12 lead: not a whole number',
      '13 spare: percent out of range',
      '14 stock: units disagree',
      '15 drying: negative',
      '16 role: role unknown',
      '17 item: name twice', // "Goods" is the plural of "good"
      '17 : too many cells',
      '18 item: name twice',
    ]);
  });

  test('a name twice gives both lines', () => {
    const result = readList('item,price,size\nBunny tails,14.50,50 stems\nrose,5,10\nbunny tail,15,50');
    expect(result).toMatchObject({ ok: false, problem: { data: { rows: 3, faults: [{ line: 4, why: 'name twice', other: 2 }] } } });
  });

  test('lines are counted through blank lines and cells of several lines', () => {
    expect(faultsOf('item,price,size,note\n\nrose,5,10,"one\ntwo"\n\nstatice,x,10,')).toEqual(['6 price: not a number']);
  });

  test('an unquoted decimal comma in a comma file is not read as two numbers', () => {
    expect(faultsOf('item,price,size\nrose,14,50,10')).toEqual(['2 : too many cells']);
  });
});

test('whatever is dropped in, the answer is a list or a problem', () => {
  const cell = fc.oneof(
    fc.constantFrom('item', 'price', 'size', 'rose', '£5', '"', '1,250', '10 m', '-', '=1', '', '\n', ';', '\t', ','),
    fc.string(),
  );
  fc.assert(
    fc.property(fc.array(cell, { maxLength: 40 }), fc.constantFrom('', 'item,price,size\n'), (cells, heading) => {
      const result = readList(heading + cells.join(','));
      expect(result.ok || result.problem.code.startsWith('price-list')).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test("a stem's length and a row's number are not the size of its pack", () => {
  const [row] = itemsOf('no,item,length,price,unit,category\n17,rose,60cm,1.10,stem,cut flowers');
  expect(shortly(row)).toBe('rose 1.10 / 1 stem');
});

describe('files refused whole', () => {
  test.each([
    ['nothing', '', 'price-list-empty'],
    ['headings only', 'item,price,size\n', 'price-list-empty'],
    ['no headings', 'bunny tails,14.50,50', 'price-list-columns-missing'],
    ['no price column', 'item,size\nrose,10', 'price-list-columns-missing'],
    ['no way to know the pack', 'item,price\nrose,10', 'price-list-columns-missing'],
    ['two price columns', 'item,pack price,trade price,size\nrose,1,2,10', 'price-list-column-twice'],
    ['not UTF-8', 'item,price,size\nrose,\ufffd5,10', 'price-list-not-text'],
  ])('%s', (_name, csv, code) => {
    expect(readList(csv)).toMatchObject({ ok: false, problem: { code } });
  });

  test('a quotation mark that never closes is named by its line', () => {
    expect(readList('item,price,size\nrose,5,10\n"statice,5,10\nfern,5,10')).toMatchObject({
      problem: { code: 'price-list-quote-open', data: { line: 3 } },
    });
  });
});

test('5,000 rows in under two seconds, with the bad ones named', () => {
  const rows = Array.from(
    { length: 5000 },
    (_, at) => `flower no ${at},${at % 500 === 250 ? 'dear' : `£${at % 90}.50`},25,stem,bunch,"Saltmarsh, Dried",3,10`,
  );
  const csv = ['item,price,size,unit,pack,supplier,lead,spare', ...rows].join('\n');
  const before = performance.now();
  const named = faultsOf(csv);
  const good = itemsOf(csv.replaceAll('dear', '1.00'));
  inGoodTime(performance.now() - before, 4000); // twice: once bad, once good
  expect(named).toHaveLength(10);
  expect(named[0]).toBe('252 price: not a number');
  expect(good).toHaveLength(5000);
});

test("the demo studio's own list reads without a fault", () => {
  const result = readList(readFileSync(new URL('../../demo-data/prices.csv', import.meta.url), 'utf8'));
  expect(result.ok && [result.value.items.length, result.value.unread]).toEqual([25, []]);
});
