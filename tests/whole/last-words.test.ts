// An error nobody expected ends the bot with one line: an id, a place, and none of the words the error may quote.

import { spawnSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';

const end = (script: string) => {
  const imports =
    "import { endOnUncaught } from './dist/last-words.js'; import { openLog } from './dist/log.js'; endOnUncaught(openLog('info'));";
  const { status, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', `${imports} ${script}`], { encoding: 'utf8' });
  return { status, lines: stderr.trim().split('\n') };
};

describe('an error nobody expected', () => {
  it.each([
    ['thrown', "setTimeout(() => { throw new TypeError('Catriona wants 40 lapel pieces'); }, 1); setTimeout(() => {}, 5000);"],
    ['a promise nobody waited for', "Promise.reject(new TypeError('Catriona wants 40 lapel pieces')); setTimeout(() => {}, 5000);"],
    ['not even an error', "setTimeout(() => { throw 'Catriona'; }, 1); setTimeout(() => {}, 5000);"],
  ])('%s', (_, script) => {
    const { status, lines } = end(script);
    expect(status).toBe(1);
    expect(lines).toHaveLength(1);
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ level: 60, what: 'stop', outcome: 'failed', id: expect.stringMatching(/^\w{7}$/) });
    expect(lines[0]).not.toMatch(/Catriona|lapel/);
  });
});
