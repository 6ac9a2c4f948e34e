import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const root = fileURLToPath(new URL('../../../..', import.meta.url));

export default defineConfig({
  root,
  resolve: { alias: { '@': root } },
  test: { include: ['tests/tools/clock/planted/*.planted.ts'], setupFiles: ['tests/setup.ts'] },
});
