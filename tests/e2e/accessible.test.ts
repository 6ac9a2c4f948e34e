import { expect, test } from 'vitest';
import { filled } from '@/tests/e2e/harness/docketPage';
import { looksRight } from '@/tests/e2e/harness/looksRight';
import { openPage } from '@/tests/e2e/harness/openPage';
import { unfoldAll } from '@/tests/e2e/harness/unfoldAll';

test.each([
  ['/', 1280],
  ['/', 390],
  ['/jobs/fair-mugs', 1280],
  ['/jobs/fair-mugs', 390],
])('the docket at %s looks right with every fold opened, at %d px', async (path, width) => {
  const page = await openPage({ path, width });
  await filled(page);
  expect(await unfoldAll(page)).toBeGreaterThan(20);
  await looksRight(page, `docket-unfolded${path.replaceAll('/', '-')}`);
});

test.each([
  ['/workshop', 1280],
  ['/workshop', 390],
  ['/blanks', 1280],
  ['/blanks', 390],
  ['/orders', 1280],
  ['/orders', 390],
  ['/orders/club-enquiry', 1280],
  ['/orders/club-enquiry', 390],
  ['/customers', 1280],
  ['/customers', 390],
])('%s looks right folded and unfolded, at %d px', async (path, width) => {
  const page = await openPage({ path, width });
  await page.getByRole('heading', { level: 1 }).waitFor();
  const name = path.slice(1).replaceAll('/', '-');
  await looksRight(page, name);
  expect(await unfoldAll(page)).toBeGreaterThan(0);
  await looksRight(page, `${name}-unfolded`);
});

test.each([1280, 390])('a customer looks right, at %d px', async (width) => {
  const page = await openPage({ path: '/customers/ramblers-club', width });
  await page.getByRole('heading', { level: 1, name: 'Exampleton Ramblers Club' }).waitFor();
  await looksRight(page, 'customers-ramblers-club');
});
