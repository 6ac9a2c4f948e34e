/** @returns what the browser answers to a request of its store. */
export const answered = <Answer>(request: IDBRequest<Answer>): Promise<Answer> =>
  new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = (event) => {
      // An error nobody prevents reaches the console of some browsers.
      event.preventDefault();
      reject(request.error);
    };
  });

/** Waits until all of a transaction is written; `durability` says how far. */
export const completed = (transaction: IDBTransaction): Promise<void> =>
  new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () =>
      reject(transaction.error ?? new DOMException('Ended by the app', 'AbortError'));
  });
