/** Why an answer is missing. */
export interface WorkerFailure {
  /**
   * `notStarted` mends itself once the network is there; `gone` when the page is opened anew, for the server has a newer
   * version; `broke` and `failed` do not.
   */
  readonly kind: 'notStarted' | 'gone' | 'broke' | 'failed';
  readonly why: string;
  /** Asks again now; null where the same would come of it. */
  readonly again: (() => void) | null;
}
