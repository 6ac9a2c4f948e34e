import type { WorkerReady } from '@/app/_workers/workerMessages';

/** A worker that was started before anybody had a question, and whether it has said that it runs. */
let warm: { readonly worker: Worker; isReady: boolean } | null = null;

const started = () => new Worker(new URL('./price.worker.ts', import.meta.url), { type: 'module' });

/**
 * Starts the worker of the sums beside everything else that is fetched, so that its engine is built by the first
 * question. Once, however often it is asked for.
 */
export function warmPriceWorker(): void {
  if (warm !== null || typeof Worker === 'undefined') return;
  const early = { worker: started(), isReady: false };
  warm = early;
  early.worker.onmessage = () => {
    early.isReady = true;
  };
  early.worker.onerror = (event) => {
    event.preventDefault();
    // Whoever has a question starts another, and tells what is wrong with it.
    if (warm === early) warm = null;
  };
}

/** @returns the worker that is warm, else a new one. */
export function startPriceWorker(): Worker {
  if (warm === null) return started();
  const { worker, isReady } = warm;
  warm = null;
  // Its first word was heard here; whoever owns it now is told again.
  const ready: WorkerReady = { kind: 'ready' };
  if (isReady) queueMicrotask(() => worker.dispatchEvent(new MessageEvent('message', { data: ready })));
  return worker;
}
