import { appDocuments } from '@/app/_store/appDocuments';
import { type FromServiceWorker, TAKE_OVER } from './messages';
import { reloadOnce } from './reloadOnce';

/** What is told of versions: `waiting` on this device until it is taken; `elsewhere` taken already, in another tab. */
export type Newer = 'none' | 'waiting' | 'taking' | 'notKept' | 'elsewhere';

/** Letting go and taking over are a matter of a second. */
const TAKES_OVER_WITHIN_MS = 5000;
const LOOK_AGAIN_MS = 60 * 60 * 1000;

let newer: Newer = 'none';
let isOpening = false;
let registration: ServiceWorkerRegistration | null = null;
const listeners = new Set<() => void>();

export const newerVersion = (): Newer => newer;

export function watchVersions(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Keeps the app on this device, and looks for newer versions from time to time. Nothing comes of it where that fails. */
export async function keepApp(): Promise<void> {
  const workers = navigator.serviceWorker;
  // Of a first visit, the first to take over is the version that the page is of.
  let wasKept = workers.controller !== null;
  workers.addEventListener('controllerchange', () => {
    if (newer === 'taking') void openNewer();
  });
  workers.addEventListener('message', ({ data }: MessageEvent<FromServiceWorker>) => {
    if (data.kind !== 'tookOver') return;
    if (wasKept && newer !== 'taking') void followOtherTab(data.build);
    wasKept = true;
  });
  try {
    registration = await workers.register('/sw.js', { updateViaCache: 'none' });
    registration.addEventListener('updatefound', watchInstalling);
  } catch {
    // No network, or a browser that keeps nothing: the app works as it is, and tries again at the next visit.
    return;
  }
  performance.mark('pressminute-keeps');
  watchInstalling();
  let lookedAt = Date.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || Date.now() - lookedAt < LOOK_AGAIN_MS) return;
    lookedAt = Date.now();
    // Without a network there is nothing newer to be had.
    registration?.update().catch(() => undefined);
  });
}

/** Takes the newer version, once all that was typed is kept. */
export async function takeNewerVersion(): Promise<void> {
  const isTakenAlready = newer === 'elsewhere';
  tell('taking');
  if (!(await allKept())) {
    tell('notKept');
    return;
  }
  const waiting = registration?.waiting;
  if (isTakenAlready || waiting == null) return openNewer();
  waiting.postMessage(TAKE_OVER);
  // The version that is here may hold on to something it has asked for; it lets go when its page does.
  setTimeout(() => {
    if (newer === 'taking') void openNewer();
  }, TAKES_OVER_WITHIN_MS);
}

// Helpers

/**
 * Opens the page anew. What was typed since it was asked for is kept first, or the browser would ask whether to leave.
 * Where that meets the moment at which the newer version takes over, a browser may load nothing at all (Chromium 2026):
 * then it is asked once more, and a page that stays all the same says so and can be asked again.
 */
async function openNewer(times = 2): Promise<void> {
  if (isOpening) return;
  isOpening = true;
  if (!(await allKept())) {
    isOpening = false;
    tell('notKept');
    return;
  }
  window.location.reload();
  setTimeout(() => {
    isOpening = false;
    if (times > 1) void openNewer(times - 1);
    else tell('waiting');
  }, TAKES_OVER_WITHIN_MS);
}

function tell(next: Newer): void {
  newer = next;
  for (const listener of listeners) listener();
}

function watchInstalling(): void {
  if (registration === null) return;
  // On a first visit there is no version that a newer one could take the place of.
  if (registration.waiting !== null && registration.active !== null) tell('waiting');
  registration.installing?.addEventListener('statechange', ({ target }) => {
    if (target instanceof ServiceWorker && target.state === 'installed') watchInstalling();
  });
}

/** Another tab took the newer version: this one follows, unless somebody is typing in it. */
async function followOtherTab(build: string): Promise<void> {
  if (isTyping() || !(await allKept()) || !reloadOnce(build)) tell('elsewhere');
}

const isTyping = (): boolean =>
  document.activeElement?.matches('input, textarea, select, [contenteditable]') === true;

async function allKept(): Promise<boolean> {
  const store = appDocuments();
  await store.flush();
  const { status, kept } = store.getState();
  return status !== 'ready' || kept.state === 'kept';
}
