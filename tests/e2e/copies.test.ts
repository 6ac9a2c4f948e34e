import { readFile } from 'node:fs/promises';
import { strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { bringIn, copyOf, type FileToBringIn, savedFile, take } from '@/tests/e2e/harness/copyFiles';
import { kept } from '@/tests/e2e/harness/docketPage';
import { expectFormerFigures } from '@/tests/e2e/harness/formerFigures';
import { keysOn, leaveFormerStore, QUIET, wipeStore } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage, type PageOptions } from '@/tests/e2e/harness/openPage';
import { FIXED_DAY } from '@/tests/tools/clock/testDay';

const WRITTEN_ONCE = ['entries', 'papers', 'files'] as const;

async function usedPage(options: PageOptions = {}): Promise<Page> {
  const page = await openPage({ ...options, path: QUIET });
  await leaveFormerStore(page);
  await page.goto('/workshop#copies');
  await kept(page);
  return page;
}

test.each([1280, 390])(
  'a copy brings everything back after the browser has cleared the store, %d wide',
  async (width) => {
    const page = await usedPage({ width });
    const copy = await copyOf(page);
    await page.getByText(`Saved as ${copy.name}: `).waitFor();
    const before = await keysOn(page, WRITTEN_ONCE);
    await wipeStore(page);
    await page.goto('/');
    await page.getByRole('heading', { level: 1, name: 'What was kept here is gone' }).waitFor();
    await looksRight(page, `wiped-${width}`);
    await page.getByLabel('Copy or carried file').setInputFiles(copy);
    await take(page).waitFor();
    await looksRight(page, `bring-back-${width}`);
    await take(page).click();
    await kept(page);
    await expectFormerFigures(page);
    expect(await keysOn(page, WRITTEN_ONCE)).toEqual(before);
    await bringIn(page, copy);
    await page.getByText('All of it is here already,').waitFor();
    expect(await take(page).count()).toBe(0);
  },
);

test('a copy from before takes the place of everything after one of today is saved, and undo takes it back', async () => {
  const page = await openPage({ path: '/workshop#copies' });
  await kept(page);
  const example = await keysOn(page, ['documents']);
  await bringIn(page, await formerCopy());
  await take(page).waitFor();
  await looksRight(page, 'former-copy');
  await page.getByRole('button', { name: 'Put the copy in place of all this' }).click();
  const today = await savedFile(page, page.getByRole('button', { name: 'Put the copy in its place' }));
  expect(today.name).toMatch(new RegExp(`^pressminute-${FIXED_DAY}-\\d{4}-before-replacing\\.zip$`));
  await page.getByText('The copy is in place of what was here.').waitFor();
  await expectFormerFigures(page);
  await page.reload();
  await expectFormerFigures(page);
  await page.getByRole('button', { name: /^Undo/ }).first().click();
  await page.getByText('Nothing of it is in force.').waitFor();
  await expect.poll(() => keysOn(page, ['documents'])).toEqual(expect.arrayContaining([...example]));
  await page.getByRole('button', { name: /^Redo/ }).first().click();
  await page.getByRole('article', { name: 'Price list, version 2', exact: true }).waitFor();
  await expectFormerFigures(page);
});

test('a copy from before comes in beside, twice without harm', async () => {
  const page = await openPage({ path: '/workshop#copies' });
  await kept(page);
  await bringIn(page, await formerCopy());
  await take(page).click();
  await page
    .getByText(/came in/)
    .first()
    .waitFor();
  await kept(page);
  const once = await keysOn(page, [...WRITTEN_ONCE, 'documents']);
  await bringIn(page, await formerCopy());
  await page.getByText('nothing would change').waitFor();
  expect(await take(page).count()).toBe(0);
  expect(await keysOn(page, [...WRITTEN_ONCE, 'documents'])).toEqual(once);
  // Once each, and dated as in the workshop of the copy, for which the untouched one of the example made way.
  await page.goto('/price-lists/club-prices');
  for (const version of ['Version 2, 26 Nov 2026', 'Version 1, 26 Nov 2026']) {
    await expect.poll(() => page.getByRole('option', { name: version, exact: true }).count()).toBe(1);
  }
});

test('a file that is none of ours, or of a newer version, is told before anything is asked', async () => {
  const page = await usedPage();
  const copy = await copyOf(page);
  const before = await keysOn(page, [...WRITTEN_ONCE, 'documents', 'steps']);
  const parts = unzipSync(copy.buffer);
  const newer = strFromU8(parts['documents.json'] ?? new Uint8Array()).replace(
    /"formatVersion":\d+/,
    '"formatVersion":99',
  );
  const files: readonly (readonly [FileToBringIn, RegExp])[] = [
    [aFile('crest.png', await readFile('app/apple-icon.png')), /is no copy made here\. It is a picture\./],
    [
      aFile('rates.json', strToU8('{"rates": [1, 2]}')),
      /is no copy made here\. It holds data of something else\./,
    ],
    [
      aFile('photos.zip', zipSync({ 'a.txt': strToU8('a') })),
      /is no copy made here\. It is a zip of something else\./,
    ],
    [
      aFile('next.zip', zipSync({ ...parts, 'documents.json': strToU8(newer) })),
      /written by a newer version/,
    ],
    [aFile('empty.zip', new Uint8Array()), /is no copy made here\. It is empty/],
  ];
  for (const [file, words] of files) {
    await bringIn(page, file);
    const told = page.getByRole('status').filter({ hasText: `“${file.name}”` });
    await expect.poll(() => told.textContent()).toMatch(words);
    expect(await told.textContent()).toContain('Nothing here was changed.');
    expect(await take(page).count()).toBe(0);
  }
  await looksRight(page, 'not-a-copy');
  expect(await keysOn(page, [...WRITTEN_ONCE, 'documents', 'steps'])).toEqual(before);
});

test('of a copy that was cut short all that is whole comes out, and what it lacks is told', async () => {
  const page = await usedPage();
  const copy = await copyOf(page);
  const other = await openPage({ path: '/workshop#copies' });
  await kept(other);
  // The picture lies behind the text, so half of the file is text without its end.
  await bringIn(other, { ...copy, buffer: copy.buffer.subarray(0, copy.buffer.length / 2) });
  await other.getByText('The file is cut short: it was not fetched or sent whole.').waitFor();
  await other.getByRole('heading', { name: /could be read: \d+ of \d+ records?\./ }).waitFor();
  await looksRight(other, 'cut-copy');
});

// Helpers

const aFile = (name: string, content: Uint8Array): FileToBringIn => ({
  name,
  mimeType: 'application/octet-stream',
  buffer: Buffer.from(content),
});

const formerCopy = async (): Promise<FileToBringIn> => ({
  name: 'pressminute-2026-11-26.json',
  mimeType: 'application/json',
  buffer: await readFile('tests/fixtures/stored/backupBeforeEntries.json'),
});
