import { Serwist } from 'serwist';
import { isAnswerOf, type KeptBuild } from '@/app/_offline/keptBuild';
import type { FromServiceWorker } from '@/app/_offline/messages';
import { answersFrom } from './answers';
import { askedFor } from './askedFor';
import { inLanes } from './inLanes';
import type { WorkerScope } from './scope';

/* The service worker: keeps one build whole, pages and files, and answers from it. */

/** Put in by `workerScript.ts`. */
declare const KEPT_BUILD: KeptBuild;
declare const self: WorkerScope;

const CACHE_OF_OURS = 'pressminute-';
const kept = KEPT_BUILD;
const cacheName = `${CACHE_OF_OURS}${kept.build}`;

const serwist = new Serwist({
  precacheEntries: [
    ...kept.files.map((url) => ({ url, revision: null })),
    ...kept.pages.map((url) => ({ url, revision: kept.build })),
    ...kept.named,
  ],
  precacheOptions: {
    cacheName,
    plugins: [
      {
        // What is refused here ends the whole installation.
        cacheWillUpdate: async ({ request, response }) =>
          (await isAnswerOf(kept, request.url, response)) ? response : null,
      },
    ],
  },
});

const answers = answersFrom({
  kept: (path) => serwist.matchPrecache(path),
  // Files of a build before: a page of it may still be open in another tab.
  keptBefore: (request) => caches.match(request, { ignoreSearch: true }),
  isWhole: async () => {
    const there = await (await caches.open(cacheName)).keys();
    return there.length >= kept.files.length + kept.pages.length + kept.named.length;
  },
  fetch: (request) => fetch(request),
});

self.addEventListener('install', (event) => {
  event.waitUntil(
    keepAll(event).catch(async (error: unknown) => {
      // All or nothing. What came is in the browser's own cache for the next time.
      await caches.delete(cacheName);
      throw error;
    }),
  );
});

self.addEventListener('activate', (event) => {
  event.waitUntil(
    (async () => {
      await serwist.handleActivate(event);
      await dropOlder();
      await self.clients.claim();
      const tookOver: FromServiceWorker = { kind: 'tookOver', build: kept.build };
      for (const client of await self.clients.matchAll({ type: 'window' })) client.postMessage(tookOver);
    })(),
  );
});

self.addEventListener('fetch', (event) => {
  const answer = answers(event.request, askedFor(event.request, self.location.origin));
  if (answer !== null) event.respondWith(answer);
});

/**
 * By the library's strategy, but not by its own loop, which forgets a failure: the installation would hang, neither
 * done nor refused. Of the lines that a browser opens to one server, some stay free for the page.
 */
async function keepAll(event: Parameters<typeof serwist.handleInstall>[0]): Promise<void> {
  await inLanes([...serwist.getUrlsToPrecacheKeys()], 3, async ([address, cacheKey]) => {
    const url = new URL(address);
    // A file that is named by its content may come from the browser's own cache.
    const cache = address === cacheKey ? 'default' : 'reload';
    const request = new Request(address, { cache, credentials: 'same-origin' });
    await Promise.all(serwist.precacheStrategy.handleAll({ event, request, url, params: { cacheKey } }));
  });
}

/** The build before this one stays: a tab that was not opened anew goes on with its files. */
async function dropOlder(): Promise<void> {
  const ours = (await caches.keys()).filter((name) => name.startsWith(CACHE_OF_OURS) && name !== cacheName);
  // In the order in which they were made.
  await Promise.all(ours.slice(0, -1).map((name) => caches.delete(name)));
}
