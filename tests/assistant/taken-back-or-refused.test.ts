// Undo of a question that waits, and own rules that cannot be used, said before anything has a price.

import { describe, expect, it } from 'vitest';
import { talkJson } from '../support/converse.ts';
import { plainStudio, replyTo } from '../support/plain-studio.ts';

const gb = plainStudio('GB');

describe('undo after a question', () => {
  it('drops the question, names it and leaves the order', async () => {
    const reply = await replyTo(['6 corsages at 42', '40 at 25 bouts', 'undo'], gb);
    expect(reply).toContain('Taken back: “40 at 25 bouts”');
    expect(reply).not.toMatch(/corsages: 6/i);
  });
  it('drops it in a thread that holds nothing else', async () => {
    expect(await replyTo(['40 at 25 bouts', 'undo'], gb)).toContain('Taken back: “40 at 25 bouts”');
  });
  it('takes back the order once the question is gone', async () => {
    expect(await replyTo(['6 corsages at 42', '40 at 25 bouts', 'undo', 'undo'], gb)).toMatch(/Corsages: 6 → 0/);
  });
});

describe('an own rule that cannot be used', () => {
  it.each(['labour 100% out of the price', 'multiple 0'])('“%s” is refused in an empty thread and not kept', async (words) => {
    const [line, after] = await talkJson([words, '40 buttonholes at 25 inc'], { studio: gb });
    expect(line?.reply?.text).toContain('Nothing of that message is kept');
    expect(after?.figures.price).toBeDefined();
    expect(after?.reply?.text).not.toContain('For this event only');
  });
});
