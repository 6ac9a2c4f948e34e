import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { kept, priced, section } from '@/tests/e2e/harness/docketPage';
import { type KillableBrowser, startKillable } from '@/tests/e2e/harness/killableBrowser';
import { cases } from '@/tests/tools/cases';

/* A phone whose battery ends in the middle of typing: what the page called kept is there, whatever came after. */

const { seed = Math.floor(Math.random() * 2 ** 31), numRuns } = cases(20);
/** How long after an edit was begun the power goes, ms. */
const moments = fc.sample(fc.integer({ min: 0, max: 900 }), { seed, numRuns });

let profile: string;
let running: KillableBrowser | null = null;

beforeAll(async () => {
  profile = await mkdtemp(join(tmpdir(), 'killed-'));
});
afterAll(async () => {
  await running?.kill();
  await rm(profile, { recursive: true, force: true });
});

const price = (page: Page) =>
  section(page, 'The job').getByRole('textbox', { name: 'Price of a shirt', exact: true });

/**
 * Types over what is in a field, and leaves it. The keys come from within the page: those from without may come so far
 * apart on a busy machine that half of what is typed is rightly kept.
 */
const typeSwiftly = (field: Locator, text: string): Promise<void> =>
  field.evaluate(async (element, letters) => {
    if (!(element instanceof HTMLInputElement)) throw new Error('This is no field.');
    element.focus();
    element.select();
    for (const letter of letters) {
      document.execCommand('insertText', false, letter);
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
    element.blur();
  }, text);

async function open(): Promise<KillableBrowser> {
  running = await startKillable(profile);
  await running.page.goto(inject('baseUrl'));
  await priced(running.page);
  return running;
}

describe(`a browser that is killed while a price is typed, PROPERTY_SEED=${seed}`, () => {
  let last = 20;
  const next = (): string => {
    last += 0.01;
    return last.toFixed(2);
  };

  test.each(moments.map((ms, index) => ({ ms, kill: index + 1 })))(
    'kill $kill, $ms ms after an edit was begun, loses at most that edit',
    async ({ ms }) => {
      const { page, kill } = await open();
      const before = next();
      await typeSwiftly(price(page), before);
      await kept(page);
      const begun = next();
      // The browser goes while it is typed into.
      const typing = typeSwiftly(price(page), begun).catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, ms));
      await kill();
      await typing;
      const again = await open();
      expect([before, begun]).toContain(await price(again.page).inputValue());
      await kept(again.page);
      await again.kill();
      running = null;
    },
  );
});
