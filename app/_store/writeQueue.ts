import type { SaveFailure } from '@/app/_backend/saveFailure';
import type { Refused } from '@/app/_transactions/applyToStored';
import type { Written } from '@/app/_transactions/commitEdit';
import type { PendingEdit } from '@/lib/stored/pendingEdits';
import type { Result } from '@/shared/result';

/** What the queue works on and whom it tells. */
interface WriteQueueOptions {
  readonly pending: () => readonly PendingEdit[];
  readonly write: (edit: PendingEdit) => Promise<Result<Written | Refused, SaveFailure>>;
  readonly keeping: () => void;
  readonly written: (edit: PendingEdit, written: Written) => void;
  /** Nothing more can be done for now; null where everything is kept. */
  readonly settled: (why: SaveFailure | null) => void;
}

interface WriteQueue {
  /** Starts writing at once and ends when all is kept or cannot be. */
  readonly flush: () => Promise<void>;
  /** The last edit is still being typed: it is written once no more comes, so that no half of it is ever kept. */
  readonly flushSoon: () => void;
  /** Does not wait any longer for what is being typed. */
  readonly flushTyped: () => void;
  /** Edits that no write has taken up, which may still be added to. */
  readonly waiting: () => readonly PendingEdit[];
}

/** A person who types is not written down between the keys. */
const TYPING_PAUSE_MS = 400;
/** A long text is written down now and then all the same, for the day the browser breaks off. */
const MOST_TYPING_MS = 5000;

/**
 * Writes edits one after the other, each whole in a transaction of its own. When the store fails, all wait;
 * when only one document cannot be written, the edits of the others go on.
 */
export function createWriteQueue(options: WriteQueueOptions): WriteQueue {
  let inFlight: PendingEdit | null = null;
  let wanted = false;
  let running: Promise<void> | null = null;
  let typing: ReturnType<typeof setTimeout> | null = null;
  let typedSince: number | null = null;

  const drain = async (): Promise<void> => {
    const skipped = new Set<PendingEdit>();
    let why: SaveFailure | null = null;
    for (;;) {
      const pending = options.pending();
      const ripe = typing === null ? pending : pending.slice(0, -1);
      const edit = ripe.find((candidate) => !skipped.has(candidate));
      // What is being typed is not kept yet, though nothing has gone wrong.
      if (edit === undefined) return why === null && typing !== null ? undefined : options.settled(why);
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

  const flush = (): Promise<void> => {
    if (typing !== null) clearTimeout(typing);
    typing = null;
    typedSince = null;
    wanted = true;
    running ??= run();
    return running;
  };

  return {
    flush,
    flushSoon: () => {
      if (typing !== null) clearTimeout(typing);
      typedSince ??= performance.now();
      const left = MOST_TYPING_MS - (performance.now() - typedSince);
      typing = setTimeout(() => void flush(), Math.max(0, Math.min(TYPING_PAUSE_MS, left)));
      options.keeping();
    },
    flushTyped: () => {
      if (typing !== null) void flush();
    },
    waiting: () => {
      const pending = options.pending();
      return inFlight === null ? pending : pending.slice(pending.indexOf(inFlight) + 1);
    },
  };
}
