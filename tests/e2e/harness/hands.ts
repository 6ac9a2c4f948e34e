import type { Locator } from 'playwright-core';
import { expect } from 'vitest';

/** What a person does to a page, whatever they do it with. */
export interface Hands {
  readonly press: (target: Locator) => Promise<void>;
  /** Types into a field, in place of what is there. */
  readonly type: (field: Locator, text: string) => Promise<void>;
  /** YYYY-MM-DD. */
  readonly setDay: (field: Locator, day: string) => Promise<void>;
  readonly choose: (list: Locator, label: string) => Promise<void>;
  /** Shows a tab of a list of tabs. */
  readonly turnTo: (tab: Locator) => Promise<void>;
}

/** A mouse, or a finger on a phone. */
export const pointer: Hands = {
  press: async (target) => {
    await canBePressed(target);
    await target.click();
  },
  type: (field, text) => field.fill(text),
  setDay: (field, day) => field.fill(day),
  choose: async (list, label) => void (await list.selectOption({ label })),
  turnTo: (tab) => tab.click(),
};

/** The keyboard alone; the browser speaks the English of the United States, so days are typed month first. */
export const keyboard: Hands = {
  press: async (target) => {
    await reach(target);
    // On the long way to it the sums may have begun anew.
    await canBePressed(target);
    await target.page().keyboard.press('Enter');
  },
  type: async (field, text) => {
    await reach(field);
    await field.page().keyboard.press('ControlOrMeta+A');
    await field.page().keyboard.type(text);
  },
  setDay: async (field, day) => {
    await reach(field);
    const [year = '', month = '', date = ''] = day.split('-');
    await field.page().keyboard.type(`${month}${date}${year}`);
  },
  choose: async (list, label) => {
    await reach(list);
    await list.page().keyboard.type(label);
    // A browser forgets letters that come slowly.
    await expect.poll(() => chosenOf(list)).toBe(label);
  },
  turnTo: async (tab) => {
    const tabs = tab.locator('xpath=ancestor::*[@role="tablist"]');
    await reach(tabs.getByRole('tab', { selected: true }));
    for (let turned = 0; (await tab.getAttribute('aria-selected')) !== 'true'; turned += 1) {
      expect(turned, 'tabs of one list').toBeLessThan(MOST_TABS);
      await tab.page().keyboard.press('ArrowRight');
    }
  },
};

// Helpers

const MOST_STOPS = 250;
const MOST_TABS = 20;

const chosenOf = (list: Locator): Promise<string | undefined> =>
  list.evaluate((field) =>
    field instanceof HTMLSelectElement ? field.selectedOptions[0]?.textContent?.trim() : undefined,
  );

const canBePressed = async (target: Locator): Promise<void> => {
  await expect.poll(() => target.getAttribute('aria-disabled')).toBe(null);
};

/** Goes to it from wherever the focus is, a stop at a time. */
async function reach(target: Locator): Promise<void> {
  await target.waitFor();
  for (let stops = 0; stops < MOST_STOPS; stops += 1) {
    const way = await target.evaluate((element) => {
      const now = document.activeElement;
      if (now === element) return 'here';
      const isBefore =
        now !== null && (element.compareDocumentPosition(now) & Node.DOCUMENT_POSITION_PRECEDING) !== 0;
      return now === null || now === document.body || isBefore ? 'Tab' : 'Shift+Tab';
    });
    if (way === 'here') return;
    await target.page().keyboard.press(way);
  }
  throw new Error(`The keyboard does not come to ${target}.`);
}
