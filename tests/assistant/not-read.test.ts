// What tells of the order and could not be read is named, spoken to or not; and an undo behind it takes back nothing older.

import { describe, expect, it } from 'vitest';
import { talkJson } from '../support/converse.ts';

const order = '10 bouts at 15 fresh 6 march';
const said = (text: string, more: object = {}): object => ({ thread: 't1', text, ...more });

const replyAfter = async (...messages: readonly (string | object)[]): Promise<string | undefined> => {
  const lines = await talkJson([order, ...messages].map((one) => (typeof one === 'string' ? said(one) : one)));
  return lines.at(-1)?.reply?.text;
};

describe('a message in a thread with an order that could not be read', () => {
  it.each([
    '3 of them for grannies at 10',
    'aunties 4 at 12 instead',
    'no 12 was right',
    'only 3 of each',
    'aunties 4 at 12 instead',
    'spare 2 maybe',
  ])('is named in one line: “%s”', async (words) => expect(await replyAfter(words)).toBe(`Not read: “${words}”. Nothing has changed.`));
  it.each([
    'see you at 4',
    'lovely roses',
    'back at 3',
    'parking is 4.50 an hour',
    'the van holds 40 buckets',
    'my sisters wedding is 12 june, 8 bridesmaids, not ours',
    'the other wedding has 12 corsages',
    'jo called, 2 of the girls are off sick',
    'ring the venue on 07700 900123',
  ])('is left alone where it is talk: “%s”', async (words) => expect(await replyAfter(words)).toBeUndefined());
  it('is left alone in a thread without an order', async () => {
    const [line] = await talkJson([said('no 12 was right')]);
    expect(line?.reply).toBeNull();
  });
  it('is left alone where people of another organisation read along', async () =>
    expect(await replyAfter(said('aunties 4 at 12 instead', { shared: true }))).toBeUndefined());
});

describe('undo behind it', () => {
  it('takes back nothing older, and names what was kept last', async () => {
    const reply = await replyAfter('aunties 4 at 12 instead', 'undo');
    expect(reply).toContain('There is nothing of “aunties 4 at 12 instead” to take back');
    expect(reply).toContain('10 buttonholes; price £15.00 each');
  });
  it('takes the older one back when it is said again', async () =>
    expect(await replyAfter('aunties 4 at 12 instead', 'undo', 'undo')).toContain('Buttonholes: 10 → 0'));
  it('holds behind what was said to the bot and not understood', async () =>
    expect(await replyAfter(said('aunties 4 at 12 instead', { addressed: true }), 'undo')).toContain(
      'There is nothing of “aunties 4 at 12 instead”',
    ));
  it('holds behind a message that was refused', async () =>
    expect(await replyAfter('20 at -5 each', 'undo')).toContain('There is nothing of'));
  it('takes back what was kept since', async () =>
    expect(await replyAfter('aunties 4 at 12 instead', 'make it 12 bouts', 'undo')).toContain('Buttonholes: 12 → 10'));
  it('drops a question asked since', async () =>
    expect(await replyAfter('aunties 4 at 12 instead', 'make it 16', 'undo')).toContain('only asked about'));
  it('leaves small talk alone', async () => expect(await replyAfter('see you at 4', 'undo')).toContain('Buttonholes: 10 → 0'));
});
