import type { Page } from 'playwright-core';
import { allowTrouble } from './problems';

/** The browser's own remarks on a server that is away. */
const AWAY = /ERR_INTERNET_DISCONNECTED|ERR_CONNECTION_REFUSED|ERR_FAILED|Failed to fetch|Failed to load/;

/** Waits until the service worker keeps the whole app and answers this page. */
export async function appKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const workers = navigator.serviceWorker;
    await workers.ready;
    if (workers.controller !== null) return;
    await new Promise((resolve) => workers.addEventListener('controllerchange', resolve, { once: true }));
  });
}

/** Cuts the browser off. */
export async function cutNetwork(page: Page): Promise<void> {
  allowTrouble(AWAY);
  await page.context().setOffline(true);
}

/** How many files and pages are kept for each build. */
export const keptCounts = (page: Page): Promise<readonly number[]> =>
  page.evaluate(async () => {
    const names = await caches.keys();
    return Promise.all(names.map(async (name) => (await (await caches.open(name)).keys()).length));
  });

/** The newer version is fetched and told of. */
export async function newerTold(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update();
  });
  await page.getByText('A newer version is here.').waitFor();
}
