import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { STEP_MS, TEST_MS } from './harness/patience.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

export default defineConfig({
  root,
  resolve: { alias: { '@': root } },
  test: {
    include: ['tests/e2e/**/*.test.ts'],
    globalSetup: ['tests/e2e/harness/serveBuiltApp.ts'],
    setupFiles: ['tests/e2e/harness/afterEveryTest.ts'],
    // A page alone leaves two thirds of two cores idle; three files side by side, each with a browser, fill them.
    maxWorkers: Math.min(4, availableParallelism() + 1),
    testTimeout: TEST_MS,
    hookTimeout: TEST_MS,
    expect: { poll: { timeout: STEP_MS } },
  },
});
