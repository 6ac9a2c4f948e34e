import { expect, test } from 'vitest';
import { kept, section, unfold } from '@/tests/e2e/harness/docketPage';
import { expectFormerFigures } from '@/tests/e2e/harness/formerFigures';
import { holdFormerStore, keysOn, leaveFormerStore, QUIET } from '@/tests/e2e/harness/keptStore';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';

const HAPPENED = ['entries', 'papers', 'files'] as const;

test('a store of the build before opens with every figure, and once more in a second tab', async () => {
  const page = await openPage({ path: QUIET });
  await leaveFormerStore(page);
  await expectFormerFigures(page);
  const once = await keysOn(page, HAPPENED);
  // Nineteen things that happened, two papers, and the one picture that two artworks hold.
  expect(once).toHaveLength(22);
  await page.reload();
  await kept(page);
  const beside = await openPage({ beside: page, path: '/workshop' });
  await expectFormerFigures(beside);
  expect(await keysOn(page, HAPPENED)).toEqual(once);
});

test('the picture, what the customer approved, the removed job and the torn blank of the build before are there', async () => {
  const page = await openPage({ path: QUIET });
  await leaveFormerStore(page);
  await page.goto('/jobs/club-order');
  await kept(page);
  // The small picture of the fixture stops the job: no price, and the rest of it is there.
  const job = section(page, 'The job');
  await unfold(job, /^Back picture/);
  const picture = job.getByRole('group', { name: 'The picture, Hill path picture' });
  await picture.getByText(/hill\.png, PNG/).waitFor();
  await picture.locator('canvas[data-drawn="true"]').waitFor();
  await page.goto('/jobs');
  await page.getByRole('row', { name: /Ramblers Club shirts/ }).waitFor();
  expect(await page.getByRole('row', { name: /Spring Fair mugs/ }).count()).toBe(0);
  await page.getByRole('button', { name: /^Undo.*Remove Spring Fair mugs/ }).click();
  await page.getByRole('row', { name: /Spring Fair mugs/ }).waitFor();
  expect(await keysOn(page, ['documents'])).toContain('documents torn-mat');
});

test('while an old tab holds the store the new page says so, and goes on by itself when that is closed', async () => {
  const old = await openPage({ path: QUIET });
  await leaveFormerStore(old);
  await holdFormerStore(old);
  const page = await openPage({ beside: old, path: '/workshop' });
  await page.getByRole('heading', { level: 1, name: 'Another tab holds an older version' }).waitFor();
  await looksRight(page, 'old-tab');
  await old.close();
  await kept(page);
  await expectFormerFigures(page);
});
