/** The version the app counts in; the library beneath multiplies it by ten. */
const NATIVE_FACTOR = 10;

/**
 * The version of the store on this device, without opening it in any version of ours and without making it.
 *
 * @returns 0 where there is no such store
 */
export const storeVersion = (indexedDB: IDBFactory, name: string): Promise<number> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open(name);
    let isNew = false;
    request.onupgradeneeded = () => {
      // Only a store that does not exist needs an upgrade here; leaving without it makes none.
      isNew = true;
      request.transaction?.abort();
    };
    request.onsuccess = () => {
      const { version } = request.result;
      request.result.close();
      resolve(version / NATIVE_FACTOR);
    };
    request.onerror = (event) => {
      // An error nobody prevents reaches the console of some browsers.
      event.preventDefault();
      if (isNew) resolve(0);
      else reject(request.error);
    };
  });
