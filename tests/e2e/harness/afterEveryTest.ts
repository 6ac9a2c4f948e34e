import { afterAll, afterEach } from 'vitest';
import { closeBrowser } from './browser';
import { tellFailure } from './failureReport';
import { closePages, openPages } from './openPage';
import { expectNoProblem } from './problems';

afterEach(async ({ task }) => {
  await tellFailure(task, openPages());
  // Closing before looking, so that what a page does on its way out is seen too.
  await closePages();
  await expectNoProblem();
});

afterAll(closeBrowser);
