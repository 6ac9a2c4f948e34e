import { isGone } from '@/app/_network/isGone';
import { createRetries } from '@/app/_network/retries';
import type { WorkerReady } from './workerMessages';

/** How a worker was lost. */
export interface WorkerLoss {
  /**
   * `notStarted`: its script did not come, and whatever was asked is not to blame. `gone`: nor will it, for the server has
   * a newer version. `broke`: it had been running.
   */
  readonly kind: 'notStarted' | 'gone' | 'broke';
  /** For those who mend the app. */
  readonly why: string;
}

interface OwnedWorker<Message> {
  /** Starts the worker where none runs, and sends. While one that could not start is waited for, nothing is sent. */
  readonly post: (message: Message, transfer?: Transferable[]) => void;
  /** Why there is none at the moment; null where one runs or none was needed yet. */
  readonly loss: () => WorkerLoss | null;
  /** Does not wait any longer for one that could not start. */
  readonly tryNow: () => void;
  /** Ends the worker; the next message starts another. */
  readonly end: () => void;
}

interface OwnWorkerOptions<Reply> {
  readonly start: () => Worker;
  readonly onReply: (reply: Reply) => void;
  /** Of a script that did not come it is told a second time where it is found to be gone. */
  readonly onLost: (loss: WorkerLoss) => void;
  /** A worker that could not start may be had now: what is still wanted is to be asked again. */
  readonly onTryAgain: () => void;
}

/**
 * Owns a worker: starts it with the first message, notices when its script does not come, when it breaks down and when
 * a reply cannot be delivered. One that could not start is tried again, by itself and by `tryNow`.
 */
export function ownWorker<Message, Reply extends { readonly kind: string }>(
  options: OwnWorkerOptions<Reply>,
): OwnedWorker<Message> {
  let worker: Worker | null = null;
  let hasRun = false;
  let loss: WorkerLoss | null = null;
  /** Found gone before: then later tries do not raise hopes anew. */
  let wasGone = false;
  const retries = createRetries(() => {
    loss = null;
    options.onTryAgain();
  });

  function end(): void {
    retries.stop();
    loss = null;
    worker?.terminate();
    worker = null;
  }

  function lose(why: string): void {
    const lost: WorkerLoss = { kind: hasRun ? 'broke' : wasGone ? 'gone' : 'notStarted', why };
    end();
    if (lost.kind !== 'broke') {
      loss = lost;
      retries.failed();
    }
    options.onLost(lost);
    if (lost.kind === 'notStarted') void lookForIt(lost);
  }

  async function lookForIt(lost: WorkerLoss): Promise<void> {
    if (!(await isGone(lost.why))) return;
    wasGone = true;
    // It may have been tried again meanwhile, or nobody wants it any more.
    if (loss !== lost) return;
    loss = { ...lost, kind: 'gone' };
    options.onLost(loss);
  }

  function started(): Worker {
    const fresh = options.start();
    hasRun = false;
    // One that was ended has nothing more to say.
    const ifMine = (then: () => void) => worker === fresh && then();
    fresh.onmessage = ({ data }: MessageEvent<Reply | WorkerReady>) =>
      ifMine(() => {
        hasRun = true;
        wasGone = false;
        retries.worked();
        if (!isReady(data)) options.onReply(data);
      });
    fresh.onerror = (event) => {
      event.preventDefault();
      ifMine(() => lose(event.message || 'its script did not come'));
    };
    fresh.onmessageerror = () => ifMine(() => lose('its reply could not be delivered'));
    return fresh;
  }

  return {
    post(message, transfer = []) {
      if (loss !== null) return;
      worker ??= started();
      worker.postMessage(message, transfer);
    },
    loss: () => loss,
    tryNow: () => {
      if (loss !== null) retries.now();
    },
    end,
  };
}

const isReady = (message: { readonly kind: string }): message is WorkerReady => message.kind === 'ready';
