import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** The room of the device for this app, as the browser is told: gone, or as much as there is. */
export async function roomOn(
  page: Page,
): Promise<{ readonly fill: () => Promise<void>; readonly free: () => Promise<void> }> {
  const session = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  return {
    fill: async () => {
      await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
      // The browser goes on for half a minute by the room it saw last.
      await expect.poll(() => isRefused(page), { interval: 500 }).toBe(true);
    },
    free: async () => {
      await session.send('Storage.overrideQuotaForOrigin', { origin });
      await expect.poll(() => isRefused(page), { interval: 500 }).toBe(false);
    },
  };
}

// Helpers

/** Whether the browser refuses to write another row into a store of its own. */
const isRefused = (page: Page): Promise<boolean> =>
  page.evaluate(
    () =>
      new Promise((resolve) => {
        const request = indexedDB.open('room');
        request.onerror = () => resolve(true);
        request.onupgradeneeded = () => request.result.createObjectStore('rows', { autoIncrement: true });
        request.onsuccess = () => {
          const db = request.result;
          const writing = db.transaction('rows', 'readwrite');
          const end = (refused: boolean) => {
            db.close();
            resolve(refused);
          };
          writing.oncomplete = () => end(false);
          writing.onabort = () => end(true);
          writing.objectStore('rows').put('a row');
        };
      }),
  );
