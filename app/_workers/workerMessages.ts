/** The first word of every worker: its script has come and runs. */
export interface WorkerReady {
  readonly kind: 'ready';
}

/** What the page asks of a worker that answers questions. */
export interface WorkerQuestion<Request> {
  readonly number: number;
  readonly request: Request;
}

/** What it gives back; a fault of ours is told, never swallowed. */
export type WorkerReply<Answer> =
  | {
      readonly kind: 'answered';
      readonly number: number;
      readonly answer: Answer;
      /** False while a better answer is looked for, which takes the place of this one. */
      readonly isLast: boolean;
    }
  /** No better answer than the last one given was found. */
  | { readonly kind: 'ended'; readonly number: number }
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };
