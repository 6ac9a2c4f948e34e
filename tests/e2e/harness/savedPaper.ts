import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { readPages } from '@/tests/fixtures/readPages';

interface SavedPaper {
  /** Without its ending. */
  readonly name: string;
  readonly text: string;
  readonly pages: readonly {
    /** In whole points: A4 is 595 × 842, letter 612 × 792. */
    readonly size: string;
    readonly text: string;
    /** Whether every letter lies on the page. */
    readonly isInside: boolean;
  }[];
}

/** @returns the file of a paper as it is saved, read back by a reader that shares nothing with its writer. */
export async function savedPaper(page: Page, save: Locator): Promise<SavedPaper> {
  // Its file is made beforehand; until then the button says that it is still being made.
  await expect.poll(() => save.getAttribute('aria-disabled')).toBeNull();
  const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
  const file = download.suggestedFilename();
  expect(file).toMatch(/\.pdf$/);
  const { pages, text } = await readPages(new Uint8Array(await readFile(await download.path())));
  return {
    name: file.replace(/\.pdf$/, ''),
    text,
    pages: pages.map(({ width, height, lines, texts }) => ({
      size: `${Math.round(width)} × ${Math.round(height)}`,
      text: lines.join('\n'),
      isInside: texts.every(({ x, y, width: across }) => x >= 0 && x + across <= width && y >= 0),
    })),
  };
}
