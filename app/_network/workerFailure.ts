/** Why an answer is missing. */
export interface WorkerFailure {
  /** `notStarted` mends itself once the network is there; `broke` and `failed` do not. */
  readonly kind: 'notStarted' | 'broke' | 'failed';
  readonly why: string;
  /** Asks again now; null where the same would come of it. */
  readonly again: (() => void) | null;
}
