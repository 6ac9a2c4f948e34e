import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  root,
  resolve: { alias: { '@': root } },
  test: {
    include: ['tests/e2e/**/*.test.ts'],
    globalSetup: ['tests/e2e/harness/serveBuiltApp.ts'],
    setupFiles: ['tests/e2e/harness/afterEveryTest.ts'],
    // One at a time: two browsers on two cores would measure each other.
    maxWorkers: 1,
    fileParallelism: false,
    testTimeout: 30_000,
    hookTimeout: 60_000,
  },
});
