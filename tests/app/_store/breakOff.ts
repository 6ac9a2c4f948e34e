import { IDBObjectStore } from 'fake-indexeddb';
import { onTestFinished } from 'vitest';

const methods = ['put', 'get', 'getAll', 'getAllKeys', 'delete'] as const;

/**
 * Breaks every transaction off at its n-th request from now on, as a killed page or a disk that fails does.
 *
 * @param onlyFrom counts only from the first transaction that writes
 * @returns how many requests were made, and a way to let everything pass again
 */
export const breakOffAt = (nth: number): { readonly requests: () => number; readonly mend: () => void } => {
  const prototype = IDBObjectStore.prototype as unknown as Record<string, (...args: unknown[]) => unknown>;
  const originals = methods.map((name) => [name, prototype[name]] as const);
  let requests = 0;
  for (const [name, original] of originals) {
    if (original === undefined) continue;
    prototype[name] = function counted(this: { transaction: IDBTransaction }, ...args: unknown[]) {
      const request = original.apply(this, args);
      if (this.transaction.mode === 'readonly') return request;
      requests += 1;
      if (requests === nth) {
        const { transaction } = this;
        queueMicrotask(() => {
          try {
            transaction.abort();
          } catch {
            // It had ended already.
          }
        });
      }
      return request;
    };
  }
  const mend = () => {
    for (const [name, original] of originals) if (original !== undefined) prototype[name] = original;
  };
  onTestFinished(mend);
  return { requests: () => requests, mend };
};
