import type { JobInput } from '@/shared/schemas/request';
import type { PriceReply } from './messages';

export interface PriceService {
  /** Asks for a price. A newer question makes an older one's reply unwanted: it is dropped. */
  readonly ask: (input: JobInput, onReply: (reply: PriceReply) => void) => void;
  readonly stop: () => void;
}

/** Starts the worker; one question is under way at a time, and of those waiting only the newest is kept. */
export function startPriceService(): PriceService {
  const worker = new Worker(new URL('./price.worker.ts', import.meta.url), { type: 'module' });
  let last = 0;
  let busy = false;
  let waiting: (() => void) | undefined;
  let listener: ((reply: PriceReply) => void) | undefined;

  const settle = (reply: PriceReply) => {
    busy = false;
    if (reply.number === last) listener?.(reply);
    const next = waiting;
    waiting = undefined;
    next?.();
  };
  worker.onmessage = ({ data }: MessageEvent<PriceReply>) => settle(data);
  worker.onerror = (event) => {
    event.preventDefault();
    settle({ kind: 'failed', number: last, why: event.message || 'the worker could not be started' });
  };

  return {
    ask(input, onReply) {
      last += 1;
      const number = last;
      listener = onReply;
      const send = () => {
        busy = true;
        worker.postMessage({ number, input });
      };
      if (busy) waiting = send;
      else send();
    },
    stop: () => worker.terminate(),
  };
}
