import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';

const FOLDER = join('tests', '.output', 'shots');

/** Keeps a picture of the whole page as tests/.output/shots/NAME-WIDTH.png, to be looked at by a person. */
export async function shot(page: Page, name: string): Promise<void> {
  await mkdir(FOLDER, { recursive: true });
  const width = page.viewportSize()?.width ?? 0;
  await page.screenshot({ path: join(FOLDER, `${name}-${width}.png`), fullPage: true });
}
