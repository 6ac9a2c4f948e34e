import { IDBObjectStore } from 'fake-indexeddb';
import { onTestFinished } from 'vitest';

/**
 * A full disk: from now on every write is refused until room is made, either at the request or, as browsers
 * mostly do, by ending the whole transaction that had already taken it. The room may run out at one table.
 */
export const fillTheDisk = (
  how: 'byRequest' | 'byAbort' = 'byAbort',
  onlyFor: string | null = null,
): { readonly makeRoom: () => void } => {
  const put = IDBObjectStore.prototype.put;
  const makeRoom = () => {
    IDBObjectStore.prototype.put = put;
  };
  IDBObjectStore.prototype.put = function refused(this: IDBObjectStore, ...row: Parameters<typeof put>) {
    if (onlyFor !== null && this.name !== onlyFor) return put.apply(this, row);
    if (how === 'byRequest') throw new DOMException('The disk is full.', 'QuotaExceededError');
    const request = put.apply(this, row);
    const transaction: unknown = this.transaction;
    queueMicrotask(() => abortAsFull(transaction));
    return request;
  };
  onTestFinished(makeRoom);
  return { makeRoom };
};

/** The stand-in's own way of ending a transaction with an error of the browser. */
const abortAsFull = (transaction: unknown): void => {
  const { _abort, error } = transaction as { _abort: (name: string) => void; error: unknown };
  if (error === null || error === undefined) _abort.call(transaction, 'QuotaExceededError');
};
