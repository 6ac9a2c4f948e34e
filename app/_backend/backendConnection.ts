import { failed, ok, type Result } from '@/shared/result';
import type { Backend, BackendMode, BackendTx } from './backend';
import type { BackendOpening } from './deviceBackend';
import { memoryBackend } from './memoryBackend';
import { type SaveFailure, saveFailureOf } from './saveFailure';

interface BackendEvents {
  /** The store cannot be had yet. */
  readonly onWaiting: () => void;
  /** The store was closed from outside. */
  readonly onClosed: (why: Extract<SaveFailure, 'newerTabOpen' | 'connectionLost'>) => void;
}
export type BackendConnectionOptions = BackendEvents & {
  /** Done first in every transaction that writes; what it gives is done once all of that is kept. */
  readonly beforeWriting?: (tx: BackendTx) => Promise<() => void>;
  readonly openBackend: (on: BackendEvents) => Promise<BackendOpening>;
};

export interface BackendConnection {
  /** Opens the store, or again after it was lost; memory stands in where the device keeps nothing. */
  readonly open: () => Promise<Exclude<BackendOpening, { state: 'open' }> | { readonly state: 'open' }>;
  /** Does work in the store; a store the browser closed is opened again once. */
  readonly attempt: <Outcome>(
    mode: BackendMode,
    work: (tx: BackendTx) => Promise<Outcome>,
  ) => Promise<Result<Outcome, SaveFailure>>;
  /** Why nothing done here outlives the page; null where the device keeps it. */
  readonly onlyInMemory: () => SaveFailure | null;
  readonly close: () => void;
}

/** Holds the way to the store open and turns what goes wrong on it into reasons. */
export function createBackendConnection(options: BackendConnectionOptions): BackendConnection {
  let backend: Backend | null = null;
  let memory: { readonly backend: Backend; readonly why: SaveFailure } | null = null;
  let closed: SaveFailure | null = null;
  let ended = false;

  const open: BackendConnection['open'] = async () => {
    backend?.close();
    backend = null;
    closed = null;
    const opening = await options.openBackend({
      onWaiting: options.onWaiting,
      onClosed: (why) => {
        closed = why;
        options.onClosed(why);
      },
    });
    if (opening.state === 'open') {
      backend = opening.backend;
      if (ended) backend.close();
      return { state: 'open' };
    }
    if (opening.state === 'failed') {
      closed = opening.why === 'cannotOpen' ? 'connectionLost' : opening.why;
      return opening;
    }
    memory ??= { backend: memoryBackend(), why: opening.why };
    backend = memory.backend;
    return opening;
  };

  const attemptOnce: BackendConnection['attempt'] = async (mode, work) => {
    if (backend === null || closed !== null || ended) return failed(closed ?? 'connectionLost');
    try {
      const { outcome, whenKept } = await backend.transact(mode, async (tx) => ({
        whenKept: mode === 'read' ? undefined : await options.beforeWriting?.(tx),
        outcome: await work(tx),
      }));
      whenKept?.();
      return ok(outcome);
    } catch (error) {
      return failed(closed ?? saveFailureOf(error));
    }
  };

  return {
    open,
    attempt: async (mode, work) => {
      const outcome = await attemptOnce(mode, work);
      if (outcome.ok || outcome.problem !== 'connectionLost' || ended) return outcome;
      const opening = await open();
      if (opening.state === 'failed') return outcome;
      // It may be another, made anew: what belongs in it is there before anything else is read or written.
      const readied = await attemptOnce('writeStrict', async () => undefined);
      return readied.ok ? attemptOnce(mode, work) : readied;
    },
    onlyInMemory: () => (memory !== null && backend === memory.backend ? memory.why : null),
    close: () => {
      ended = true;
      backend?.close();
    },
  };
}
