import type { Worker } from 'node:worker_threads';

/** What becomes of a question: its answer, or why there is none. */
export type PoolAnswer<Answer> =
  | { readonly kind: 'answered'; readonly answer: Answer }
  /** It took longer than anybody waits. */
  | { readonly kind: 'tooLong' }
  /** Others were before it, so that it was not begun, or not in time to be done. */
  | { readonly kind: 'busy' }
  /** The thread could not be started, or broke off. */
  | { readonly kind: 'failed' };

export interface PoolLimits {
  readonly threads: number;
  /** Questions that may wait for a thread. */
  readonly waiting: number;
  /** Longest work on one question that somebody still waits for. */
  readonly workMs: number;
  /**
   * How long its thread may go on after that. On a slow machine the first job of a kind takes long and the next one
   * does not: a thread ended at once would start anew each time and never get there.
   */
  readonly graceMs: number;
  /** From the question to its answer, with the wait for a thread. */
  readonly answerMs: number;
  /** How much longer it may take where every thread is only being started. */
  readonly startMs: number;
}

interface Task<Question, Answer> {
  readonly question: Question;
  readonly end: (answer: PoolAnswer<Answer>) => void;
}

interface Seat<Question, Answer> {
  readonly thread: Worker;
  isReady: boolean;
  task: Task<Question, Answer> | null;
  limit?: NodeJS.Timeout;
}

/**
 * Threads that answer questions one at a time. Work cannot be interrupted from within, so a thread that takes too
 * long is ended and another takes its place. A thread says `ready` once it can be asked; every other message is the
 * answer to its question.
 */
export class ThreadPool<Question, Answer> {
  readonly #startThread: () => Worker;
  readonly #limits: PoolLimits;
  readonly #seats = new Set<Seat<Question, Answer>>();
  readonly #waiting = new Set<Task<Question, Answer>>();

  constructor(startThread: () => Worker, limits: PoolLimits) {
    this.#startThread = startThread;
    this.#limits = limits;
  }

  ask(question: Question): Promise<PoolAnswer<Answer>> {
    if (this.#waiting.size >= this.#limits.waiting) return Promise.resolve({ kind: 'busy' });
    return new Promise((resolve) => {
      const { answerMs, startMs } = this.#limits;
      let late = setTimeout(() => {
        // Nobody is before it: it waits for the first thread, or for one that takes the place of another.
        if (this.#isUp()) task.end({ kind: 'busy' });
        else late = setTimeout(() => task.end({ kind: 'busy' }), startMs);
      }, answerMs);
      const task: Task<Question, Answer> = {
        question,
        end: (answer) => {
          clearTimeout(late);
          this.#waiting.delete(task);
          resolve(answer);
        },
      };
      this.#waiting.add(task);
      this.#fillSeats();
      this.#handOut();
    });
  }

  /** Ends every thread; the next question starts them again. */
  async close(): Promise<void> {
    const seats = [...this.#seats];
    this.#seats.clear();
    for (const seat of seats) this.#end(seat, 'failed');
    await Promise.all(seats.map(({ thread }) => thread.terminate()));
  }

  #isUp(): boolean {
    return [...this.#seats].some(({ isReady }) => isReady);
  }

  /** One after the other: two that start at once keep the first question waiting twice as long. */
  #fillSeats(): void {
    const isStarting = [...this.#seats].some(({ isReady }) => !isReady);
    if (!isStarting && this.#seats.size < this.#limits.threads) this.#seats.add(this.#open());
  }

  #open(): Seat<Question, Answer> {
    const thread = this.#startThread();
    const seat: Seat<Question, Answer> = { thread, isReady: false, task: null };
    // Threads that wait for work are no reason to keep the program running.
    thread.unref();
    thread.on('message', (message: Answer | 'ready') => {
      if (message === 'ready') {
        seat.isReady = true;
        this.#fillSeats();
      } else {
        clearTimeout(seat.limit);
        seat.task?.end({ kind: 'answered', answer: message });
        seat.task = null;
      }
      this.#handOut();
    });
    thread.on('error', () => this.#lose(seat, 'failed'));
    thread.on('exit', () => this.#lose(seat, 'failed'));
    return seat;
  }

  #lose(seat: Seat<Question, Answer>, why: 'failed' | 'tooLong'): void {
    if (!this.#seats.delete(seat)) return;
    this.#end(seat, why);
    void seat.thread.terminate();
    // One that never got ready would not do so the next time either.
    if (seat.isReady) this.#fillSeats();
    else if (this.#seats.size === 0) for (const task of this.#waiting) task.end({ kind: 'failed' });
  }

  #end(seat: Seat<Question, Answer>, why: 'failed' | 'tooLong'): void {
    clearTimeout(seat.limit);
    seat.task?.end({ kind: why });
  }

  #handOut(): void {
    for (const seat of this.#seats) {
      const [task] = this.#waiting;
      if (task === undefined) return;
      if (!seat.isReady || seat.task !== null) continue;
      this.#waiting.delete(task);
      seat.task = task;
      seat.limit = setTimeout(() => {
        task.end({ kind: 'tooLong' });
        seat.limit = setTimeout(() => this.#lose(seat, 'tooLong'), this.#limits.graceMs);
      }, this.#limits.workMs);
      seat.thread.postMessage(task.question);
    }
  }
}
