import { Worker } from 'node:worker_threads';
import type { WrittenAnswer } from './answerText';
import { type PoolAnswer, ThreadPool } from './threadPool';

/** How long one job may be worked on; looking for fewer shared sheets takes up to half of it. */
export const MOST_WORK_MS = 3_000;

/** One job after the other in each of two threads: while a heavy one runs, the small ones go through the other. */
const pool = new ThreadPool<{ readonly text: string; readonly today: string }, WrittenAnswer>(
  () => {
    // A job that wants more memory than this ends its thread and not the server.
    const resourceLimits = { maxOldGenerationSizeMb: 512 };
    const thread = new Worker(new URL('./price.thread.ts', import.meta.url), { resourceLimits });
    // Whoever asked gets a sentence; what happened is for whoever runs the server.
    thread.on('error', (error) => console.error(error));
    return thread;
  },
  { threads: 2, waiting: 64, workMs: MOST_WORK_MS, graceMs: 2_500, answerMs: 3_300, startMs: 20_000 },
);

/** Answers the text of a request in a thread of its own; the threads are started by the first one. */
export const priceInThread = (text: string, today: string): Promise<PoolAnswer<WrittenAnswer>> =>
  pool.ask({ text, today });
