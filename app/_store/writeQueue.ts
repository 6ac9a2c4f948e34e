import type { PendingEdit } from '@/lib/stored/pendingEdits';
import type { Result } from '@/shared/result';
import type { Refused } from './applyToStored';
import type { Written } from './commitEdit';
import type { SaveFailure } from './saveFailure';

/** What the queue works on and whom it tells. */
export type WriteQueueOptions = {
  readonly pending: () => readonly PendingEdit[];
  readonly write: (edit: PendingEdit) => Promise<Result<Written | Refused, SaveFailure>>;
  readonly keeping: () => void;
  readonly written: (edit: PendingEdit, written: Written) => void;
  /** Nothing more can be done for now; null where everything is kept. */
  readonly settled: (why: SaveFailure | null) => void;
};

export type WriteQueue = {
  /** Starts writing at once and ends when all is kept or cannot be. */
  readonly flush: () => Promise<void>;
  /** Edits that no write has taken up, which may still be added to. */
  readonly waiting: () => readonly PendingEdit[];
};

/**
 * Writes edits one after the other, each whole in a transaction of its own. When the store fails, all wait;
 * when only one document cannot be written, the edits of the others go on.
 */
export const createWriteQueue = (options: WriteQueueOptions): WriteQueue => {
  let inFlight: PendingEdit | null = null;
  let wanted = false;
  let running: Promise<void> | null = null;

  const drain = async (): Promise<void> => {
    const skipped = new Set<PendingEdit>();
    let why: SaveFailure | null = null;
    for (;;) {
      const edit = options.pending().find((candidate) => !skipped.has(candidate));
      if (edit === undefined) return options.settled(why);
      inFlight = edit;
      options.keeping();
      const outcome = await options.write(edit);
      inFlight = null;
      if (!outcome.ok) return options.settled(outcome.problem);
      if (outcome.value.state === 'written') {
        options.written(edit, outcome.value);
      } else {
        why = outcome.value.why;
        skipped.add(edit);
      }
    }
  };

  const run = async (): Promise<void> => {
    while (wanted) {
      wanted = false;
      await drain();
    }
    // In the same turn as the last look at `wanted`: no edit can fall between the two.
    running = null;
  };

  return {
    flush: () => {
      wanted = true;
      running ??= run();
      return running;
    },
    waiting: () => {
      const pending = options.pending();
      return inFlight === null ? pending : pending.slice(pending.indexOf(inFlight) + 1);
    },
  };
};
