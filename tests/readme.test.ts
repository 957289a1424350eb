// README's conversation and its table of things to say are made from the demo and from the reader's own examples, so that neither can drift.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { phrases } from '../src/reading/phrases.ts';
import { withMadeSections } from './support/readme-sections.ts';

describe('README', () => {
  it('holds what the project does today', async () => {
    const readme = readFileSync('README.md', 'utf8');
    await expect(withMadeSections(readme, phrases)).toMatchFileSnapshot(join(process.cwd(), 'README.md'));
  });

  it('opens with the job in one paragraph', () => {
    const [title, paragraph] = readFileSync('README.md', 'utf8').split('\n\n');
    expect(title).toBe('# Benchbell');
    expect(paragraph).toMatch(/^A florist who makes small wearable flowers/);
  });
});
