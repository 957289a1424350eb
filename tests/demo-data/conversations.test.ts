// The demo conversations, word for word. A changed reply shows here as a changed line; `npm run test:update` writes the new ones.

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readConversation } from '../../src/read-conversation.ts';
import { talk } from '../support/converse.ts';

const folder = 'demo-data/conversations';
const files = readdirSync(folder).filter((name) => name.endsWith('.txt'));

describe('the demo conversations', () => {
  it('are there', () => {
    expect(files.length).toBeGreaterThanOrEqual(3);
  });

  it.each(files)('%s', async (name) => {
    const file = join(folder, name);
    const read = readConversation(file);
    if (!read.ok) throw new Error(read.trouble);
    if (read.now === undefined) throw new Error(`${file} has no “now:” line, so its dates would move`);
    const now = new Date(read.now).toISOString().replace('.000Z', 'Z');
    const said = await talk(read.lines, { now });
    await expect(`now: ${now}\n\n${said.trimEnd()}\n`).toMatchFileSnapshot(join(process.cwd(), file));
  });
});
