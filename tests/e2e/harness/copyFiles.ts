import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { kept } from './docketPage';

/** A file as a field takes it. */
export interface FileToBringIn {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
}

/** Presses what makes a file, and takes the file. */
export async function savedFile(page: Page, button: Locator): Promise<FileToBringIn> {
  const [download] = await Promise.all([page.waitForEvent('download'), button.click()]);
  const buffer = await readFile(await download.path());
  return { name: download.suggestedFilename(), mimeType: 'application/zip', buffer };
}

/** A copy of everything, made in the workshop. */
export async function copyOf(page: Page): Promise<FileToBringIn> {
  await page.goto('/workshop#copies');
  return savedFile(page, page.locator('main').getByRole('button', { name: 'Make a copy', exact: true }));
}

/** Brings a file in where the workshop takes one; a text is the path of one. */
export async function bringIn(page: Page, file: FileToBringIn | string): Promise<void> {
  if (!page.url().includes('/workshop')) await page.goto('/workshop#copies');
  await page.getByLabel('Copy or carried file').setInputFiles(file);
}

/** Brings a file in as it is offered, and waits until what came in is on the device. */
export async function takeIn(page: Page, file: FileToBringIn | string): Promise<void> {
  await bringIn(page, file);
  await take(page).click();
  // The header said “Kept” before, too.
  await expect.poll(() => take(page).count()).toBe(0);
  await kept(page);
}

/** The button of a preview that takes what comes in. */
export const take = (page: Page): Locator =>
  page.locator('main').getByRole('button', { name: /^(?:Bring|Take) (?:it|them|the .+) (?:in|back|over)$/ });
