import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const FOLDER = join('tests', '.output', 'shots');

/**
 * Keeps a picture of the whole page, to be looked at by a person.
 *
 * @returns its file: tests/.output/shots/NAME-WIDTH.png
 */
export async function shot(page: Page, name: string): Promise<string> {
  await mkdir(FOLDER, { recursive: true });
  const width = page.viewportSize()?.width ?? 0;
  const path = join(FOLDER, `${name}-${width}.png`);
  await page.screenshot({ path, fullPage: true });
  return path;
}
