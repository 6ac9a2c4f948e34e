import type { JobInput } from '@/shared/schemas/request';
import type { SheetsQuestion, SheetsReply } from './sheetsMessages';

export interface SheetsService {
  /** A newer question makes an older one's reply unwanted: it is dropped. */
  readonly ask: (input: JobInput, onReply: (reply: SheetsReply) => void) => void;
  readonly stop: () => void;
}

/** A maker who types is not asked for between the keys. */
const PAUSE_MS = 350;

/** Starts the worker that compares sheets; it has its own grid, so that prices never wait for it. */
export function startSheetsService(): SheetsService {
  const worker = new Worker(new URL('./sheets.worker.ts', import.meta.url), { type: 'module' });
  let last = 0;
  let pause: ReturnType<typeof setTimeout> | undefined;
  let listener: ((reply: SheetsReply) => void) | undefined;
  const settle = (reply: SheetsReply) => {
    if (reply.number === last) listener?.(reply);
  };
  worker.onmessage = ({ data }: MessageEvent<SheetsReply>) => settle(data);
  worker.onerror = (event) => {
    event.preventDefault();
    settle({ kind: 'failed', number: last, why: event.message || 'the worker could not be started' });
  };
  return {
    ask(input, onReply) {
      last += 1;
      listener = onReply;
      const question: SheetsQuestion = { number: last, input };
      clearTimeout(pause);
      pause = setTimeout(() => worker.postMessage(question), PAUSE_MS);
    },
    stop() {
      clearTimeout(pause);
      worker.terminate();
    },
  };
}
