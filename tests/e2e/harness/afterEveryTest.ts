import { afterAll, afterEach } from 'vitest';
import { closeBrowser } from './browser';
import { closePages } from './openPage';
import { expectNoProblem } from './problems';

afterEach(async () => {
  // Closing first, so that what a page does on its way out is seen too.
  await closePages();
  await expectNoProblem();
});

afterAll(closeBrowser);
