import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Folders whose tests call pure functions. */
const SUMS = 'lib,shared,properties,oracle,outside,golden';

export default defineConfig({
  root,
  resolve: { alias: { '@': root } },
  oxc: { jsx: { runtime: 'automatic' } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'sums',
          include: [`tests/{${SUMS}}/**/*.test.ts`],
          // Nothing of it keeps anything between two calls, so that files may share what they import: half the time.
          isolate: false,
        },
      },
      {
        extends: true,
        test: {
          name: 'screens',
          include: ['tests/**/*.test.{ts,tsx}'],
          exclude: [`tests/{e2e,${SUMS}}/**`],
        },
      },
    ],
    setupFiles: ['tests/setup.ts'],
    // The runner leaves a core to itself unless told; two files at a time share two cores well.
    maxWorkers: 2,
    // They end what hangs; nothing is timed by them. A machine three times slower still has time to spare.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    expect: { poll: { timeout: 60_000 } },
  },
});
