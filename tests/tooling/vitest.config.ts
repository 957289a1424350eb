// Tests run in processes of their own, so that one that is killed takes no other with it.

import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    testTimeout: 120_000,
    pool: 'forks',
  },
});
