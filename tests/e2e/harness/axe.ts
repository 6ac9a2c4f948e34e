import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** Fails on any finding of the accessibility checker, on the page as it stands now. */
export async function axe(page: Page): Promise<void> {
  // The title comes in after the rest of a page that was gone to by a link.
  await page.waitForFunction(() => document.title !== '');
  // In the page itself and without a list of every part that passed: the same findings for a fifth of the work.
  const { violations, passes } = await new AxeBuilder({ page })
    .setLegacyMode(true)
    .options({ resultTypes: ['violations'] })
    .analyze();
  const found = violations.flatMap((violation) =>
    violation.nodes.map(
      (node) => `${violation.id}: ${violation.help} at ${node.target.join(' ')}\n${node.html}`,
    ),
  );
  expect(found, `accessibility of ${page.url()}`).toEqual([]);
  // A checker that looked at nothing finds nothing.
  expect(passes.length).toBeGreaterThan(0);
}
