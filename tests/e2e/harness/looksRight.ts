import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { axe } from './axe';
import { shot } from './shot';

/**
 * By day and by night the accessibility checker finds nothing on the page as it stands now, and a picture of it is
 * kept; nothing lies beside the page.
 */
export async function looksRight(page: Page, name: string): Promise<void> {
  for (const scheme of ['light', 'dark'] as const) {
    await page.emulateMedia({ colorScheme: scheme, reducedMotion: 'reduce' });
    await axe(page);
    await shot(page, `${name}-${scheme}`);
  }
  await scrollsNowhere(page);
}

/** Nothing is wider than the page. */
export async function scrollsNowhere(page: Page): Promise<void> {
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow, `${page.url()} scrolls sideways`).toBeLessThanOrEqual(0);
}
