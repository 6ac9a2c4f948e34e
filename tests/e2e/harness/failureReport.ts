import type { Page } from 'playwright-core';
import { shot } from './shot';
import { takeSteps } from './steps';

/** What is needed here of a test that has run. */
type Ran = Readonly<{
  id: string;
  result?: Readonly<{ state: string; errors?: readonly { message: string }[] | undefined }> | undefined;
}>;

/** A page that does not answer is not waited for long. */
const WITHIN = { timeout: 10_000 };
const MOST_LETTERS = 4_000;

/** Adds to the error of a failed test which steps came last and what was on its pages, and keeps their pictures. */
export async function tellFailure(task: Ran, pages: readonly Page[]): Promise<void> {
  const steps = takeSteps();
  const error = task.result?.state === 'fail' ? task.result.errors?.[0] : undefined;
  if (error === undefined) return;
  const seen = await Promise.all(pages.map((page, index) => seenOn(page, `failed-${task.id}-${index}`)));
  error.message = [
    error.message,
    `\nThe last steps:\n${steps.map((step) => `  ${step}`).join('\n')}`,
    ...seen,
  ].join('\n');
}

async function seenOn(page: Page, picture: string): Promise<string> {
  try {
    const text = await page.locator('body').ariaSnapshot(WITHIN);
    const path = await shot(page, picture);
    const shown = text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS)}\n…` : text;
    return `\nOn ${page.url()} (pictured in ${path}):\n${shown}`;
  } catch (error) {
    return `\n${page.url()} does not answer: ${error instanceof Error ? error.message : error}`;
  }
}
