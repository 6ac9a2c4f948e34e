import type { WorkerLoss } from './ownWorker';

/** What is told of a worker that is lost. */
export type LossNews =
  | { readonly kind: 'failed'; readonly why: string }
  /**
   * Its script did not come: the work waits until it can be had, or somebody tries it `again`. Where it is gone from the
   * server, only the page opened anew has one.
   */
  | { readonly kind: 'notStarted'; readonly isGone: boolean; readonly again: () => void };

export const lossNews = ({ kind, why }: WorkerLoss, again: () => void): LossNews =>
  kind === 'broke' ? { kind: 'failed', why } : { kind: 'notStarted', isGone: kind === 'gone', again };
