import { afterAll, afterEach } from 'vitest';
import { closeBrowser } from './browser';
import { tellFailure } from './failureReport';
import { closePages, openPages } from './openPage';
import { expectNoTrouble } from './troubles';

afterEach(async ({ task }) => {
  await tellFailure(task, openPages());
  // Closing before looking, so that what a page does on its way out is seen too.
  await closePages();
  await expectNoTrouble();
});

afterAll(closeBrowser);
