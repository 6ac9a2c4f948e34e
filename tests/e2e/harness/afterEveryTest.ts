import { afterAll, afterEach } from 'vitest';
import { closeBrowser } from './browser';
import { closePages } from './openPage';
import { expectNoTrouble } from './troubles';

afterEach(async () => {
  // Closing first, so that what a page does on its way out is seen too.
  await closePages();
  await expectNoTrouble();
});

afterAll(closeBrowser);
