import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

/* The planted test, with the setup of all others. */
export default defineConfig({
  root: fileURLToPath(new URL('../../../..', import.meta.url)),
  test: { include: ['tests/tools/clock/planted/*.planted.ts'], setupFiles: ['tests/setup.ts'] },
});
