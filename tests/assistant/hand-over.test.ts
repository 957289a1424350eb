// Handing over and looking back as one studio does it, from the order to the season: counts agree, files open, cautions come once, offers wait.

import { afterEach, describe, expect, test } from 'vitest';
import { consider } from '../../src/assistant/consider.ts';
import { createFileMaker } from '../../src/assistant/make-file.ts';
import { sheetsInput } from '../../src/assistant/sheets-file.ts';
import { sheetsPdf } from '../../src/attachments/sheets-pdf.ts';
import type { FileWanted } from '../../src/reply/reply.ts';
import { foldEvent } from '../../src/thread/fold.ts';
import type { Day } from '../../src/values/day.ts';
import { readPdf } from '../attachments/read-pdf.ts';
import { demoStudio } from '../support/converse.ts';
import { overTime } from '../support/over-time.ts';

let talking = overTime();
afterEach(() => {
  talking.store.close();
  talking = overTime();
});

const order = '10 buttonholes at 18, 2 wrist corsages at 28, inc, dried, event 13 March';
const party = 'groom, 5 groomsmen, 2 dads, 1 page boy';
const file = (kind: FileWanted['kind']): FileWanted => ({ kind, name: kind, alt: '' });
const made = (kind: FileWanted['kind'], thread = 't1') => createFileMaker(talking).make(file(kind), talking.key(thread));

/** What check-store proves of every thread: the snapshot is the fold of the log. */
const agrees = (): void =>
  expect(talking.store.thread(talking.key('t1')).state).toEqual(foldEvent(talking.store.entries(talking.key('t1'))));

describe('cautions', () => {
  const dust = 'Dust from dried flowers can set off asthma';

  test('once in a thread, and the scripts are told which apply', () => {
    const first = talking.say(order);
    expect(first.text).toContain(dust);
    expect(first.figures.cautions).toEqual(['dried-dust', 'tax']);
    expect(talking.say('make that 12 buttonholes').text).not.toContain(dust);
    agrees();
  });

  test('an order of nothing hazardous is told of none', () => {
    const plain = talking.say('40 buttonholes, no tax');
    expect(plain.text).not.toContain('Take care');
    expect(plain.figures.cautions).toBeUndefined();
  });

  test('an edit of the message shows it again, since its reply takes the place of the one that did', () => {
    const { id } = talking.say(order);
    expect(talking.say(order.replace('18', '19'), { kind: 'edit', id }).text).toContain(dust);
    agrees();
    expect(talking.say(order.replace('dried', 'fresh'), { kind: 'edit', id }).text).not.toContain(dust);
    agrees();
    expect(talking.store.thread(talking.key('t1')).state.care?.shown ?? []).not.toContain('dried-dust');
  });

  test('a deletion takes it back with the message', () => {
    const { id } = talking.say(order);
    talking.send({ kind: 'delete', id });
    agrees();
    expect(talking.store.thread(talking.key('t1')).state.care).toBeUndefined();
    expect(talking.say(order).text).toContain(dust);
  });

  test('a hazard told in passing is kept with its message, and undo still takes back what was said', () => {
    talking.say('40 buttonholes at 25 inc');
    const told = talking.say('we use magnets');
    expect(told.text).toMatch(/^Noted: magnets\./);
    expect(told.text).toContain('Take care: Magnets can disturb pacemakers');
    expect(told.figures.cautions).toContain('magnet');
    agrees();
    talking.say('undo');
    expect(talking.store.thread(talking.key('t1')).state.lines).toEqual([]);
    agrees();
  });

  test('chatter that is not for the bot stays unanswered', () =>
    expect(talking.say('the glue gun is on the windowsill', { addressed: false }).text).toBe(''));

  test('the price says to ask the accountant, and no caution says it again', () => {
    const { text } = talking.say('40 buttonholes at 25 inc');
    expect(text.match(/accountant/g)).toHaveLength(1);
  });
});

describe('sheets as a file', () => {
  test('open, are A4 in Britain, and name every wearer on the pin-on sheet', () => {
    talking.say(order);
    talking.say(party);
    const { bytes, type } = made('sheets');
    expect(type).toBe('application/pdf');
    expect(Buffer.from(bytes.subarray(0, 5)).toString()).toBe('%PDF-');
    const { studio, event, today } = {
      studio: talking.store.studio('w', talking.settings).state,
      event: talking.store.thread(talking.key('t1')).state,
      today: '2027-01-20' as Day,
    };
    const input = sheetsInput(consider(talking.store, talking.key('t1'), event, studio, today), 0);
    const pdf = readPdf(sheetsPdf(input, { compress: false }));
    const words = pdf.words.map((placed) => placed.words).join('\n');
    // ISO 216 A4: 210 × 297 mm, 595 × 842 points.
    expect(pdf.pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toContainEqual([595, 842]);
    for (const who of ['groom', 'groomsmen, 1 of 5', 'groomsmen, 5 of 5', 'fathers, 2 of 2', 'page boy']) expect(words).toContain(who);
    expect(words.match(/not named yet/g)?.length).toBeGreaterThanOrEqual(3);
    expect(words).toContain('Take care');
  });

  test('fail to be made once there is nothing to print', () => expect(() => made('sheets')).toThrow('no pieces'));
});

describe('a spare learned', () => {
  test('is bought from then on once it is taken, and the price of the item stays', () => {
    talking.say('10 buttonholes at 18, inc, dried, event 13 March');
    talking.say('2 statice each');
    talking.say('statice 4.80 a bunch of 10');
    talking.moveTo('2027-03-15T09:00:00Z');
    // Two bunches and a spare one: 22 needed with 10 % over, 30 bought, 26 used: 30 % beyond the recipe's 20.
    expect(talking.say('4 statice unused').text).toMatch(
      /^4 statice not used\. If you bought by the list, you needed 30 % spare beyond the recipe's 20/,
    );
    expect(talking.say('how did we do?').text).toContain('Say: 30 % spare statice');
    expect(talking.choose(0).text).toContain('Spare on statice: 30 % from now on.');
    expect(talking.store.studio('w', demoStudio).state.packs.at(-1)).toMatchObject({ item: 'statice', price: '4.8', spare: '30' });
  });
});

describe('the whole way', () => {
  test('counts agree, the look-back compares, offers are stored only when taken, the season holds it', () => {
    talking.say(order);
    expect(talking.say(party).text).toMatch(/^9 wearers, 12 pieces: 1 buttonhole and 2 wrist corsages have no name yet\./);
    expect(talking.say('bench card').text).toMatch(/^10 buttonholes, dried: 15 min each/);
    expect(talking.say('packing list').text).toMatch(/^To pack: 10 buttonholes, 2 wrist corsages on 1 board and 1 box/);
    expect(talking.say('for the client').text).toContain('Buttonholes for: groom, 5 groomsmen, 2 fathers, page boy.');
    expect(talking.say('how did we do?').text).toMatch(/^The event is on Sat 13 March 2027: ask again once it is over\./);

    talking.moveTo('2027-03-15T09:00:00Z');
    expect(talking.say('spent 32.40 on flowers').text).toMatch(/^Spent: £32\.40; £27\.12 planned for stems: £5\.28 over\./);
    expect(talking.say('took 2 hours for 10 buttonholes').text).toMatch(/^Took 2 h for 10: 12 min each; planned 15\./);
    const version = talking.store.studio('w', demoStudio).version;
    const review = talking.say('how did we do?');
    expect(review.text).toMatch(/^£153\.57 left after stems and sundries/);
    expect(review.text).toContain('Say: 12 min a buttonhole');
    expect(talking.store.studio('w', demoStudio).version).toBe(version);
    expect(talking.store.studio('w', demoStudio).state.crew).toEqual([]);
    expect(talking.say('12 min a buttonhole').text).toContain('12 min a buttonhole from now on');
    expect(talking.store.studio('w', demoStudio).state.crew).toMatchObject([{ piece: 'buttonhole', minutesPerPiece: 12 }]);
    agrees();

    expect(talking.say('season', { thread: 't2' }).text).toMatch(/^1 event, 12 pieces: £43\.10 on stems and sundries/);
    // RFC 4180: lines end in CRLF, the heading first.
    const csv = new TextDecoder().decode(made('season', 't2').bytes).split('\r\n');
    expect(csv[0]).toMatch(/^Event,Date,Pieces/);
    expect(csv[1]).toContain('2027-03-13,12,');
  });
});
