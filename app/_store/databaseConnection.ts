import { failed, ok, type Result } from '@/shared/result';
import type { Shelf, ShelfMode, ShelfTx } from './database';
import type { ShelfOpening } from './deviceDatabase';
import { memoryShelf } from './memoryDatabase';
import { type NotKeptWhy, whyNotKept } from './saveFailure';

export type ShelfEvents = {
  /** The store cannot be had yet. */
  readonly onWaiting: () => void;
  /** The store was closed from outside. */
  readonly onClosed: (why: Extract<NotKeptWhy, 'newerTabOpen' | 'connectionLost'>) => void;
};
export type ShelfConnectionOptions = ShelfEvents & {
  readonly openShelf: (on: ShelfEvents) => Promise<ShelfOpening>;
};

export type ShelfConnection = {
  /** Opens the store, or again after it was lost; memory stands in where the device keeps nothing. */
  readonly open: () => Promise<Exclude<ShelfOpening, { state: 'open' }> | { readonly state: 'open' }>;
  /** Does work in the store; a store the browser closed is opened again once. */
  readonly attempt: <Outcome>(
    mode: ShelfMode,
    work: (tx: ShelfTx) => Promise<Outcome>,
  ) => Promise<Result<Outcome, NotKeptWhy>>;
  /** Why nothing done here outlives the page; null where the device keeps it. */
  readonly onlyInMemory: () => NotKeptWhy | null;
  readonly close: () => void;
};

/** Holds the way to the store open and turns what goes wrong on it into reasons. */
export const createShelfConnection = (options: ShelfConnectionOptions): ShelfConnection => {
  let shelf: Shelf | null = null;
  let memory: { readonly shelf: Shelf; readonly why: NotKeptWhy } | null = null;
  let closed: NotKeptWhy | null = null;
  let ended = false;

  const open: ShelfConnection['open'] = async () => {
    shelf?.close();
    shelf = null;
    closed = null;
    const opening = await options.openShelf({
      onWaiting: options.onWaiting,
      onClosed: (why) => {
        closed = why;
        options.onClosed(why);
      },
    });
    if (opening.state === 'open') {
      shelf = opening.shelf;
      if (ended) shelf.close();
      return { state: 'open' };
    }
    if (opening.state === 'failed') {
      closed = opening.why === 'cannotOpen' ? 'connectionLost' : opening.why;
      return opening;
    }
    memory ??= { shelf: memoryShelf(), why: opening.why };
    shelf = memory.shelf;
    return opening;
  };

  const attemptOnce: ShelfConnection['attempt'] = async (mode, work) => {
    if (shelf === null || closed !== null || ended) return failed(closed ?? 'connectionLost');
    try {
      return ok(await shelf.transact(mode, work));
    } catch (error) {
      return failed(closed ?? whyNotKept(error));
    }
  };

  return {
    open,
    attempt: async (mode, work) => {
      const outcome = await attemptOnce(mode, work);
      if (outcome.ok || outcome.trouble !== 'connectionLost' || ended) return outcome;
      const opening = await open();
      return opening.state === 'failed' ? outcome : attemptOnce(mode, work);
    },
    onlyInMemory: () => (memory !== null && shelf === memory.shelf ? memory.why : null),
    close: () => {
      ended = true;
      shelf?.close();
    },
  };
};
