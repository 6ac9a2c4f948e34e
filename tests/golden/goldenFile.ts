import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';

/**
 * Holds a text against the one kept under tests/golden. `UPDATE_GOLDEN=1` writes it anew: the difference is then
 * for a reader to judge.
 *
 * @param path under tests/golden
 */
export function expectGolden(path: string, text: string): void {
  const file = fileURLToPath(new URL(path, import.meta.url));
  if (process.env.UPDATE_GOLDEN === '1') {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
  if (!existsSync(file)) throw new Error(`${path} is not there: UPDATE_GOLDEN=1 writes it`);
  expect(text).toBe(readFileSync(file, 'utf8'));
}
