// The guide's list of sources is made from the handbook, so that a caution or a figure cannot be added without its source being listed.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { withSources } from './support/guide-sources.ts';

it('lists the sources of the handbook as they are', async () => {
  await expect(withSources(readFileSync('DEVELOPERS.md', 'utf8'))).toMatchFileSnapshot(join(process.cwd(), 'DEVELOPERS.md'));
});
