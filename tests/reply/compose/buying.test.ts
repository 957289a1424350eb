// The buying list as it is read out: whole packs by supplier and day, against the money, pooled over events, marked as ordered, and as a file.
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { createFileMaker } from '../../../src/assistant/make-file.ts';
import { saveInto } from '../../../src/hosts/terminal/save-file.ts';
import { demoStudio, talk } from '../../support/converse.ts';
import { openedWith } from '../../support/opened-store.ts';
import { demoPrices, lastReply, replies } from '../../support/thread-talk.ts';

const order = ['40 buttonholes at 25 inc', 'dried, event 14 March'];
const recipe = 'each buttonhole: 3 bunny tails, 1 statice';

describe('the buying list of one event', () => {
  it('says how much is spare: 20 % of fresh stems, and what an item has of its own', async () => {
    // 20 % on fresh stems: the source of handbook/spares.ts.
    const shown = (material: string) =>
      talk(['40 buttonholes at 25 inc', `${material}, event 14 March`, 'rose 9.80 bunch of 10', '1 rose each', 'buying list']);
    expect(await shown('fresh')).toMatch(/Spare: 20 % on stems \((?!common)[^)]+\)\./);
    expect(await shown('dried')).toContain('Spare: 10 % on stems (common practice).');
  });

  it('has whole packs by supplier and order day, against the stems money, with what is left over', async () => {
    expect(await lastReply(...order, recipe, 'buying list')).toContain(
      [
        '£81.00 for whole packs, £2.03 a piece: £49.26 inside what there is for stems.',
        '',
        'Ferrygate Flowers, by Tue 9 February  need   packs   spend  left',
        'Statice                                 48  5 × 10  £37.50     2',
        '',
        'Saltmarsh Dried, by Tue 9 February  need   packs   spend  left',
        'Bunny tails                          132  3 × 50  £43.50    30',
        '',
        '41 take the same packs as 40; up to 49 for £7.50 more.',
        'Spare: 10 % on Bunny tails (the price list), 20 % on Statice (the price list).',
      ].join('\n'),
    );
  });

  it('cuts ribbon whole: 8 yd at 30 cm is 24 pieces, so 25 take a second spool', async () => {
    const wide = ['event 14 March, dried', 'ribbon satin 8 yd spool 11.20'];
    const of = (count: number) =>
      lastReply(`${count} buttonholes at 25 inc`, ...wide, 'each buttonhole: 1 strawflower, 30cm linen ribbon', 'buying list');
    expect(await of(33)).toMatch(/Linen ribbon\s+9\.9 m\s+1 × 10 m/); // 10 m at 30 cm is 33
    expect(await of(34)).toMatch(/Linen ribbon\s+10\.2 m\s+2 × 10 m/);
  });

  it('says by how much it is over', async () => {
    expect(await lastReply(...order, 'each buttonhole: 3 bunny tails, 2 craspedia, 1 statice', 'buying list')).toMatch(
      /^£162\.00 for whole packs, £4\.05 a piece: £31\.74 more than there is for stems\./,
    );
  });

  it('marks what is ordered and what has come, and says what is still open', async () => {
    const said = await replies(
      ...order,
      recipe,
      'ordered the statice',
      'buying list',
      'ordered the bunny tails',
      'statice arrived',
      'ordered the peonies',
    );
    expect(said[3]).toBe('Statice: ordered. Still to order: Bunny tails, £43.50, by Tue 9 February.');
    expect(said[4]).toMatch(/; £43\.50 still to order\./);
    expect(said[4]).toContain('Statice (ordered)');
    expect(said[5]).toMatch(/^Bunny tail: ordered. Nothing is left to order\./);
    expect(said[6]).toMatch(/^Statice: received. Still to come: Bunny tails, £43\.50\./);
    expect(said[7]).toContain('It is in no recipe of this event.');
    const unpriced = await replies(...order, 'each buttonhole: 3 bunny tails, 1 peony', 'ordered the peonies');
    expect(unpriced.at(-1)).toContain('It is not on the price list yet, so not on the buying list.');
  });

  it('asks for prices where it has none, and keeps them out of every figure', async () => {
    const reply = await lastReply(...order, 'each buttonhole: 3 bunny tails, 1 peony', 'buying list');
    expect(reply).toMatch(/^£43\.50 for whole packs so far\./);
    expect(reply).toContain('- Peony: not on the price list');
  });

  it('without a recipe says how to give one', async () => {
    expect(await lastReply(...order, 'buying list')).toContain('There is no recipe to buy for yet.');
  });

  it('is at today’s prices and says what moved since the quote', async () => {
    const reply = await lastReply(...order, recipe, { thread: 't2', text: 'statice 8.20 a bunch of 10' }, 'buying list');
    expect(reply).toContain("At today's prices. Since it was quoted: Statice £7.50 → £8.20.");
    expect(reply).toContain('£41.00');
  });
});

describe('the buying list of all open events', () => {
  const supper = (text: string) => ({ thread: 't2', text });
  const both = [
    'event: harbour dance',
    ...order,
    recipe,
    supper('event: net loft supper'),
    supper('16 buttonholes at 22 inc'),
    supper('13 March, dried'),
    supper('each buttonhole: 1 bunny tail, 1 lavender'),
  ];

  it('pools packs before rounding up, names the saving and the events', async () => {
    const reply = await lastReply(...both, 'buying list for everything');
    // 120 × 1.1 = 132 and 16 × 1.1 = 18: apart 3 + 1 bunches of 50, together 138 less 12 in hand are 3.
    expect(reply).toMatch(/Bunny tails\s+150\s+3 × 50/);
    expect(reply).toContain('Buying for all of them together saves £14.50.');
    expect(reply).toContain('For net loft supper, harbour dance.');
  });

  it('leaves the other event out of one’s own list', async () => {
    expect(await lastReply(...both, 'buying list')).not.toContain('Lavender');
  });
});

describe('the list as a file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'benchbell-files-'));
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it('is saved where the terminal was told to, and never over an earlier one', async () => {
    const { store, clock, key } = await openedWith([{ file: demoPrices }, ...order, recipe]);
    const save = saveInto(folder, createFileMaker({ store, clock, settings: demoStudio }));
    const wanted = { kind: 'buying list', name: 'buying-list.csv', alt: '' } as const;
    expect([save(wanted, key).path, save(wanted, key).path]).toEqual([join(folder, 'buying-list.csv'), join(folder, 'buying-list-2.csv')]);
    const csv = readFileSync(join(folder, 'buying-list.csv'), 'utf8');
    expect(csv.split('\r\n').slice(0, 2)).toEqual([
      '\ufeffOrder by,Supplier,Item,Need,Unit,Packs,Pack,Pack size,Pack price,Spend,Left over,Left over value,For,Status,Note',
      '2027-02-09,Ferrygate Flowers,Statice,48,stem,5,bunch,10,7.50,37.50,2,1.50,40 buttonholes for Sun 14 March,to order,Each stem breaks into about six sprigs',
    ]);
    store.close();
  });

  it('that can no longer be made says so', async () => {
    const { store, clock, key } = await openedWith(['40 buttonholes at 25 inc']);
    const save = saveInto(folder, createFileMaker({ store, clock, settings: demoStudio }));
    expect(save({ kind: 'buying list', name: 'buying-list.csv', alt: '' }, key)).toEqual({ said: 'buying-list.csv could not be made.' });
    store.close();
  });

  it('is only described where no folder was given', async () => {
    const said = await talk([
      'bunny tails 14.50 a bunch of 50',
      '40 buttonholes at 25 inc',
      'each buttonhole: 3 bunny tails',
      'buying list',
    ]);
    expect(said).toContain(
      '[buying-list.csv] The buying list above as a table for a spreadsheet\nStart with --files FOLDER to have files saved there.',
    );
  });
});
